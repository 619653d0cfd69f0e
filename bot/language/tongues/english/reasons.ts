// What the clause begins with that says why: `because the brush shed hairs`, `, as the sheet says`; and what follows from what was said
// before it. Common practice and our own choice, no source.

import type { ReasonWords } from '../typed.ts';

export const englishReasons: ReasonWords = {
  always:
    'because, becuase, becasue, becouse, beacuse, cause, cuz, coz, cos, so that, in order to, given that, seeing that, seeing as, on account of, in case',
  behindMark: 'since, as',
  besides:
    'so, that, which is what, which is how, which is where, which means, which meant, which took, which makes, which leaves, which gives',
  hence: 'so, therefore, which is why, that is why',
  comesFirst: 'is what, is where, are what, was what, is how',
  toldOf: 'what, when i, when we',
  is: 'is, was',
};
