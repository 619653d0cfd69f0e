// All of them: what words speak for is weighed by these.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { AskedMeaning, SaidMeaning } from '../../sayings-typed.ts';
import { englishSayingsOfAsking1 } from './asking-1.ts';
import { englishSayingsOfAsking2 } from './asking-2.ts';
import { englishSayingsOfAsking3 } from './asking-3.ts';
import { englishSayingsOfAsking4 } from './asking-4.ts';
import { englishSayingsOfBooth } from './booth.ts';
import { englishSayingsOfCans } from './cans.ts';
import { englishSayingsOfChecks } from './checks.ts';
import { englishSayingsOfCoats } from './coats.ts';
import { englishSayingsOfCure } from './cure.ts';
import { englishSayingsOfNothing } from './nothing.ts';
import { englishSayingsOfPots } from './pots.ts';
import { englishSayingsOfPots2 } from './pots-2.ts';
import { englishSayingsOfPots3 } from './pots-3.ts';
import { englishSayingsOfPots4 } from './pots-4.ts';
import { englishSayingsOfPrep } from './prep.ts';
import { englishSayingsOfRequests } from './requests.ts';

export const englishSayings: readonly Sayings<SaidMeaning>[] = [
  englishSayingsOfPots2,
  englishSayingsOfPots3,
  englishSayingsOfPots4,
  englishSayingsOfPots,
  englishSayingsOfCans,
  englishSayingsOfCoats,
  englishSayingsOfCure,
  englishSayingsOfChecks,
  englishSayingsOfPrep,
  englishSayingsOfBooth,
  englishSayingsOfRequests,
  englishSayingsOfNothing,
];

/** Of questions, by what they ask. */
export const englishAskings: readonly Sayings<AskedMeaning>[] = [
  englishSayingsOfAsking1,
  englishSayingsOfAsking2,
  englishSayingsOfAsking3,
  englishSayingsOfAsking4,
];
