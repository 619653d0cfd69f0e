// An act that was recorded, and the cards of the batch, can, parts or session that it touched.

import type { Command } from '../../core/commands.ts';
import type { Recorded, Request } from '../../core/execute.ts';
import type { EventBody, Fact, FactOf } from '../../core/history.ts';
import { type Noun, nameIn, nounOf, numberIn, type PartName } from '../../core/ids.ts';
import type { Part } from '../../core/part/part.ts';
import type { Session } from '../../core/session/session.ts';
import { type BatchNow, type CanNow, type PartNow, statusOf } from '../../core/status.ts';
import { firstUpper } from '../language/first-upper.ts';
import { type Card, makeCard } from './card.ts';
import type { Telling } from './card-context.ts';

export interface Act<C extends Command = Command> {
  readonly telling: Telling;
  readonly command: C;
  readonly request: Request;
  readonly outcome: Recorded;
}

/** What of this type it left. */
export const leftBy = <Type extends Fact['type']>(
  { envelopes }: Recorded,
  ...types: readonly Type[]
): readonly FactOf<Type>[] => {
  const isOne = (body: EventBody): body is FactOf<Type> => types.some((type) => type === body.type);
  return envelopes.map(({ body }) => body).filter(isOne);
};

/** Makes the card of one of what the act touched. */
type Makes<Of, C extends Command> = (telling: Telling, of: Of, act: Act<C>) => Card;
type Replies<C extends Command> = (act: Act<C>) => Card;

export function touchedBatch({ envelopes, shop }: Recorded) {
  const stream = envelopes.flatMap((envelope) => [envelope.stream, ...envelope.alsoUnder]).find(isOf('batch'));
  return stream === undefined ? undefined : shop.batches.get(numberIn(stream));
}

export function touchedParts({ envelopes, shop }: Recorded): readonly Part[] {
  const streams = envelopes.map((envelope) => envelope.stream).filter(isOf('part'));
  return [...new Set(streams)].flatMap((stream) => shop.parts.get(nameIn(stream)) ?? []);
}

const isOf = (noun: Noun) => (stream: Recorded['envelopes'][number]['stream']) => nounOf(stream) === noun;

const settled = ({ words }: Telling): Card => makeCard(words.replies.settled, 'plain');

const onOne =
  <Of>(touched: (act: Act) => Of | undefined) =>
  <C extends Command>(make: Makes<Of, C>): Replies<C> =>
  (act) => {
    const of = touched(act);
    return of === undefined ? settled(act.telling) : make(act.telling, of, act);
  };

export const onBatch = onOne<BatchNow>(({ telling, outcome }) => {
  const batch = touchedBatch(outcome);
  return batch && statusOf.batch(telling, batch);
});

export const onCan = onOne<CanNow>(({ telling, outcome }) => {
  const can = firstOf('can', outcome, outcome.shop.cans);
  return can && statusOf.can(telling, can);
});

export const onSession = onOne<Session>(({ outcome }) => firstOf('session', outcome, outcome.shop.sessions));

function firstOf<Of>(noun: Noun, { envelopes }: Recorded, all: ReadonlyMap<number, Of>): Of | undefined {
  const stream = envelopes.map((envelope) => envelope.stream).find(isOf(noun));
  return stream === undefined ? undefined : all.get(numberIn(stream));
}

/** Several parts in one line share one card, with each part's figures under its name. */
export const onPart =
  <C extends Command>(make: Makes<PartNow, C>): Replies<C> =>
  (act) => {
    const { telling } = act;
    const parts = touchedParts(act.outcome);
    const cards = statusOf.parts(telling, parts).map((part) => make(telling, part, act));
    const [first, ...others] = cards;
    if (first === undefined) return settled(telling);
    if (others.length === 0) return first;
    return {
      ...first,
      title: sharedTitle(telling, cards, parts),
      facts: latestCure(cards)?.facts ?? first.facts,
      lines: sharedLines(telling, cards, parts),
      actions: merged(cards),
    };
  };

/** The title of a card that tells of an act only that it was done, and to what. */
export function doneTitle(telling: Telling, { envelopes: [envelope] }: Recorded): string {
  if (envelope === undefined || envelope.body.type === 'Amended') return telling.words.replies.settled;
  const said = telling.words.undo.act({ stream: envelope.stream, fact: envelope.body }, telling.figures);
  return firstUpper(said);
}

/** Of parts that cure together the one that is done last speaks for the load. */
function latestCure(cards: readonly Card[]): Card | undefined {
  const doneAt = (card: Card) => String(card.facts.find(({ id }) => id === 'cure-done-at')?.value ?? '');
  return cards.filter((card) => doneAt(card) !== '').toSorted((a, b) => (doneAt(a) < doneAt(b) ? 1 : -1))[0];
}

/** One after the other; of many, where they say the same of each, once of all. */
function sharedTitle(telling: Telling, cards: readonly Card[], parts: readonly Part[]): string {
  const titles = cards.map(({ title }) => title);
  const whole = titles[0] && ofAll(telling, titles[0], titles, parts);
  return titles.length > mostTitles && whole !== undefined ? whole : titles.join(', ');
}

const mostTitles = 3;

/** What is said of each under its own name, said of all. */
function ofAll(
  { words, figures }: Telling,
  first: string,
  each: readonly (string | undefined)[],
  parts: readonly Part[],
): string | undefined {
  const names = parts.map(({ name }) => name);
  const without = (text: string | undefined, i: number): string | undefined => text && put(text, names[i] ?? '', '*');
  const isSame = each.every((text, i) => text !== undefined && without(text, i) === without(first, 0));
  return isSame ? put(first, names[0] ?? '', words.parts.in.named(names, figures)) : undefined;
}

/** In the place of a name, and of nothing that only begins or ends like it. */
const put = (text: string, name: PartName, instead: string): string =>
  text.replaceAll(new RegExp(`(?<![\\p{L}\\d_-])${name.replaceAll('.', '\\.')}(?![\\p{L}\\d_-])`, 'gu'), () => instead);

/** What holds for all is said once; what holds for one says for which. */
function sharedLines(telling: Telling, cards: readonly Card[], parts: readonly Part[]): readonly string[] {
  const lines = cards.flatMap((card, i) => {
    const name = parts[i]?.name ?? '';
    return card.lines.map((line, at) => {
      if (cards.every((other) => other.lines.includes(line))) return line;
      if (!line.includes(name)) return `${name}: ${line}`;
      const [first] = cards;
      const whole =
        first?.lines[at] === undefined
          ? undefined
          : ofAll(
              telling,
              first.lines[at],
              cards.map((other) => other.lines[at]),
              parts,
            );
      return whole ?? line;
    });
  });
  return [...new Set(lines)];
}

/** One tap for all the parts of a line: `dry impeller-7 valve-3`. */
function merged(cards: readonly Card[]): Card['actions'] {
  const names = cards.flatMap((card) => card.actions.slice(0, 1)).map((action) => action.line.split(' ')[1] ?? '');
  const [first] = cards;
  return (
    (first?.actions ?? [])
      .filter((action) => cards.every((card) => card.actions.some((other) => other.id === action.id)))
      // The surface is each part's own.
      .filter(({ id }) => id !== 'surface')
      .map((action) => {
        const [verb, , ...rest] = action.line.split(' ');
        // A load is read once, on the part that warms last.
        if (action.id === 'temp') return { ...action, line: [verb, ...rest].join(' ') };
        return { ...action, line: [verb, ...names, ...rest].join(' ') };
      })
  );
}
