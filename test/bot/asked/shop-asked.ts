// The shop of which the questions of the corpus are asked, at 10:52 of an invented Monday: a pot in use and one to be weighed, a
// part in the oven, one wet, one that waits, a spray session that is briefed.

import { onTestFinished } from 'vitest';
import type { CrewFile } from '../../../core/crew/crew.ts';
import { sessionTalk, sprayCrew } from '../cards/session-talk.ts';

const morning = [
  'set emergency call 112',
  'set booth booth 4m2',
  'air 24C 48%',
  'mix 1.8kg',
  'mix 900g',
  'open A lot 5512 5kg exp 2026-12 gas',
  'open B lot 6643 5kg exp 2026-12 gas',
  'prestir 3',
  'wait 2m',
  'weigh 1 901g 899g',
  'blanket 3',
  ...[1, 2, 7, 8, 9].map((n) => `part flange-${n} serial 90${n} job 31 steel 10mm 0.3m2 max 120C`),
  'part gear-cover-12 serial 912 job 33 steel 8mm 0.4m2 max 120C',
  'wait 102m',
  'filter 1',
  'coat flange-9 1 brush',
  'wait 15m',
  'dry flange-9',
  'cure flange-9 oven 90C',
  'wait 8m',
  'temp flange-9 91C',
  'air 23C 50%',
  'wait 40m',
  '@kari: coat flange-8 1 brush',
  'brief 1 in booth spray kari out lia outside omar',
  'wait until 10:52',
];

/** As omar, in this language. */
export async function shopAsked(language: 'en' | 'es') {
  const people = sprayCrew.people.map((person) => (person.name === 'omar' ? { ...person, language } : person));
  const crewFile: CrewFile = { ...sprayCrew, people };
  const talk = sessionTalk(':memory:', crewFile);
  onTestFinished(talk.close);
  for (const line of morning) await talk.say(line);
  return talk;
}
