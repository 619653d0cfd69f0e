// How English speakers ask in passing, on a phone. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning } from '../../sayings-typed.ts';

export const englishAskingsSpoken: Sayings<AskedMeaning> = {
  day: `
    give me the day's doings / the day in short please / today's doings on a sheet / bring up all that was done today / the day so far, on a sheet
    list what got done so far / run me through today / the whole of today in short / show me the shift so far
    put today on one page for the boss / what does today look like on paper / sum the day up for me
  `,
  'how-long': `
    how long does panel 3 have to be left alone / how long do I leave frame 2 before handling it / till when should nobody touch the cover
    how long must I keep my hands off panel 3 / when may I go and touch frame 2 / has the hub had its whole cure / has panel 3 had its full hour
    did the cover get its full cure / is the cure of frame 2 complete / is the hub cured all the way / has rail 4 had all of its time
    how long has panel 3 been in the oven / how long has the hub been in there / since when is frame 2 in the oven
  `,
  'can-i': `
    till when may I still touch up panel 3 / how long am I allowed to touch up the cover / can a spot on frame 2 still be fixed
    may I still correct a spot on panel 3 / is it too late to touch up the hub / can I still go over that spot on rail 4
  `,
  'where-is': `
    which parts sit in the oven / what do we have cooking / anything in the oven right now / who is in the oven, which parts
    what are we curing at the moment
  `,
  'to-do': `
    anything left for me today / is there something else I should be doing / what is left for me / am I done for today or is there more
    what is everybody waiting for / what do we wait for now / what are we all waiting for here / got anything else for me / what's my next job
  `,
  lot: `
    lot of can 2 / what lot is can 5 / which lot is in the A can / what does the label of can 5 say for the lot
  `,
  why: `
    where does that figure come from / who says it has to be 90 minutes / how do you get to that time
    what is that based on / where did you get 24 minutes from
  `,
  'how-hot': `
    what humidity have we got in the shop / what's it like in here, humidity wise / how humid is it in the hall
    when was the air last measured and what was it / what was the last reading in here
  `,
  'who-did': `
    who is it that sprays at the moment / who had the brush on panel 3
  `,
};
