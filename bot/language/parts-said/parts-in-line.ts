// What the finder of parts looks at, and what it finds.

import type { PartName } from '../../../core/ids.ts';
import type { LineContext } from '../reading.ts';
import type { Token } from '../typed/token.ts';
import { type Atoms, atomsOf } from './atoms.ts';
import { type PartsKnown, partsKnown } from './parts-known.ts';

export interface PartsAt {
  readonly names: readonly PartName[];
  /** Each of them is meant; which of them is not said; all of them to which it can be done. */
  readonly is: 'named' | 'one-of' | 'fitting';
  /** False where a number may be of something else, or the name is spelt a letter off. */
  readonly isSure: boolean;
  /** One of its numbers is of another family, too. */
  readonly isOfFamily?: true;
  /** Spelt a letter or two off. */
  readonly isSlip?: true;
  /** Index of the token after it. */
  readonly to: number;
}

export interface PartsInLine {
  readonly tokens: readonly Token[];
  readonly atoms: Atoms;
  readonly known: PartsKnown;
  readonly context: LineContext;
}

export const partsInLine = (line: string, tokens: readonly Token[], context: LineContext): PartsInLine => ({
  tokens,
  atoms: atomsOf(line, tokens),
  known: partsKnown(context.parts),
  context,
});
