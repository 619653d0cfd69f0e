// How English speakers say it: air, fan on, fan off, supplied yes, supplied no, spray on, spray off, flush gun, flush brush, flush roller, ack, close. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfBooth: Sayings<SaidMeaning> = {
  air: `
    24 degrees and 50 percent / air 22, rh 45 / air's 23 c, humidity 48 / 21 c 55 % / 22/45 / 72F 40% rh
    air 72, humidity 40 / it's 75 f and 38 percent in the shop / shop's at 19, 62 humidity / shop air 20.5, rh 58
    booth 24 and 44 / booth reads 23.5 c 47 rh / in the booth it's twenty three and fifty percent
    twenty two degrees, forty five percent humidity / air is twenty one, humidity sixty / air temp 18, humidity 71
    air temp twenty four point five rh thirty nine / room's 22, 50 rh / room temp 25 humidity 52
    room is 70 degrees 45 percent / hygrometer says 23 and 49 / hygrometer: 21.4 56 / hygro 22 47
    hygro on the wall reads 24c, 41% / little weather thing says 20 and 65
    weather station in the shop shows 19.8 and 63 / dial says 22, humidity needle's on 50 / meter reads 23 deg, 46 rh
    sling psychrometer gives 21 and 54 / psychro: dry 22 wet 15 / dry bulb 24 wet bulb 17 / took air readings, 23 and 51
    took the air, 22 c and 48 % / took the weather at 8:15, 17 and 68 / air check: 21, 57 / air check done 24 40
    climate reading 20 c 60 percent / conditions: 23 c, 45% rh / conditions this morning 16 and 72 / ambient 22, rh 50
    ambient 71f, 44% / ambient's twenty three, rh forty four / temp 24 hum 50 / t 22 rh 47 / temp's 21 and humidity's 59
    23 deg c, 52 rh, 9:40 / at 10:00 air was 22 and 49 / ten past two, 26 and 38 / air just now 25.1, 42 percent
    just read 22.3 and 51 off the wall / just checked, 23 and 50 in here / got 24 degrees 46 humidity
    got 73 and 41 percent in the booth / i get 21 and 55 on the meter / reading 22 with 53 rh
    reads 68 f, fifty five percent / it's 23 in here with 47 humidity / it's 30 and 70 in here, sweating like mad
    it's a sticky one, 29 c and 74% / muggy, 27 and 78 / bit muggy: 26 deg, rh 69 / damp today, 18 and 80
    dry as hell, 22 and 21 percent / dry air today, humidity 25, temp 21 / cold in here, 14 and 60
    freezing my bits off, 11 c, 66 rh / toasty, 28 degrees and 45 percent / hot one, 88f and 60% rh
    lovely day, 22 and 45 / perfect conditions, 23 and 50 👌 / humidity 55, temp 21 / humidity's up to 68, air 20
    humidity's come down to 48 with 23 deg / humidity dropped, 40 now, 24 c / humidity climbing, 64 at 22 degrees
    humidity sixty one percent temperature nineteen / rh 47, 22.5 / rh 52 at 23 / rh's 58, air temp 20
    50 percent rh and 24 degrees / 45 rh, 72 degrees / 60% at 19c / 48% humidity, twenty two outta the booth meter
    it has warmed up, 25 and 44 / warmed up to 24, rh down to 43 / weather turned, 19 and 75 now
    rain came in, 18 c, 77 % / doors open, air's 20 and 63 / doors shut now, 22 and 51
    heater's on, air is 21, 40 percent / dehumidifier got it to 45 at 22 c / ac on, 71 f and 38
    morning all, 17 degrees, 64 percent / good morning, shop is 18 and 59 / morning readings 19/61
    afternoon reading: 26, 41 / lunch check 24c 46 / after lunch it's 25, rh 43 / end of day air 22 rh 54
    ok finally found the meter, 23 and 48 / ok air's 22, humidity's 50, happy? / btw it's 24 and 55 in the booth
    fyi 21 deg 58 rh / hey, shop's 73 degrees at 42 / boss wants it logged: 22.8 c 49.5 rh / for the log, air 20, rh 60
    log air 23 45 / note 22 c 51% in the spray booth / air: 24 / rh: 50 / humidity is 49 / air temperature is 22
    🌡️ 22 💧 50 / 💧61 🌡19 / air 23.2 dew 11 / 22 c, 50 rh, dew point 11 / tmep 22 hum 48 / humidty 52 air 21
    humitidy 47% temp 23 / air tmp 24c rh 45 / spray room 25 deg, humidity 40 / mixing room's 21 at 46 percent
    flash area 23 and 49 / back bay is 17 and 70 / paint shop: 22 c, 55 percent / air in the curing room 24, humidity 51
    logger's showing 21.7 and 53.2 / logger by the booth, 23 47 / sensor says 22 c 50 rh / thermo 20, hygro 62
    gauge by the door, nineteen and sixty six / phone... no the real meter says 22 and 48
    stand-up meter in the bay, 24.3 deg 44.1 rh / air in the booth is up at 27, 36 humidity
    half past seven, shop 15 c, humidity 73 / seven am air 60 f 70% / noon, 80 degrees, 35 percent
  `,
  'fan on': `
    fan on / fan's on / the fan in the booth is on / the fan in the spray booth is on now / the fan over the bench is running
    the extractor in the booth is on / extraction in booth 2 is on / the fan on the booth is running / extraction on / extraction's running / extraction running at 0.5 m/s
    got the extraction running / kicked the blower on / blower's on / blower going / air is moving
    air's moving in the booth / booth fan running / booth's on / booth is running, 0.45 m/s / turned the fan on
    turned on the extraction / switched the extractor on / extractor on / extractor's going, half a meter a second
    fired up the fan / fired the booth up at 9:40 / started the fan / started the extract, reads 0.6
    starting the fan now / hit the fan switch, she's spinning / fans spinning / both fans on / fan up and running
    vent on / vents are running / ventilation on / ventilation is running at zero point five meters per second
    exhaust on / exhaust fan's going / exhaust running, 100 fpm / spray booth exhaust is on, face velocity 0.5
    face velocity 0.48, fan running / anemometer says 0.52, fan on / measured 0.5 m/s at the booth face, extraction on
    getting 0.55 at the face with the fan running / draft's on / draught is pulling well
    it's pulling, smoke goes right in / smoke tube gets sucked straight in, fan's on / filter's sucking, extraction on
    suction's on / sucking nicely, 0.4 / air flow's on 0.5 / airflow at 110 feet a minute, fan's running
    got air moving through the booth / we've got draw, fan is on / drawing air now
    pulling air, forty five centimetres a second / lev on / lev running / fume extractor's on / flicked the fan on
    flipped the blower switch, humming away / put the fan on / popped the extract on two min ago / powered up the booth
    booth powered up and breathing / fan at full speed / fan running since 8:30 / fan on low then up to full, 0.6 now
    extraction back on / fan's back on after lunch / restarted the extraction / ok finally, the blower's going
    ok fan going, love that noise / btw extraction's on / 💨 on / fan 👍 / fna on / extracton on 0.5ms
    boss, booth fan is running
  `,
  'fan off': `
    fan off / fan's off / extraction off / extraction's stopped / turned the fan off / turned off the extraction
    switched off the extractor / switched the booth off / shut the fan down / shut the blower off
    shut down extraction at 4:10 / blower off / blower's stopped / killed the fan / killed the blower / booth fan off
    booth's off / booth is shut down / exhaust off / exhaust fan stopped / stopped the extraction
    stopped the fan just now / fan has stopped / fan tripped, it's dead / breaker went, extraction's down
    power cut, fan's out / extraction just died / fan packed up / lost the fan / lost extraction!! / air stopped moving
    ventilation off / vent's off / lev off / fans are down / fan's been off since lunch / ok fan off, so quiet / 💨 off
    fna off / turned the booth off, all done / the fan in the booth is off / the fan over the bench is off
    the booth's fan is off now / the extraction in the booth is off / extraction on booth 2 is off / the extractor is off
    fan on the spray booth just stopped / fan in here isn't running / the fan on the back wall is off / the fan is not running
  `,
  'supplied yes': `
    supplied air on / masks on / hoods on / hoods are on, all of us / everyone's on supplied air / everybody on air
    all on air / both on air / we're on air / i'm on air / i'm on supplied air now / air fed masks on / air fed mask on
    airfed hoods on and flowing / air lines connected, hoods on / air line's hooked up / airline masks on all three
    breathing air on / breathing air's connected / breathing air is flowing / breathing air on for both sprayers
    breathing air on since 9:35 / fresh air on / fresh air hoods on / got our hoods on
    got the air hood on, it's blowing / got my air mask on / plugged into the air / plugged in the hoses, masks on
    hooked up to breathing air / hooked in, hood up and running / on the hose, air in the hood is good / mask on, air on
    put the air hoods on / put my supplied air mask on / suited up and on air / suited and hooded, air running
    supplied air: yes / supplied air yes, two people / yes to supplied air / sar on / sars on, both of us
    full face on with supplied air / me and the kid are both on the breathing line / pump's on, hoods are getting air
    whole crew is masked up on the air line / ok finally, hood on, air flowing / hoods on 👍
    masks up, breathing air at 9:40 / supplyed air on
  `,
  'supplied no': `
    no supplied air / supplied air no / supplied air: none / no air fed masks / no hoods
    no hoods today, just cartridges / cartridges only / just half masks, no air line
    half masks with cartridges, no breathing air / only got filter masks / we're without supplied air
    without breathing air here / breathing air's off / breathing air is down / breathing air compressor's broken
    compressor for the hoods is dead / air line is out of order / hoods off / masks off / took the air hoods off
    off air now / i'm off the air / unplugged from the breathing air / nobody's on supplied air
    we don't have breathing air / haven't got the air hoods on / no fresh air hoods in this shop
    no breathing air, respirator only / sorry no supplied air, hose split
  `,
  'spray on': `
    spraying / spraying now / spraying started / started spraying / started spraying 7 / spray on / spray's on
    spraying has begun / began spraying at 9:40 / spraying the housing from now / gun's up / gun's live / gun is on
    gun on, pot 2 / trigger pulled / on the trigger / on the gun now / pulling the trigger, pot 1 / we're spraying
    we are spraying, stay out / i'm spraying / i'm in the booth spraying / in the booth, gun running
    in and spraying valve 2 / spray session started / spray session begins, batch 2 / spray started ten past two
    start of spraying, 3 4 5 / start spraying now / starting to spray impeller-3 / starting the gun
    starting with the gun, pot 3 / going in, spraying / here we go, gun's spitting / off we go, gun is running
    ok finally spraying / first pass going on / first part under the gun / kicked off spraying
    kicked off the spray on the brackets / gun's running / the gun's going / he's spraying / the lead is spraying now
    lads have started spraying / sprayer's at it / laying on with the gun, just started / shooting now
    shooting batch 1 / started shooting the plates / mist in the air, spraying / spray's going, keep clear
    spray going on, everyone out of the booth / sparying now / 🔫 on / spraying 🎨
  `,
  'spray off': `
    done spraying / finished spraying / spraying done / spraying finished / spraying over / spraying's over, gun down
    gun down / gun's down / gun off / guns are down / gun is hung up / hung the gun up / put the gun down
    put down the gun at 10:20 / gun's on the hook / laid the gun down, all sprayed / off the trigger / off the gun
    trigger released, finished / spray off / spray's off / spray stopped / stopped spraying / stopped spraying just now
    stopped the gun / spraying ended / spraying ended 2:35 / spraying has stopped / end of spraying
    end of spray, batch 2 / that's the spraying done / that's it for the gun / that's all the spraying, pot 1 empty
    last pass done, gun's down / last part shot, gun down / we're done spraying / we've finished spraying
    i'm done with the gun / i'm out of the booth, gun down / out of the booth, spraying's finished
    came out, done spraying / all sprayed, gun's down / gun shut off / shut the gun off / shut off the spray
    turned the gun off / wrapped up spraying / wrapped the spray at ten to three / finished up on the gun
    finished shooting / done shooting / no more mist, spraying's over / spray's finished ten minutes ago
    ok finally finished spraying, arms dead / lead has put the gun down / ok gun down, love you all / spaying done
    🔫 down
  `,
  'flush gun': `
    flushed the gun / gun flushed / gun's flushed / gun flushed with acetone / gun flushed acetone then ipa
    ran acetone then alcohol through the gun / ran solvent through the gun / ran ipa thru the gun last
    ran the gun clean / ran a cup of acetone through it, gun's clean / gun's clean / gun is clean / gun cleaned
    cleaned the gun / cleaned the gun and hose / cleaned out the spray gun / cleaned the hvlp at 10:40
    gun and hose flushed / gun, hose and cup flushed / hose flushed too, gun clean / gun rinsed
    rinsed the gun out with acetone / rinsed the gun twice / gun's been rinsed with ipa / washed the gun
    washed out the gun and cup / washed the gun through / gun washed, acetone first / gun wash done
    gun wash finished in the booth / gun purged / purged the gun with solvent / purged the line and the gun
    blew solvent through the gun / blew the gun out with acetone / shot acetone through till it ran clear
    shot clean solvent through the gun, clear / runs clear now, gun flushed / comes out clear, gun done
    squirted ipa through the gun / sprayed clean acetone through the gun / pushed acetone through the gun and lines
    pulled the gun apart and cleaned it / stripped the gun down and cleaned the needle / stripped and washed the gun
    nozzle, needle, cup all cleaned / air cap and needle soaking, gun flushed / tip's clean, gun flushed
    backflushed the gun / flushing the gun now / flushing the gun with acetone / flushing gun, fan's on
    cleaning the gun right now / gun getting its acetone / gave the gun a flush / gave the gun a good rinse
    gun flush done / gun flush complete 2:50 / flush done on the gun, 99 ipa last / spray gun flushed out
    spray gun's been cleaned / hvlp gun flushed / both guns flushed / second gun is flushed as well
    the gun's all cleaned up / got the gun cleaned / got the gun flushed before lunch 🙌
    acetone and alcohol both through the gun / acetone through then isopropyl, gun's done / ok finally the gun's clean
    btw gun was flushed ten minutes ago / gun flushd / gun clean ✨
  `,
  'flush brush': `
    brush cleaned / brushes cleaned / cleaned the brush / cleaned the brushes in acetone / brush is clean
    brush's clean / brushes are clean / brush washed / washed the brush / washed out the brushes
    washed the brush in acetone then ipa / washed both brushes / brush rinsed / rinsed the brush
    rinsed my brush in ipa / rinsed out the brushes in acetone / brush flushed / flushed the brushes
    flushed the brush with acetone / swished the brush in solvent / swirled the brushes in acetone, clean
    worked acetone through the bristles / combed out the brush with ipa / bristles are clean
    bristles rinsed and soft again / brush spun out and clean / spun the brush dry after acetone / brush in the acetone
    brushes in the solvent pot / brush soaking in acetone / dunked the brush in acetone / stuck the brushes in thinner
    brush has been through acetone and alcohol / cleaning the brush now / cleaning brushes / washing brushes at 10:15
    rinsing the brush right now / brush wash done / brush cleaning done / brush cleanup finished
    got the brushes cleaned / got my brush clean just in time / gave the brush a rinse / gave the brushes a good wash
    paint brush washed out / the two brushes are washed / 2 inch brush is cleaned / ok finally brush is clean
    brush claened / brush clean 👍
  `,
  'flush roller': `
    roller cleaned / cleaned the roller / roller's clean / rollers are clean / roller washed / washed the roller
    washed out the rollers / washed the roller in acetone / roller rinsed / rinsed the roller
    rinsed the rollers in ipa / roller flushed / flushed the roller with acetone / roller sleeve washed
    sleeve's cleaned / cleaned the sleeve and the frame / sleeve rinsed in acetone then alcohol
    cleaned the roller and tray / roller and tray washed / tray and roller clean / roller soaking in acetone
    roller's in the solvent / dunked the roller in acetone / ran the roller out in solvent
    rolled it out in acetone, roller clean / spun the roller clean / squeezed the roller out in ipa
    scraped and rinsed the roller / roller cage cleaned / cleaning the roller now / washing rollers
    rinsing the roller right now / roller wash done / roller cleanup finished 3:10 / gave the roller a rinse
    got the rollers cleaned / mini roller's washed out / both rollers washed / ok finally roller's clean
    foam roller cleaned / rollr cleaned
  `,
  ack: `
    read it / read and understood / i've read it / i read the brief / read the brief / read the safety brief
    brief read / brief understood / understood / understood the brief / understood, all of it / got it / got it boss
    got the brief / got it, read it all / understood and agreed / i understand / i understand the brief / acknowledged
    acknowledge / ack / i acknowledge the spray brief / copy / copy that / roger / loud and clear / read 👍
    👍 understood / ok read / ok i've read the safety brief / ok understood, i'm in / yep, read it
    yes read and understood / seen and understood / seen the brief, clear on it / clear on the brief
    all clear to me, read it twice / brief received and understood / read thru it, understood / undrestood
    me too, read it / went through the brief, got it
  `,
  close: `
    close the session / session closed / session's closed / close it / close spraying / closed / closing
    closing the spray session / closing out the session / closing out batch 2 spraying / close out / close the spray
    spray session closed / spray session over / spray session's finished / session over / session finished
    session done / session's done, close it / end session / end the session / ended the session at 3:15
    ending the spray session / that's the session finished / that's a wrap on the session / wrap the session
    wrapped up the session / wrapping it up, close session / finish the session / spraying session closed 10:50
    spraying session complete / spray session complete, everybody out / all out, session closed
    gun flushed, session closed / everyone's out, close it out / shut the session / shut the spray session down
    you can close the session / ok close it, we're done / ok finally, session closed / sesion closed / 🔒 session
  `,
};
