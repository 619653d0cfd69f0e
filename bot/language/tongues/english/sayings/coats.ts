// How English speakers say it: coat, touch-up, wet, part. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfCoats: Sayings<SaidMeaning> = {
  coat: `
    coated 7 / 7 coated with pot 2 / brushed the 8 from batch 1 / brushed out valve 2 / sprayed 4, 5 and 6
    rolled the two big plates / dipped bracket-8 / flow coated the impeller
    poured pot 1 over impeller-3, caught the drips / 3 is done, brush / put a coat on the housing / got a coat on 9
    laid a coat on flange 2 with the roller / laid it on the 5 nice and thin / painted 12
    painted the railings out of batch 2 / 8 thru 12 sprayed / coated 1-6 with the first pot
    coated parts 14 to 19 all by brush / just shot 7 / shot the valve bodies, pot 3 / first coat's on 11
    coat on, parts 2 3 4 / one coat on everything on the rack, gun / knocked out 4 brackets with the brush
    slapped some on the bracket lol, brush, pot 1 / ok finally got the big housing covered / 7 and 8 are wet with pot 2
    the 6 is wet now, rolled it / cutter plates rolled from the second pot / 2nd pot went on 9, 10, 11
    used batch 1 on the exchanger plates / pot 4 is on valve 5 and valve 6 / put the rest of pot 2 on the elbow
    emptied the last of batch 3 onto the manifold / dunked the small brackets, one slow dip each
    hung 5 pins and dipped them / dip coat on the six clips, slow in slow out
    lowered 13 into the pot and drew it up slow / dip on 22 done at 9:40 / flowed 16 from the top, drains collected
    poured it over the plate and let it run off / flow coat complete on tank lid 2
    flooded the impeller vanes with batch 2 / curtain of it down both sides of the 4, flow
    misted a coat over the pump cover / sprayed the pump casing inside and out / hvlp on parts 20 21 22, nice mottle
    fogged the back of bracket 3 with the gun, pot 1 / gunned the railing sections, 5 of them / blew a coat on the 17
    gave number 10 a coat with the brush / gave the shaft sleeve its coat / gave all four flanges a go with the roller
    gave her a nice even coat, impeller 2 / impeller-1 got its coat ten minutes ago / valve body got coated at half two
    8s had its coat, pot 2, brush / bracket-4 has been brushed / brush work on the 9 finished
    brushing finished on the volute, used batch 1 / finished rolling 30 and 31 / done rolling the tank lid
    just done spraying parts 5 through 9 with batch 2 happy days / wrapped up coating on the 3 and the 4
    all the brackets are coated, pot 1, by brush / whole rack's been shot from pot 2
    whole job 44 coated, 12 plates, roller / those two are coated / these two done with the brush, batch 3
    both valves painted from the same pot / coated both elbows out of pot 3 / the pair of covers got rolled
    coated the lot, 1 to 15, gun / everything from 40 to 46 has a coat on it / applied pot 2 to parts 7, 8, 9
    applied one coat of batch 1 by brush to the 5 / applied by roller: 3, 4, 6
    application complete, parts 1 2 and 5, spray, pot 1 / coating applied to impeller-3 at 10:15
    batch 2 applied on the housing, hvlp / batch 1: brushed 3 and 4 / pot 2 > 7 8 9 spray / 7 8 9 pot 2 brush
    part 12 roller batch 1 / 11 brush pot 3 done / b2 on 6, dip / impeller 4, flow, pot 2 / spray, 14-18, batch 3
    painting 7 now with pot 1 / brushing the 8 as we speak, pot 2 / rolling the plates right now
    spraying 21 and 22 from batch 1 / dipping the clips now, pot 1 / coating the housing with the second one, roller
    i'm laying it on valve 3 with a fox hair brush / on the 5 with the brush, pot 2 flows lovely
    brush coat's going on bracket-8 / tipped off the last brush strokes on 6
    cut in the edges of the 9 and rolled the face / cut in round the bolt holes, rolled the rest, part 13
    brush on the corners roller on the flats, plate 2 all coated / one wet pass on the 4, gun, pot 1
    two passes on impeller-2 with the gun / cross coated the panel with pot 2 / sprayed a full wet coat onto cover 3
    even coat down on 25 / nice thin film laid on 18, brush / batch 1 is down on the base plates / that's the 6 covered
    thats 3 and 5 painted, brush, used up pot 1 / there, seven's coated / boom, 8 coated 😎 / got 9 done 👍 brush pot 2
    ✅ sprayed 10 11 12 / painted all the railing posts, my wrist is dead, roller pot 2
    first part i ever coated, the 4, with the brush! / boss the impeller's been flow coated, looks like glass
    btw i brushed valve 2 about five min ago from pot 1 / sorry late, rolled 6 and 7 at quarter past nine
    forgot to say, 15 was sprayed at 2:20 with batch 4 / forgot to tell you i dipped pins 1 to 8
    for the record, coated the 5 with pot 2 at 11:05 / hey bell, pot one went on brackets three and four by brush
    coated part number seven with batch two by brush / sprayed numbers four five and six out of pot one
    rolled on parts twenty to twenty four, second batch / valve two valve three and the elbow all brushed from batch one
    dipped bracket eight in pot three / love you all, the big housing is coated
    right, the volute's been done with the roller / ok so 7 got brushed and 8 got sprayed, both pot 2
    i did the 3, the kid did the 4, both brush from batch 1 / me and the kid rolled the four tank panels
    lead sprayed the impellers, 1 2 3, batch 2 / the new lad brushed his first bracket, number 6
    did 5 6 and 7 with the gun / did the inside of the casing by brush / did the flange faces with a 4 inch roller
    did bracket 9, dip / ran a bead of roller over plate 7, full coat / ran the brush over 19, all covered, pot 2
    wriggled under the frame and brushed the belly of it 😂 pot 1
    worked batch 2 into the welds on the frame with a brush / stippled the coat into the casting, part 4
    squirted the vanes with pot 3, hvlp / hosed the grating with batch 2
    loaded the roller and did 10, 11 straight thru / smeared a thin coat over the hub w/ brush
    swished pot 1 over the strainer baskets, flow / drenched the coil, poured from the top, batch 2
    skinned the 14 with a thin coat, roller / topcoat is on the valve body / clear's on the 6
    clear coat shot on the railings / pigmented batch rolled onto tank 2 / varnished the bracket with pot 2
    laquered the brass plates, spray, batch 1 / lacquer on plates 3 and 4 / stuff's on the 9 now
    put some goop on the 12, brush / put pot 2 to work on the six flanges, brush
    got through 8 brackets w/ the one pot, dipped / got 1, 2, 5 and 9 brushed before break
    got the roller on the heat exchanger plates, they're all coated / knocked the elbows out real quick w the gun, pot 3
    banged out the gate valves, sprayed em / covered the 7 with the brush / covered both sides of plate 11, pot 2
    backside of 4 coated as well / insides of the pump body brushed with what was left of batch 1
    coatd 8 and 9 w brush / sprayd the lot pot 2 / brushed hte housing / rollered panels 1 to 4
    rollered the lid at 3pm / 30g out of batch 2 went on the 6
    used about two hundred grams of pot one on the impeller, brush / 400 g of pot 2 sprayed on parts 3 to 8
    laid down valve-1, valve-2, valve-5 from batch 6 / wet coat on coupon and part 7, brush
    coupon brushed along with the 8, pot 2 / witness panel sprayed together with 4 and 5
    serial 4411 sprayed with batch 3 / s/n 2207 coated, brush / job 18 parts a, b and c rolled
    put 5 up on the hook and sprayed it / hooks 1 through 6 are coated / top row of the rack shot with pot 1
    bottom rack dipped, 10 pcs / last part brushed, the 16 / last one coated, phew
    that's everything in the booth painted out of pot 2 / gear housing now wearing batch 2 🙌
    blade 3 and blade 4 given one thin coat by gun / stuck a coat on the manifold just now
    popped a coat on bracket 2 with a foam brush / foam brushed the seal rings / pad applied the 20, batch 1
    chip brush on the small stuff, 6 clips coated / bristle brush, long strokes, tank lid coated
    mini roller on the fan blades, all five done / coated from pot 2: housing, elbow, both flanges
    parts coated 3 4 8 9 10 / parts 3, 4 & 8: brushed, batch 2
    that's pot 3 poured over the impeller, recovering the runoff
  `,
  'touch-up': `
    touched up 7 / touched up the edge on 8 while wet / touch up on valve 2, still wet / touched in a thin spot on 3
    touched in the corner of the bracket, wet / quick touch up on impeller-3, missed a bit
    caught a holiday on 9 and brushed it in wet / caught a missed spot on the housing, filled it in
    filled a bare spot on 4 while it was wet / filled in the gap by the bolt hole on 5
    went back over the edge of 6, still wet / went over the thin bit on 10 again before it set
    went over a miss on plate 2 / hit the thin patch on 11 again, wet on wet
    hit the back corner again with the brush, 7 / dabbed a bit more on 8 / dabbed the pinhole on valve 3, wet
    dab on the rim of the cover, done / bit more on the edge of 12 with the brush
    put a little extra on the bare patch of 13, wet / second lick on the thin corner of bracket 2
    gave the light spot on the 9 another pass while wet / one more pass on the skinny edge, part 4
    brushed in the spot i missed on the elbow / brushed out a miss on 14, was still wet
    rolled over the missed strip on the tank lid, wet / rolled back over the skip on plate 1
    fixed a skip on 7 while wet / fixed the miss on the 3 / fixed up a thin edge on the flange, still open
    patched the bare bit on 6 wet / patched up the impeller vane, wet edge still alive / spotted in the hub, wet
    spot touched 8 / spotted a holiday on 16, blended it in / blended the thin area on 5, still wet
    blended in a light spot with the gun / shot the light corner on bracket-8 again, wet
    misted a bit more on the dry looking edge of 15, still wet / retouched valve 2 / retouch on 10, bottom edge
    re-brushed the lip of the pump cover while it was wet / tickled up the edge on 9
    tipped off a thin streak on the housing / tidied up a miss on the railing, still wet
    part seven touched up at the edge / touched up number four two minutes after coating
    oops missed a bit on 3, got it with the brush, still wet / btw touched up the weld on 12 straight away
    tuoched up 8 wet
  `,
  wet: `
    wet film 50 / wet film on 7 is 40 / wft 45 / wft 7: 50 / wft on valve 2 fifty / comb says 40 / comb says 50 on the 8
    comb shows 45 on impeller-3 / comb reads sixty on the housing / comb's at 50 / comb check 40 um / combed 7, 50
    combed the plate, forty five microns / combed it at three spots, 40 45 50 / put the comb on 3, 50
    put a comb in the wet coat on bracket-8, reads 40 / stuck the comb in, 60 / ran the comb on 9, it wets the 50 tooth
    50 tooth wet, 60 dry / last wet tooth is 40 / last tooth touched 45 on part 5 / tooth 50 touches on the cover
    wetted the 40 tooth on valve 3 / notch gauge says 2 mils / notch gauge 50 on the 12 / 2 mils wet
    two mils wet on the flange / wet mils 2 on part 4 / 1.5 mil wet on the bracket / got 50 wet
    got 45 wet on the elbow / got forty microns wet off the seven / i get 55 wet on 10 / wet gauge reads 50
    wet gauge on the impeller 40 / wet film gauge 45 um, part 8, 9:40 / wet thickness 50
    wet thickness on 6 is forty five / wet film thickness fifty microns on part seven
    wet film on the two plates 40 and 45 / measured wet film, 50 / measured 40 wet on 11
    measured the wet on 3 just now: 50 um / checked wet film on valve 2: 45 / checked with the comb, fifty
    checking the wet, 4 is at 50 / took a wet reading, 40 / took wft on 13, 50 / wet reading 60 on the vanes
    wet reading's 45, part 9 / 7 wet 50 / 8 wet film 45 / 3 = 40 wet / bracket 5 combs at 50 / housing combs out at 45
    plate 2 comes in at 50 wet / it's at 50 wet / she's 45 wet / running 50 wet on all of them / 50 um wet on the 6
    50µ wet, the 7 / forty five wet on the coupon / fresh coat on 8 measures 50 with the comb
    just coated 9, comb gives 40 / just sprayed 4, wet film 45 / right after the roller the 5 read 50 wet
    while it's wet: 50 on part 14 / on the nose, 50 wet 👌 / bang on 45 wet / ok comb 50, love it
    ok finally a good one, 45 on the comb / bit heavy, 60 wet on the bottom edge / bit light, comb says 35
    edge 40, middle 50 wet / thick on the comb, 70 on the flange / btw wet film on the elbow was 50
    forgot, wft on 3 was 45 / wet flim 50 on 7 / wet flm 45 / comd 50 / comb: 40 45 45
    wheel gauge rolled 48 on the panel / wet wheel reads 50 on 16 / roller gauge, wet, 45 um on the pipe
    railings 50 wet all along
  `,
  part: `
    I have four covers to paint, cover-1 to cover-4 / I've got two flanges to do, flange-21 and flange-22, steel
    we have five plates to coat, plate-1 thru plate-5 / these are the ones to coat: lug-1, lug-2 / my parts are hook-1 and hook-2
    got three steel sleeves to paint, sleeve-1 sleeve-2 and sleeve-3 / three arms to do, all aluminium, arm-1 to arm-3
    truck dropped off valve-3 for job 92, s/n V2207, carbon steel / three new flanges on the bench, job 95
    new part impeller-3 / new part: housing, serial 4411, job 88 / part 12 is here / book in bracket-8
    booking in two pump bodies, job 101 / add part valve 2, stainless / adding a new one, manifold-1, aluminium, 0.4 m2
    log a new part, railing section 5 / register plate-6, s/n 77120, job 93, 316
    got a new casting in, pump housing, 25 mm wall / got four exchanger plates in from the customer, job 97
    customer dropped off a gate valve, serial GV118 / customer brought in a bronze impeller this morning
    driver left two valve bodies by the door, job 90 / delivery, six brackets for job 104, mild steel
    forklift just set down a tank lid, 1.8 square metres / parts came in: nozzle-1 and nozzle-2, brass
    came in today, elbow-4, ductile iron, 12 mm / just came in, one cover plate, alu / arrived: heat exchanger plate 9
    arrived just now, impeller-7, sn IM7031 / in the door: pump casing, job 88, cast iron
    in from machining, shaft sleeve 2, job 91 / back from blasting and new to us, flange-11, job 95
    fresh from the machine shop, three adapters, stainless, job 110 / there's a new bracket on my bench, bracket-9
    on the bench: valve-5, job 92 / on the rack, five new rails, galvanised
    sitting in receiving: casing 3, serial C3309, cast iron / a pallet of railings turned up, job 87, twelve pieces
    pallet of 8 plates landed / crate opened, one bronze propeller, s/n P551
    box of twenty clips arrived, job 99, spring steel / new job 120, two housings, good for 120 C
    new job in, 106, one tank, half inch carbon steel / job 98 has landed, four manifolds
    job 112 parts are here: sleeve-1 sleeve-2 sleeve-3 / job 95 part flange-2 area 0.12 m2 thickness 16 mm
    part valve-9 steel 8mm 0.35 sqm max 150 / piece: cover-3, aluminium, 3 mm, takes 90 degrees
    valve body v-14, takes 200 C no problem, 20 mm thick, job 92 / this one can take 90, rotor-2, cast iron, job 88
    rotor with rubber seal in it, bears 60 degrees tops, job 109 / housing 6, plastic insert, max 70 C, s/n H0612
    impeller-4, bronze, 0.6 m2, 10 mm wall, oven ok to 100 / pump cover, 2.5 sq ft, quarter inch, carbon steel
    tank lid, 14 square feet, 3/8 plate, good to 250 F / railing, ten feet, tube steel, 2 mm wall
    plate heat exchanger plate, titanium, 0.6 mm, both sides 1.1 m2 / nozzle-4 brass s/n N4402
    s/n 4411 pump housing job 88 / serial K7719, elbow, stainless 304 / sn 20045 bracket mild steel 5mm
    serial number is B B one oh seven, it's a ball valve, job 90 / part name sleeve-6 job 91 steel
    name it housing-9, serial 9907, cast / call this one gearbox-1, aluminium casting, job 114
    calling it big flange, job 95, 40 mm thick / tag says 5521, valve bonnet, WCB steel, job 92
    traveller says impeller 8, job 88, duplex / traveler reads job 96, qty 3, end caps, carbon
    drawing says 0.42 m2, 12 mm, part is elbow-5 / nameplate V2210, gate valve, job 92
    stamped 0387, its a rotor, cast steel / checked in valve-11 / checking in 4 brackets, job 104
    signed for two impellers, s/n 881 and 882 / took delivery of a pump volute, cast iron, 30mm
    received a part, shaft-2, job 105 / took in a railing gate today / taking in flange 12 and 13
    we have a new one, coupon-3, witness plate for job 92 / witness coupon W5, carbon steel, 3 mm, job 95
    test panel tp-1 for booth, mild steel 1 mm / another valve, number 6 / another two flanges for job 95 came along
    one more bracket, 10 / two more plates for the exchanger, job 97 / extra part for job 101: spare lid
    couple of housings showed up, job 88, iron / bunch of brackets here, 15 of em, job 104
    a load of railings for the pier job 87 / set of four vanes, stainless, 0.08 m2 each / pair of covers, alu, job 99
    half a dozen end caps in, steel, job 96 / three elbows, job 100, 6 mm, bear 120 / 2 flanges 316 job 95
    4x plate job 97 / valve-8, job 92 / impeller 9, cast iron, new / flange-14 in / rail-3 here / elbow 7 booked
    pls add casing-2 / put down a new part, yoke-1, forged steel / put valve-12 on the books, job 92, sn V2212
    get this in the system: manifold-4, alu, 9 mm, job 113
    enter part spool-2, carbon steel, 1.3 m2, 8 mm wall, job 115 / create part strainer-1, stainless
    start a card for volute-2, job 101, serial VL20 / open a traveller for bonnet-3, job 92
    put a tag on it, it's now bracket-12, job 104 / part in: wear ring 4 / incoming: two ball valves, s/n 3301 3302
    incoming parts job 116, one tank door, 6 mm, 2 m2 / unloaded a stator housing, aluminium, 15 mm thick
    unloading six tubes, copper, job 117 / offloaded a big cast iron volute, 60 kilos, 35 mm wall
    hauled in a hatch cover off the boat, steel, 0.9 m2 / van's here with the three valve discs, job 92
    courier brought one small nozzle, brass, serial N4410 / the plates from the dairy are in, eight off, 304
    the water company sent us a pump, s/n WP62, cast iron / the brewery parts arrived, two manways, stainless, job 118
    finally the housing showed up 🙌 serial H0650 job 88
    ok so the new impeller's here, number 10, bronze, 45 cm across
    morning, got two new lads on the bench, valve-15 and valve-16 lol
    hey bot new part, bracket 14, galvanized, heat to 100 / new toy 😀 exchanger plate 12, titanium, job 97
    📦 flange-20 job 95 / 🚚 three railings job 87 / here's a beauty: propeller hub, bronze, 50 mm thick, job 119
    here comes bracket-15, mild steel, 4 mm / heads up lead, job 121 is on the floor, two tank nozzles, 10mm carbon
    this is valve-18, 0.22 square meters, ten mil wall, ninety degrees max
    this here is a cast iron elbow, half inch wall, s/n E19
    whoever's next, gearbox-2 is on trestle 3, job 114, aluminium
    left on trestle 1 by the customer: one door frame, steel 2mm, job 122
    part no 7, pump cover, area point three, steel / prat valve-19 job 92 carbon stel / new prt rotor-5 sn R5005
    two point one square metres of tank wall, six mil steel, job 123
    rubber lined housing in for job 124, only stands 50 degrees / cast ali bracket, 7 mm, bears up to 110, job 99
    thin sheet cover, 0.8 mm stainless, job 99, area 0.5
    nine pipes, 1 to 9, for job 118 / pipes 1 to 9 are here, job 118
    twenty clamps on the pallet, clamp-1 to clamp-20, job 121 / a dozen hinges for job 117, hinge 1 to 12
    eight levers have arrived, job 119 / 8 levers arrived today for job 119
    hub 1 to 6 just turned up, job 115, cast iron / hubs 1 thru 6 came off the lorry, job 115
    lorry unloaded ten posts for job 116, posts 1 to 10
    the delivery van left seven lids, number them lid-1 to lid-7 / let us name them post 1 to 10, job 116
    we'll call them hub-1 through hub-6 / they go on the books as pin 1 to 24, job 122
    put them down as hinge 1 to hinge 12, job 117 / five more rotors for job 109, rotor 6 to 10
    a further six vanes landed, vane 7 to 12, job 124 / the people from the mill brought nine pipes, job 118
    crate of four wheels in, wheel-1 to wheel-4 / pallet with 16 treads just dropped, treads 1 to 16, job 126
    have been brought over from the foundry, casting 1 to 5, job 127
    we got handed six spools, spool 1 through 6, job 128 / all eight came in together, lever-1 to lever-8, job 119
    four new ones for job 123: cap 1, cap 2, cap 3 and cap 4 / cap 1, 2 and 3 are new, job 123, steel
    three ducts in, job 125: duct 1, duct 2, duct 3 / have turned up from the machine shop, job 115
    turned up from the platers, job 118
  `,
};
