// All of them: what words speak for is weighed by these.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning, SaidMeaning } from '../../sayings-typed.ts';
import { spanishSayingsOfAsking1 } from './asking-1.ts';
import { spanishSayingsOfAsking2 } from './asking-2.ts';
import { spanishSayingsOfAsking3 } from './asking-3.ts';
import { spanishSayingsOfAsking4 } from './asking-4.ts';
import { spanishSayingsOfAsking5 } from './asking-5.ts';
import { spanishSayingsOfAsking6 } from './asking-6.ts';
import { spanishSayingsOfRung } from './asking-rung.ts';
import { spanishAskingsSpoken } from './asking-spoken.ts';
import { spanishSayingsOfBooth } from './booth.ts';
import { spanishSayingsOfBooth2 } from './booth-2.ts';
import { spanishSayingsOfBooth3 } from './booth-3.ts';
import { spanishSayingsOfCans } from './cans.ts';
import { spanishSayingsOfCans2 } from './cans-2.ts';
import { spanishSayingsOfCans3 } from './cans-3.ts';
import { spanishSayingsOfChecks } from './checks.ts';
import { spanishSayingsOfChecks2 } from './checks-2.ts';
import { spanishSayingsOfCoats } from './coats.ts';
import { spanishSayingsOfCoats2 } from './coats-2.ts';
import { spanishSayingsOfCure } from './cure.ts';
import { spanishSayingsOfCure2 } from './cure-2.ts';
import { spanishSayingsOfCure3 } from './cure-3.ts';
import { spanishSayingsOfHolds } from './holds.ts';
import { spanishSayingsOfMeasuring } from './measuring.ts';
import { spanishSayingsOfNothing } from './nothing.ts';
import { spanishSayingsOfNothing2 } from './nothing-2.ts';
import { spanishSayingsOfNothing3 } from './nothing-3.ts';
import { spanishSayingsOfPots1 } from './pots-1.ts';
import { spanishSayingsOfPots2 } from './pots-2.ts';
import { spanishSayingsOfPots3 } from './pots-3.ts';
import { spanishSayingsOfPots4 } from './pots-4.ts';
import { spanishSayingsOfPots5 } from './pots-5.ts';
import { spanishSayingsOfPractice } from './practice.ts';
import { spanishSayingsOfPrep } from './prep.ts';
import { spanishSayingsOfPrep2 } from './prep-2.ts';
import { spanishSayingsOfRequests } from './requests.ts';
import { spanishSayingsOfRequests2 } from './requests-2.ts';
import { spanishSayingsOfRequests3 } from './requests-3.ts';
import { spanishSayingsSpoken } from './spoken.ts';
import { spanishWholeSentences } from './whole-sentences.ts';

export const spanishSayings: readonly Sayings<SaidMeaning>[] = [
  spanishSayingsOfPots1,
  spanishSayingsOfPots2,
  spanishSayingsOfPots3,
  spanishSayingsOfPots4,
  spanishSayingsOfPots5,
  spanishSayingsOfCans,
  spanishSayingsOfCans2,
  spanishSayingsOfCans3,
  spanishSayingsOfCoats,
  spanishSayingsOfCoats2,
  spanishSayingsOfCure,
  spanishSayingsOfCure2,
  spanishSayingsOfCure3,
  spanishSayingsOfChecks,
  spanishSayingsOfChecks2,
  spanishSayingsOfPrep,
  spanishSayingsOfPrep2,
  spanishSayingsOfBooth,
  spanishSayingsOfBooth2,
  spanishSayingsOfBooth3,
  spanishSayingsOfRequests,
  spanishSayingsOfRequests2,
  spanishSayingsOfRequests3,
  spanishSayingsOfPractice,
  spanishSayingsOfHolds,
  spanishSayingsOfMeasuring,
  spanishSayingsOfNothing,
  spanishSayingsOfNothing2,
  spanishSayingsOfNothing3,
  spanishWholeSentences,
  spanishSayingsSpoken,
];

/** Of questions, by what they ask. */
export const spanishAskings: readonly Sayings<AskedMeaning>[] = [
  spanishSayingsOfAsking1,
  spanishSayingsOfAsking2,
  spanishSayingsOfAsking3,
  spanishSayingsOfAsking4,
  spanishSayingsOfAsking5,
  spanishSayingsOfAsking6,
  spanishSayingsOfRung,
  spanishAskingsSpoken,
];
