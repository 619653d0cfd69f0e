// How English speakers say it, in further words: coat, touch-up, wet, part. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfCoats2: Sayings<SaidMeaning> = {
  coat: `
    the casting is coated / the castings have had their coat, pot 1 / I have coated part 7 with the brush
    I have just coated the housing from pot 2 / I have brushed part 4 / I have rolled the plates 5 and 6
    I have sprayed the base / we have dipped the small bits, batch 1 / we coated four bases from pot 2
    have done the coat on 9, brush / have put the first coat on the casing / has been painted, 12
    has been sprayed, the cover, pot 3 / has been rolled, plate 4 / was brushed at 9:40, part 3 / is brushed, the 8
    is sprayed, the base / is rolled, panel 2 / is dipped, clip 5 / is painted now, bracket 3 / are all painted, pot 1
    are sprayed, 4 to 9 / are dipped, all ten / got its paint, 7 / got painted, the lot, roller
    got sprayed, 2 and 3, pot 1 / got dipped, bits 1 to 6 / got brushed just now, 11 / got the coat on 5, brush, pot 2
    got the clear on the 6 / got a lick of paint, number 9 / gave 3 a lick with the brush
    lick of pot 2 on the flange / gave the base its coat / gave the castings a spray, batch 2
    gave them a good coat, 4 5 6, gun / gave it one coat, roller, pot 1 / slapped a coat on the casing
    slapped pot 2 on the base, brush / whacked a coat on 7 / smacked a coat on the rails, roller
    lashed a coat on the gate, pot 1 / sloshed it on, part 9, brush / slicked pot 2 over the 5
    swept a coat across the panel, brush / stroked a thin coat on 6 / swiped the roller over 8, done
    whisked a coat onto the cover / feathered a coat onto 10 / wafted a coat on with the gun, 3
    dusted a coat on 4 with the gun / misted 6 and 7 / spritzed the bracket, pot 1 / jetted batch 2 onto the base
    blasted a coat... sprayed I mean, 5 / blew pot 1 over the rails / shot a coat over 9 / shot 4 thru 8, pot 2
    shot the casings with the hvlp / shot it with the gun, the 12 / fired a coat at the tank, gun
    hit 5 with the gun, one coat / hit the panels with a roller coat / hit it with the brush, part 7, full coat
    put it on with a brush, part 8, pot 1 / put it on with the roller, tank lid / put the stuff on 4, brush
    put paint on 6 and 7 / put film on the 9, dip / put pot 1 on the castings / put pot 2 over the base, poured
    put one on the elbow, brush / laid one on the 7, gun / laid on a thin coat, bracket 5
    laid the first coat on, casing / laid it off nicely on plate 2, roller / laying the coat on 3 now, brush
    laying down pot 2 on the tank / laying it on the base / spreading pot 1 on the plates
    spread it thin over 8, brush / spread batch 2 on the lid with a roller / smeared some on the hub, coat done
    dabbed a coat on the studs, 12 of them / dabbed the whole bracket, pad / sponged a coat on, part 5
    swabbed the bore with pot 1 / mopped a coat on the tank floor, roller / squeegeed a coat over panel 3
    poured a coat over the coil / poured pot 2 down the plates, caught the rest / flowed pot 1 over 7
    flow coat on the 8, drains back / flow coated two bases / flow coating done on 5 / flow done, casing
    flooded the casing, let it drain / doused the impeller, pot 1 / immersed 4, slow out
    immersed the pins in batch 1 / submerged the clips, drew them up / plunged 6 in slow, out slow
    sank the basket of bits, one dip / dipped once, 9 / dipped the basket, ten bits / dipped and drained, bracket 4
    dipping done, 1 to 12 / dip done, pins / single dip, 7, pot 2 / one dip on each, 3 4 5 / dunked and hung, clips
    dunk on 8, pot 1 / dip coat on the bits, batch 3 / pulled out of the dip slow, 11 coated / brush coat on 7
    brush coat on the casings, pot 1 / brush coat done, 4 / brush coat finished at ten, base
    brush coated both ends, 6 / brush job on 3 done / brush applied, 5 / brush, part 8, pot 1 / by brush the 9
    with the brush: 2, 3, 6 / done by brush, the casing / done by hand with a two inch brush, elbow
    did the base, brush / did the casings, gun / did the lot with the roller / did four bits, dip, pot 1
    did number 9 by spray / did both, brush, from pot 2 / did the first coat on 12 / did it, 7 coated
    did the edges with a brush and the face with a roller, 5 / doing 8 now with the brush, pot 2
    doing the bases, roller / doing the coat on 4 / on with the coat, 9, brush / on it with the roller, plate 2
    roller coat on 7 / roller coat on the panels / roller coat finished, 3 and 4, pot 1 / rolled a thin coat over 5
    rolled 6, two sides / rolled it out on the lid / rolling done, tank / rolling finished on 8
    rolled and tipped off, 9 / rolled the base, pot 2 / roller on 4 done / foam roller on the plates, coated
    mohair roller, panel 5 / four inch roller, gates 1 and 2 coated / spray coat on 7 / spray coat done on the casing
    spray coat finished, 4 5 6 / sprayed one wet coat on 3 / sprayed both sides of the plates
    sprayed the bits on the rack / sprayed out pot 1 on the rails / sprayed from pot 2: 7, 8
    sprayed with the small gun, 9 / spray complete on base 2, coated / coat complete on 6 / coat done 7
    coat done on the castings, pot 1 / coat's on the housing / coat's on 5, brush / coat is on, bracket 3
    coat's down on 8 / coat finished on the casing at 9:50 / coat one on 7 / coat number one done on the base
    first coat done, 4 / first coat down on the castings / first coat finished, pot 2, roller
    second coat on 6, brush / second coat's on the 9, pot 3 / second coat done on the base / another coat on 7, gun
    final coat on the casing / last coat's on, 8 / top coat on 5, brush / base coat on the gates, roller
    build coat on the castings / clear on 7 / clear coated the covers / clear coated 8, gun / lacquered 9
    lacquered the brass bits, dip / varnished the cover, brush / painted it, the casing / painted the bits
    painted 3 and 5 with pot 1 / painted both faces, 8 / painted up the gate / painting done, 4 to 7
    painting finished on the base / paint's on 6 / paint on the rails now, roller / paint is on all the castings
    all painted / all painted up, pot 2, brush / applied the coating to 7 / applied by brush on the castings
    applied at 9:40 to part 5, roller / application finished on 8, pot 2 / application by spray, 4 and 5
    coating done on 7 / coating finished on the base / coating of the casing finished, brush
    coating's on, bits 1 to 6 / coating applied to 9 by dip / pot 1 went on 7 / pot 1 is on the castings
    pot 2 went onto 8 and 9 by gun / pot 2 used on the base, brush / pot 3 onto the covers, roller
    batch 1 on 7, brush / batch 1 on the castings / batch 2 onto 4 5 6 / batch 3 over the tank
    from pot 1: 7, 8, brush / from batch 2 the base, roller / out of pot 1 I did 3 and 4
    out of pot 2 came the coat on 8 / used pot 1 for 7 / used pot 2 on the bits, dip / finished 5 with pot 1, brush
    finished the castings, all coated / finished brushing 9 / finished the gate with the roller / finished dipping
    finished the coat on 4 / through with 8, coated / done with coating 6 / done coating / done the coat, 7
    done 3 4 5 with the gun / done the base, brush, pot 2 / that's 7 coated / that's the castings done, brush
    that's the base painted / that's me painted the gate / that's the bits dipped / that's 8 an 9 brushed
    seven's been painted / she's coated, the casing / she's painted / she's wearing her coat now, 7
    he's got his coat on, bracket 2, brush 😄 / that wee bracket's coated, brush / painted yon casing, roller
    y'all, 4 through 9 are shot / shot em all, pot 1 / painted the whole mob, gun, mate / I don coat part 7
    I don brush the housing finish / the base don collect coat / part 7 has been coated, sir
    kindly note 7 is coated, brush, batch 1 / please record a coat on 5, roller, pot 2
    please write down 8 was sprayed / coated 7 early because pot 1 was getting old / coated 5 since there was mix left
    used what was over on bracket 6, brush, full coat / had some left so 9 got coated, pot 1 / coated before lunch: 7
    coated at nine: the base / coated ten minutes ago, 8 / coat 4 5 brush / coat base roller / brush 7 pot 1 / roll 4
    spray 8 9 / dip 1-6 / 8 gun pot 2 / casing coated / castings coated / base coated / bits coated / cover coated
    lid of tank coated / gate coated / rails painted / elbow brushed / cotaed 7 / caoted the base / coted 8 pot 1
    brsuhed 4 / brushd 5 / spryaed 6 / roled plate 2 / dpped 9 / painetd 3 / code it seven with brush
    coded part 8 pot 1 / cold it nine with the brush / courted the base pot two / bloody finally coated the casing
    damn tank's coated, roller, took ages
  `,
  'touch-up': `
    I have touched in a spot on the base / we touched up 4 and 5 while wet / has been touched up, 8
    is touched up, bracket 3 / touch up finished, 6 / touching up 7 now, wet / touched in round the holes, base
    touched the rim again, wet, cover / touched it up quick, 9 / touched up where the hook was, 4
    touched in the hook marks, bits 1 to 3 / filled the hanger mark on 6, wet / filled the spot the clamp hid, base
    filled the miss on 5 with a small brush / missed a strip on 9, put it right wet
    missed bit on the casing sorted, still wet / missed the underside of 3, got it wet
    caught a thin edge in time, wet, base / caught a dry patch on 5, brushed it wet
    caught a sag and tipped it out, 8, wet / tipped off a run, 9 / tipped out a sag on the casing, wet
    wiped a drip off the bottom edge and brushed in, 3 / levelled a run on 6, wet / smoothed a run out, 7
    smoothed the lap on the base, wet / smoothed over the brush marks, 5, still wet
    ironed out a sag with the brush lol, 8 / evened out the thin bit on 4 / blended over a light patch, casing
    went back and got the corner, 7 / went back to the thin edge of the base with the brush
    went round the holes again, 5 / went over the light bit with the roller, panel 2, wet
    gone over the thin spot again, 8 / ran the brush over the bare bit, 3, wet / ran round the edge again, cover, wet
    another dab at the weld, base / another touch on the rim, 4 / another wee bit on the corner, 9
    another squirt at the thin spot, 5, wet / quick squirt with the gun on a light spot, 8
    quick dab at the bolt hole, casing / quick fix of a thin spot, 7, wet / quick pass on the light side, 4, wet
    one more stroke along the edge, 6 / one more wisp of spray on the corner, base / extra dab on the weld, 5
    extra stroke on the lip of 8 / little dab on the nick, casing, wet / bit more paint on the miss, base, still wet
    put some more on the bare spot of 6 / put a spot of mix on the miss, 5 / added a bit at the weld, wet, 3
    dabbed in a gap, casing / dotted the pinholes, 7 / spotted in two misses on the base, wet
    repaired a finger mark in the wet, 6 / repaired a wet scuff, 5 / mended the scrape while wet, 8
    made good the edge, casing, wet / corrected a thin strip on 7, wet / redid the corner, base, still wet
    redone the edge of 4 while open / rerolled a light strip on panel 2, wet / recoated just the corner, wet, 6
    fly in it, picked it out and touched in, 5 / hair picked out and touched up, 8
    picked a bristle out and laid it off again, 3 / picked out a bit of fluff and touched it in, base
    that's the miss filled / I don touch up 7 / kindly note 7 touched up / touched up because the edge was thin, 4
    touched in so the corner's covered, 9
  `,
  wet: `
    wet film is 50 on 7 / I have measured 50 wet / I measured wet film 45 on the base / have 50 microns wet on 8
    we have 45 wet on the casings / has 50 wet, the 9 / has a wet film of 45, plate 2 / wet film comes to 55
    wet film came out at 45 on 4 / wet film at 50, base / wet film now 45 / wet film forty on the casing
    wet film thickness reads 45 / wet film two mils / wet film 3 mils on the tank / wet film thick of 60
    wet film check 50 / wet film ok 50 / wet thickness is fifty / wet layer 50 / wet layer on 7 is 45
    wet coat measures 45 on 8 / wet paint 50 microns on 4 / wet at 45 on the casing / wet forty five base
    wet reading on 7 45 / wet measurement 45 on the plate / wet check, 45 / wet comb 50 / comb on the casing reads 45
    comb gives 50 on the tank / comb gave me 45 / comb went to 50 / comb marks at 50, 9 / comb wet to 50
    comb's last mark is 45 / comb stuck in at 50, casing / comb dipped, 45 / comb across the base 50 / comb test 50
    combed 8 at 50 / combed the casing, 45 / combed 4 and 5, 50 and 45 / tooth at 50 is wet, 55 dry
    the 50 tooth is wetted / 45 tooth covered, 50 clean / teeth wet up to 50 / highest wet tooth 45
    first dry tooth 55, last wet 50 / notch 50 wet on 7 / notches wet to 45 / step gauge wet to 50 / hex gauge 45 wet
    rolling gauge shows 45 wet on the pipe / roller wheel 50 on plate 2, wet / card gauge 50 wet
    plastic comb says 45 / metal comb 50 / gauge in the wet shows 50 / gauge in the fresh coat 45, 6
    gauge pushed in, 50 wet / stuck the gauge in wet, 45 / pressed the comb in, 50
    pushed the comb in the fresh paint, 45 / put the gauge in the wet coat of 8, 50 / dropped the comb on 9, 45
    checked wet on the base, 45 / checked the fresh coat, 50 wet / checked straight after coating, 45 wet
    measured the wet coat 50 / measuring wet, 4 gives 45 / took wet film, 50 / took the wet on 6: 45
    took three wet readings, 45 50 50 / read 50 wet off 8 / read the comb at 45 / got 50 off the comb
    got 45 with the comb, base / getting 45 wet / getting 50 on the comb, casing / I get 50 wet on 3
    5 mils wet on the tank / two and a half mils wet, 7 / three mil wet on the base / 50 mic wet
    45 microns wet, plate 4 / 45 um wet, casing / 50um on comb / 45µm wet / fifty mic wet / forty five on the comb
    sixty on the comb, base / 8 combs out at 45 / base combs at 50 / plate's at 50 wet / fresh coat reads 45, 7
    fresh coat combs 50 / just laid it, comb 45 / just rolled it, 50 wet / straight off the gun, 45 wet
    straight after brushing 50 on the comb / one minute after the coat, 45 wet / while wet 50
    while still wet it reads 45, base / bit thin, 35 on the comb / bit thick, 70 wet / heavy edge 80 on the comb, 7
    light side 30 wet / thin on the comb, 25, corner of 8 / that's 50 wet / that's the comb at 45 / she's 50 wet
    she combs 45 / it's 45 on the comb / it dey 50 wet / kindly record wet film 50 / wft 45 casing / wft is 50
    wft reads 45 / wft check 50 / wtf 50 haha wft / wet fil 50 / wett film 45 / wet flim 45 on 3 / whet film 50
  `,
  part: `
    a new casting has arrived, serial 5501, job 130 / a new base came in, job 131, steel, 20 mm
    new base plate, serial BP4, job 131 / new casing, s/n C77, cast iron / new bit for job 132, bracket-20
    new bits on the bench, 6 of them, job 132 / I have received a new part, cover-7
    I have a new part here, rotor-8, serial 8812 / we have a new casting, pump base, job 133
    we have got two more housings, job 134 / have taken in a new impeller, s/n 5520
    have put a new part on the bench, base-3, stainless / has arrived: gearbox cover, job 135, aluminium
    a customer brought in a base, serial 7781 / the customer's man left a casing, job 136
    the farmer dropped off a pump body, cast iron / the marina sent a propeller, bronze, s/n M20
    the mill sent six rollers' end caps, job 137 / the quarry brought a chute plate, steel 12 mm
    the council's railings are here, 14 pieces, job 138 / school gates came in, job 139, mild steel
    the ferry's hatch arrived, job 140 / brewery sent another manway, serial 3320
    the chemical plant sent us an agitator, job 141, 316 / power station valve came, s/n PS9, job 142
    off the truck: two casings, job 143 / off the lorry, one base, 1.2 m2 / off the pallet, five brackets, job 144
    unloaded a pump base, 25 mm, iron / unloaded the new castings, job 145 / unpacked a new nozzle, serial N88
    unpacked four covers, aluminium, job 146 / craned in a tank lid, 2.4 m2 / forked in a pallet of bases, job 147
    carried in a new cover, s/n 909 / wheeled in a new rotor, job 148 / set down a new casing on trestle 2
    there is a new part, elbow-12, job 149 / there are three new plates, job 150
    there's a fresh casting on the floor, serial F21 / there's a new base here, job 151
    here is a new part: sleeve-9, steel / here's base-5, job 152, carbon steel, 8 mm
    here are two new covers, job 153 / this is casing-4, s/n 4404 / this one's base-6, 0.8 m2
    this is a new one, hub-3, ductile iron / that's a new casting in, job 154 / that's the new bases in, four of them
    that's a new gate come in / just got a new base in / just in: casing-5, job 155 / just arrived, rotor-9, serial R9
    just came, three elbows, job 156 / just landed, valve-22, s/n 2222 / came in: base-7
    came in just now, two castings, job 157 / come in today, cover-9, alu / arrived today, six bits for job 158
    arrived, hub-4 / got in a new hub, job 159 / got a base in from the customer, s/n 1001
    got another casting, job 160 / got a repeat part, impeller-20, job 161 / took in a casing, serial 6060
    took in two bases for job 162 / taken in: cover-10, stainless 3 mm / booked in base-8, job 163
    booked in casting-2 / book in rotor-10 job 164 / book a new part, base-9 / book this in: casing-6, s/n 606
    register base-10 / register new casting, serial 7070 / registering two hubs, job 165 / add base-11
    add casing-7 job 166 / add a part: cover-11, 0.3 m2 / adding hub-5 / add these bits, job 167, 1 to 6
    log in base-12, job 168 / log new part gate-2 / enter casing-8, serial 808 / entered a new part, base-13
    enter new casting job 169, iron 20 mm / put base-14 in, job 170 / put a new part in the book, cover-12
    put in hub-6, steel, 0.2 m2 / create casing-9 / create base-15, s/n 1515 / start a card for gate-3
    new card: hub-7 / new traveller for cover-13, job 172 / name this base-17 / call it base-18, job 173
    call the new one casing-11 / tag reads casting-3, s/n 3030 / tag on it says job 174, base, steel
    stamp says 8181, hub, cast steel / stamped 4545, pump base / engraved 7272, cover, bronze
    nameplate 6161, gearbox, job 175 / serial 5151 base job 176 / serial no 4141 casing, iron / sn 3131 hub
    s/n 2121, rotor, job 177 / serial number two zero two zero, pump casing / base-19, steel, 15 mm, 0.9 m2, max 120
    casing-12, cast iron, 30 mm, takes 150 / cover-14 alu 4 mm bears 90 / hub-8 bronze good to 100 C
    gate-4 mild steel, 2.1 m2, no heat limit known / base-20 with rubber pads, 70 degrees max
    rotor-11, magnets in it, stands 80 max / casing-13, area 1.4 m2, wall 12 / end cap, quarter inch, 1.5 sq ft
    base, half inch steel, 9 sq ft, to 250 F / two castings for job 178 / four bases, job 179 / a dozen clips, job 180
    five bits, brass, job 181 / pair of gates, job 182 / one more casing, job 183 / another base for job 184
    another dozen bits for job 180 / two further covers, job 185 / three additional hubs, job 186
    spare base, job 187 / customer part came with no papers, call it mystery-1 / no serial on it, base-21, job 188
    unmarked casting, call it cast-9 / part base-22 / part casing-14 job 189 / part hub-9 steel / part gate-5
    part cover-15 s/n 1551 / new part plate-30 / new part gate-6 job 190 / new prat base-23 / new pat casing-15
    part bas-24 in / nwe part hub-10 / new part called bracket thirty job ninety one / part number forty is a new base
    part 41 came in, casing / part 42, pump base, steel / no 43 is a new hub, iron / part don land, base-25
    a new part is here, sir: casing-16 / kindly register casing-17, job 191 / please add hub-11, serial 1111
    please book in two bases, job 192, thank you / could you register cover-16, job 193
    witness plate for job 178, tp-9 / new coupon c-12, steel 3 mm / test coupon cut, c-13, for job 179
    made a witness panel, w-8, mild steel
  `,
};
