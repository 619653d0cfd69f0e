// The shape of one row of the vocabulary.

import type { Question, Verb } from '../../core/commands.ts';
import type { Slot } from './slots.ts';

export type VocabularyName = Verb | Question['ask'];

export interface VocabularyRow {
  readonly name: VocabularyName;
  /** The first is the one printed. Two words at most, lower case. */
  readonly words: readonly string[];
  readonly needs: readonly Slot[];
  readonly may: readonly Slot[];
  /** A line that reads. */
  readonly example: string;
  /** The rest of the line is somebody's own words. */
  readonly endsInWords?: true;
  /** Words that only round a sentence off here. */
  readonly ignores?: readonly string[];
}
