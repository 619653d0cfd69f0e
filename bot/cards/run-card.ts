// The run card: where a pot or a part stands in its run, what was done, what comes, as a phone shows it.

import type { Batch } from '../../core/batch/batch.ts';
import type { Fact } from '../../core/history.ts';
import { nounOf, numberIn, type StreamId } from '../../core/ids.ts';
import type { Part } from '../../core/part/part.ts';
import type { PartClockId, PartStatus } from '../../core/part/part-status.ts';
import { lotsOf } from '../../core/records/trace.ts';
import { batchOf } from '../../core/shop.ts';
import { statusOf } from '../../core/status.ts';
import { type RunStep, runOfBatch, runOfPart } from '../../core/steps/run.ts';
import { type AskedStep, isAsked, stepRows } from '../../core/steps/step-rows.ts';
import { firstUpper } from '../language/first-upper.ts';
import { afterCureLines } from './after-cure-lines.ts';
import { batchFacts, batchLine, batchTaps, notToUse } from './batch-cards.ts';
import { unnamedOnRun } from './can-asked.ts';
import { type Card, type CardAction, makeCard, type Tone } from './card.ts';
import type { Telling } from './card-context.ts';
import { clockFacts } from './clock-text.ts';
import { roomLines } from './cure-facts.ts';
import { heatHazards, potOverLines } from './dead-pot.ts';
import { nextTaps } from './next-taps.ts';
import { partLine } from './part-cards.ts';
import { stepAsked, stepTap } from './step-lines.ts';
import { lotLines } from './trace-cards.ts';

export function batchRunCard(telling: Telling, batch: Batch): Card {
  const status = statusOf.batch(telling, batch);
  const run = runOfBatch(telling, status);
  const isDead = status.phase.is === 'dead' || status.phase.is === 'over';
  const asked = stepAsked(telling, batch);
  const off = notToUse(telling, status);
  const unnamed = unnamedOnRun(telling, batch);
  const lots = lotsOf(telling.shop, batch);
  const fromCans =
    lots.length === 0 ? unnamed.lines : lotLines(telling, { lots, unnamed: unnamed.parts }).map((line) => line.trim());
  const tone = isDead ? 'stop' : off.length > 0 ? 'warn' : toneOf(run);
  return makeCard(telling.words.steps.run.ofBatch(batch.number), tone, {
    facts: batchFacts(telling, status),
    lines: [
      batchLine(telling, batch),
      ...(isDead ? potOverLines(telling, batch) : []),
      ...off,
      ...runLines(telling, run),
      ...fromCans,
      ...asked.lines,
    ],
    hazards: heatHazards(telling, batch.thickened?.seen),
    actions: [
      ...batchTaps(telling, status),
      ...asked.actions,
      ...unnamed.actions,
      ...unsaidTaps(telling, run, batch, { asked: asked.step, isOver: isDead }),
    ],
  });
}

export function partRunCard(telling: Telling, part: Part): Card {
  const status = statusOf.part(telling, part);
  const run = runOfPart(telling, part);
  const batch = batchOf(telling.shop, part);
  const tone = status.heldBy.length > 0 ? 'warn' : toneOf(run);
  return makeCard(telling.words.steps.run.ofPart(part.name), tone, {
    facts: clockFacts(telling, status.clocks, clocksInHand(status)),
    lines: [
      partLine(telling, status),
      ...roomLines(telling, status),
      ...afterCureLines(telling, status),
      ...runLines(telling, run.filter(isOfPart)),
    ],
    actions: [
      ...nextTaps(telling, status.next()),
      ...(batch === undefined ? [] : unsaidTaps(telling, run, batch, { asked: undefined, isOver: true })),
    ],
  });
}

/** A film that is dry has no flash-off any more. */
const clocksInHand = ({ clocks, phase }: PartStatus): readonly PartClockId[] =>
  clocks.map(({ id }) => id).filter((id) => phase.is === 'flashing' || (id !== 'flash' && id !== 'flash-most'));

/** What was said of the mixing stands on its pot's card: of a part only what is lacking, and what its cure still waits for. */
const isOfPart = ({ step, stands }: RunStep): boolean =>
  stands !== 'kept' && (stands !== 'not-answered' || !isAsked(step) || stepRows[step].stops.startsWith('cure'));

/** Whoever looks the run up may say what nobody has said yet, each with a tap that says what it says. */
function unsaidTaps(
  telling: Telling,
  run: readonly RunStep[],
  batch: Batch,
  { asked, isOver: isGone }: { readonly asked: AskedStep | undefined; readonly isOver: boolean },
): readonly CardAction[] {
  const isOver = isGone || batch.emptied !== undefined || batch.thickened !== undefined;
  return run.flatMap(({ step, stands }) => {
    if (stands !== 'not-answered' || !isAsked(step) || step === asked) return [];
    if (isOver && stepRows[step].stops === 'weigh') return [];
    const { name } = telling.words.steps.rows[step];
    const label = firstUpper(name);
    return [{ ...stepTap(telling, step, true, batch), id: `step-yes-${step}`, label }];
  });
}

const toneOf = (run: readonly RunStep[]): Tone => (run.some(({ stands }) => stands === 'lacking') ? 'warn' : 'plain');

/** Thirty brackets dipped from one pot would fill a phone. */
const mostCoats = 4;

/** What was done each in its own line, as it happened; all else gathered by how it stands. */
function runLines({ words, figures }: Telling, run: readonly RunStep[]): readonly string[] {
  const { run: sentences, rows } = words.steps;
  const nameOf = (each: RunStep): string => (isAsked(each.step) ? rows[each.step].name : sentences.work(each.step));
  const gathered = (stands: Exclude<RunStep['stands'], 'done'>): readonly string[] => {
    const names = run.filter((each) => each.stands === stands).map(nameOf);
    return names.length === 0 ? [] : [sentences.stands(stands, names, figures)];
  };
  const done = run.flatMap((each) => ('entries' in each ? each.entries : []));
  const coats = done.filter(({ fact }) => fact.type === 'CoatApplied');
  const untold = coats.slice(0, -mostCoats);
  const told = done
    .filter((entry) => !untold.includes(entry))
    .toSorted((one, other) => one.happenedAt - other.happenedAt || one.seq - other.seq);
  // A pot may be poured from several cans.
  const toldOf = (stream: StreamId, fact: Fact): string =>
    `${nounOf(stream) === 'can' ? `${words.records.canLabel(numberIn(stream))}: ` : ''}${words.fact(fact, figures)}`;
  return [
    ...gathered('lacking'),
    ...gathered('next'),
    ...told.map(({ happenedAt, stream, fact, by }) =>
      sentences.done(figures.timeDown(happenedAt), toldOf(stream, fact), by),
    ),
    ...(untold.length === 0 ? [] : [sentences.coatsBefore(untold.length, figures)]),
    ...gathered('kept'),
    ...gathered('passed'),
    ...gathered('not-answered'),
    ...gathered('to-come'),
  ];
}
