// `dipped 3 out the pot` says where the coat came from: no part is taken out of the oven by it, nor by any act that names none beside
// another one.

import { expect, it, onTestFinished } from 'vitest';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { sessionTalk, sprayCrew } from '../cards/session-talk.ts';

const spanish = { ...sprayCrew, people: sprayCrew.people.map((person) => ({ ...person, language: 'es' as const })) };
const oneInTheOven = [
  ...['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'part br-1 0.2m2', 'part br-3 0.2m2', 'wait 102m', 'filter 1'],
  ...['coat br-1 1 brush', 'wait 12m', 'dry br-1', 'cure br-1 oven 90C', 'temp br-1 90C', 'wait 70m', 'temp br-1 90C'],
];

it.each([
  ['dipped br 3 out the pot', sprayCrew],
  ['dipped br-3 out the pot 5 min ago', sprayCrew],
  ['brushed br 3 out of the batch', sprayCrew],
  ['dipped br-3, came out at 11:00', sprayCrew],
  ['baño de inmersión a la br 3, salió a las 11', spanish],
])('given br-1 in the oven, when "%s" is said, then br-1 stays in it', async (line, crew) => {
  const talk = sessionTalk(openSqliteStore(':memory:'), crew);
  onTestFinished(talk.close);
  for (const each of oneInTheOven) await talk.say(each);
  await talk.say(line);
  expect((await talk.say('where-is br-1')).text).toMatch(/oven|horno/);
});
