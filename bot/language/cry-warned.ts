// `ojo Lia`, `se espesa, ojo`: an eye that has no article warns of something. `en el ojo`, `me entró en un ojo` and `ojo, me arde` tell
// of one, and so does whatever speaks of a liquid beside it. Common practice and our own choice, no source.

import type { Called } from './cry-round.ts';
import type { CryTable } from './cry-words.ts';

/** `said`: all words of its sentence. */
export function onlyWarns(
  { word, before, after }: Omit<Called, 'alarm'>,
  said: readonly string[],
  cries: CryTable,
): boolean {
  if (!cries.warns.has(word)) return false;
  const [nearest = ''] = before;
  const [next = ''] = after;
  const isOfSomebody = [cries.ofBody, cries.articles, cries.inEye, cries.sizes].some((set) => set.has(nearest));
  // `mucho ojo`
  const isEye =
    (isOfSomebody && !cries.wary.has(nearest)) || cries.of.has(next) || cries.ofEye.has(next) || cries.sore.has(next);
  return !isEye && !tellsOfHarm([...before, word, ...after], said, cries);
}

/** The fewest words round a liquid that are no cry of it: `acetona, ojo`. */
const fewestOfTalk = 4;

function tellsOfHarm(clause: readonly string[], said: readonly string[], cries: CryTable): boolean {
  const harms = [cries.sore, cries.desperate, cries.calls, cries.shouts, cries.splashes, cries.body, cries.burnt];
  if (said.some((word) => harms.some((set) => set.has(word)))) return true;
  if (cries.patterns.comesIn.test(said.join(' '))) return true;
  return (said.length < fewestOfTalk ? said : clause).some((word) => cries.liquids.has(word));
}

/** A line holds a word that may warn, and each of them does. */
export function isWarned(said: readonly string[], cries: CryTable): boolean {
  const warning = said.flatMap((word, at) => (cries.warns.has(word) ? [at] : []));
  return (
    warning.length > 0 &&
    warning.every((at) =>
      onlyWarns(
        { word: said[at] ?? '', before: said.slice(0, at).toReversed(), after: said.slice(at + 1) },
        said,
        cries,
      ),
    )
  );
}
