// What is no cry and may be need all the same: `help me`, `ambulance`, `burned my hand`, `call 112`. It calls nobody, since it
// does not say what for; the alarms that may be meant are offered, one tap each. Our own choice, no source.

import type { Alarm } from '../../core/session/session-commands.ts';
import type { CryTable } from './cry-words.ts';
import { withoutAccents } from './typed/without-accents.ts';

const offers = [
  ['smokes', ['fire', 'hot']],
  ['burnt', ['fire', 'hot', 'eyes']],
  ['brigade', ['fire']],
  ['leaks', ['spill']],
  ['splashes', ['eyes', 'spill']],
  ['calamities', ['down', 'fire', 'eyes']],
] as const satisfies readonly (readonly [keyof CryTable, readonly Alarm[]])[];

export function alarmsWanted(line: string, cries: CryTable): readonly Alarm[] {
  const typed = withoutAccents(line.toLowerCase());
  if (cries.patterns.blind.test(typed)) return ['eyes'];
  const said = typed.match(/\p{L}+/gu) ?? [];
  return offers.flatMap(([set, alarms]) => (said.some((word) => cries[set].has(word)) ? alarms : []));
}
