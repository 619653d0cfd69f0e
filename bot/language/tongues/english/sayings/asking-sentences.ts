// How English speakers ask in whole sentences, with why they ask. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const englishAskingsInSentences: Sayings<AskedMeaning> = {
  'can-i': `
    is it allowed to put panel 3 in the oven already / am I allowed to coat the hub now / is there any reason why I should not coat frame 2 now
    would it be all right to brush the cover now / could the hub go in the oven at this point / do I have to wait or may I touch it now
    is there anything against coating rail 4 / before I carry the frame over, may it go in the oven / may I take the cover out of the oven yet
    would it be too early to put the panel in / is it still all right to use batch 2 / can the mix still be used at this hour
  `,
  'how-long': `
    the customer wants to know when panel 3 will be finished / I would like to know when the hub can come out / when will frame 4 be done so that I can plan
    it is nearly noon, how long does batch 2 still last / how many minutes do I still have with batch 3 / how much longer can we work with the second batch before it goes off
    when does the cover come out of the oven / how long may the can stand open before it needs gas again / how long has the lid been off the can
    which of the two comes out of the oven first / which one of them is finished first / when is the hour of panel 6 over / is there still time to coat the hub from batch 2
  `,
  'who-did': `
    who was it that mixed batch 3 and at what time / who measured the temperature of the panel / who put the coat on frame 6, I need the name for the paper
    who opened the can this morning / which of us brushed the hub / by whom was the cover coated / whose reading was that on panel 3 / who has wiped the frames
    when was batch 2 mixed / at what time was the panel coated / when did somebody last measure the air / has the surface of the hub been prepared already
    has anybody wiped the frames yet / has somebody checked the air this morning / was the cover degreased before it was coated
  `,
  'where-is': `
    where can I find panel 6, it is not on the rack / which parts are in the oven at the moment / is the hub still in the oven or has somebody taken it out
    where has the cover gone / in which place is frame 2 / tell me which parts have been released / which of the parts are still on hold
  `,
  'how-hot': `
    what was the air like when it was last measured / what is the humidity in the shop at the moment / what did the last reading of panel 3 say
    how hot was the hub the last time that somebody checked / how high is the dew point today / what was the temperature of the cover at the last check
  `,
  'to-do': `
    what is the next thing I should do with panel 3 / what should I be doing next, I have nothing to do / which part should I do next / what comes next for the hub
    what has to be done with frame 4 now / what do you want me to do with the cover / what are we supposed to do next / where do I go on now that the brush is clean
  `,
  'how-much': `
    what is left in the can so that I know whether to order more / how much is left in batch 2 / how much mix do we still have / how many grams are left in the pot
  `,
  ratio: `
    if I make a batch of one kilo how many grams of each part go in / how many grams of each do I need for 900 grams / how much of each part goes into 2 kilos
    how much of part A do I have to weigh out for a 3 pound batch / how many pounds of part B do I need if I mix 4 pounds / what do I weigh in of each for 1.5 kilos
  `,
  trace: `
    which batch went on panel 3 because the customer is asking / what was the lot number of the part A on the hub / what exactly has gone on frame 6
    which lots are on the cover, I am filling in the traveller / what was put on panel 2 and when
  `,
  day: `
    what happened on the night shift, I have only just arrived / what has been done in the meantime / I was away for an hour, what has been done since
    what has the crew done so far today / please tell me what has happened this morning / what did we get done today
  `,
  why: `
    why does it have to be stirred for that long / why do we have to wait until 10:20 with the panel / why does the oven have to be at 85 degrees
    nobody has told me why the film has to be dry first / what is the reason that it must stay in for a whole hour / why will you not let me coat from batch 3
  `,
  'what-is': `
    what does pot life mean please / what do you mean by flash-off / I do not know what induction means / could you explain what a recoat window is
    what is meant by the headspace / somebody said dew point, what is that
  `,
};
