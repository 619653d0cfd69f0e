// A line that asks for help and does not say what has happened: `socorro`, `112`, `me quemé`. It calls nobody by itself, for
// what to do first depends on what it is; it is answered with all that can be cried, each one tap away.

import type { Failed } from '../../core/failed.ts';
import { alarms } from '../../core/session/session-commands.ts';
import { criedWords, saysNow } from './cry.ts';
import type { Hearing } from './hearing.ts';
import type { Fault, LineContext } from './reading.ts';
import { isPlaceRoot } from './trade-words.ts';
import type { VerbNamed } from './verbs-of-tongues.ts';
import { verbNamed } from './verbs-typed.ts';

const around = [
  'asked',
  'anybody',
  'articles',
  'endings',
  'openings',
  'shouts',
  'sizes',
  'things',
  'whereabouts',
] as const;

/** True where every word is a shout, who or where; or where somebody is hurt. `112 plates in the rack` is neither. */
export function asksForHelp(line: string, { people = [], hearing }: LineContext): boolean {
  const { cries } = hearing;
  const all = criedWords(line, cries);
  if (!saysNow(line, cries)) return false;
  const isOne = (word: string): boolean => people.some((name) => criedWords(name, cries).includes(word));
  const isAround = (word: string): boolean =>
    around.some((set) => cries[set].has(word)) || isPlaceRoot(word) || isOne(word);
  if (all.some((word) => cries.shouts.has(word)) && all.every(isAround)) return true;
  return all.some((word, i) => {
    if (!cries.hurts.has(word)) return false;
    const [after] = all.slice(i + 1);
    // `se cortó Jon`, `Jon se cortó`; not `Jon cortó el cable`.
    if (cries.ofSomebody.has(word) && !cries.itself.has(all[i - 1] ?? '')) return false;
    // `se quemó Chuy`; not `se quemó el fusible`.
    const isBareName = cries.ofSomebody.has(word) && after !== undefined && !cries.articles.has(after);
    return (
      isBareName ||
      all.some(
        (each) => cries.oneself.has(each) || isOne(each) || (cries.anybody.has(each) && !cries.articles.has(each)),
      )
    );
  });
}

/** The verb says in which language its taps are written: a number of an emergency service is of none, and the speaker's is taken. */
export function whichCry(
  line: string,
  { token }: Fault,
  hearing: Hearing,
): Failed<Fault> & { readonly verb?: VerbNamed } {
  const said = criedWords(line, hearing.cries).filter((word) => !/^\d+$/.test(word));
  const cried = hearing.every.tongues.findLast(({ cries }) =>
    [cries.shouts, cries.hurts].some((set) => set.split(/\s+/).some((word) => word !== '' && said.includes(word))),
  );
  const tongue = cried ?? hearing.tongues.at(-1);
  const verb = verbNamed(tongue?.verbs.fire.words[0] ?? '', hearing.every);
  return {
    failed: { failed: 'which-cry', ...(token !== undefined && { token }), tries: alarms },
    ...(verb && { verb }),
  };
}
