// What is no cry and may be need all the same: `help me`, `ambulance`, `burned my hand`, `call 112`. It calls nobody, since it
// does not say what for; the alarms that may be meant are offered, one tap each. Our own choice, no source.

import type { Alarm } from '../../core/session/session-commands.ts';
import { words } from './cry-words.ts';
import { withoutAccents } from './typed/without-accents.ts';

const offers: readonly (readonly [ReadonlySet<string>, readonly Alarm[]])[] = [
  [words('smoke smokes smoking smouldering humea quemado'), ['fire', 'hot']],
  [words('burned burnt scalded quemadura quemaduras queme quemo'), ['fire', 'hot', 'eyes']],
  [words('brigade bomberos'), ['fire']],
  [words('leak leaking leaks tipped gotea'), ['spill']],
  [words('splash splashed salpicadura salpico'), ['eyes', 'spill']],
  [
    words(`
      ambulance accident hurt injured injury bleeding dizzy choking poisoned electrocuted mayday sos emergency evacuate
      ambulancia accidente herido herida sangra sangrando mareado mareada ahogo breathe respirar conocimiento tirado
      tirada emergencia evacuar auxilio socorro`),
    ['down', 'fire', 'eyes'],
  ],
];

/** The whole line: elsewhere 112 is a number, and help is asked for with a rack. */
const callsWhole =
  /^\W*(?:(?:please )?help(?: (?:me|us|help))*|ayuda(?:me|nos)?(?: ayuda)*|(?:call |dial |llama(?:d|r|n|en)? (?:al? )?)?(?:112|911|999|061|080))\W*$/;

const blind = /\b(?:can['’]?t see|no veo|no puedo ver)\b/;

export function alarmsWanted(line: string): readonly Alarm[] {
  const typed = withoutAccents(line.toLowerCase());
  if (callsWhole.test(typed)) return ['down', 'fire', 'eyes'];
  if (blind.test(typed)) return ['eyes'];
  const said = typed.match(/\p{L}+/gu) ?? [];
  return offers.flatMap(([of, alarms]) => (said.some((word) => of.has(word)) ? alarms : []));
}
