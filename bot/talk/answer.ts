// What goes out for one line or one ring, the same for every front end.

import { z } from 'zod';
import type { Question } from '../../core/commands.ts';
import type { PersonName, StreamId } from '../../core/ids.ts';
import { type Card, cardText } from '../cards/card.ts';

export const answerKinds = ['reply', 'objection', 'misread', 'reminder', 'digest', 'error'] as const;
export type AnswerKind = (typeof answerKinds)[number];

export interface Answer {
  /** ISO 8601 with its offset, in the crew's zone. */
  readonly at: string;
  readonly kind: AnswerKind;
  /** The delivery that it answers; null for what rings by itself. */
  readonly in: string | null;
  readonly as: PersonName | null;
  readonly to: readonly PersonName[];
  /** Of the reminder; null otherwise. */
  readonly key: string | null;
  /** Of the first objection, misread or error; null otherwise. */
  readonly code: string | null;
  readonly recorded: boolean;
  /** What it concerns, by batch and session where it can: a chat platform answers in their threads. */
  readonly about?: readonly StreamId[];
  /** What it was recorded under: a card that tells of any of this is an older one from then on. */
  readonly moved?: readonly StreamId[];
  /** The question that it answers. */
  readonly asked?: Question;
  /** Of an objection: the act, as a line. */
  readonly actLine?: string;
  readonly card: Card;
  /** Lines of its taps that are too long for a button, by the tap's id. */
  readonly kept?: Readonly<Record<string, string>>;
  /** Of what was recorded: its line, and its first entry. */
  readonly saidAct?: { readonly line: string; readonly entry: number };
  /** Of a bell: all that ring in the same breath for the same, as one; by their numbered keys, its own among them. */
  readonly together?: { readonly keys: readonly string[]; readonly card: Card };
  /** In the crew's language and units, where those of whoever said it are others: for what many read. */
  readonly forAll?: Card;
  readonly text: string;
}

export function makeAnswer(content: Omit<Answer, 'text'>): Answer {
  return { ...content, text: cardText(content.card) };
}

/** Only its outline is checked: the store gives back what this program put there. */
const Stored = z.looseObject({
  kind: z.enum(answerKinds),
  text: z.string(),
  card: z.looseObject({ title: z.string() }),
});

export function answerFrom(text: string): Answer {
  const json: unknown = JSON.parse(text);
  Stored.parse(json);
  return json as Answer;
}

/** Whether what an earlier answer tells of was recorded upon by a later one. */
export function hasMovedOn(earlier: Answer, later: Answer): boolean {
  const told = earlier.moved ?? [];
  return later.recorded && (later.moved ?? []).some((stream) => told.includes(stream));
}
