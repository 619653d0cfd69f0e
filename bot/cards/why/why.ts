// Why a figure is what it is: the sum in figures, what was read and by whom, on what it rests, and what was taken for want of
// better. Sums are asked of the functions that made the figure.

import type { Batch } from '../../../core/batch/batch.ts';
import type { Can } from '../../../core/can/can.ts';
import type { Question } from '../../../core/commands.ts';
import type { Entry, Fact } from '../../../core/history.ts';
import type { PlaceName } from '../../../core/ids.ts';
import type { Part } from '../../../core/part/part.ts';
import type { Sheet } from '../../../core/products/sheet.ts';
import type { Session } from '../../../core/session/session.ts';
import type { CardFact } from '../card.ts';
import type { Telling } from '../card-context.ts';
import type { WhySource } from './told.ts';

/** What a card told of, as far as it is known. */
export interface Subjects {
  readonly batch?: Batch | undefined;
  readonly part?: Part | undefined;
  readonly can?: Can | undefined;
  readonly session?: Session | undefined;
  readonly place: PlaceName;
}

export interface FigureAsked {
  readonly telling: Telling;
  readonly fact: CardFact;
  readonly of: Subjects;
  /** What the card answered, where it only read. */
  readonly question: Question | undefined;
}

export interface Why {
  readonly sum: readonly string[];
  /** What was read or said, the oldest first. */
  readonly read: readonly Entry[];
  readonly source: WhySource;
  /** What stands in for what nobody read. */
  readonly assumed: readonly string[];
  /** As the record gives it now, where that may have moved since the card. */
  readonly now?: string | undefined;
}

/** `undefined`: what it was made from is no longer at hand. */
export type WhyOf = (asked: FigureAsked) => Why | undefined;

export const why = (source: WhySource, told: Partial<Omit<Why, 'source'>> = {}): Why => ({
  ...{ sum: [], read: [], assumed: [] },
  ...told,
  source,
});

export const sheetSource = (sheet: Sheet, field: string, source: string): WhySource => ({
  is: 'sheet',
  sheet,
  field,
  source,
});

/** Of these types, in the order in which they happened. */
export function entriesOf(entries: readonly Entry[] | undefined, ...types: readonly Fact['type'][]): readonly Entry[] {
  return (entries ?? []).filter(({ fact }) => types.includes(fact.type)).toSorted(inTime);
}

const inTime = (one: Entry, other: Entry): number => one.happenedAt - other.happenedAt;

/** As it was read, the last of these. */
export const asRead = (entries: readonly Entry[]): Why | undefined =>
  entries.length === 0 ? undefined : why({ is: 'reading' }, { read: entries.slice(-1) });
