// How English speakers say it, in further words: film, adhesion, release, hold. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfChecks2: Sayings<SaidMeaning> = {
  film: `
    I have measured 21 dry on 7 / I measured a dry film of 19 on the casing / have 20 microns dry on 8
    we got 22 dry on the castings / has a dry film of 21 / dry film comes to 20, casing / dry film now 20, 7
    dry film twenty on the casing / dry film one mil on the base / dry film avg 21 on 4 / dry film mean 19.5
    dry film five spots 18 20 21 20 19, base / dry film checked, 21, casing / dry film ok at 20
    dry film is fine, 21 on the base / dry film low 17 high 23 / dry film min 18 / dry film on the castings 20 and 21
    dry film of 20 um, hub / dry thickness came to 21 / dry layer 20 microns / dry coat 19 um on base
    dry coat measures 21 / dry gauge gives 19 / dry micron reading 20 / dft's 21 / dft came out 22
    dft came at 20, casing / dft mean 20 / dft range 18 to 22 / dft check 20 / dft checked on 7, 21
    dft done, 19 20 21 / dft taken on the casing: 20 / dft nineteen / dft twenty one on the hub
    film 20 on base after cure / film's 21 after the oven / film came out at 20 / film measured on 7: 19 dry
    film thickness came out 19 / film thickness after cure 20 / build is 21 / build came to 19, casing
    total build 40, two coats / total film 41 um, 8 / total dry 40 on base / thickness is 20 after cure
    thickness check 20, casing / thickness measured 20 / thickness gauge says 21, casing / thickness meter 19
    paint thickness 20, base / paint thickness meter says 21 / coat thickness 21 / coating's 20 thick, cured, base
    cured casing measures 20 / cured coat 21 um / after baking, 19 um / after baking the casing reads 20
    out of the oven and cold, 21 um / cold now, film 20, base / once cooled 19 on 7 / cooled and gauged, 20
    gauge shows 20 um / gauge on 7 gives 21 / gauge averaged 20 / gauged base, 21
    gauged the casing all round, 19 to 22 / gauged five points, 20 average / gauging done, 20, castings
    eddy current gauge 21 / eddy gauge on the alu cover 19 / eddy 20 / magnetic gauge 20 on steel / mag gauge 21, base
    banana gauge reads 20 / pull-off gauge 21 um / ultrasonic gauge 20, plastic panel / probe on the film, 20 um
    mil gauge says one mil, base / 0.8 mils on base / 0.9 mil, 7 / point eight mils dry / 0.75 mil average
    20 microns, cured, 7 / 20um dft base / 20 µm on the casing, cured / twenty microns dry, hub
    nineteen micron film, base / twenty one um average / average 20 um over five, base / average of ten spots 21
    mean 20, low 18, base / ten spots, mean 20 / lowest 18 highest 23, base / between 18 and 22, casing
    18 to 22 all round, hub / edges 17, flats 21, cured base / 20 in the middle, 16 at the edge, dry
    on the face 20, in the bore 18, dry / inside 18 outside 21, casing dft / took film on base, 20
    took five dft, avg 20 / measuring dry, base is 20 / checked the casing with the gauge, 20 / check film 20, hub
    got 20 um on the dry base / got an average of 20 / got dft 19 / getting 20 dry, casing / that's 20 dry on the base
    that's the film at 21 / she's 21 um, casing / it dey 20 um dry / kindly record dft 20, base
    please note dry film 21, casing / film casing 21 / flim 20 / fim 21 base / dft 20 part for
    bit thin, 15 um dry, base / bit thick, 28 dry / heavy on the edge, 30 um dft, casing
    thin on the corner, 14 dry, 7
  `,
  adhesion: `
    adhesion is 0 / adhesion perfect, 0 / adhesion poor, class 4 / adhesion came to 0 / adhesion result 0
    adhesion checked, 5b, coupon / adhesion test passed, 0 / adhesion test result class 1, casing
    adhesion by pull-off 1000 psi / adhesion on the witness plate 0 / cross cut test done, class 0
    cross cut 2, some corners gone / crosscut gives 0, coupon / grid's all there, 0 / squares all stuck, 0
    all squares hold, 5b / no squares lost, 0 / a few corners flaked, 1 / few flakes at the crossings, class 1, coupon
    five percent gone, 4b / fifteen percent off, 3b, casing / two squares lifted, 4b
    half the squares came off, class 4 / a third flaked off, 2b / tape pulled nothing, 0 / tape came off clean, 5b
    taped it, nothing lifted, 5b / taped and pulled, class 0 / x cut tape test, 5a, coupon / knife and tape, 5b, hub
    scored a grid, 0 / cut a grid in the coupon, 0 / cut six by six, 0 / six blade cutter, 0, base
    1 mm cutter, class 0 / pull off gave 5 N/mm2 / dolly came off at 1100 psi / dolly broke in the glue at 8 MPa
    dollies 6, 6.5 and 7 MPa / stuck a dolly, pulled at 7 / gt0 all round / astm 4b, casing / class 0 by iso
    grade 0 adhesion / sticks well, 5b, base / sticks like mad, 0 / holds on like glue, 5b
    grips fine, class 0, casing / won't come off, 5b / it's well stuck, 0, coupon / peels at the cut, 2b, base
    came off with the tape, 0b / lets go at the edge, 3b / did the pull test, 7 MPa / ran adhesion on base, 0
    that's the cross cut done, 0 / kindly record adhesion 0 on base / please note cross cut 1, casing
    adhesion class zero base / cross cut oh, base
  `,
  release: `
    lift the hold on the casing / I'm lifting the hold, it was a bad reading / hold lifted on base / you can take the hold off 8
    take the bits off hold / the hold comes off, we measured again / I took the hold off the rail / remove the hold from part 7
    the supervisor lifts the hold / we lifted the hold after a second look / clear the hold on the tank / no more hold on 4
    drop the hold on base / hold is off the casing now / lift it, the gauge was wrong / lifting the hold for all three
    pull the hold tag off 6 / that hold can come off / cancel the hold on the flange / end the hold on 9, it passed
    I release part 7 / I have signed off base / I have approved the casing / we release job 178
    has been released, base / has been approved, casing / has passed inspection, base / is cleared for delivery, base
    are released, all four / are good to go, bits / released to stores, bits / released for collection, 8
    released after inspection, casing / released by me, base / releasing the castings now / releasing all of job 178
    release casing, dft ok / release all the bits / release them, they look fine, 7 8 / release it, film's good, base
    release everything on the rack / full release on base / approve 7, all checks fine / approval given, base
    okayed the base / ok to leave the shop, base / okay to send, 8, I've checked it / passed and tagged, bits
    passed qc, base / passed final inspection, castings / pass on the casing, looks good
    pass, castings, nothing wrong / qc'd and good to go, 7 / quality ok, casing, can ship
    inspected, no faults, released, casing / inspected base, fine, let it go / looked at it, no faults, release, 8
    looked over the castings, all good, released / checked everything on base, it can ship / checked and passed, bits
    final check good, release casing / final inspection done, base goes / signed for release, castings
    signed them off, bits / my signature's on it, 7 released / stamped it off, base / stamped ok, castings
    stamped for dispatch, 8 / green tag, casing / green label on the castings / green sticker, bits ok
    green lit base / green light, casing / good for delivery, casing / good to ship, base, all ok
    good to send out, 7 / all good, let base go / all in order, release casing / fine to go, castings / fit to ship, 7
    fit for service, released, casing / ready for collection, passed, castings / ready to leave, 8, signed
    ready for the customer, casing, approved / cleared the castings to ship / cleared to leave, casing
    freed for delivery, castings / let the castings go / let it go out, casing / let it out the door, 7
    let them ship, bits / lets the customer have it, base, passed / can go out, castings, checked
    can be shipped, casing / can be delivered, base / can be collected, bits / can be picked up, 8, it's passed
    customer may have base / customer can take the castings / customer can pick up casing
    give it to the customer, base is passed / send the castings, they're good / send 7 out, approved
    send it off, casing / ship the lot / ship all of job 178 / ship them, bits are fine / dispatch casing, ok
    dispatched after check, 7 / off you go base, released / out the door with the castings / away with it, base passed
    took the hold off base, release / hold lifted, casing released / off hold and released, 7
    that's the castings passed / that's her good to go, casing / she's good to ship, base / I don release am, base
    base don pass / the part is approved, sir / kindly release base / please release the castings / ship part eight
    pas base / released because film and looks are fine, 7 / released since the customer's check passed, base
  `,
  hold: `
    the base is on hold, runs / I put part 7 on hold, gel specks / I have put the casing on hold, bubbles
    I have held back 8, thin film / have set the base aside, sags / have put the castings on hold, wrong pot
    we hold job 178, colour's off / has been put on hold, base, orange peel / has a hold on it, casing, runs
    is on hold, base, pinholes / is held, 7, soft / is held back, casing, blisters / are on hold, castings, dust
    are held, all four, short cure / are set aside, bits, bare spots / on hold, base, sag / on hold, casing, bubbles
    on hold till somebody looks, 7, odd colour / on hold for the lead, base, thin edge / on hold because of runs, 8
    hold base, runs / hold casing, sag on the side / hold the castings, dust in the coat / hold 7, bubbles
    hold bits 1 to 4, bare spots / hold base for craters / hold casing for fisheyes / hold 8 because it's soft
    hold base because the film is low / hold the castings since the ratio was off
    hold the lot from pot 2, gelled early / hold everything of job 178, wrong lot / hold it, base, blister
    hold it, there's a run on 7 / hold them, castings, oven tripped / hold that one, casing, scratched
    hold back base, peeling / hold back the bits, tacky / holding base, sags / holding casing for thin film
    holding the castings, dew on them / holding 7 for the inspector, haze / holding back 8, fingerprint
    held base, gel specks / held casing, runs / held the castings, undercured / held 7 over a bubble
    held up base, orange peel / put a hold on base, blush / put a hold on the castings, lint
    put a stop on 7, bubbles / put base aside, runs / put the casing aside, drips / put 8 to one side, sags
    put bits 2 and 3 aside, missed backs / put it in quarantine, base, soft
    put in quarantine, castings, short on temp / quarantine base, gel in film / quarantine the casing, peeled
    quarantined castings, cure unsure / quarantined 7, tacky after a day / quarantine cage: base, blisters
    set base aside, runs / set casing to one side, thin / set aside the castings, wrong film
    set aside for rework, 8, sags / aside for rework, base, bare edge / aside: casing, dust / pulled base, blisters
    pulled casing from shipping, runs / pulled the castings for dust / pulled 7 off the line, bubble
    pulled from dispatch, base, soft / parked base, runs / parked the casing, pinholes / parked 8 in the cage, haze
    parking castings till checked, low film / stop base, sags / stop the casing, bubbles
    stop 7 from going, film's thin / stop shipment of castings, wrong pot / stopped base, fisheyes
    stopped casing at dispatch, scratch / block base, soft film / blocked castings, cure not proved / block 7, craters
    blocked for now, casing, lap marks / keep base back, runs / keep the castings here, thin
    keep 8, don't send, blistered, hold / keep casing aside, drips / kept base, bubbles, on hold
    keeping 7 on hold, blush / reject base, runs / rejected casing, blisters / rejected castings, bare spots
    rejecting 7, dust / reject the lot, soft, hold / failed base, film low / failed casing, pinholes
    failed 8, tape took it off / failed inspection, base, sags / failed castings, orange peel / base fails, bubbles
    casing failed the look, runs / fails on film, 7, hold / no good, base, sags, hold it
    no good, casing blistered, hold / not good enough, 8, runs, hold / not passing castings, thin, hold
    base won't pass, craters, hold / red tag base, runs / red tagged casing, thin / red tag on the castings, dust
    red label, 7, soft / red sticker on base, blush / hold tag on casing, bubbles / hold tag 8, run
    hold label on base, scratch / tagged base, sags / tagged castings hold, dust
    yellow tag on casing, not sure of the film / marked base hold, pinholes / marked 7, run near the bolt hole, hold
    rework base, sags, on hold / rework needed on casing, hold, runs / needs rework, 7, missed the back, hold
    needs stripping, base, peeled, hold / needs another look, casing, cloudy, hold
    waiting on the lead, base on hold, ripple / waiting for the inspector, casing held, spots / base: hold, gel
    casing: hold, sag / castings: hold, lint / 7: hold, drip / there's a run on base, put it on hold
    there is a sag on casing, hold / there are bubbles on 7, held / found pinholes on base, hold
    found a bare spot on the casing, on hold / found dust in the castings, holding / saw a blister on 8, hold
    noticed runs on base, held / dent in the coat of casing, hold / nick in the film, 7, hold
    bubbles under the film, base, hold / bubbled up in the oven, casing on hold / boiled in the oven, base, hold
    blistered, castings on hold / cracked film, 7, hold / crazed all over, base, hold / wrinkled, casing on hold
    peeled at the edge, 8, hold / lifted at the weld, base, hold / soft at the nail test, casing, hold
    still soft after cure, castings, hold / tacky after the oven, base, on hold / colour came out wrong, casing, hold
    yellow patch, 7, hold / milky, base held / hazy, castings on hold / dull spot, casing, hold
    sandy feel on base, overspray, hold / grit in it, casing, hold / bugs in the coat, base, hold 🪰 / hair in 7, hold
    fingerprints, base, hold / glove mark on casing, hold / water drops fell on base, hold
    rained on the castings, hold / dropped 8 on the floor, hold / fork truck bumped casing, hold
    chipped corner, base, hold / that's base on hold, runs / that's the casing held
    that's 7 on the naughty shelf, runs, hold / she's on hold, casing, sags / I don hold base, runs
    base dey on hold, bubbles / kindly hold base, film low / please put 7 on hold, sags
    please hold the castings, dust / hold base / hold casing dust / hodl 7 / hld base runs / on hold seven runs
    hold part eight bubbles
  `,
};
