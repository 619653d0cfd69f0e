// Where a pot or a part stands in its run: the work that its sheet has, in the order in which hands do it, each done, next,
// to come, or passed without a word; and the steps that were asked. What is done is told by its entries in the record.

import type { Batch } from '../batch/batch.ts';
import type { BatchStatus } from '../batch/batch-status.ts';
import type { Entry, Fact } from '../history.ts';
import { nounOf, type PlaceName, type StreamId } from '../ids.ts';
import type { Moment } from '../next-acts.ts';
import type { Part } from '../part/part.ts';
import { batchOf, type Shop } from '../shop.ts';
import { type EpochMs, epochMs } from '../units.ts';
import type { CureWay } from '../verbs/said.ts';
import { type AskedStep, stepRows } from './step-rows.ts';
import { answerTo, stepCaseOf, stepsAskedBy } from './steps-answered.ts';

export type WorkStep =
  | 'air'
  | 'mix'
  | 'can-stir'
  | 'weigh'
  | 'can-gas'
  | 'blend'
  | 'filter'
  | 'prep'
  | 'surface'
  | 'coat'
  | 'clean'
  | 'dry'
  | 'cure'
  | 'cured'
  | 'film'
  | 'release';

export type RunStep =
  | { readonly step: AskedStep; readonly stands: 'kept' | 'lacking' | 'not-answered' }
  | { readonly step: WorkStep; readonly stands: 'done'; readonly entries: readonly Entry[] }
  /** `entries`: what was done of it so far, and is not enough. */
  | { readonly step: WorkStep; readonly stands: 'next' | 'to-come' | 'passed'; readonly entries: readonly Entry[] };

interface Work {
  readonly step: WorkStep;
  /** What tells of it, and when. */
  readonly done: readonly Entry[];
  /** Left out: as soon as something tells of it. */
  readonly isDone?: boolean;
  /** Nobody waits for it: later work passes it by. */
  readonly mayPass?: true;
}

/** Up to its coats. Of a pot that is over nothing comes any more. */
export function runOfBatch(moment: Moment, { batch, phase, given }: BatchStatus): readonly RunStep[] {
  const coats = batch.entries.filter(isOf('CoatApplied'));
  const isOver = phase.is === 'dead' || phase.is === 'over' || phase.is === 'emptied';
  const isBlended = given.doneAt !== undefined && given.doneAt <= moment.now;
  const cleaned = lastOf(batch.entries, 'GearFlushed');
  const isToldOf = cleaned.length > 0 || (isOver && cleansItsGear(batch));
  const works: readonly Work[] = [
    ...potWorks(moment.shop, batch, isBlended),
    { step: 'coat', done: coats },
    ...(isToldOf ? [{ step: 'clean', done: cleaned } as const] : []),
  ];
  const endedAt = phase.is === 'over' ? phase.at : undefined;
  return [...answersOf(moment, batch, { endedAt }), ...standing(works, isOver || coats.length > 0)];
}

/** What was sprayed in a session is cleaned in that session. */
const cleansItsGear = ({ sheet, entries }: Batch): boolean =>
  sheet.steps?.cleaning !== undefined &&
  entries.some(({ fact, alsoUnder }) => fact.type === 'CoatApplied' && !alsoUnder.some(isOfSession));

const isOfSession = (stream: StreamId): boolean => nounOf(stream) === 'session';

/** With what was done to the pot of its last coat. */
export function runOfPart(moment: Moment, part: Part): readonly RunStep[] {
  const batch = batchOf(moment.shop, part);
  const ofCoat = { endedAt: part.coats.at(-1)?.at, way: part.cure?.way };
  const ofPot =
    batch === undefined
      ? []
      : [...answersOf(moment, batch, ofCoat), ...standing(potWorks(moment.shop, batch, true), true)];
  return [...ofPot, ...standing(partWorks(part), false)];
}

/** `isBlended`: it was given what its sheet asks of stirring; stopping the stirrer alone is not that. */
function potWorks(shop: Shop, batch: Batch, isBlended: boolean): readonly Work[] {
  const { entries, sheet, weighing, place, openedAt } = batch;
  // One part alone is half a weighing.
  const weighed = weighing === undefined ? [] : entries.filter(isOf('PartsWeighed', 'PartWeighed', 'PartAdded'));
  return [
    { step: 'air', done: airBefore(shop, place, openedAt), mayPass: true },
    { step: 'mix', done: lastOf(entries, 'BatchOpened') },
    ...canWorks(shop, batch, { step: 'weigh', done: weighed }),
    ...(sheet.blend.way === 'stir'
      ? [
          {
            step: 'blend',
            done: [...lastOf(speedsIn(entries), 'StirrerStarted'), ...lastOf(entries, 'StirrerStopped')],
            isDone: isBlended,
          } as const,
        ]
      : []),
    ...(sheet.filter === undefined
      ? []
      : [
          {
            step: 'filter',
            done: batch.filteredAt === undefined ? [] : entries.filter(isOf('MixFiltered', 'MixCaught')),
          } as const,
        ]),
  ];
}

/** Round the weighing what was done to the cans that it came from: the stir before the first pour, gas after the last. */
function canWorks(shop: Shop, batch: Batch, weigh: Work): readonly Work[] {
  const poured = [...shop.cans.values()].flatMap((can) => {
    const pours = can.pours.filter((pour) => pour.batch === batch.number).map(({ at }) => at);
    return pours.length === 0 ? [] : [{ can, first: Math.min(...pours), last: Math.max(...pours) }];
  });
  const stirs = poured.flatMap(({ can, first }) =>
    lastOf(
      can.entries.filter(({ happenedAt }) => happenedAt <= first),
      'CanStirred',
    ),
  );
  const gas = poured.flatMap(({ can, last }) =>
    can.entries
      .filter(isOf('CanBlanketed'))
      .filter(({ happenedAt }) => happenedAt >= last)
      .slice(0, 1),
  );
  const told = (step: 'can-stir' | 'can-gas', done: readonly Entry[]) => (done.length === 0 ? [] : [{ step, done }]);
  return [...told('can-stir', stirs), weigh, ...told('can-gas', gas)];
}

/** From the last coat on: what was said of the film below it says nothing of this one. */
function partWorks({ entries, coats, verdict }: Part): readonly Work[] {
  const coat = coats.at(-1);
  const from = entries.findIndex(({ seq }) => seq === coat?.seq);
  const since = from < 0 ? [] : entries.slice(from);
  const measured = since.filter(({ fact }) => fact.type === 'FilmRead' && fact.state === 'dry');
  return [
    { step: 'prep', done: lastOf(entries, 'SurfacePrepared'), mayPass: true },
    { step: 'surface', done: lastOf(entries, 'SurfaceRead'), mayPass: true },
    { step: 'coat', done: lastOf(since, 'CoatApplied') },
    { step: 'dry', done: lastOf(since, 'FilmDry') },
    { step: 'cure', done: lastOf(since, 'CureStarted') },
    { step: 'cured', done: lastOf(since, 'CureEnded') },
    { step: 'film', done: measured, mayPass: true },
    { step: 'release', done: verdict?.is === 'released' ? lastOf(since, 'PartReleased') : [] },
  ];
}

/** Where it was told how fast the stirrer turns. */
const speedsIn = (entries: readonly Entry[]): readonly Entry[] =>
  entries.filter(({ fact }) => fact.type === 'StirrerStarted' && fact.revolutionsPerMinute !== undefined);

const isOf =
  (...types: readonly Fact['type'][]) =>
  ({ fact }: Entry): boolean =>
    types.includes(fact.type);

const lastOf = (entries: readonly Entry[], type: Fact['type']): readonly Entry[] =>
  entries.filter(isOf(type)).slice(-1);

function airBefore(shop: Shop, place: PlaceName, at: EpochMs): readonly Entry[] {
  const read = shop.places.get(place)?.entries.filter(({ happenedAt }) => happenedAt <= at) ?? [];
  return lastOf(read, 'AirRead');
}

/** Until when what is said of the mixing counts, and where the part cures, as far as either is known. */
interface Until {
  readonly endedAt: EpochMs | undefined;
  readonly way?: CureWay['kind'] | undefined;
}

function answersOf({ shop, now }: Moment, batch: Batch, until: Until): readonly RunStep[] {
  return stepsAskedBy(batch.sheet).flatMap((step): readonly RunStep[] => {
    if (isOfOtherCure(step, until)) return [];
    const answer = answerTo(shop.crew.stepAnswers, step, stepCaseOf(batch), countsUntil(step, batch, until, now));
    return [{ step, stands: answer === undefined ? 'not-answered' : answer.kept ? 'kept' : 'lacking' }];
  });
}

/** A clean oven is nothing to a part that cures in the room. */
function isOfOtherCure(step: AskedStep, { way }: Until): boolean {
  const { stops } = stepRows[step];
  return way !== undefined && stops !== 'weigh' && stops !== `cure-${way}`;
}

/** What is said of the mixing once the pot is gone says nothing of it; oven and room are asked of for longer. */
function countsUntil(step: AskedStep, { emptied, thickened }: Batch, { endedAt }: Until, now: EpochMs): EpochMs {
  if (stepRows[step].stops !== 'weigh') return now;
  const ends = [endedAt, emptied?.at, thickened?.at].filter((at) => at !== undefined);
  return epochMs(Math.min(now, ...ends));
}

/** `isOver`: what is not done by now is not done any more. */
function standing(works: readonly Work[], isOver: boolean): readonly RunStep[] {
  const isDone = ({ done, isDone: told = done.length > 0 }: Work): boolean => told;
  const lastDone = isOver ? works.length : works.findLastIndex(isDone);
  const next = works.findIndex((work, i) => !isDone(work) && i > lastDone && work.mayPass !== true);
  return works.map((work, i): RunStep => {
    const { step, done, mayPass } = work;
    if (isDone(work)) return { step, stands: 'done', entries: done };
    if (i < lastDone) return { step, stands: 'passed', entries: done };
    return { step, stands: i === next || (mayPass === true && i < next) ? 'next' : 'to-come', entries: done };
  });
}
