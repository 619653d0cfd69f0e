// The lines of questions about how things stand, in English: what a question in words comes to, and what its taps say.

import { verbWords } from '../typed.ts';
import { englishPracticeVerbs } from './practice.ts';

export const englishAskedVerbs = {
  'what-is': verbWords(
    "define, what is, what's, whats, what does, what are, definition, explain, meaning of, meaning, what-is",
    'what is flash-off',
    'the, a, an, of, mean, means, meant, stand, for, is',
  ),
  why: verbWords(
    'why, how come, where does',
    'why dew point',
    'is, are, was, it, that, this, so, the, at, come, from, do, does, say, you, in, there, of, early, late, long, a, but, and, then, ok, hey',
  ),
  'what-now': verbWords(
    "next-step, what now, now what, next step, next, what next, whats next, what's next",
    'what now',
  ),
  ...englishPracticeVerbs,
  'can-i': verbWords('can-i', 'can-i coat impeller-7'),
  'how-long': verbWords('how-long', 'how-long impeller-7'),
  'who-did': verbWords('who-did', 'who-did impeller-7'),
  'where-is': verbWords('where-is', 'where-is impeller-7'),
  'how-hot': verbWords('how-hot', 'how-hot impeller-7'),
  'how-much': verbWords('how-much', 'how-much batch 1'),
  'to-do': verbWords('to-do', 'to-do impeller-7'),
  'what-late': verbWords('what-late', 'what-late'),
  'went-wrong': verbWords('went-wrong', 'went-wrong'),
  'at-risk': verbWords('at-risk', 'at-risk'),
  'how-stands': verbWords('how-stands', 'how-stands coats impeller-7'),
};
