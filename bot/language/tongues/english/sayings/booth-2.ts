// How English speakers say it, in further words: air, fan on, fan off, supplied yes and more. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfBooth2: Sayings<SaidMeaning> = {
  air: `
    the air is 22 with 50 percent / I have read 23 and 48 percent / I read the hygrometer, 22 and 51
    have 24, 45 percent humidity / we have 21 and 55 in the shop / has 22 in here, humidity 50
    is 23 in the booth, 47 humid / room is at 22, humidity 50 / room has 21 degrees and 55 percent
    room reads 22 and 50 / room at 23, 48 rh / room at 22, 52 percent / room air is 22 and 50 / room air 23, 47
    room humidity 50, temp 22 / room conditions 22 and 50 / room temp's 22, humidity's 50
    room temperature 22, humidity 48 / room 72 F and 45 percent / shop is at 20, 58 percent / shop has 21 and 55
    shop reads 22, 50 / shop temp 21, humidity 54 / shop humidity 55, 21 / shop floor 20 57 percent
    shop air's 21, humidity 53 / workshop 20 and 56 / workshop's at 21, 54 percent / hall is 19, 60 percent
    bay 2 air 22 and 50 / bay's at 21, 52 rh / booth is 23 and 47 / booth's at 22, 50 percent
    booth at 24 degrees, 44 / booth air 23 47 / booth temp 23, humidity 46 / booth humidity 45, 24 C
    booth conditions 23 47 / spray room 24 and 43 / spray booth's 23 46 percent / mix room 22 and 50
    mixing bench 22, 49 rh / coating room 22 48 / cure room air 23, 45 / store 18 and 60 air / air's 22 and 50
    air's at 23, 48 percent / air is at 22, humidity 50 / air at 21, rh 55 / air reads 22 50 / air taken, 22 and 50
    air measured, 23, 48 percent / air measured at 10:00, 22 51 / air now 22, 50 / air now 24 and 44
    air inside 22, 50 percent / air in here 23, 48 / air in the shop 21 55 / air in the booth 23, 46
    air by the booth 22 50 / air by the oven 26 and 38 / air temperature's 23 with 47 percent / air humidity 50, 22
    air twenty two fifty / air twenty three degrees forty eight percent humidity / air seventy two and forty five
    air 71 F, rh 46 / humidity 50 percent at 22 / humidity reads 51, temp 22 / humidity is 48 at 23
    humidity in the booth 46, 23 C / humidity in here 52, 21 / humidity up, 60 percent now, 21
    humidity's gone up to 62 with 20 / humidity's down to 44, 24 / humidity's fallen, 42 at 23
    humidity's high, 70, and 19 degrees / humidity's low, 30, 22 / humidity steady at 50, air 22
    humidity fifty one, temperature twenty two / humidity about... no exactly 50, 22 / moisture 50 percent, 22
    rh is 50, temp 22 / rh 50 percent, 22 C / rh reads 48 at 23 / rh's at 51, air 22 / rh up to 60, 21 C
    rh down to 44, 23 / relative humidity 50, 22 / relative humidity's 48, 23 C / temp's 22, rh's 50
    temp and humidity 22 50 / temp and rh: 23, 47 / temp in here 22, humidity 50 / temp outside the booth 21, rh 55
    temp has gone up to 25, humidity 42 / temperature in the shop 21, rh 54 / temperature twenty two, humidity fifty
    temperature's dropped to 18, humidity 63 / temperature's risen, 26 and 40 / degrees 22, percent 50
    22 deg, 50 pct / 22 C, rh 50 / 22 with 50 humidity / 22 and 50 on the hygrometer
    22 and a half degrees, 50 percent / 23 and 47 percent on the wall / 23 here and 46 humidity
    21, 55 percent, a bit damp / 24 and dry, 35 percent / 72, 45 percent, nice / 70 F, 50 rh
    75 degrees Fahrenheit and 40 percent / 68 and 58, kinda damp / 81, 62 percent, sticky
    twenty two and fifty in here / twenty one degrees and fifty five percent / twenty three degrees with forty seven
    seventy one degrees, forty eight percent / nineteen and sixty two, cold and damp / hygrometer's on 50, 22
    hygrometer on the wall shows 22 and 51 / hygrometer in the booth, 23 46 / hygro reading 22 50
    meter on the wall 22 and 50 / meter's at 22 50 percent / meter in the booth shows 23, 46 / meter says 22 50
    wall meter 22, 51 / hand meter 22.4 50.2 / pocket meter 22 50 / dew meter says air 22, rh 50
    dew point meter: 22, 50, dew 11 / climate meter 22 50 / weather meter 22 50 / weather station 22 50 percent
    thermo hygro 22 50 / thermometer 22, hygrometer 50 / thermometer's on 22 and humidity 50
    sensor in the shop 22.1 and 50.4 / logger says air 22 50 / whirled the psychrometer, dry 22 wet 15.5
    dry 22 wet 16 / dry bulb 22, wet 15 / wet bulb 15, dry bulb 22 / checked the air, 22 and 50 / checked air, 23 47
    checked the meter, 22 degrees and 51 / checked the hygrometer, 22 50 / check of the air 22 50
    air check, 22 and 50 / air check at ten, 22 51 / air check 23 47, all fine / took air, 22 and 50
    took the readings, 22, humidity 50 / took temp and humidity, 22 50 / took a reading of the air, 22 50
    read the meter, 22 and 50 / read the air at 22 50 / read off the wall, 22 and 51 / reading the air, 22 50
    readings for the room 22 50 / got 22 and 50 / got 22 and 50 percent / got 23 and 47 in here
    getting 22 and 50 on the meter / it's 22 with humidity 50 / it's 23 in the booth, 46 humidity
    it is now 22 and 50 percent in the shop / it is 21 and fairly humid, 60 percent / it's warmed up, 25 and 42
    it's cooled off, 18 and 61 / it's got damp, 20 and 66 / it's dried out, 22 and 35 / bit cold, 17 and 62
    bit warm, 27 and 40 / bit damp, 20 and 65 / bit close today, 26 and 66 / baking in here, 33 and 30 percent
    roasting, 31 degrees, 45 percent / freezing, 12 58 percent / dreich oot there, 17 and 75 in the shop
    baltic in here, 13 an 65 / stinkin hot, 35 and 40 / hot as blazes, 95 F and 50 percent
    harmattan air, 30 and 18 percent / sweaty, 29 and 72 / opened the doors, air's 21 57 / heating's on, 20 and 48
    heating off, 17 and 58 / dehumidifier's on, 22 and 43 / after the rain 19 and 70 / before coating, air 22 50
    before the mix air is 22 50 / start of shift, 19 58 / end of shift air 22 50 / hourly air, 22 51
    four o'clock air 23 47 / second reading 23 48 / second air reading 23, 47 / same as before, 22 and 50
    new reading 22 52 / that's the air at 22 an 50 / that's 22 and 50 in the booth / kindly record air 22 50
    please note 22 and 50 percent / please log the room at 22 and 50 50 / huimdity 50
    heir 22 fifty / hair 22 50 percent / temp 22 hummidity 50
  `,
  'fan on': `
    I have switched the fan on / I have turned on the extraction / we have the extraction running / we put the fan on
    has been switched on, the fan / is running now, the booth fan / fan's turning / fan's humming / fan's roaring
    fan's been on since 9 / fan now on / fan on high / fan on speed 2 / fan on and pulling / fan back up
    fan restarted / fan running again / fan running since ten past / fan started up / fan put on / fan up to speed
    fan at speed / fan moving air / fan works again, on / fans are going / fans are up / both fans running
    all fans on / exhaust switched on / exhaust going, 100 feet a minute / exhaust pulling 0.5 / extraction is going
    extraction turned on / extraction started at 9:40 / extraction up and running / extraction works, on now
    extraction pulling nicely / extraction on full / extraction on, both booths / we're extracting / blower up, 0.5
    booth fan's going / booth's sucking / booth air moving, 0.5 / booth drawing 0.5 / ventilation running, 0.5 m/s
    vents are on / lev's on / lev started / lev up, 0.5 / hood fan's on, extraction / draught's on / draft is on
    draw is good, fan running / suction running / suction's up / suction started / airflow is 0.5, fan running
    airflow 100 fpm / airflow measured 0.5, fan on / air flow at the face 0.5 / air is being drawn
    air's being pulled / air is flowing through the booth, 0.5 / air's flowing in the booth
    face velocity's 0.5, extraction on / face speed 0.5 m/s / velocity at the face 0.5 / vane meter says 0.5, fan on
    anemometer 0.5 / anemometer at the face 0.48 / smoke test fine, fan pulls / smoke pulls in, extraction on
    tissue sticks to the filters, fan's on / paper strip blows inward, fan on / switched on ventilation
    start the fan, it's on / got the exhaust going / hit the extraction button / kicked on the fan
    cranked up the fan / flipped on the exhaust / pressed the fan button, running
    pushed the green button, extraction's on / powered the fan up / power to the fan is on, running
    reset the breaker, fan's on / breaker reset, extraction running / fuse changed, fan on / new belt on, fan running
    that's the fan oan / that's the booth running / she's pulling air / I don on the fan / fan don on
    the fan is running, sir / kindly note the fan is on / please log extraction on / fan on because we spray next
    fan on for flushing / fan on so the fumes go / fan .5 m/s / fan onn / fan no... on I mean / afn on / exaust on
    fann is on / fan own / the van is on in the booth / fan is on point five meters
  `,
  'fan off': `
    the fan on the spray bench is off / the fan on bay 2 is off / the extractor on the mixing bench is off
    the blower on the wall is off / the fan on the side booth has stopped / the exhaust on the big booth is off
    I have turned off the extraction / we have the extraction off / we put the fan off
    has been switched off, the fan / fan's not turning any more / fan's broken down / fan off again
    fan off, spraying's over / fan off for the night / fan put off / fan stopped by itself / fan went dead
    fan ran down / fan has gone off / both fans stopped / exhaust off at 4 / extraction cut out / ventilation failed
    vents are off / lev tripped / lev's down / fume extraction off / suction died / airflow gone to nothing
    no more airflow, fan stopped / air's stopped in the booth / air isn't moving any more, fan's out
    no more draw, extraction stopped / draught's gone, fan stopped / stopping the fan, done spraying
    hit the fan's off switch / pressed stop on the fan / pulled the plug on the fan / belt snapped, fan stopped
    fan belt broke, fan's off / motor burned out, fan's down / breaker tripped, fan's off / breaker went, fan out
    fuse went, extraction stopped / no power, fan's off / light don go, fan stop / generator quit, fan's out
    lost airflow in the booth / that's the fan aff / I don off the fan / kindly note the fan is off
    please log extraction off / fan off because we're finished / fan off as nobody's spraying / fan of / fan off f
    afn off / fan offf / exaust off
    the booth's fan is off / fan on the booth was off / the fan of the booth is off now
  `,
  'supplied yes': `
    I am on supplied air / I am wearing the air hood / I have my hood on with air / I have connected the breathing air
    have put the air mask on / have the hoods on, air's flowing / we are all wearing air hoods
    we have breathing air on / we both have hoods on / we've got supplied air / has his hood on, air running
    is on supplied air, the sprayer / is on the air line, sprayer / are on breathing air, all three
    supplied air's running / supplied air for all / supplied air for everybody / supplied air y / yes we're on air
    yep on air / on supplied air, me and one more / on airline now / on fed air / on clean air hoods
    on hose and hood / on air, three of us / breathing air to both hoods / breathing set on / breathing sets on, both
    fresh air flowing in the hood / air fed helmet on / air fed visor on / air fed respirators on / airfed on
    air to the masks is on / airline plugged in, mask on / airline respirators on / hoods plugged in, air's on
    hoods are blowing / hooded up, air's on / helmets on with air / mask connected to air / full face supplied air on
    got the airline on / got air in my hood / plugged into breathing air / plugged the masks in, air's on
    clipped the air hose on, hood's flowing / coupled up to the air / compressor's on, hoods fed
    pump's running, air to the masks / bottle air on, mask on / wearing an air fed mask / everybody has a hood on
    everyone in the booth's on air / both wearing hoods / me and Lia on air / sprayer has his hood on / sar worn
    sar connected / scba on / ba on / ba sets on / that's me on air / that's us on supplied air / that's the hoods oan
    I don wear air hood / I don connect air / supplied air dey on / kindly note supplied air in use
    please log supplied air on / suplied air on / supplied aire on / hod on, air on
  `,
  'supplied no': `
    I am off supplied air / I have taken the hood off / I don't have a hood / we have taken the hoods off
    we are not on supplied air / we're not on air / we don't use supplied air / we don't wear air hoods
    we do not have supplied air here / we've no air fed masks / we've got no supplied air
    we only have cartridge masks / we only have filter masks / supplied air's out / supplied air not available
    supplied air not worn / supplied air not in use / no supplied air in this booth
    no supplied air because the compressor's down / no breathing set / no air helmets / no air line for masks / no sar
    no scba here / no ba here / not wearing an air hood / not hooked up to air / not connected to breathing air
    not using breathing air / nobody wears a hood / none of us on supplied air / neither of us has supplied air
    just a dust mask / just organic vapour cartridges / half face only / wearing half masks only
    wearing only a respirator / hood came off / hoods are off / airline disconnected / airline unplugged
    air line burst / breathing air lost / fresh air fan's broken / air to the masks is off / hood air stopped
    compressor tripped, no air in the hoods / pump's off, no air to the masks / took off my air mask
    pulled my hood off / unhooked from supplied air / disconnected from breathing air / come off the air
    that's me off air / that's the hoods aff / I no get supplied air / kindly note no supplied air
    please log supplied air no / suplied air off / no hod
  `,
  'spray on': `
    I have begun to spray / I am spraying now / I am in the booth and spraying / we have started spraying base
    we are shooting the castings now / we started the spray / has started spraying, Lia / is at it with the gun
    spraying is under way / spraying started just now / spraying since 9:45 / spraying since ten past
    spraying in progress / spraying away / spraying casing now / spray is going / spray running, base
    spray session begun / spray session started 9:45 / session on, spraying / started spraying just now
    started shooting base / started gunning / started on the castings with the gun / starting to shoot
    starting with the spray gun, now / began shooting / beginning to spray now / commenced spraying base
    spraying commenced / kicked off shooting / first pass on base / first pass is on now / first stroke of the gun
    first casting's under the gun / first one under the gun / gun is firing / gun's firing / gun's in action
    gun's blazing, keep out / gun hot / gun in hand, spraying / gun on, batch 2 / trigger down
    pulled the trigger at 9:45 / squeezing the trigger / shooting paint now / hvlp running / hvlp on, spraying
    airless running, spraying / pump's on, gun spraying / mist's flying / mist in the booth now / mist is up, stay out
    fog's up, spraying / paint's flying / overspray in the air, spraying / booth is live, spraying
    booth's hot, gun on / inside spraying / gone in, spraying / went in and started spraying / we're at it, spraying
    we're live, gun on / we're off, gun's running / we're gunning / lia's spraying / lead's spraying
    sprayers are at it / the lads are spraying / she's spraying / he's on the gun now / keep clear, spraying
    stay out, gun's on / everybody out, spraying started / clear the booth, spraying now / heads up, spraying
    that's us spraying / that's me sprayin / that's the gun oan / I don start to spray / spraying don start
    kindly note spraying started / please log spray start / spry on / spray onn / spryaing now / spray own
    spraying know base
  `,
  'spray off': `
    I have stopped spraying / I am done spraying / I am out of the booth, gun down / we have finished spraying base
    we have stopped the gun / we are finished spraying / has finished spraying, Lia / is finished with the gun
    is out of the booth, done spraying / spraying is complete / spraying completed at 10:20
    spraying finished just now / spraying ended, base / spraying stopped at 10:20 / spray session ended, gun down
    done spraying the castings / done shooting base / done gunning / done in the booth, gun down
    finished in the booth, gun off / stopped gunning / quit spraying / quit shooting / through spraying
    through with spraying / wrapped up shooting / called it on the spraying / ended spraying at 10:20
    end of the gun work / last pass on base done / last pass finished, gun off / last stroke done, gun down
    last one sprayed, gun down / last casting sprayed, gun down / gun's out of action / gun's quiet
    gun's been put down / gun's back on the hook / gun is down now / gun racked / gun away / gun parked
    gun on its hook / gun on the stand / gun laid down / gun closed off / guns hung up / both guns down
    set the gun down / dropped the gun on the hook / let go of the trigger / released the trigger
    shut the air to the gun, spraying's over / switched off the spray / pump off, gun down
    airless off, spraying's done / hvlp off / hvlp's down, finished / no more spraying today, gun's down
    no more shooting / not spraying any more / no longer spraying / mist is clearing, gun off
    mist's gone, spraying's over / booth's quiet, gun down / booth's clearing, spraying done
    come out of the booth, finished spraying / stepped out, gun's down / we're out, spraying's over
    we're finished, gun's down / we've stopped spraying / all done with the gun / all shot, gun down
    everything's sprayed, gun down / lia's done spraying / sprayer's out, gun down / he's finished spraying
    she's done spraying / lads are done spraying / that's us finished spraying / that's me done sprayin
    that's the gun doon / that's the last pass, gun down / I don finish spraying / spraying don finish
    kindly note spraying finished / please log spray end / spraying fnished / done sprying
  `,
  'flush gun': `
    I have cleaned the gun / I have rinsed the gun with acetone / have washed the gun out
    we have flushed the gun and the hose / we cleaned both guns / has been flushed, the gun / has been cleaned, gun
    gun is rinsed / gun is cleaned and oiled / gun's been washed / gun flushed, base done / gun flushed at 10:30
    gun flushed and hung / gun flushed and put away / gun flushed straight after / gun cleaned at 10:30
    gun cleaned and greased / gun cleaned, hose too / gun clean and away / gun clean, acetone then alcohol
    gun rinsed twice / gun washed with thinner / gun washed at 10:30 / gun wash complete / gun cleaning finished
    gun clean up done / gun flush over / gun washer's done with it / gun's in the washer, done
    gun blown through with acetone / gun runs clear / gun spits clean solvent / gun sprays clear now / gun's spotless
    gun's sparkling ✨ / gun and lines flushed / gun, cup, lid, all washed / guns are clean / both guns washed
    two guns flushed / small gun flushed / big gun flushed / touch up gun flushed / detail gun cleaned
    hvlp washed out / hvlp rinsed with ipa / airless flushed / airless pump and gun flushed
    pressure pot and gun flushed / pot, hose and gun flushed / spray kit flushed / spray kit washed
    spray gear flushed / spray gear cleaned / flushed the gun, base done / cleaned the nozzle and needle
    cleaned the air cap and the needle / cleaned the tip and the gun / cleaning the hvlp now
    rinsed the cup and the gun / washed up the gun / ran alcohol through the gun / ran thinner through the gun
    ran clean solvent through till clear / ran two cups through the gun / ran ipa through last, gun's clean
    put a cup of acetone through the gun / put the gun through the wash / pumped solvent through the hose and gun
    pushed ipa through the gun / shot a cup of ipa through it / shot ipa through the gun last
    sprayed solvent through it, clear / sprayed a cup of thinner through, gun's clean
    squirted acetone through the gun / blew acetone through / backflushed gun / stripped the gun and washed it
    took the gun apart and cleaned it / took the gun to bits, washed / pulled the gun down and cleaned it
    broke the gun down, clean / soaked the nozzle, gun flushed / needle and nozzle washed / gave the gun two rinses
    gave the guns a flush / gave the hvlp a rinse / did the gun, acetone and ipa
    acetone through, then ipa, gun's done / acetone, ipa, gun flushed / ipa last through the gun, done
    that's the gun washed oot / that's both guns done / she's flushed, the gun / I don wash the gun / I don flush gun
    gun don clean / kindly note gun flushed / please log gun flush / gun flushed so it won't block
    flushed the gun before lunch / flushed it before it gels in the hose / gun flsuhed / flushed teh gun / gun wahsed
    flush the gone, done / gone flushed
  `,
  'flush brush': `
    I have washed the brushes / I have rinsed the brush in acetone / we have cleaned all the brushes
    brush's been washed / brush has been cleaned / brush has been rinsed / brush cleaned at 10:30
    brush clean and hung up / brush washed and hung / brush rinsed twice / brush rinsed and wrapped
    brush in the cleaning pot / brush into acetone / brush put in solvent / brush dipped in acetone, clean
    brush wash complete / brush clean up done / brushes are done, washed / brushes clean and away
    brushes in the wash pot / brushes soaked and washed / brushes done, acetone then ipa / every brush washed
    three brushes washed / small brush cleaned / big brush washed / flat brush cleaned / chip brush washed
    fox hair brush cleaned / two inch brush washed / one inch brush cleaned / touch up brush washed
    paintbrushes washed out / foam brush cleaned / flushed both brushes / flushed all brushes / washed up the brushes
    swished my brush in ipa / swirled the brush in thinner, clean / swilled the brush out
    sloshed the brushes in acetone / dropped my brush in the solvent / put my brush in the thinner
    put the brushes in to soak / popped the brush in acetone / stuck my brush in the ipa
    stood the brushes in solvent / left the brushes soaking in acetone / worked acetone into the brush
    worked the solvent through the brush / worked ipa through the brushes / squeezed the brush out in acetone
    combed the bristles in ipa / shook the brush out after acetone / ran acetone through the brush
    ran the brushes through ipa / gave the brush a good clean / gave my brush an acetone bath
    gave the bristles a good wash / did the brush, acetone then ipa / bristles are soft and clean
    that's ma brush washed oot / that's the brushes done / I don wash brush / brush don clean
    kindly note brush cleaned / please log brush washed / cleaned the brush so it doesn't go hard
    brush washed before lunch / washed brush straight after coating / brsuh cleaned / bruhs clean / brush wahsed
    rush cleaned in acetone / blush washed out
  `,
};
