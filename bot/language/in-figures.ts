// A reading over each way to put a line in figures.

import { known } from '../../core/known.ts';
import type { Plainly } from './as-said/as-said.ts';
import type { Heard } from './as-said/heard.ts';
import { asTaps, type Understands, type Understood } from './understood.ts';

/** A reading that may want the line in figures, which is put so once for all of them. */
export type InFigures = (
  ...[line, context, strictly, plainly]: [...Parameters<Understands>, Plainly]
) => Understood | undefined;

/** Each way to say the line in figures goes on: what is sure stays so only where the line has one such way. */
export const inFigures =
  (reading: Understands, put: (each: Heard) => Heard = (each) => each): InFigures =>
  (_, context, strictly, plainly) => {
    const heard = plainly().map(put);
    const found = heard.flatMap((each) => {
      const made = reading(each.line, context, strictly);
      return made === undefined ? [] : [made];
    });
    const [first] = found;
    if (first === undefined) return undefined;
    if (first.is !== 'likely' && found.length === 1 && heard[0]?.isSure === true) return first;
    const taps = found.map(asTaps);
    const [untaken] = taps.flatMap((each) => (each.untaken === undefined ? [] : [each.untaken]));
    return { is: 'likely', lines: [...new Set(taps.flatMap(({ lines }) => lines))], ...known({ untaken }) };
  };

export const unlisted = ({ line, isSure, unlisted: before = line }: Heard): Heard => ({ line: before, isSure });

/** A question records nothing: it is asked in the first figures that it can be put in. */
export const inFirstFigures =
  (reading: Understands): InFigures =>
  (line, context, strictly, plainly) =>
    reading(plainly()[0]?.line ?? line, context, strictly);
