// What is no cry and may be need all the same: `help me`, `ambulance`, `burned my hand`, `call 112`. It calls nobody, since it
// does not say what for; the alarms that may be meant are offered, one tap each. Our own choice, no source.

import type { Alarm } from '../../core/session/session-commands.ts';
import { heard, heardAny } from './cry-words.ts';
import { withoutAccents } from './typed/without-accents.ts';

const offers: readonly (readonly [ReadonlySet<string>, readonly Alarm[]])[] = [
  [heard('smokes'), ['fire', 'hot']],
  [heard('burnt'), ['fire', 'hot', 'eyes']],
  [heard('brigade'), ['fire']],
  [heard('leaks'), ['spill']],
  [heard('splashes'), ['eyes', 'spill']],
  [heard('calamities'), ['down', 'fire', 'eyes']],
];

/** The whole line: elsewhere 112 is a number, and help is asked for with a rack. */
const callsWhole = new RegExp(
  `^\\W*(?:${heardAny('helpWhole')}|(?:(?:${heardAny('dialling')}) )?(?:${heardAny('numbers')}))\\W*$`,
);

const blind = new RegExp(`\\b(?:${heardAny('blind')})\\b`);

export function alarmsWanted(line: string): readonly Alarm[] {
  const typed = withoutAccents(line.toLowerCase());
  if (callsWhole.test(typed)) return ['down', 'fire', 'eyes'];
  if (blind.test(typed)) return ['eyes'];
  const said = typed.match(/\p{L}+/gu) ?? [];
  return offers.flatMap(([of, alarms]) => (said.some((word) => of.has(word)) ? alarms : []));
}
