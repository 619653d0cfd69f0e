// All of them: what words speak for is weighed by these.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning, SaidMeaning } from '../../sayings-typed.ts';
import { englishSayingsOfAsking1 } from './asking-1.ts';
import { englishSayingsOfAsking2 } from './asking-2.ts';
import { englishSayingsOfAsking3 } from './asking-3.ts';
import { englishSayingsOfAsking4 } from './asking-4.ts';
import { englishSayingsOfAsking5 } from './asking-5.ts';
import { englishSayingsOfAsking6 } from './asking-6.ts';
import { englishSayingsOfAsking7 } from './asking-7.ts';
import { englishSayingsOfRung } from './asking-rung.ts';
import { englishAskingsInSentences } from './asking-sentences.ts';
import { englishAskingsSpoken } from './asking-spoken.ts';
import { englishSayingsOfBooth } from './booth.ts';
import { englishSayingsOfBooth2 } from './booth-2.ts';
import { englishSayingsOfBooth3 } from './booth-3.ts';
import { englishSayingsOfCans } from './cans.ts';
import { englishSayingsOfCans2 } from './cans-2.ts';
import { englishSayingsOfCans3 } from './cans-3.ts';
import { englishSayingsOfChecks } from './checks.ts';
import { englishSayingsOfChecks2 } from './checks-2.ts';
import { englishSayingsOfCoats } from './coats.ts';
import { englishSayingsOfCoats2 } from './coats-2.ts';
import { englishSayingsOfCure } from './cure.ts';
import { englishSayingsOfCure2 } from './cure-2.ts';
import { englishSayingsOfHolds } from './holds.ts';
import { englishSayingsOfMeasuring } from './measuring.ts';
import { englishSayingsOfNothing } from './nothing.ts';
import { englishSayingsOfNothing2 } from './nothing-2.ts';
import { englishSayingsOfPots } from './pots.ts';
import { englishSayingsOfPots2 } from './pots-2.ts';
import { englishSayingsOfPots3 } from './pots-3.ts';
import { englishSayingsOfPractice } from './practice.ts';
import { englishSayingsOfPrep } from './prep.ts';
import { englishSayingsOfPrep2 } from './prep-2.ts';
import { englishSayingsOfRequests } from './requests.ts';
import { englishSayingsOfRequests2 } from './requests-2.ts';
import { englishSayingsOfRequests3 } from './requests-3.ts';
import { englishSayingsInSentences } from './sentences.ts';
import { englishSayingsSpoken } from './spoken.ts';

export const englishSayings: readonly Sayings<SaidMeaning>[] = [
  englishSayingsOfPots,
  englishSayingsOfPots2,
  englishSayingsOfPots3,
  englishSayingsOfCans,
  englishSayingsOfCans2,
  englishSayingsOfCans3,
  englishSayingsOfCoats,
  englishSayingsOfCoats2,
  englishSayingsOfCure,
  englishSayingsOfCure2,
  englishSayingsOfChecks,
  englishSayingsOfChecks2,
  englishSayingsOfPrep,
  englishSayingsOfPrep2,
  englishSayingsOfBooth,
  englishSayingsOfBooth2,
  englishSayingsOfBooth3,
  englishSayingsOfRequests,
  englishSayingsOfRequests2,
  englishSayingsOfRequests3,
  englishSayingsOfPractice,
  englishSayingsOfHolds,
  englishSayingsOfMeasuring,
  englishSayingsOfNothing,
  englishSayingsOfNothing2,
  englishSayingsInSentences,
  englishSayingsSpoken,
];

/** Of questions, by what they ask. */
export const englishAskings: readonly Sayings<AskedMeaning>[] = [
  englishSayingsOfAsking1,
  englishSayingsOfAsking2,
  englishSayingsOfAsking3,
  englishSayingsOfAsking4,
  englishSayingsOfAsking5,
  englishSayingsOfAsking6,
  englishSayingsOfAsking7,
  englishSayingsOfRung,
  englishAskingsInSentences,
  englishAskingsSpoken,
];
