// Every word that says a choice of a verb's fields, with what it chooses: one piece of a line, or several together, `sp 10`.

import type { SlotName } from '../../../core/commands.ts';
import type { FieldRow } from '../../../core/verbs/slot.ts';
import { englishChoices } from '../tongues/english/choices.ts';
import { methodsByWord } from '../trade-words.ts';
import type { Token } from '../typed/token.ts';

interface Meant {
  readonly name: string;
  readonly value: unknown;
}

export interface Choices {
  readonly meant: ReadonlyMap<string, Meant>;
  /** All that one of them may begin with: most words of a line are none. */
  readonly beginnings: ReadonlySet<string>;
  /** The fields that take more than one. */
  readonly several: ReadonlySet<string>;
}

type Named = readonly [name: string, field: FieldRow<SlotName>];

export function choicesOf(fields: readonly Named[]): Choices {
  const meant = new Map(
    fields.flatMap(([name, field]) => wordsFor(field).map(([word, value]) => [asOne(word), { name, value }] as const)),
  );
  const beginningsOf = (word: string) => Array.from(word, (_, i) => word.slice(0, i + 1));
  return {
    meant,
    beginnings: new Set([...meant.keys()].flatMap(beginningsOf)),
    several: new Set(fields.flatMap(([name, { told }]) => (told === 'choices' ? [name] : []))),
  };
}

function wordsFor({ slots: [slot], words }: FieldRow<SlotName>): readonly (readonly [string, unknown])[] {
  if (slot?.name === 'method') return [...methodsByWord];
  const typed = (value: unknown): readonly string[] =>
    slot === undefined ? [] : (englishChoices[slot.name]?.[String(value)]?.split(' ') ?? []);
  return [...words].flatMap(([value, printed]) =>
    [printed, String(value), ...typed(value)].map((word) => [word.toLowerCase(), value] as const),
  );
}

const joints = /[-_]/g;
const asOne = (word: string): string => (word.includes('-') || word.includes('_') ? word.replace(joints, '') : word);

/** The choice that begins at `from`, of as many pieces as say one. */
export function choiceAt(
  tokens: readonly Token[],
  from: number,
  { meant, beginnings }: Choices,
): (Meant & { readonly to: number }) | undefined {
  if (beginnings.size === 0) return undefined;
  let said = '';
  let longest: (Meant & { readonly to: number }) | undefined;
  for (let i = from; i < tokens.length; i++) {
    const token = tokens[i];
    // `2H` is two hours but where a pencil is asked for.
    if (token === undefined || token.kind === 'quoted') break;
    said += asOne(token.kind === 'word' ? token.word : token.text.toLowerCase());
    if (!beginnings.has(said)) break;
    const found = meant.get(said);
    if (found !== undefined) longest = { ...found, to: i + 1 };
  }
  return longest;
}
