// How English speakers say it: dry, cure oven, cure room, out, temp. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfCure: Sayings<SaidMeaning> = {
  dry: `
    7 is dry / 8 dry to touch / dry to the touch, part 3 / 7 doesn't grab the glove any more
    touched the 8, no mark left / impeller's dry / touch dry on 4 and 5 / both touch dry / bracket-8 tack free
    tack free now / tack's gone off the 6 / no more tack on valve 2 / tack is gone / housing has flashed off / 9 flashed
    flash off done, 3 is dry / flashed off nicely, the whole rack / all flashed and dry / these two are dry
    they're all dry / all dry on the rack 👍 / dry 1 to 6 / 1 2 3 dry / part 12 is dry at 10:05
    valve 2 went dry ten minutes ago / gone dry / the 5 went off, dry to finger / finger dry / finger test ok on 7
    finger comes away clean on the 9 / glove comes off clean from 11 / glove slides right over it, 4 is dry
    knuckle test good on bracket 3 / back of my hand slides on 8 no drag / no drag on the plate any more
    no print on the 6 when i press / pressed a thumb on 10, no print / thumb leaves nothing behind on 13 / poked it, dry
    poked the drip edge on 2, it's hard and dry / touched the coupon, dry / coupon's dry so is the part, 7
    tapped 3 with a finger, nothing came off / nothing sticks to the 4 now / dust wont stick to it now, housing is dry
    cotton ball test passes on 5 / dropped a bit of lint on 14 and blew it right off
    paper doesn't stick to the plate any more / 8 has dried up / 8 dried off nice / dried, part 16
    drying is finished on the elbow / the film on 3 has set / set up to the touch, valve 4 / 6 set to touch
    surface dry on the impeller / skin's dry on the 9 / skinned over and dry to touch, number 2
    it's dried out, the flange / bone dry / bone dry all four / dry as a bone lol, bracket 6
    dry as toast, the two covers / fully dry to the glove, 22 / good and dry, the volute / nice and dry now
    ok finally the 7 dried / finally!! impeller-3 dry to touch / took forever but the housing is dry
    took 18 min, part 5 is touch dry / fifteen minutes in and eight is dry to the touch
    after twelve minutes part four is dry / part seven dry to touch confirmed / confirmed dry: 7, 8, 9 / checked 10, dry
    checked the rack by hand, every one is dry / checked the drips at the bottom edge as well, 11 dry everywhere
    felt the 3, dry / felt both plates with a clean glove, dry / gave the 4 a touch, she's dry
    gave it a poke at 9:52, dry / she's dry boss / she's dry, valve body / he's dry, little bracket
    it has lost its shine... dry to touch, 6 / wet look's gone, finger dry, part 8
    solvent's gone off it, dry to touch, the 15 / solvent smell gone and dry under the finger, part 9
    all the solvent has flashed out of 7 and it's dry / flash over on 12, dry / flashoff complete 4 5 6
    flash off finished at half ten, all touch dry / out of flash, dry, ready for the oven: 3 / 7 dry, can go in the oven
    8 and 9 are dry so they can move / safe to pick up, 5 is dry / i can handle the bracket now, dry
    handled 2 with gloves on, no marks / picked up the clip and it left no prints, dry / dry to handle, pins 1 to 8
    the dipped ones are dry / sprayed ones have all dried off / rolled panels touch dry already, warm in here
    brushed bracket is touch dry / railing sections dry to touch / tank lid's dry top and bottom
    inside of the casing is dry too / vanes are dry on impeller 2 / edges dry, face dry, part 6 good / last one's dry
    last of them just dried, part 19 / rest of the batch 2 parts are dry / everything from pot 1 is touch dry
    pot 2 parts: dry / valve 1 & 3 dry / 7s dry / 8's dry / no 4 dry / #10 dry to touch / dry ✅ 7 / 👍 dry, the 3
    dry on the clock too, part 8 / btw 6 dried / btw the elbow's touch dry since 11 / hey, the small ones are dry
    ok 5 is dry to touch now, love it / yep, dry, the 7 / yes touched it, dry / just touched the 9 and it's dry
    drie to touch 7 / tuch dry on 3 / dry too the touch, bracket 4 / tak free 8
    it's gone off, can't mark it with the glove, housing / doesn't feel sticky any more, part 12
    stickiness gone from plate 3 / not tacky any more, the 2 / stopped being tacky, impeller-1
    no longer wet, 14 touch dry / lost its tack at 2:10, valve 2 / wet's gone, the 5 is dry under my glove
  `,
  'cure oven': `
    7 in the oven / 8 into the oven at 90 / in the oven: 3 4 5 / put the impeller in the oven / popped 6 in the oven
    bracket-8 went in the oven just now / valve 2 is in the oven at 9:40 / loaded the oven, 1 to 6
    oven loaded, parts 7 8 9, 90 C / oven's loaded / oven full, 12 brackets at 90 / both valves in the oven
    these two are in the oven / shoved the housing in at 95 / slid the rack into the oven
    rolled the cart in the oven, all eight parts / rolled the rack in and shut the door / trolley's in the oven
    wheeled the trolley into the oven at quarter past ten / door shut on 4 and 5, oven at 90 / closed the oven on the 9
    oven door closed, 7 inside, 194 f / 9 is baking / baking 3 and 4 at 90 / started the bake on impeller-3
    bake started, plates 1 to 5 / bake is on for valve body / put her in to bake, housing, 90 / stuck 11 in the oven
    stuck the brackets in at 194 / chucked the clips in the oven / threw 5 in at ninety
    bunged the two covers in the oven lol / tossed the coupon in with part 7 / coupon and the 8 in the oven together
    got the 6 in the oven finally / got them all in the oven at last / got the big casting in, took three of us
    got 12 through 15 in at 185F / it's in the oven / they're in, 90 degrees / she's in the oven boss
    impeller's in the box at 90 / into the box, 2 3 and 4 / in the cooker, number 8 😄 / cooking 7 at 90
    cooking the elbows now / started cooking the flanges at two o'clock / roasting 10 and 11 at 90 c
    in the hotbox, bracket 3 / hot box has 5 and 6 in it / hung 4 in the oven / hung the whole row of pins in the oven
    hooks 1-6 moved over into the oven / racked the plates in oven 2 / shelf 2 of the oven, part 14, at 90
    top shelf 7 bottom shelf 8, oven running at 92 / oven 1 has valve 3 now / oven two got the impeller at 10:20
    transferred 3 to the oven / moved the dry ones to the oven / moved 7, 8 into the oven for cure
    took the housing over to the oven and put it in / carried the elbow to the oven, it's in
    placed parts 5 and 9 in oven at 90 degrees / placed in oven 11:05, part 16 / part 12 placed into cure oven
    started oven cure on 4 / oven cure started 7 8 9 / oven cure running on the brackets
    oven cure for batch 2 parts began at 1:15 / cure started in the oven, volute / heat cure on for impeller 1
    heat curing the plates at 90 / curing 5 in the oven / curing valve 2 at 90 c, in since 9
    force curing the railings in the oven at 80 / force cure on 13, oven set to ninety / stoving the covers at 90
    stoved up, 6 brackets in / 20 is in the stove / valve 4 on heat, oven 88 / under heat now, the 3
    hot cure started for 10 / oven set to 90 and 8 is inside / set the oven for 195 f and put the hubs in
    oven at temp, 7 in / oven was at 90 so the 6 went in / preheated the oven and loaded 2 and 3
    oven up to 90, rack loaded / part seven is in the oven at ninety degrees
    put parts three four and five in the oven at ninety / eight went into the oven five minutes ago
    number nine in the oven since ten past two / in at 90: 4, 5, bracket-8 / in oven 7 / oven 8 9 10
    oven in 11:40 parts 1 2 / 8 oven 90 / 7&8 oven / 3-6 oven 194F / oven: valve 2, valve 3, 90 / ovened the clips
    ovened 5 at 9:55 🔥 / 🔥 7 in / into the heat, the two flanges / into the oven goes number 6
    in they go, all ten plates, 90 / and in goes the impeller / last one's gone in the oven / last rack just went in, 90
    whole batch 1 is in the oven / everything from pot 2 put in the oven / all dried ones went in the oven at 3
    put the job 44 stuff in at 90 btw / btw i loaded 15 and 16 in the oven before lunch
    forgot to say, the 4 went in at 10:30 / sorry, tank lid went in the oven 20 min ago / ok housing's in, oven reads 91
    right, valves are in, door's shut, timer please / ok finally dry and in the oven, 9 / put 7 in teh oven
    in the ovne at 90, bracket 2 / ovan loaded 5 6 / pushed the big one in the oven, oven on 100
    squeezed the 12 in next to the 11, 90 deg / fed the oven: plates 1 to 4 / joined the 7 with the 8 in the oven
    added 3 more to the oven, 17 18 19 / dropped bracket 5 into the little oven at 85 / bench oven has the coupon in it
    walk-in oven's loaded with the railings / lads have put the pump body in the oven / the kid put 6 and 7 in at 90
    i put the elbow in the oven myself at noon
  `,
  'cure room': `
    7 curing at room temp / 8 left to cure in the room / 3 left out to cure / left the tank to cure at room temperature
    left valve 2 on the shelf to cure, 24 h / leaving the housing to cure overnight
    leaving these two to cure at ambient / ambient cure on 9 / ambient cure started, plates 1 to 4 / air cure for the 6
    air curing bracket-8 / air cure started 10:15 / room cure 7 / room cure started on 4 and 5
    room temp cure, impeller-3, from 9:40 / room temperature cure for parts ten to twelve / cold cure on the railings
    cold curing 11 / natural cure for the big casting, too big for the oven
    too big for the oven, tank's curing in the room / rubber seals in it so valve 3's curing cold
    plastic bit can't take heat, 5 is curing at room temp / put 13 on the cure rack, room temp
    put the elbow in the clean room to cure / put the flanges away to cure for a day / put 8 in the cure room
    cure room: 7, 8 / in the cure room now, 14 / moved 3 to the curing room
    moved the dry ones to the cure shelf, room temp / cure shelf has the covers
    parked the tank lid in the cure bay for 24 hours / set 16 in the clean bay to cure
    set the plates out to cure on their own / stood the railings against the wall to cure
    hung the pins up to cure at 22 / hung 6 in the dust free room, curing / hanging in the cure room, all ten clips
    sitting at room temp to cure, the 12 / sitting out till tomorrow, 9's curing / curing on the bench, part 4
    curing at 23 c on the rack, valve body / curing overnight at room temp: 7 / curing in the shop, bracket 2
    24 hour cure started for 15 / 24h on the shelf started, both valves
    twenty four hours at room temperature started for part eight / started the 24 on the impeller
    slow cure on the housing, no oven / slow cure began at 3 pm, 17 / no oven for 10, it's curing in the room
    skipping the oven, 5 cures on the rack from now / self curing in the back room, the two hubs
    day cure for 18, started / let 7 cure on its own, room's 22 / covered 3 with a tent and it's curing at room temp
    ok it's in the cure room, night night 😴 / ok finally everything's on the cure rack at room temp
    btw 6 went on the room cure shelf at noon / rom temp cure 8
  `,
  out: `
    7 out of the oven / 8 is out / took 3 out of the oven / took the impeller out / valve 2 came out at 11:10
    bracket-8 came out just now / pulled 4 and 5 from the oven / pulled the rack / pulled the trolley out of the oven
    rack's out / out of the oven: 7 8 9 / out: housing / out 11:40, parts 1 to 6 / oven empty
    oven's empty, all parts out / emptied the oven / unloaded the oven / unloaded 10 thru 14
    oven unloaded, plates cooling / cleared the oven, six brackets out / all out of the oven / they're out
    these two are out / both valves are out / she's out, cooling on the bench / it's out of the oven, cooling
    it's out 👍 / got 9 out / got them out of the oven at half past / got the big casting out, hot as hell
    took em all out / took the coupon out with part 8 / taken out: 12, 13 / removed 7 from oven
    removed parts 3 and 4 at 12:05 / removed the railings from cure / part six removed from the oven
    parts seven and eight came out of the oven ten minutes ago / came out of cure: 5 / 5 came out of cure looking good
    9 is out of cure / out of cure, valve 3 / cure over, 7 out / cure's done and the part's out
    cure finished, took the elbow out / done baking, bracket 2 is out / done cooking, pulled the flanges
    bake finished, plates are on the table / finished in the oven, impeller-1's on the bench
    finished baking and unloaded, hubs / slid the rack back out / rolled the cart out
    wheeled it out, everything cooling / opened up and took the covers out / door open, 6 is out
    dragged the housing out of the box / out of the hotbox, bracket 3 / hoisted the tank lid out of the oven
    lifted 15 out / fished the clips out of the oven / whipped 4 out of the oven at 2:15 / yanked the two plates
    on the cooling rack: 7 / 7 is on the cooling rack now / 8 cooling down, out of the oven
    cooling 10 and 11 on the bench, out 3:05 / set the valve body out to cool / moved from oven to cooling: 16
    last one's out / last rack just came out / ok finally the 9 is out / hour's up, 7 and 8 out / hour is up, pulled it
    bell rang, i took 3 out / timer went, unloaded / you rang so i pulled the impeller / btw 5 came out at noon
    forgot to say, the elbow's been out since 10:30 / sorry, i took the 12 out 20 min ago / oven out 7 8
    7 8 oven out 1:20 / 7&8 out / out 🔥 3 4 / took otu 6 / railings are out of the curing room, 24 hours up
    moved the tank out of the cure room this morning / room cure over on 14, brought it out
    the lads unloaded the oven before lunch
  `,
  temp: `
    77 so far, the wire's on the thick end / it got to 81 so far / 79 so far on the clip / 84 and climbing / up to 76 now
    probe shows 86 / 8's at 91 / both read 90 on the metal / metal's at 88 on 7 / 7 metal 90 / part temp 89
    part 3 reads 91 c / impeller reads 72 / probe on the housing says 90 / probe 84 on valve 2
    probe on bracket-8 is up to 90 / probe's reading ninety / the probe says ninety one on the seven
    thermocouple says 87 / thermocouple on 4 reads 90.5 / tc on 5: 85 / tc 1 at 90, tc 2 at 88 / tc in the hub shows 79
    8 is at 92 on the metal / 9 is up to temp, 90 / 7 hit 90 / 7 just hit ninety / valve 2 reached 90 at 10:12
    valve body's reached temp, 91 / the casting got to 90 / casting only just made it to 90 / casting is sitting at 83
    big one's at 65 still climbing / climbing, 71 on the 6 / climbing slow, metal at 62 / still coming up, housing 58
    coming up nicely, 77 on the impeller / getting there, 84 on the probe / warming up, plate 3 is at 45
    metal at 40 after ten minutes / metal temp 90 / metal temp on 12 is 193 f
    metal temperature eighty eight degrees, part four / metal reads 190F on the 3 / metal's showing 194
    195 on the steel / 190 on the casting, farenheit / steel's at 90 now / steel in there is 86
    measured 90 on bracket 2 / measured the 8 in the oven: 89 / measured both, 90 and 92 / took a reading, 7 is at 90
    took the temp of 5, ninety / took part temp at 11:20, 88 C / read 91 off valve 3 / reading on 9: 90.2
    reading 87 on impeller-3 / reading's 90 on the part / got 90 on the metal / got a 91 off the 6
    got 85 with the probe / got ninety on both plates finally / i get 88 on the flange / i've got 92 on bracket-4
    ok finally 90 on the metal / finally 90 on the big casting!! / finaly hit 90 / ir gun says 89 on 7 / ir says 90
    ir reading on the housing 93 / ir thermometer shows 86 on part 4 / pointed the ir at the 8, 91
    shot the 3 with the temp gun, 84 / laser therm says 90 on valve 1 / contact thermometer 88 on the hub
    surface probe on 10 in the oven gives 90 / magnet thermometer reads 87 on the tank lid
    stuck the probe on 5, it's 90 / stuck a probe on the elbow, eighty one / opened up and probed 7, 90
    quick peek, metal 88, door shut again / checked the 4, it's at 90 degrees / checked metal, 91
    checked temp on 11 and 12: 89 and 90 / part temp check 13: 90 / part temp check at 2:15 shows 92
    temp check, 86 on the slowest one / slowest one reads 90 / coldest spot on the housing is 88
    cold end of the casting at 85 / thick end's at 82, thin end 91 / thickest bit reads 90 now / hub 87, rim 91
    top of the rack 93 bottom 88 / lowest of the lot is 90, bracket 6 / 7 at 90 / 8 @ 91 / 3 = 89 / 6: 90c / valve 2 92
    part 7 90 on metal / 12 on 90 / 90 on 7 / 91 on the 8 / 88 on valve 2 / ninety on the nose, impeller 1
    bang on 90, the 9 / spot on ninety, both covers / dead on 90 👍 / 90.0 on the metal 🎯 / 🌡️ 88 on 4 / 🌡 7 is 91
    5 is up at 94 / 5's running at 96, metal / railing is at 90 in the oven / rails all read 89 or better, lowest 89
    plates are at 91 / the plates read 90, 90 and 92 / both valves at 90 / both at temp, 91 and 90 / these two read 88
    those two show 87 on the metal / the pair's at 90 now / the lot is at 90, checked each
    all six at 90 plus, lowest 90 / they're at ninety two / it's at 90 / it's 88 on the metal / it is up to 86
    she's at 90 / she's up to ninety boss / shes reading 85 / he's at 91 now, the bracket / now at 90
    now showing 83 on part 15 / now 89, was 80 five min ago / up to 90 on the coupon / coupon reads 92 and the part 88
    up to temperature, 8 reads 91 / at temp: 7, 90 c / at temperature, ninety, number eight
    logger says 90 on channel 2, part 5 / logger probe in the 3 has 88 / datalogger shows 91 on the casting
    lead on the 14 shows 79 / wire on valve 4 says 90 / sensor on the pump body 87 / gauge on the part reads 90
    stickon strip turned at 90 on bracket 1 / temp strip on 7 shows 93 / temp label's gone black at 90 on the flange
    crayon melted on the 6, 93c / btw metal's at 88 / btw impeller hit 90 at ten past / fyi 9 reads 90 on the metal
    hey bell the housing is at ninety / sorry gloves. 8 metal 90 / oven says 95 but the metal is 84
    air in the oven 92, part 7 reads 81 / oven display 90, part 88 on the probe / at 10:40 the 3 read 90
    five minutes ago 6 was at 90 on the metal / since 9:55 valve 2 is on 90 / holding 90 on the casting
    holding steady at 91, the 4 / sitting pretty at 90, part 16
  `,
};
