// What a line that may be a cry is answered with where nobody is called yet: a tap that rings everybody, one that says that it
// is no alarm, and what else it may be.

import type { Failed } from '../../core/failed.ts';
import type { Alarm } from '../../core/session/session-commands.ts';
import { criedWords } from './cry.ts';
import type { Hearing } from './hearing.ts';
import type { Fault } from './reading.ts';
import type { VerbNamed } from './verbs-of-tongues.ts';
import { verbNamed } from './verbs-typed.ts';

/** The verb says in which language its taps are written: of a word that is of none the speaker's is taken. */
export function whichCry(
  line: string,
  token: Fault['token'],
  likely: readonly Alarm[],
  hearing: Hearing,
): Failed<Fault> & { readonly verb?: VerbNamed } {
  const said = criedWords(line, hearing.cries).filter((word) => !/^\d+$/.test(word));
  const cried = hearing.every.tongues.findLast(({ cries }) =>
    [cries.shouts, cries.saysLittle].some((set) => set.split(/\s+/).some((word) => word !== '' && said.includes(word))),
  );
  const tongue = cried ?? hearing.tongues.at(-1);
  const verb = verbNamed(tongue?.verbs.fire.words[0] ?? '', hearing.every);
  const tries = ['emergency', 'no-alarm', ...likely.map((alarm) => (alarm === 'hot' ? 'hot-pot' : alarm))];
  return { failed: { failed: 'which-cry', ...(token !== undefined && { token }), tries }, ...(verb && { verb }) };
}
