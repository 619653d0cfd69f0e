// How English speakers say it in whole sentences, with who did it and why: pots, cans, coats, cure, checks. Invented lines, each as somebody
// would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsInSentences: Sayings<SaidMeaning> = {
  coat: `
    the covers have been dipped in batch 2 / all four covers were dipped in pot 3 / the frame was dipped in batch 4 this morning
    the elbows have had their dip in batch 2 / both rotors were flow coated from batch 3 / the plates have been brushed from batch 2
    plate 4 has been rolled out of pot 3 / the shafts were rolled from batch 2 / frame 6 received its coat from batch 3 with the brush
    cover 2 got its coat out of batch 4 with the roller / the hub got its coat from pot 2 by brush / both hubs got the brush out of pot 3
    the frames got the roller out of batch 2 / the panels got the brush from pot 4 / I gave the hub its coat from batch 3 with a brush
    I have given frame 2 a coat out of batch 4 / I have put the coat on the panel with the roller / I have laid the coat on rail 3 from batch 2
    I used the brush and batch 2 on cover 5 / I used the roller for frames 1 to 3 and took it from batch 4 / we used batch 3 and a brush for the hub
    we have applied the coat to panel 4 with the brush / a coat of batch 3 has gone on rail 6 / the coat is on rail 7 now, it came out of batch 2
    I am done with rail 4, it was brushed from batch 3 / the first three frames are done, by roller from batch 2 / rail 5 is coated, I took pot 3
    with the brush and from pot 2 I have done the hub / out of batch 4 I have rolled the covers / I finished coating panel 2 with the roller
    we finished frames 4 to 6 with the brush from batch 2 / the last two plates have been brushed now, batch 3 was enough for them
    every one of the bare frames has its coat from batch 2 / I did the whole of job 61 with the roller from pot 3
    I have sprayed the two covers from batch 4 / the housing has been given its coat by brush / we managed to coat all the rails out of batch 2
`,
  dry: `
    my glove came away clean from it / my glove came away clean / my finger came away clean / nothing came off on my glove
    I pressed my thumb on it and it left no mark / I touched it in two places and it does not stick / it no longer sticks to the glove
    panel 3 no longer sticks / the film on panel 3 has stopped sticking / it has stopped sticking / it stopped being tacky
    I tested frame 2 with a finger and it is dry / I have touched cover 4 and it is dry / I checked rail 6 and it is dry to the touch
    the film is dry to the touch on cover 2 / we can touch panel 4 without leaving a mark / it is dry at last / the coat on the hub has dried
    it feels dry all over / it is dry on both sides / it has flashed off and does not stick / you can touch it now without a print
    the frame does not stick to my glove any more / yes, it is dry, I tried it with the glove / no print is left when I touch it
`,
  'cure oven': `
    I have moved panel 3 into the oven / the cover has been moved into the oven and the dial says 85 / we have put frame 2 in the oven at 92 degrees
    frame 4 is baking now, the oven stands at 88 / I slid the hub into the oven which is at 91 / panel 5 went into the oven a minute ago
    the oven has cover 2 in it now / into the oven went frame 6 / I set the oven to 92 and put rail 3 in / I am putting panel 7 in the oven at 90
    the rails have gone into the oven because we are behind / I have loaded the oven with frames 1 to 3 / cover 4 sits in the oven at 93 degrees now
    I have shut the oven on panel 2, it is set to 90 / the hub is in the oven as of now / we loaded the two panels and set the oven to 195
    as it was dry I have put it in the oven / since it does not stick I have put it in the oven at 90
`,
  out: `
    I have removed the panel from the oven / we removed both covers from the oven, their hour was over / I took frame 2 out because we needed the room
    I lifted the hub out of the oven / I have lifted rail 4 out / panel 3 came out of the oven five minutes ago / the cover is out of the oven and on the rack
    frame 6 has left the oven / I have fetched the two frames out of the oven / cover 5 had its hour, so I took it out / I cleared the oven, panel 2 is on the bench
    the parts have been taken out of the oven / I pulled rail 8 from the oven since its time was up / it is out of the oven and cooling on the rack
`,
  temp: `
    the thermocouple on panel 3 reads 87 degrees / the probe on the cover shows 92 / frame 2 has reached 89 degrees / the temperature of frame 4 is 90 degrees
    the metal of panel 6 is at 85 now / when I looked, panel 2 was at 86 / I measured 91 degrees on the hub / I got 88 degrees on rail 3 with the probe
    both covers in the oven are at 90 degrees / the display for frame 5 says 191 / cover 4 has come up to 188 degrees / the part itself is at 84
    the reading on panel 7 is 93 degrees / it shows 79 degrees on the part / the metal itself is at 165 so far / rail 6 stands at 90 degrees
    I took the temperature of rail 2, it was 89 degrees / I held the probe to the cover and read 92 / the hub has got as far as 71 degrees
`,
  blanket: `
    I blanketed the can with nitrogen before I closed it / I blanketed can 4 with argon before closing it / the open can of part A has been blanketed
    I flooded the can with argon and closed it / we closed can 5 and flooded it with nitrogen / the headspace of can 2 has been filled with argon
    I filled the headspace with nitrogen / there is argon over can 4 now / the lid is back on can 2 and there is argon under it
    we ran some nitrogen into it and put the lid back / I have put the nitrogen on it / argon is over it now / I gave can 5 its gas and shut the lid
    I put argon over can 2 and closed the lid / the gas has been put over can 4 / I purged the air out of can 2 with argon and sealed it
    can 6 has its gas over it again / can 2 has been gassed and closed / I let argon into can 4 until it was full and closed it
`,
  prestir: `
    I gave the can a good stir before the pour / I gave can 2 a good stir before pouring / can 4 has been stirred for two minutes, it is ready for the pour
    I have stirred the can of part A as the sheet says / part A was stirred in its can before we poured / I stirred up the bottom of can 5 with the paddle
    the can has been stirred from the bottom up / we stirred can 2 for three minutes before weighing
`,
  stir: `
    I have started the stirrer on batch 3 / the stirrer in batch 2 is turning now / I turned the stirrer on in pot 4 after I had weighed it
    the stirrer is running in pot 2 / batch 3 is being stirred now / I switched the stirrer on in batch 2
`,
  weigh: `
    A came out at 601 and B at 598 / for batch 3 I weighed 902 grams of A and 899 of B / I put in 601 grams of A and 600 grams of B
    there are 902 grams of A in it and 898 of B / the scale showed 1502 for A and then 1499 for B / 750 grams of A are in batch 3 and 752 of B
    we weighed batch 2 at 601 grams of A and 599 of B / it came out at 752 grams of A and I added 750 grams of B / 902 of A went into pot 3 and 899 of B
    I weighed 2 pounds of A into it and 1.98 pounds of B / the weights of batch 4 are 1202 and 1198 / into batch 2 went 601 of A and 600 of B
`,
  mix: `
    would you get 1.2 kilos of mix ready for us / would it be possible to have a batch of 1.6 kilos ready / could you please start a batch of 3 kilos for the covers
    we need 4 pounds of mix because the whole rack has to be done / we need a batch of 2.5 kilos for the frames / let us make 1.8 kilos today
    please open a batch of 900 grams, that will do for the hub / make it 3 kilos this time since there are more parts / I would like 2.2 kilos mixed for the tank
    a batch of 3 pounds will cover the panels / 2 kilos should be enough for the rails, please mix it / please have 1.4 kilos mixed, the customer is waiting
    mix 2 kilos, that will be enough for the covers / prepare 5 pounds for us, the whole of job 61 has to be coated
`,
  empty: `
    I poured what was left of batch 3 into the waste drum / the rest of batch 2 has gone into the waste / I have thrown away what was left in pot 4
    we threw batch 2 away because it was past its time / what remained of batch 3 is in the drum / pot 2 is empty, the last of it went on the frames
    batch 4 has been used up on the rails / nothing is left in pot 3, I scraped it out / the rest of the pot was no good any more so I tossed it
`,
  thick: `
    batch 3 has become too thick to use / batch 2 has thickened, I would not put it on anything / the mix in pot 4 has got thick as honey
    pot 2 has begun to thicken / batch 4 pulls strings now / the mix no longer runs off the stick, it is too thick
`,
  'spray off': `
    we are finished with spraying / I have finished spraying and put the gun down / I have put the gun down / the spraying is done for now, the gun is on its hook
    we have stopped spraying because the light is bad
`,
  'flush gun': `
    the gun was rinsed with acetone so that nothing dries in it / the gun has been flushed with acetone / I have rinsed the gun through with acetone and then with alcohol
    I have run acetone through the gun until it came out clear
`,
  'flush brush': `
    the brush has been washed out in acetone / I washed the brush in acetone so that it does not go hard / the brushes have been cleaned in acetone
`,
  'prep wiping': `
    frames 3 through 6 have been wiped with isopropyl / we wiped the covers with acetone as they were dusty / the hub has been wiped down with acetone since it was greasy
    I have wiped all of the bare panels with alcohol / the panels were wiped with a clean rag and acetone
`,
  'prep sanding': `
    I sanded panel 2 because there was a run in it / the cover has been sanded down where it was rough / we have sanded both hubs by hand
`,
  'prep grease-off': `
    all the frames of job 61 were degreased this morning / the hub has been degreased since it was oily / we have degreased the rails and they are dry
`,
  'prep blasting': `
    I sandblasted the housing to sa 2.5 because the old paint was loose / the frames have been blasted to sp 10 / the hub was blasted this morning to sa 3
`,
  hold: `
    panel 4 must not leave the shop because it has runs on the edge / the cover must stay here, there are pinholes in it / I am holding frame 2 back because there are bubbles on it
    put the hub on hold since it has rust on the rim / the rail is on hold, somebody dropped it / I do not want panel 6 to go out, it has fisheyes
    keep cover 3 back please, the film is too thin on one side / frame 5 has to wait, there are runs down the back / we have to keep the hub here because it was scratched
`,
  release: `
    I have inspected panel 4 and I release it / the cover looks perfect so it can be released / frame 2 may go to the customer, I have looked it over
    I have looked the hub over and it may go out / rail 6 is fine and can leave the shop / I have found nothing wrong with panel 3, release it
`,
  part: `
    the carrier left covers 1 to 6 at the gate, they are of job 61 / a truck has just delivered panels 1 to 12 for job 62 / we took delivery of frames 1 to 4 for job 63 an hour ago
    five hubs came in for job 64 this morning, hub-1 to hub-5 / the customer dropped off rails 1 to 9 for job 65 / the new job is 66 and it consists of shafts 1 to 8
    there is a pallet with covers 1 through 10 at the gate for job 67 / we have six new panels here for job 68 / please book in frames 1 to 4 under job 69
    eight flats have just been delivered for job 70, flat-1 to flat-8 / job 71 has arrived, it is elbows 1 to 5 / a crate with hubs 1 to 3 came for job 72
    they sent us twelve more rails for job 73, rail-1 to rail-12 / these are the parts of job 74: cover 1 to 5
`,
  air: `
    by the dial over the bench it is 71 and the humidity is 54 percent / 22 degrees and 51 percent is what the gauge on the wall says
    we have 23 degrees and a relative humidity of 45 percent in the shop / it is a warm day with 27 degrees and 58 percent by the gauge at the door
    the shop is at 69 degrees and 52 percent, the door was open all night / it is 21 degrees in the room and the hygrometer shows 48 percent
`,
  wet: `
    the wet film on panel 3 is 55 micrometres / I measured a wet film of 60 microns on the cover / the comb shows 50 microns wet on frame 2
    the wet film on the hub came to 2.5 mils which is what we wanted
`,
  surface: `
    the surface of panel 2 is 21 degrees by the infrared gun / I measured 19 degrees on the bare steel of frame 4 / the metal of the hub is at 20 degrees before the coat
`,
  received: `
    the driver brought two cans of part A with lot 5521 / four cans of part B have come in, lot 5530 / a delivery of part A has arrived, three cans of lot 5521
`,
  nothing: `
    we did not put the panel in the oven because it was full / I have not coated the frame because the brush was wet / the hub has not been wiped yet since nobody had time
    I opened the oven and looked but I did not take the cover out / we wanted to brush the panel but there was not enough light / we are not going to mix anything today because it is too damp
    somebody should brush the frame from batch 2 so that we are done before lunch / I am going to check whether the cover is dry because the bell rang
    we would have to mix another batch if the customer sends the rest / after the break I am going to put the hub in the oven / the panel stays where it is because the film still sticks
    I was late this morning because the bus broke down / the coffee machine is broken so I am going to the bakery / my sister is getting married on Saturday
    the panel looks as if it were dry but I would not bet on it / I wanted to put the hub in but the oven was still cold
    it may be that the frame is dry but nobody has touched it / as soon as the film is dry the cover goes in the oven / once the rack is free we will brush the rails
    I do not know whether somebody has wiped the panel / the boss wants us to spray the covers next week / the heater in the break room is out again
`,
};
