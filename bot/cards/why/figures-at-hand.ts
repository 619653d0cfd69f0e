// Every figure that may be asked about: those of the last card, then those of whatever runs, each with what it belongs to.

import { batchStatus } from '../../../core/batch/batch-status.ts';
import { canStatus } from '../../../core/can/can-status.ts';
import { defaultPlace, nameIn, nounOf, numberIn, type StreamId } from '../../../core/ids.ts';
import { partStatus } from '../../../core/part/part-status.ts';
import { sessionStatus } from '../../../core/session/session-status.ts';
import { batchOf, byName, liveBatches, liveCans, liveParts, openSessions, type Shop } from '../../../core/shop.ts';
import { airFacts } from '../air-facts.ts';
import { batchFacts, ratioFacts } from '../batch-cards.ts';
import { canFacts } from '../can-cards.ts';
import type { Card, CardFact } from '../card.ts';
import type { Telling } from '../card-context.ts';
import { clockFacts } from '../clock-text.ts';
import { partFacts } from '../part-cards.ts';
import { sessionSums } from '../session-air-card.ts';
import type { Subjects } from './why.ts';

export interface FigureAtHand {
  readonly fact: CardFact;
  readonly of: Subjects;
}

/** What these streams are of; of several of a kind the last named. A part's batch is that of its last coat. */
export function subjectsOf(shop: Shop, streams: readonly StreamId[]): Subjects {
  const last = (noun: ReturnType<typeof nounOf>) => streams.findLast((stream) => nounOf(stream) === noun);
  const of = <T>(noun: ReturnType<typeof nounOf>, find: (stream: StreamId) => T | undefined) => {
    const stream = last(noun);
    return stream === undefined ? undefined : find(stream);
  };
  const part = of('part', (stream) => shop.parts.get(nameIn(stream)));
  const session = of('session', (stream) => shop.sessions.get(numberIn(stream)));
  const batch =
    (part === undefined ? undefined : batchOf(shop, part)) ??
    of('batch', (stream) => shop.batches.get(numberIn(stream))) ??
    (session?.batch === undefined ? undefined : shop.batches.get(session.batch));
  const can = of('can', (stream) => shop.cans.get(numberIn(stream)));
  const place = of('place', nameIn) ?? batch?.place ?? defaultPlace;
  return { batch, part, can, session, place };
}

/** Of whatever runs now. */
export function figuresRunning(telling: Telling): readonly FigureAtHand[] {
  const { shop } = telling;
  const each = (of: Subjects, facts: readonly CardFact[]) => facts.map((fact) => ({ fact, of }));
  return [
    ...each({ place: defaultPlace }, airFacts(telling, defaultPlace)),
    ...liveBatches(shop).flatMap((batch) =>
      each({ batch, place: batch.place }, [
        ...batchFacts(telling, batchStatus(telling, batch)),
        ...ratioFacts(telling, batch),
      ]),
    ),
    ...byName(liveParts(shop)).flatMap((part) => {
      const batch = batchOf(shop, part);
      return each({ part, batch, place: batch?.place ?? defaultPlace }, partFacts(telling, partStatus(telling, part)));
    }),
    ...liveCans(shop).flatMap((can) => each({ can, place: defaultPlace }, canFacts(telling, canStatus(telling, can)))),
    ...openSessions(shop).flatMap((session) =>
      each({ session, place: session.place }, [
        ...clockFacts(telling, sessionStatus(telling, session).clocks, ['spell', 'fan']),
        ...sessionSums(telling, session).facts,
      ]),
    ),
  ];
}

/** As it is typed: without accents, degrees and blanks before units; no nought before an hour. */
const folded = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll('µ', 'u')
    .replaceAll('−', '-')
    .replace(/[°º]|\bgrados\b|\bdegrees\b|\bdeg\b/g, ' ')
    .replace(/(\d),(\d)/g, '$1.$2')
    .replace(/\b0(\d:)/g, '$1')
    .replace(/(\d)\s+(?=[a-z%/])/g, '$1')
    .replace(/[^\p{L}\p{N}:.%/+-]+/gu, ' ')
    .trim();

const wordsOf = (text: string): readonly string[] =>
  folded(text)
    .split(/[\s-]+/)
    .filter((word) => word !== '');

/** A figure of it has this value, as it is shown or by its name. */
export const showsFigure = ({ facts }: Pick<Card, 'facts'>, about: string): boolean =>
  figureNamed(
    about,
    facts.map((fact) => ({ fact, of: { place: defaultPlace } })),
    () => [],
  ) !== undefined;

/** By its value as it is shown, or by its name; the last card's before what runs. */
export function figureNamed(
  asked: string,
  figures: readonly FigureAtHand[],
  namesOf: (fact: CardFact) => readonly string[],
): FigureAtHand | undefined {
  const [figure, words] = [folded(asked), wordsOf(asked)];
  if (words.length === 0) return undefined;
  const shows = ({ fact }: FigureAtHand): boolean => {
    const shown = folded(fact.shown);
    return (
      shown === figure ||
      (/\d/.test(figure) && ` ${shown} `.includes(` ${figure} `)) ||
      shown.replace(/[a-z%].*$/, '') === figure
    );
  };
  const isCalled = ({ fact }: FigureAtHand): boolean =>
    [fact.id, fact.label, ...namesOf(fact)].some((name) => {
      const own = wordsOf(name);
      return words.every((word) => own.includes(word));
    });
  return (
    figures.find(({ fact }) => fact.id === asked) ??
    figures.find(shows) ??
    figures.find(({ fact }) => wordsOf(fact.label).join() === words.join()) ??
    figures.find(isCalled)
  );
}
