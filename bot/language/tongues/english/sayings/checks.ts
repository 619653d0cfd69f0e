// How English speakers say it: film, adhesion, release, hold. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfChecks: Sayings<SaidMeaning> = {
  film: `
    dry film 20 / dry film on 7 is 18 / dft 22 / dft 7: 20 / dft on valve 2 nineteen
    dry film thickness twenty microns on part eight / dry thickness 21 um / dry thickness on the housing 18
    film's 20 on the 8 / film reads 19 / film on impeller-3 measures 22 / film build 20 on bracket-8
    build's at 21, cured / cured film 18 on 9 / cured film's twenty / cured part 7 measures 19.5 um
    the gauge says 20 dry / dry gauge 21 on 4 / dry film gauge shows 18 / dry film gauge: 19 20 22
    gauge reads 20 on the cured plate / gauge says 0.8 mil dry / 0.8 mils dry on the flange / one mil dry on part 5
    dry mils 0.9 / eight tenths of a mil on valve 3 / gauged the 12, 20 / gauged it at five spots, average 21
    average dft 20 / average 19 on the impeller, low 17 high 22 / avg 20.5 over five spots, part 3
    min 18 max 23 mean 20, dft on 6 / five readings on 7: 18 20 21 19 20 / dft readings 20 19 21
    spot readings 18 19 20 on the cover / measured dry film, 20 / measured the 10, dry, 18 um
    measured dft on both plates: 20 and 22 / measured after cure: twenty one / after cure it's 19
    after the oven 8 reads 20 um / took dft on 11, 20 / took dry readings, 19 on the elbow
    took the thickness of 13 once cold, 21 / checked film on 7, 20 microns / checked dft at 2:15, 18.5
    checked the dry, valve 2 is at 22 / checking thickness, 4 has 19 dry / got 20 dry / got 21 on the cured bracket
    got eighteen microns dry off the seven / i get 20 dft on the coupon / coupon dft 19
    coupon film is 21 and part is 20 / 7 dry film 20 / 8 dft 19 / 3 = 22 dry / valve 4 dft 18 / part 16 20 um dry
    bracket 2 comes in at 19 dry / housing came out at 22 dft / it's 20 dry / she's 19 dry boss / 20µ dry on the 6
    20 um dft on the railings / twenty two dry on part nine / dried down to 18 on the 5
    eddy probe says 21 on the aluminium plate / eddy gauge 20 on alu / mag gauge 19 on the steel
    ultrasonic gave 20 on the panel / thickness 20 on the finished 14 / final film 21 / final thickness on the hub 19
    bang on, 20 dry 👌 / ok dft's 20, happy with that / ok finally measured the 9, 18 dry
    btw dry film on the elbow is 22 / forgot, dft on 3 was 19 / dry flim 20 on 7 / dry film thikness 18 / dtf 20 part 8
    edge 17, centre 21, dry / thin edge reads 14 dry on the 7 / bit fat, 28 dry on valve 5
  `,
  adhesion: `
    cross cut 0 / cross-cut on 7 gave 0 / cross hatch 5b / crosshatch on the coupon 5B / x-cut 5a on the panel
    adhesion 5b / adhesion 0 on part 8 / adhesion's good, 4B / adhesion test rated 1 / adhesion came out class 0
    adhesion came out at 4b on the bracket / adhesion on valve 2: gt0 / gt 1 on the coupon / gt0 👌
    rated it 0, edges clean / rated 5b, nothing lifted / iso class 1 on the cut / class 2 on the crosscut, part 4
    class zero, all squares stayed / tape test 5b / tape test on the impeller coupon gave a 1 / tape pulled, 4b
    pulled the tape, all squares still there, 0 / pulled tape on 3, lost a couple corners, 1
    cut the grid and taped it, rating 0 / cut a lattice on the coupon, class 1 / scored and taped 9, 5b
    did the cross cut, zero / did adhesion on the witness panel, 5b / ran a cross hatch on 11, 3b
    hatch test on bracket-8 is a 2 / grid test came out 0 / stuck like glue, cross cut 0 on 7
    sticks great, 5b on the coupon / bad one, cross-cut 4 on plate 3 / whole squares came away, 1b
    pull off test 6 mpa on the coupon / dolly popped at 900 psi / cross cut rating one on part seven
    ok adhesion done, five b
  `,
  shipped: `
    shipped impeller 4 / 6 has shipped / housing 2 went out this morning / the customer came and got 5 / customer picked up 8 / customer collected 8 and 9
    7 left on the truck / truck took 3 and 4 / driver just took 9 / loaded 9 on the van / 9 is on its way to the customer / sent 6 out / sent 4 off to the customer
    5 is gone, customer has it / 5 already left / 8 left the shop / 8 left the building an hour ago / 3 was delivered today / dropped 3 at the customer / handed 6 over to the customer
    they took 7 home / courier took 2 / courier has 2 / freight picked up 1 and 2 / dispatched 4 / dispatched the housing / 4 went to the customer / 4 went with the driver
    9 rolled out the gate / out the door with 9 / part 6 is out the door / somebody took 6 to the customer / 6 got delivered / 6 got shipped / boxed and shipped 7 / crated 5 and it left
    customer drove off with 8 / pickup happened for 8 / 8 was picked up / 8 was collected / the flange went out yesterday / all of job 4 shipped / whole order went out
    shipping 9 now, it is on the pallet and gone / 9 is no longer here, it shipped / delivered 1 to the site / 2 is at the customer's already
  `,
  release: `
    release 7 / 7 released / released 8 and 9 / 8 good to go / 8 can ship / ship 3 / ship it, part 3 / ship the impeller
    impeller-3 cleared / cleared valve 2 for shipping / valve 2's cleared to go / bracket-8 approved / approved: 4 5 6
    approve the housing / approving 10, looks perfect / passed 11 / 11 passes / 12 passed inspection
    passing both plates / both valves pass, let them go / these two are released / these two can go out
    all six released / whole batch 1 released / batch 2 parts are all good to ship
    everything on the rack approved for shipping / sign off 7 / signed off on the 9 / signed the elbow off
    signed 13 off, dft and looks ok / i'm signing off part 14 / green tag on 3 / green tagged the flanges
    green light for valve 5 / green lit the covers / ok'd 6 / ok 8 is ok for delivery / 5's ok to leave
    give 4 the ok, ship / good part, 7, release it / 7 accepted / accepted the railings
    accept the housing, film's good / qc passed 16 / qc ok on the hub / inspected and released, 3
    inspected 10, all good, out the door / looked it over, 8 is released / out the door: brackets 1 to 6 / let 9 go
    letting the two plates go to the customer / customer can have the 7 / customer can collect impeller 1
    7 is ready to ship / box up 4, it's approved / boxed and released, the clips / free to ship, valve 3
    freed 12 for dispatch / dispatch 11, passed / part seven released / parts three and four are approved for shipping
    took the hold off 8, it's released / tank lid's done, released at 2:15 / ok finally releasing the big casting
    boss says the 6 can go / ✅ release 5 / 7 👍 ship / 📦 valve 2 released / realese 9 / relase 7 and 8
    finished and passed, coupon's fine, 15
  `,
  hold: `
    hold 7, runs / 7 on hold, gel specks / put 8 on hold, thin at the edge / holding 3, runs on the bottom edge
    hold the impeller, bubbles all over / hold valve 2 for orange peel / bracket-8 on hold because of fisheyes
    quarantine 5, soft film / quarantined the housing, it peels at the weld / parked 6, there's a sag down the side
    parking the 9, pinholes / set 4 aside, bare spot by the hole / set aside 11 and 12, dust in the film
    pulled 10, runs / pulled the two covers for gel specks / pull 3 off the shipping rack, film's only 4 microns
    red tag on 7, blisters / red tagged valve 3, lifted at the corner / tagged the elbow, thin on the radius
    hold tag's on 13, lap lines / stuck a hold tag on the plate, brush hairs in it
    yellow tape on 2, needs looking at, mottle too heavy / rejected 8, it blistered in the oven
    reject the bracket, boiled / 8 fails, solvent pop / 15 failed inspection, craters
    failing the flange, tape pulled squares off / bin pile for now: 6, film cracked
    impeller's on hold, drips on three vanes / stop 7, fish eyes / stop the housing going out, it's still soft
    stopped valve 2 from shipping, dry film too low / keep 9 back, runs near the flange / keeping 4 back for a sag
    kept back 16, bubble by the serial plate / keep these two here, gel in the film / hold these two, specks
    both on hold, orange peel like a golf ball / hold 1 to 6, wrong batch on them
    hold all the batch 2 parts, ratio was off / hold everything from pot 3, it was gelling
    everything off pot 1 goes on hold, soft after cure / batch 2 parts held, cured short / on hold: 7, thin at edge
    on hold 8 dust nibs / hold 12 sags / hold 5 - pinholes / hold #3 curtains on the face
    hold: valve 4, bare spots inside / 7 hold runs / valve 1 hold missed spot / housing hold, blush
    20 held for blushing / blushed white, 6 goes on hold / gone milky, holding the 4 / milky patch on 11 so it's on hold
    cloudy film on the cover, hold it / it came out hazy, put the 5 on hold / water spots on bracket 3, hold
    somebody touched it, fingerprint on 7, hold / glove print in the film of 9, on hold
    fingermark on the 8, pulled it aside / hold the plate, forklift scratched it / scratch on valve 2, put on hold
    chip off the corner of 14, held / dinged the edge of the housing, holding it / bug in the clear 😩 hold 6
    fly landed on 3, hold it / hair stuck in 10, on hold / lint all over the tank lid, hold
    grit in the film on bracket 2, holding / sandpaper finish on the 7, overspray, hold / dry spray on 18, hold it
    too thick on 4, 40 microns, on hold / film too heavy at the bottom of 13, put it on hold
    low film on the railing, held / reads 6 um, under spec, hold the 9 / dft's low on valve 5 so hold it
    thin on the vanes, impeller-2 on hold / hold for rework, 8, missed the back
    hold for the lead to look at, 3, weird lines / hold for engineer, part 21, colour's off
    put the elbow on hold till the boss sees it, ripples / putting 7 on hold, the wet edge shows
    put on hold part number eight, runs along the bottom edge / part seven on hold gel specks near the bore
    placing 12 on hold, adhesion 3 / placed valve 3 on hold due to bubbles / am holding 5, solvent rub took it off
    mek rub went through on 6, hold / rub test failed, 4 on hold / cross cut was bad on coupon 2, hold the lot
    wont wet out, crawling on 9, on hold / crawled at the weld, 11 held / ugh, hold 7, runs again
    damn, sag on the impeller, put it on hold / ok finally looked at 8, specks, hold it
    sorry lads, the 3 is on hold, craters by the bolt holes / bad news, housing is going on hold, it wrinkled
    wrinkled in the oven, 10 on hold / 😡 hold 6 got drips / 🛑 7 runs / 🛑 hold valve 2, soft / ⛔ 4 bubbles
    btw bracket-5 is on hold, looks like orange peel / btw i've held 17, there's rust bleeding thru
    rust spot coming through on the 2, hold / flash rust under the clear on 19, on hold / hodl 8, runs
    on hlod: 3, specs in film / hold 9 specs all over / hold the first one, streaks / streaky, 6's on hold
    brush marks too deep on the cover, hold / roller stipple on plate 4 wont do, on hold
    i'm not passing 5, edge is thin, hold it / 12 is no good, runs, hold / not shipping 7, bare patch, put it on hold
    nope on valve 2, hold it, lifting at the seat / don't ship 8, its tacky, hold
    hold the coupon and its part, dents with a nail / nail goes in, soft, hold 13 / oven tripped on it, hold 4 and 5
    no temp record for 16 so it's on hold / came out early, undercured, hold 6 / yellowed in the oven, the 9 is held
    burnt on one side, 20 on hold / wrong lot went on it, hold 3
  `,
};
