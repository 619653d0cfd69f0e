// `cartridge toluene 40ppm 60%`, `cartridge toluene 40ppm mek 30ppm 90% hard`: a question, never an act. What was not said of the air is
// asked, or taken as it was last read.

import { type SubstanceId, substanceIds } from '../../../core/calc/exposure-limits.ts';
import type { Question } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { known } from '../../../core/known.ts';
import { type PartsPerMillion, type Percent, partsPerMillion, percent } from '../../../core/units.ts';
import { choice } from '../../../core/verbs/slot.ts';
import type { Fault } from '../reading.ts';
import { fillers, hardWork, roundMask } from '../tongues/english/line-words.ts';
import { rareFigureFrom } from '../typed/rare-figures.ts';
import { wordIn } from '../typed/token.ts';
import { isIgnoredOn } from '../verbs-typed.ts';
import { type ActLine, leftOver } from './act-line.ts';
import { choiceAt, choicesOf } from './choices-on-line.ts';
import { figureFor } from './figure-of-slot.ts';

const substances = choicesOf([['substance', choice('substance', substanceIds)]]);

export function readCartridge(act: ActLine): Question | Fault {
  const { tokens, line } = act;
  const named: SubstanceId[] = [];
  const ppm: PartsPerMillion[] = [];
  let humidity: Percent | undefined;
  let isHard = false;
  for (let i = 0; i < tokens.length; ) {
    const token = tokens[i];
    if (token === undefined) break;
    const figure = rareFigureFrom(tokens, i, 'ppm');
    const substance = choiceAt(tokens, i, substances);
    const id = substanceIds.find((each) => each === substance?.value);
    if (figure !== undefined) ppm.push(partsPerMillion(figure.value));
    else if (id !== undefined) named.push(id);
    else if (token.kind === 'quantity' && token.quantity.is === 'percent') {
      const read = figureFor('humidity', token, line);
      if (isFailed(read)) return read;
      humidity = percent(read);
    } else if (hardWork.has(wordIn(token))) isHard = true;
    else if (!isRound(act, wordIn(token))) return leftOver(token);
    i = figure?.to ?? substance?.to ?? i + 1;
  }
  const [first] = named;
  if (first === undefined) return { failed: 'incomplete', needs: ['substance'], tries: [`${line} toluene 40ppm 60%`] };
  if (ppm.length !== named.length) return { failed: 'incomplete', needs: ['breathed'], tries: [`${line} 40ppm`] };
  const breathed = named.map((substance, i) => ({ substance, ppm: ppm[i] ?? partsPerMillion(0) }));
  return { ask: 'cartridge', breathed, isHard, ...known({ humidity }) };
}

const isRound = ({ context }: ActLine, word: string): boolean =>
  fillers.has(word) || roundMask.has(word) || isIgnoredOn('cartridge', word, context.hearing);
