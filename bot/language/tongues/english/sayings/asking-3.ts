// How English speakers say it: asking. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/weigher.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfAsking3: Sayings<SaidMeaning> = {
  asking: `
    can I use white spirit / does water clean it / how do we flush by the sheet / how do I clean the gear
    in which order do I flush / flush sequence? / flushing order pls / how many rinses / how long do I flush
    how soon must the gun be flushed / how long have I got before the gun is scrap, per sheet
    what does the sheet say on cleaning / what does the maker say for clean up / what do we use for washing up
    remind me what we flush with / tell me the flush solvent / don't know what to clean the gun with
  `,
};
