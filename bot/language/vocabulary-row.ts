// The shape of one row of the vocabulary.

import type { Question, Verb } from '../../core/commands.ts';
import type { Slot } from './slots.ts';

export type VocabularyName = Verb | Question['ask'];

export interface VocabularyRow {
  readonly name: VocabularyName;
  readonly needs: readonly Slot[];
  readonly may: readonly Slot[];
  /** The rest of the line is somebody's own words. */
  readonly endsInWords?: true;
}
