// What a tongue brings: how it says things, and what its speakers type.

import type { SlotName } from '../../../core/commands.ts';

/** Of a slot that is a choice: by what is chosen, the words for it. */
export type Choices = Readonly<Partial<Record<SlotName, Readonly<Record<string, string>>>>>;

export interface VerbWords {
  /** The first is the one printed. Two words at most, lower case; no word of another row. */
  readonly words: readonly string[];
  /** A line that reads as the row. */
  readonly example: string;
  /** Words that only round a sentence off here. */
  readonly ignores: readonly string[];
}

export const verbWords = (words: string, example: string, ignores = ''): VerbWords => ({
  words: words.split(', '),
  example,
  ignores: ignores === '' ? [] : ignores.split(', '),
});
