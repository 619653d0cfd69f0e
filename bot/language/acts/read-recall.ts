// `recall lot 7731 the maker calls it back`, `recall A lot 7731 "gels"`: the lot, its part where one alone bears it, then why.

import { components } from '../../../core/components.ts';
import { isFailed } from '../../../core/failed.ts';
import { known } from '../../../core/known.ts';
import { isSaid } from '../as-said/words.ts';
import type { Fault } from '../reading.ts';
import { fillers } from '../tongues/english/line-words.ts';
import { wordIn } from '../typed/token.ts';
import type { ActLine, ActRead } from './act-line.ts';
import { freeTextFrom } from './free-text.ts';
import { commandOf } from './read-fields.ts';

export const readRecall =
  (verb: 'recall' | 'recall-over') =>
  (act: ActLine): ActRead | Fault => {
    const { tokens, context } = act;
    const isLabel = (i: number) => {
      const word = wordIn(tokens[i]);
      return word === 'lot' || context.hearing.labels.get(word) === 'lot';
    };
    const componentAt = (i: number) => components.find((each) => each === `part-${wordIn(tokens[i])}`);
    let i = 0;
    let component: (typeof components)[number] | undefined;
    while (i < tokens.length && !isLabel(i)) {
      const before = componentAt(i);
      if (before === undefined && !fillers.has(wordIn(tokens[i])) && wordIn(tokens[i]) !== 'part') break;
      component = before ?? component;
      i += 1;
    }
    const token = tokens[isLabel(i) ? i + 1 : i];
    if (token === undefined) return { failed: 'incomplete', needs: ['lot'] };
    const lot = token.kind === 'quoted' ? token.words : token.text;
    let from = isLabel(i) ? i + 2 : i + 1;
    const behind = component === undefined ? componentAt(from) : undefined;
    if (behind !== undefined) from += 1;
    while (joints.has(wordIn(tokens[from]))) from += 1;
    const why = freeTextFrom(act, from);
    if (isFailed(why)) return why;
    if (why.words === '') return { failed: 'incomplete', needs: ['reason'] };
    const { calledOver } = context.hearing.labelled;
    const first = tokens[from];
    // `recall of lot 7731 is over`: what ends one begins none.
    if (verb === 'recall' && !why.quoted && first !== undefined && isSaid(why.words, calledOver)) {
      const told = `lot ${JSON.stringify(lot)} ${JSON.stringify(why.words)}`;
      return { failed: 'left-over', token: first, needs: ['reason'], tries: [`recall-over ${told}`, `recall ${told}`] };
    }
    const command = commandOf(verb, { lot, why: why.words, ...known({ component: component ?? behind }) });
    return { command, ...why.how };
  };

/** `because of gels`, `for gelling`. */
const joints: ReadonlySet<string> = new Set(['for', 'because', 'of', 'by']);
