// Every word that says a choice of a field, with what it chooses.

import type { SlotName } from '../../../core/commands.ts';
import type { FieldRow } from '../../../core/verbs/slot.ts';
import { englishChoices } from '../tongues/english/choices.ts';
import { methodsByWord } from '../trade-words.ts';

export function wordsFor({ slots: [slot], words }: FieldRow<SlotName>): ReadonlyMap<string, unknown> {
  if (slot?.name === 'method') return methodsByWord;
  const typed = (value: unknown): readonly string[] =>
    slot === undefined ? [] : (englishChoices[slot.name]?.[String(value)]?.split(' ') ?? []);
  return new Map(
    [...words].flatMap(([value, printed]) =>
      [printed.toLowerCase(), String(value), ...typed(value)].map((word) => [word, value] as const),
    ),
  );
}
