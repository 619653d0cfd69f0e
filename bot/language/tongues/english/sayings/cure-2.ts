// How English speakers say it, in further words: dry, cure oven, cure room, out, temp. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfCure2: Sayings<SaidMeaning> = {
  dry: `
    I have touched 7 and it is dry / I have checked it with the glove, dry / have touched 4 and 5, both dry
    we touched the base, dry / has dried, the casing / has dried nicely, 6 / has gone dry, 8 / has flashed, 9
    has flashed off, the base / is dry to the touch, casting / is dry under the finger, 3 / is touch dry now, 5
    are dry, all four / are touch dry, the bits / dry already, 7 / dry at last, the casing / dry now, base
    dry all over, 4 / dry everywhere, tank lid / dry both sides, plate 5 / dry top and bottom, 6
    dry round the edges too, 8 / dry on the face and in the bore, 9 / dry inside as well, casing
    dry when I touch it, 3 / dry when touched, bracket 2 / dry by touch, 7 / dry by finger / dry to my finger, base
    dry to my glove, 4 / dry under the glove, 5 / dry with the back of the hand, 6 / dry to the knuckle, 9
    dry to handle, the castings / dry enough to lift, 7 carried it no marks / dry, no tack, 8 / dry, no print, casing
    dry, no mark, 3 / dry, nothing on the glove / nothing on my finger, base / nothing comes off, 7
    nothing comes off on the glove, 6 / nothing transfers, 8 / no transfer, 9 dry / no transfer to the glove, casing
    no smear, 3 / doesn't smear any more, 5 / does not smear, base / doesn't mark, 7 / does not mark, the cover
    doesn't print, 6 / leaves nothing on the glove, 9 / left no mark on 4 / left no print, casing / left no trace, 8
    glove's clean after touching 7 / glove stays clean, 3 / glove doesn't catch, base / glove lifts off clean, 5
    glove doesn't stick, 6 / glove slides, 9 / finger slides on the casing / finger doesn't stick to 4
    finger leaves no dent, 7 / thumb test fine, dry, 8 / thumb test done, no mark, base / touch test ok, 3
    touch test passed, 5 / touch test good, casing / touched it, no tack, 6 / touched 7, nothing
    touched lightly, dry, 9 / touched the edge of 4, dry / touched the thick bit, dry, base
    touched three spots, all dry, 8 / pressed it, no mark, 3 / pressed lightly, dry, 7 / prodded 5, dry
    poked at the run, dry through, 6 / felt it, dry, casing / felt dry, 9 / feels dry, base
    feels dry to the touch, 4 / feels dry now, 8 / tack gone, 7 / tack's away, casing / tack's all gone, 3
    tackiness gone, 5 / tackiness has gone off the base / no tack at all, 6 / zero tack, 9 / tack free, castings
    tack-free, 4 / free of tack, 8 / not sticky now, 7 / stopped sticking, 3 / doesn't stick any more, base
    isn't sticking to the glove, 5 / isn't wet any more, 6 / not wet any more, casing
    no longer tacky to the finger, 9 / past tacky, dry, 4 / went from tacky to dry, 8
    the shine's dulled and it's dry, 7 / solvent's out of 3, dry / solvent has left, touch dry, base / flashed, 5
    flashed and touch dry, 6 / flashed off, casing / flashed off ok, 9 / flashed off and dry, 4 / flash over, dry, 8
    flash is done, 7 dry / flash-off finished, base dry / flash off complete, 3 / flash time up and it's dry, 5
    bell went and it is dry, 6 / after the bell I touched it, dry, casing / twelve minutes and it's dry, 9
    dry after 14 min, 4 / dry after a quarter of an hour, base / dry since ten past, 8 / dry since 10:05, casing
    went dry at quarter to, 7 / dried at 9:55, 3 / dried five minutes ago, 5 / dried quickly, it's warm in here, 6
    dried slow but it's dry, 9 / dried overnight no, dried in 15, base / dried through on the surface, 4
    dried up nicely, casing / dried off, 8 / dried hard to touch, 7 / drying done, 3 / drying finished, base
    drying over, castings / surface has dried, 5 / surface is dry, 6 / surface dry, casing / skin's dry, 9
    skinned and dry to touch, 4 / film's dry to touch, 8 / film is dry, 7 / coat's dry on the base
    coat is touch dry, 5 / paint's dry, 6 / paint is dry on the casing / clear's dry on 9 / first coat dry, 4
    second coat's dry, 8 / the brush coat's dry, 7 / all of them dry / all touch dry now / all four dry
    all ten bits dry / whole rack dry / whole rail's dry / rack's dry, 1 to 8 / everything's dry on the rack
    everything is touch dry / every one of them dry / each one dry, checked / both dry / both castings dry
    both bases are dry / both sides dry, panel 2 / the pair's dry / these are dry / these three dry
    those are dry now / they are dry to touch / they're touch dry / last one's dry now / last bit's dry
    rest of them dry / the rest is dry too / the other two dry as well / that's 7 dry / that's the casing dry noo
    that's the base touch dry / that's them dry / she's touch dry, casing / he's dry, bracket 2 / it don dry, part 7
    part 7 don dry / the part is now dry, sir / kindly note 7 is dry to touch / please log 7 dry / dry as, mate, base
    dry as dust, 4 / dry as the desert, 5 lol / dry as my jokes and that's dry, 7, touched it
    bloody finally dry, casing / hallelujah base is dry / dry casing 10:05 / bits dry / castings dry / plate 5 dry ok
    dyr 7 / drry 8 / touch dri 3 / try 7 is dry / dry seven / dry part four and part five
    part three dry at ten fifteen
  `,
  'cure oven': `
    the casing is in the oven now / I have put 7 in the oven / I have loaded the oven with the castings
    have put the base in at 90 / we put 4 5 6 in the oven / have loaded 1 to 8 / has gone in the oven, 7
    has been put in the oven, casing / is in the oven now, base / is in the oven since 9:50, 8
    are in the oven, all ten / are in, the castings, 90 / is baking now, 7 / are baking, the bits
    baking the castings / baking base at 90 / baking since ten past, 6 / bake on, 4 5 / bake started, castings
    bake begun, base / bake's started on 7 / bake running on 8, 90 C / began baking 3 / baking begins, casing
    in to bake, 9 / in for its bake, base / in for the hour at 90, casing / in for an hour, 4 / in for cure, 5 at 90
    in at ninety, castings / in the oven from 10:05, 6 / in the oven since quarter past, 7
    in the oven just now, base / in oven, castings 1-4 / in oven 2, casing / in the big oven, tank lid
    in the small oven, bits / in the wee oven, coupon / in the batch oven, 12 bases / in the walk in, gates
    in the walk-in at 90, rails / in the box oven, 4 / in the heat, casing / in the hot box, hub 3
    in the cabinet oven, covers / in the electric oven, 8, 90 C / in the gas oven, castings, 92
    into the oven with the casing / into oven at 9:55, base / into heat, 4 and 5 / into the cure oven, bits 1 to 6
    into the baker, 8 lol / loaded the castings, oven at 90 / loaded up the oven, 5 bits / loaded the big oven
    loaded oven 1 with the covers / loaded and door shut, 90 / oven load in: 4 to 9 / oven's got the castings in
    oven's got 7 in it / oven has the base now / oven holds 1 to 6 now / oven's charged, castings, 90
    oven filled, bits / oven packed, 14 brackets / oven's on with 7 in / oven's shut on the casing
    oven door shut, base inside / door's closed, castings in, 90 / shut the door on 8 / shut the oven on the bits
    closed the oven, 4 5 in / slid 7 in the oven / slid the tray of bits in / slid the castings in at 90
    pushed the trolley in / pushed the rack in the oven / pushed the base into the oven / rolled the bases in
    rolled the rack into oven 2 / wheeled the castings into the oven / wheeled the gates in
    carted the load into the oven / forked the base in the oven / lifted the base into the oven / lifted 8 in
    hoisted the casing into the oven / craned the lid into the oven / carried 7 in, oven at 90 / carried the bits in
    hung the bits in the oven / hung 4 5 6 in the oven / hung the gates in / racked the bits, in the oven
    trayed up the clips, in the oven / stacked the covers in the oven / stuck the castings in the oven
    stuck 9 in at 90 / stuck em in the oven / bunged 7 in the oven / bunged the lot in / chucked the bits in at 90
    chucked her in the oven / shoved the castings in / shoved 4 in the oven at 92 / popped the base in
    popped the bits in at 90 / threw 8 in the oven / tossed the clips in the oven / whacked the base in the oven
    slung the bits in the oven / flung 9 in / set 7 in the oven / set the casing inside, 90
    placed the base in the oven / placed the castings inside the oven / placed in the oven: 5
    moved 7 over to the oven / moved the rack in the oven / moved them into heat / shifted the base into the oven
    transferred castings to oven 1 / took the casting to the oven, in now / took 4 over, in the oven
    brought the rack to the oven, loaded / fed 3 and 4 in the oven / put them in at 90 / put it in at 10:10, base
    put it in the oven / put the lot in / put both in the oven / put the first rack in / put the second load in, 90
    put the castings to bake / put the base to cure at 90 / put the casing on heat / put heat on 7, oven 90
    started the cure, 8, oven / started curing the castings at 90 / started baking the base
    started the oven on 4 5 6 / cure started, oven, castings / cure begun in the oven, 7 / cure on in the oven, base
    oven cure begun, castings / oven cure going, bits / oven curing the base / oven curing 4 at 90
    curing at 90, base / curing in oven 2, 7 / curing hot, 8 / heat curing castings / heat cure begun, 5
    forced cure, base, 80 / force dried in the oven... curing, 6 at 90 / stoving the castings / stoving 7
    stoving at 90, base / stove cure started, casing / oven 90, 7 inside / oven at 194F, castings in
    oven set 90, bits in / oven showing 91, base in / 90 degrees, 7 in / 194 F, casing in
    at ninety in the oven, 8 and 9 / ninety in the big oven, base / first load's in / second load's in the oven
    last load in, 90 / all in, door shut / both in the oven / both bases in / everything's in the oven
    everything dry went in / whole lot in the oven / the pair's in the oven / they are in the oven / they went in
    they went in at 9:50, castings / she's in / she's in the oven, casing / she's baking / that's 7 in the oven
    that's the castings in / that's them in the oven noo / that's her in / I don put am for oven / 7 don enter oven
    part is in the oven, sir / kindly note base is in the oven / please log 7 in the oven at 90
    in the oven because it's dry now, 7 / in since the flash is over, 8 / went in early, oven was free, 4
    oven base 90 / base oven / in ovn 7 / in teh oven base / in the of an 7, ninety
    in the open at 90... oven, part 7 / bits oven 2 / cure base oven 90
  `,
  'cure room': `
    I have left 7 to cure at room temperature / I have put the base on the rack to cure, no heat
    have set 8 aside to air cure / we leave the casing curing at room temp / has been left to cure, casing
    is curing without heat, 7 / is curing by itself, 8 / are air curing, bits / curing on its own, 4
    curing naturally, 5 / curing by air, base / curing unheated, 9 / curing at 21 degrees, base / curing at 70 F, 7
    curing on trestles, tank / curing on the pallet, base / curing on the floor of the clean room, lid
    curing on hooks, bits / curing in the corner under a tent, base / curing in the store room, covers
    curing in bay 3, no oven / curing where it stands, tank / curing in place, gates
    cure without the oven, casing, started / cure by air, 4, started / ambient curing, castings
    ambient cure running, tank / air cure running, castings / air cure going on the gates / air dry cure on 8, 24 h
    natural cure begun, 7 / no heat cure, casing / no bake for 8, curing in the shop
    no oven for the tank, it cures in the room now / no oven for the base, rubber in it, room cure
    can't go in the oven so it's curing at room temp, 4 / won't fit the oven, curing in the bay, tank
    too large for the oven, base cures here / plastic parts, so air cure, 9 / oven's broke, castings cure at room temp
    oven's full so 8 cures in the room / oven's down, room cure on 7 / instead of the oven, shelf cure for 5
    rather than bake, room cure, base / left to stand 24 hours, casing / left it standing to cure, base
    left them overnight to cure, castings / left hanging to cure, bits / left in the room for the 24 hours, 8
    leaving it to cure on the bench, 4 / leaving the castings a full day at 22
    leave base to cure till tomorrow, started now / stood aside to cure, gates
    stood up in the clean room, curing, panels / set out on the rack to cure, 5 / set down to cure in the room, base
    set aside in the cure room, 6 / racked up for the 24 h, bits / shelved for a day, 7, room cure
    parked in the cure area, casing / hung to cure at room temp, clips / laid out to cure, panels
    laid on the table for room cure, 4 / put by to cure, base / moved to the cure rack, 5 and 6
    carried to the cure room, casing / taken to the curing room, castings / wheeled to the cure bay, tank
    24h cure, 7, from 3 pm / 24 hrs begin for 8 / day long cure begun, castings / full day at room temp, 4, from now
    one day on the shelf for base, started / two days in the room for the tank, started
    over the weekend it cures in the room, tank, from now / weekend cure started, gates / slow cure at 20 C, base
    that's the base curing in the room / that's 7 on the cure rack, no heat / she's curing on her own, tank
    she's air curing, casing / I don leave am to cure for room / kindly note base is curing at room temperature
    please log room cure on 7 / aircure 9 / rm temp cure 7 / air cure seven / room cure part four from two pm
    kure in the room, base
  `,
  out: `
    the casing is out of the oven now / I have taken 7 out / I have taken the castings out of the oven
    have pulled the base out / we took 4 5 6 out / has been taken out, base / has come out of the oven, casing
    are out of the oven, all ten / are out on the rack cooling / out at last, casing / out five minutes ago, 8
    out since ten past, castings / out of oven 2, bits / out of the big oven, lid / out of the small oven, coupon
    out of the heat, 7 / out of the hot box, hub / out of the box, base / out of the baker, 8
    out and cooling, castings / out and on the bench, 4 / out on trestles, base / out and hot, casing
    out cooling on the floor, lid / out after an hour at 90, 7 / out after its hour, base
    out because the hour's done, 8 / out since the time's given, 9 / took it out of the oven, base / took the lot out
    took both out / took the first load out / taking 8 out now / taking them out, bits / pulled it from the oven, 7
    pulled them out, castings / pulled the tray out, bits / pulled everything out / pull out done, 4 5 6
    lifted them out, castings / craned the lid out of the oven / forked the base out / carried 7 out, cooling
    wheeled the rack out / rolled the trolley out / rolled it out, base / slid the tray out, bits
    hauled the casing out / hauled em out / heaved the base out / whipped them out / whipped the bits out of the oven
    grabbed the coupon out / fished 4 out / hooked the clips out of the oven / unhooked the bits from the oven
    unhung 5 6, out / unloaded base at 11:15 / unloaded the first rack / unloading done, castings out
    unloading now, bits / unloaded and cooling / oven unloaded, 4 to 9 out / oven's been unloaded
    oven's been emptied / oven emptied, castings on the rack / oven's empty again / oven empty, 7 on the bench
    oven cleared, bits out / oven opened, castings taken out / oven off and 7 out / oven's off, load's out
    oven door open, base out / opened the oven and pulled 8 / opened up, castings out
    got it out, casing, mind it's hot / got the load out / second load's out / last load out
    removed the casting from heat / removed them at 11:05 / removed 8 from the hotbox / retrieved 7 from the oven
    emptied oven 1, covers out / emptied out the oven / came out lovely, 7 / came out a minute ago, 8
    come out of the oven just now, base / just got the casing out / cooling now, 7
    cooling down on the rack, castings / cooling off, base / cooling on the bench, just out, 8
    base is cooling, out at 11 / done in the oven, 7 out / done baking, base out / done curing, castings out
    bake over, out, 4 / bake's done, took them out / baked and out, bits / cure ended, casing out
    hour's over, pulled the base / time's up, took 8 out / bell went, castings out / bell rang, pulled the rack
    you rang, it's out, base / timer's gone, out, 4 5 / end of bake, out / end of cure, castings out
    room cure done, brought the tank out / out of the cure room after 24 h, gates
    took the castings off the cure rack, day's over / all ten bits out / the lot's out / the pair's out / they are out
    they're all out / she's out and hot / he's out, bracket 2 / that's the castings oot / that's them out
    I don comot am from oven / 7 don comot / the part is out, sir / kindly note base is out
    please log 7 out at 11:15 / bloody hot, but out, casing / uot 7 / out part seven / tok out base
    out of the of an, seven
  `,
  temp: `
    the cold corner reads 189 fahrenheit / 185 fahrenheit at the cold end of the hub
    shows 187 fahrenheit on the gate / hub shows 190 fahrenheit on the probe / cold side's at 186 fahrenheit
    the cover shows 193 fahrenheit now / slow cold end, 181 fahrenheit and rising / the part is at 88
    the casting is at 86 now / the casing reads 90 on the metal / I have measured 90 on the base
    I measured 87 on the metal, 7 / have read 91 on the part / have 90 on the casting / we have 89 on the thick end
    has reached 90, base / has come to 90, casing / has got to 88, 7 / is at 90 on the metal, base
    is at 88, casing, in the oven / is up at 91, 4 / are at 90, both castings / are at 89, lowest of the lot
    base at 90 / base at 84 on the probe / base reads 88 / base shows 91 / base metal 90 / base is up to 90
    base has hit 90 / base hit ninety at 10:20 / casing at 86 / casing 90 on the probe / casing reads 89
    casing's at 91 / casing's hit 90 / casing's up to 85 / casting 90 / castings read 90 and 91 / bits are at 92
    bits read 90, checked the biggest / hub's at 88 / hub metal 90 / rim 91, hub 86 / thin end 92, thick end 87
    thick part's at 85 / thick bit 88 / heavy end reads 84 / heavy section at 86 / middle of the casting 85
    core of the casing 82 / bottom of the base 87, top 91 / slowest corner 88 / coldest part of it 86
    coldest point 88, base / the cold corner's at 85 / coolest of the lot is 89 / lowest reading 88, 7
    lowest probe 87 / highest 93, lowest 89 / probe 90 / probe 88 on base / probe on the casing 90
    probe in the bore reads 86 / probe at 91 / probe's at 87 / probe's up to 90 / probe gives 89
    probe shows ninety on the base / probe 1 88, probe 2 90 / probe reading 90, casing / probed it, 88
    probed the base, 90 / probed all, lowest 87 / thermocouple 90 / thermocouple reads 88 on base
    thermocouple on the casing 91 / thermocouple in the hub 85 / tc 88 / tc reads 90 / tc on the base 87 / tc's at 90
    k type on 7 reads 89 / couple says 88 / wire on the base says 90 / wire reads 86 / wire's at 91 on the casing
    lead 2 shows 88 / channel 3 90, base / logger 90 on the part / logger's on 88 / logger reads 91, casing
    chart recorder 90 on the part / recorder shows part at 88 / datalogger 89, base / ir 88 / ir 90 on the base
    ir gun 91 on the casing / ir gives 87 / infrared says 90, 7 / pyrometer 89 / pyrometer on the part reads 90
    laser 88 on the casing / laser gun says 91 on 8 / temp gun 90 on the base / heat gun thermometer, 88, part 4
    pointed it at the casing, 89 / shot the casting, 90 / zapped the base, 88 / contact probe 90, 7
    contact thermometer says 89 on base / surface probe on the hot part 88 / spot probe 90
    magnet thermometer on 7 in the oven 87 / stick thermometer, 88 / strip on the part says 90 / label turned at 88
    temp dot went black, 90 / crayon melts, 93 on the part / part reads 90 / part's at 88 / part's up to 91
    part temp 88 / part temp's 90 / part temperature 89 / part temperature is ninety / part itself 86
    the part itself is at 88 / the metal itself is at 90, in the oven / metal 90 on base / metal is 91 / metal's at 86
    metal temp 88, casing / metal temperature 90 / metal's up to 87 / metal hit 90 / metal got to 90
    steel at 90 in the oven / steel's up to 88 in there / iron's at 86, still climbing / temp on 7 88
    temp on the base 90 / temp of the casing 89 / temp reading 90, 4 / temp reading on base 88 / temp now 87, 7
    temp's 90 on the part / temp is 88 on the casting / temp check 90 / temp check base 88
    temperature on the part 90 / temperature of the base 89 / temperature reading: 88, casing / reading 88 on base
    reading of 91 on the casing / reading now 86 / readings 88 and 90 on the castings / read the casing, 88
    took the reading, base 90 / took temp, 88 / took the temp on the casing, 90 / took a temperature, 7 at 89
    measured part temp 88 / measured the metal, 90 / measured the casing in the oven, 87 / measuring 90 on the base
    checked the part, 88 / checked the base, 90 / checked the metal again, 91 / checked it in the oven, 89
    opened the door, metal's 88 / quick look, base at 86 / peeked in, 90 on the part / looked at the probe, 89
    looked at the tc, 88 / got 88 on the base / got 90 off the probe / got the casing at 89 / got to 90, 7
    got up to 88, base / gone up to 90, casing / gone past 90, 93 now, 8 / went up to 91, 4 / came up to 90, base
    come up to 88 / climbed to 85, casing / climbing, 78 on base / climbing slowly, 70 / climbing still, 66, casing
    creeping up, 82 / rising, 75 on the part / risen to 88 / heating up, 60 on the metal / warming, 55 now, casing
    soaking at 90, base / steady at 90, 7 / steady on 91 / stable at 89 / holding at 90, casing / holds 91, base
    stays at 90 / staying on 88 / still 90 on the part / still at 91, 7 / still only 79 / only 74 yet on the casing
    just 68 so far / up to temp, base 90 / up to heat, casing 91 / at heat, 7 reads 90 / reached temp, 90, base
    reached 90 / reached ninety on the casing / hit temp, 90, 4 / hits 90 now / there at last, 90 on the base
    finally 88, casing / dropped to 86, door was open / fell to 84 when I opened the door, base
    down to 87, someone opened the oven / oven says 92, part 85 / oven air 95, metal 88 / oven at 90 but casing's 80
    set 90, part reads 86 / display 93, probe 88 on the base / 190 F on the casing / 193 on the metal, base / 195 F, 7
    one ninety four on the part / one eighty eight F on the base / 185 and climbing, casing / ninety on the base
    eighty eight on the casing / ninety one on seven / eighty six on the thick end / part four ninety degrees
    base eighty nine degrees C / that's 90 on the base / that's the casing at 88 / that's it at ninety / she's at 88
    she's at 90, casing / she's up to heat, 91 / it dey 90 now / it has reached 90, sir / kindly note 90 on base
    please record 88, casing / temp base 90 / temp casing 89 / tmp 7 90 / tepm base 88 / temp seven ninety / 7 at 88
    7 = 90 metal
  `,
};
