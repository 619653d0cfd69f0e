// How English speakers say it in passing, on a phone: half sentences, trade talk, what was done before or after. Invented lines, each as
// somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsSpoken: Sayings<SaidMeaning> = {
  prestir: `
    gave the can a proper stir / gave can 5 a long stir with the paddle / gave it a good stir in the can / went through can 5 with the paddle
    it had settled so I stirred can 5 / can 5 had been sitting, so it got a stir in the can / stirred the can through before anybody poured
    the can had stood since last week and I stirred it in the can / roused can 5 with a stick / no lumps left in can 5 after a good stir
  `,
  blanket: `
    blew some argon in can 5 and capped it / shot some argon into the can n closed it / gave can 5 a squirt of nitrogen and capped it
    bit of argon in can 5, lid back on / argon in, cap on, can 5 / puffed argon into can 5 before capping / can 5 capped with argon inside
    hit can 5 with argon and banged the lid on / blasted a bit of nitrogen over the A can and shut it / gassed the tin and capped it
  `,
  shut: `
    capped can 5 / can 5 is capped / put the cap back on can 5 / can B is closed as well / can 5's closed too / lid's hammered down on can 5
  `,
  temp: `
    frame 3 has crept up to 88 / frame 3 is up at 190 / rail 4 has got up to 91 / the probe on it says 91 / thermocouple on it says 189
    the gauge on panel 2 says 87 / panel 2 shows 92 on the probe / it is up to 85 by the thermocouple
    frame 3 now at 89 / the other frames read 90 too / both the others stand at 92 / rail 4's at 188 by the probe
  `,
  'cure oven': `
    frame 3 is in, oven's on 90 / rail 4's in the oven boss / that's panel 2 in the oven / popped frame 3 in with the others / the oven has it now
    panel 2 went in the oven along with the rest / the oven is set to 90 and rail 4 is in it / frame 3 passed the touch test and is in the oven
  `,
  out: `
    rail 4's out on the bench / panel 2 is out, hot as hell / fished frame 3 out of the oven / frame 3 out, cooling on the trestle
  `,
  dry: `
    finger test on frame 3 was fine / panel 2 passes the glove test / glove test on rail 4 is fine, it's dry / thumb on rail 4 leaves nothing
    no stick on panel 2 any more, it's dry / frame 3 feels dry all over to the glove
  `,
  coat: `
    all three are brushed out of pot 3 / the three frames have had the brush, pot 3 / that's rails 1 to 4 brushed from pot 3
    flow coated the covers from pot 3 / poured pot 3 over the covers
    dipped the rails in batch 3 / frames 1 to 4 brushed, pot 3 / rolled panel 2 out of batch 3 just now / done with panel 2, brush, pot 3
  `,
  'spray on': `
    finger on the trigger, off we go / on the trigger now / the gun is going / started on the first pass with the gun
  `,
  'spray off': `
    off the trigger, done spraying / gun's down, that was the last pass / trigger released, we are done spraying / last pass done, gun hung up
  `,
  'flush brush': `
    rinsed the brush in acetone when I was done / brush washed out with acetone straight away / swilled the brush in acetone / brush has been through acetone
  `,
  empty: `
    pot 3 is finished, I binned the rest / scraped out pot 3, there was nothing left in it / pot 3's done, binned it
  `,
  gel: `
    pot 3 has lumps of jelly in it / the stick stands up in pot 3 / pot 3 turned to rubber
  `,
  thick: `
    it pours thick out of pot 3 / pot 3 pours like honey now / pot 3 drags on the stick / brush drags in pot 3, it's thick
  `,
  stop: `
    stirrer off on 3 / killed the mixer on pot 3 / switched the agitator of batch 3 off
  `,
  filter: `
    through the filter it went / ran it through the mesh into a clean jar / pot 3 has gone through the mesh / strained pot 3 into the second pot
  `,
  weigh: `
    pot 3 took 602 of A and 599 of B / 602 of A went in pot 3 and 599 of B / got 602 in for A and 600 in for B on pot 3 / the scale gave 1.2 kilos of A and the same of B
  `,
  air: `
    shop's at 73 and 50 / wall gauge says 22 and 53
  `,
  mix: `
    we would like 2 kilos made up / I'd like 4 pounds stirred up / let's have two kilos / 3 pounds of mix please
  `,
  received: `
    received 2 kg of A, lot 88 / got 4 cans of A in today / the courier brought six cans of B / 5 kilos of A came in, lot 88, sealed
    we got a delivery, two cans of A lot 88 / new cans arrived, lot 88, not opened yet
  `,
  hold: `
    I am keeping frame 3 back because of sags / panel 2 is not to be shipped, it has runs / rail 4 does not go out, craters / rail 4 goes on hold for orange peel
    I had a look and frame 3 stays here because of dust in it / parking panel 2, fish eyes
  `,
  release: `
    the customer can have panel 2 / frame 3 passed, I sign for it / I am signing frame 3 off / looked it over, panel 2 can go / lift the hold on frame 3, it was only dust
    take frame 3 off hold, the runs were sanded / the hold on panel 2 can come off
  `,
  find: `
    which part has serial 4412 / serial 4412 is which one / whose serial is 4412 / 4412 belongs to which part
  `,
  undo: `
    that last one was wrong, take it out / strike that last line
  `,
  nothing: `
    the yard is at 12 degrees / out in the yard it was 30 / did not get round to it / nobody has done it yet / we will do it after lunch / waiting for somebody to do it / it has to be done first / not before somebody has looked
  `,
};
