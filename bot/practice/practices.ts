// Who practises just now: begun, ended, closed when nobody says anything in it. Few at once, and all of them in memory; that
// somebody practises is kept beside the record, so that after a restart no line of theirs is taken for the shop's.

import { firstShiftStep } from '../../core/guide/first-shift.ts';
import { keepInMind, type Lesson, lessonOf } from '../../core/guide/lessons.ts';
import { nameIn, nounOf, type PersonName, type StreamId } from '../../core/ids.ts';
import { type EpochMs, minutesBetween } from '../../core/units.ts';
import type { EndedWhy, Practised } from '../cards/practice-card.ts';
import type { Answer } from '../talk/answer.ts';
import type { PracticeShop, Practisers } from './practice-shop.ts';

/** Our own choice, no source: longer than a break, shorter than half a shift. */
export const idleMs = 2 * 60 * 60_000;
/** Of one crew at once: as many as there are people in the biggest. */
export const mostAtOnce = 8;

/** One person's, from `practice on` to its end. */
export interface Practice {
  readonly shop: PracticeShop;
  readonly startedAt: EpochMs;
  lastAt: EpochMs;
  lines: number;
  objections: number;
  readonly taught: Map<Lesson, 'shown' | 'objected'>;
  readonly touched: Set<StreamId>;
  /** Rung in the shop meanwhile, and not told in practice yet. */
  rang: readonly string[];
}

export interface Practices {
  readonly of: (name: PersonName) => Practice | undefined;
  /** Why theirs is over, where they have not been told. */
  readonly endedFor: (name: PersonName) => EndedWhy | undefined;
  /** `undefined`: it could not be kept that they practise. */
  readonly begin: (name: PersonName, open: () => PracticeShop) => Practice | undefined;
  readonly end: (name: PersonName) => void;
}

export function createPractices(practisers: Practisers, now: () => EpochMs): Practices {
  const on = new Map<PersonName, Practice>();
  const ended = new Map<PersonName, EndedWhy>();
  const close = (name: PersonName, why: EndedWhy): void => {
    on.get(name)?.shop.close();
    on.delete(name);
    ended.set(name, why);
  };
  const closeIdle = (): void => {
    for (const [name, { lastAt }] of on) if (now() - lastAt >= idleMs) close(name, 'idle');
  };
  const of = (name: PersonName): Practice | undefined => {
    closeIdle();
    return on.get(name);
  };
  return {
    of,
    endedFor: (name) => {
      if (of(name) !== undefined || !practisers.has(name)) return undefined;
      return ended.get(name) ?? 'restarted';
    },
    begin: (name, open) => {
      const shop = open();
      if (!practisers.put(name, true)) {
        shop.close();
        return undefined;
      }
      const [quietest] = [...on].toSorted(([, one], [, other]) => one.lastAt - other.lastAt);
      if (on.size >= mostAtOnce && quietest !== undefined) close(quietest[0], 'crowded');
      ended.delete(name);
      const practice: Practice = {
        ...{ shop, startedAt: shop.now(), lastAt: now(), lines: 0, objections: 0 },
        ...{ taught: new Map(), touched: new Set(), rang: [] },
      };
      on.set(name, practice);
      return practice;
    },
    end: (name) => {
      on.get(name)?.shop.close();
      on.delete(name);
      ended.delete(name);
      practisers.put(name, false);
    },
  };
}

/** What was said, and what it taught. */
export async function noteAnswer(practice: Practice, name: PersonName, answer: Answer): Promise<void> {
  const { shop, taught, touched } = practice;
  const objected = answer.kind === 'objection';
  if (objected) practice.objections += 1;
  for (const stream of answer.recorded ? (answer.moved ?? []) : []) touched.add(stream);
  const step = firstShiftStep(shop.host.telling(await shop.look(), name), name);
  const lesson = step === undefined ? undefined : lessonOf(step.doing);
  if (lesson !== undefined) taught.set(lesson, objected || taught.get(lesson) === 'objected' ? 'objected' : 'shown');
}

export async function practised({ lines, objections, taught, touched, shop, startedAt }: Practice): Promise<Practised> {
  const { parts } = await shop.look([...touched]);
  const of = (noun: 'batch' | 'part') => [...touched].filter((stream) => nounOf(stream) === noun);
  // What was objected to first, then what is the worst to forget.
  const weightOf = (lesson: Lesson): number =>
    keepInMind.indexOf(lesson) - (taught.get(lesson) === 'objected' ? keepInMind.length : 0);
  return {
    ...{ lines, objections },
    batches: of('batch').length,
    inCure: of('part').filter((stream) => parts.get(nameIn(stream))?.cure !== undefined).length,
    shopMinutes: minutesBetween(startedAt, shop.now()),
    lessons: keepInMind
      .filter((lesson) => taught.has(lesson))
      .toSorted((one, other) => weightOf(one) - weightOf(other)),
  };
}
