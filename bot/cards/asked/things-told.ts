// A thing that a question names, as it stands: what it is called, its phase, its clocks, its facts and what comes next on it.

import type { ThingMeant } from '../../../core/asked/things-meant.ts';
import type { Verb } from '../../../core/commands.ts';
import type { NounClock } from '../../../core/noun-clock.ts';
import { isOwnKey } from '../../../core/own-key.ts';
import { type ClockId, statusOf } from '../../../core/status.ts';
import { atWorstLines, batchFacts, batchTaps, potState } from '../batch-cards.ts';
import { type BoardClock, type BoardClockId, clockOnBoard } from '../board-item.ts';
import { canFacts, gasWords } from '../can-cards.ts';
import type { CardAction, CardFact } from '../card.ts';
import type { Telling } from '../card-context.ts';
import { nextTaps } from '../next-taps.ts';
import { halfLines, heldLines, partFacts, partTaps } from '../part-cards.ts';
import { partPhaseTold } from '../part-phase.ts';
import { sessionState } from '../session-lines.ts';
import { stillAskedLines } from '../still-asked.ts';

export interface ThingTold {
  readonly name: string;
  readonly phase: string;
  readonly clocks: readonly (BoardClock & { readonly id: string })[];
  readonly facts: readonly CardFact[];
  readonly lines: readonly string[];
  readonly taps: readonly CardAction[];
}

/** `undefined` for what has no state of its own: a place, a person. */
export function thingTold(telling: Telling, thing: ThingMeant): ThingTold | undefined {
  const { shop } = telling;
  switch (thing.is) {
    case 'batch': {
      const batch = shop.batches.get(thing.number);
      return batch === undefined ? undefined : batchTold(telling, batch);
    }
    case 'part': {
      const status = statusOf.part(telling, thing.part);
      return {
        name: thing.part.name,
        phase: partPhaseTold(telling, thing.part),
        clocks: clocksTold(telling, status.clocks),
        facts: partFacts(telling, status),
        lines: [
          ...heldLines(telling, status),
          ...halfLines(telling, status),
          ...stillAskedLines(telling, status, 'always'),
        ],
        taps: partTaps(telling, status),
      };
    }
    case 'can': {
      const can = shop.cans.get(thing.number);
      if (can === undefined) return undefined;
      const status = statusOf.can(telling, can);
      return {
        name: telling.words.page.can(can.number),
        phase: gasWords(telling, status.phase) || telling.words.material.component[can.component],
        clocks: clocksTold(telling, status.clocks),
        facts: canFacts(telling, status),
        lines: [],
        taps: nextTaps(telling, status.next()),
      };
    }
    case 'session': {
      const session = shop.sessions.get(thing.number);
      if (session === undefined) return undefined;
      const status = statusOf.session(telling, session);
      return {
        name: telling.words.page.spraying(telling.words.names.place(session.place)),
        phase: sessionState(telling, status.phase),
        clocks: [],
        facts: [],
        lines: [telling.figures.list(session.sprayers)],
        taps: nextTaps(telling, status.next()),
      };
    }
    case 'place':
    case 'person':
      return undefined;
  }
}

function batchTold(telling: Telling, batch: Parameters<typeof statusOf.batch>[1]): ThingTold {
  const status = statusOf.batch(telling, batch);
  return {
    name: telling.words.page.batch(batch.number),
    phase: potState(telling, status),
    clocks: clocksTold(telling, status.clocks),
    facts: batchFacts(telling, status),
    lines: atWorstLines(telling, batch),
    taps: batchTaps(telling, status),
  };
}

function clocksTold(telling: Telling, clocks: readonly NounClock<ClockId>[]): ThingTold['clocks'] {
  const { page } = telling.words;
  const isLabelled = (clock: NounClock<ClockId>): clock is NounClock<BoardClockId> => isOwnKey(page.clocks, clock.id);
  return clocks.filter(isLabelled).map((clock) => clockOnBoard(telling, clock));
}

/** A question is answered and does nothing: of what comes next only what asks for a figure first, and never the act that was asked of. */
export const tapsThatAsk = (taps: readonly CardAction[], act?: Verb): readonly CardAction[] =>
  taps.filter(({ line }) => line.includes('{') && !line.startsWith(`${act} `)).slice(0, mostTaps);

const mostTaps = 3;

export const clockLine = ({ words }: Telling, { label, at, left }: BoardClock): string =>
  words.asked.clock(label, at, left);

/** As a line names it. */
export function nameOfThing(thing: ThingMeant): string {
  switch (thing.is) {
    case 'part':
      return thing.part.name;
    case 'place':
      return thing.place;
    case 'person':
      return thing.person;
    case 'batch':
    case 'can':
    case 'session':
      return `${thing.number}`;
  }
}
