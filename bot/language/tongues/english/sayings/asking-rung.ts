// How English speakers ask what a bell was for that has just rung. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfRung: Sayings<AskedMeaning> = {
  'last-ring': `
    why did the bell ring / why did you ring / what was that bell / what was that bell for / what was that beep / what was that noise about
    what did you just ring for / what rang just now / what rang last / which bell was that / which timer just went / which one just rang
    who was that bell for / was that bell for me / was that for 7 or for the pot / what was the last bell / last bell? / the last ring, what was it
    I heard a bell, which one was it / heard it go off but didn't see what / my phone buzzed, what about / phone beeped, what does it want
    something rang, what is it / something just beeped / a bell went while I was out, which one / missed the bell, what did it say
    what did the last bell say / what did the last reminder say / repeat the last bell / say the last bell again / tell me again what rang
    what's all the ringing about / why is it ringing / why does it keep ringing / why did my phone go / what's beeping
    bell just went, why / timer went off, which / ring ring what is it now / why the ding / what did that ding mean
  `,
};
