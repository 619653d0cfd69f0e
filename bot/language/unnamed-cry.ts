// A line that asks for help and does not say what has happened: `socorro`, `112`, `me quemé`. It calls nobody by itself, for
// what to do first depends on what it is; it is answered with all that can be cried, each one tap away.

import type { Failed } from '../../core/failed.ts';
import type { PersonName } from '../../core/ids.ts';
import { alarms } from '../../core/session/session-commands.ts';
import { criedWords, saysNow } from './cry.ts';
import {
  anybody,
  articles,
  asked,
  endings,
  hurts,
  itself,
  ofSomebody,
  oneself,
  openings,
  shouts,
  sizes,
  things,
  whereabouts,
} from './cry-words.ts';
import { everyTongue } from './every-tongue.ts';
import type { Hearing } from './hearing.ts';
import type { Fault } from './reading.ts';
import { isPlaceRoot } from './trade-words.ts';
import type { VerbNamed } from './verbs-of-tongues.ts';
import { verbNamed } from './verbs-typed.ts';

const around = [asked, anybody, articles, endings, openings, shouts, sizes, things, whereabouts];

/** True where every word is a shout, who or where; or where somebody is hurt. `112 plates in the rack` is neither. */
export function asksForHelp(line: string, people: readonly PersonName[]): boolean {
  const all = criedWords(line);
  if (!saysNow(line)) return false;
  const isOne = (word: string): boolean => people.some((name) => criedWords(name).includes(word));
  const isAround = (word: string): boolean => around.some((set) => set.has(word)) || isPlaceRoot(word) || isOne(word);
  if (all.some((word) => shouts.has(word)) && all.every(isAround)) return true;
  return all.some((word, i) => {
    if (!hurts.has(word)) return false;
    const [after] = all.slice(i + 1);
    // `se cortó Jon`, `Jon se cortó`; not `Jon cortó el cable`.
    if (ofSomebody.has(word) && !itself.has(all[i - 1] ?? '')) return false;
    // `se quemó Chuy`; not `se quemó el fusible`.
    const isBareName = ofSomebody.has(word) && after !== undefined && !articles.has(after);
    return (
      isBareName || all.some((each) => oneself.has(each) || isOne(each) || (anybody.has(each) && !articles.has(each)))
    );
  });
}

/** The verb says in which language its taps are written: a number of an emergency service is of none, and the speaker's is taken. */
export function whichCry(
  line: string,
  { token }: Fault,
  hearing: Hearing,
): Failed<Fault> & { readonly verb?: VerbNamed } {
  const said = criedWords(line).filter((word) => !/^\d+$/.test(word));
  const cried = everyTongue.tongues.findLast(({ cries }) =>
    [cries.shouts, cries.hurts].some((set) => set.split(/\s+/).some((word) => word !== '' && said.includes(word))),
  );
  const tongue = cried ?? hearing.tongues.at(-1);
  const verb = verbNamed(tongue?.verbs.fire.words[0] ?? '', everyTongue);
  return {
    failed: { failed: 'which-cry', ...(token !== undefined && { token }), tries: alarms },
    ...(verb && { verb }),
  };
}
