// The gear that is cleaned for a batch, or for none: what of it waits, and with what the sheet has it cleaned.

import type { Batch } from '../../core/batch/batch.ts';
import { cleaningActs } from '../../core/batch/batch-status.ts';
import { gearToClean } from '../../core/batch/gear-to-clean.ts';
import type { CommandOf } from '../../core/commands.ts';
import { crewStream } from '../../core/ids.ts';
import { nextActs } from '../../core/next-acts.ts';
import { lackingBottle } from '../../core/steps/step-rules.ts';
import { saidBeforeCleaning } from '../../core/steps/steps-said.ts';
import { type Card, type CardAction, makeCard } from './card.ts';
import { type Telling, undoTap } from './card-context.ts';
import { nextTaps } from './next-taps.ts';
import { type Act, touchedBatch } from './recorded-act.ts';
import { saidLines, strengthQuestion, weakLines } from './step-lines.ts';

export const cleaningTaps = (telling: Telling, batch: Batch): readonly CardAction[] =>
  nextTaps(telling, nextActs(telling, cleaningActs(batch)));

/** What of it waits, and with what the sheet has it cleaned; `isFirst`: and what to wear for it, which is said once. */
export function cleaningLines(telling: Telling, batch: Batch, isFirst: boolean): readonly string[] {
  const { figures } = telling;
  const { session: words } = telling.words;
  const { flush } = batch.sheet;
  const waiting = gearToClean(batch).map(({ gear }) => gear);
  if (waiting.length === 0) return [];
  const withWhat = flush === undefined ? words.noFlushOnSheet : words.flushSequence(flush.steps, flush.source, figures);
  const worn = isFirst ? saidLines(telling, saidBeforeCleaning(batch.sheet)) : [];
  return [words.toClean(waiting, figures), withWhat, ...weakLines(telling, batch), ...worn];
}

export function cleanedCard({ telling, command, outcome }: Act<CommandOf<'flush'>>): Card {
  const question = strengthQuestion(telling, touchedBatch(outcome), command);
  const { gear, solvent } = command;
  const { session: words } = telling.words;
  const batch = touchedBatch(outcome);
  const waiting = batch === undefined ? [] : gearToClean(batch);
  const left = waiting.find((each) => each.gear === gear)?.left;
  const weak = weakBottleLines(telling, outcome);
  const tone = weak.length > 0 ? 'warn' : waiting.length === 0 ? 'good' : 'plain';
  return makeCard(words.cleaned(gear, solvent), tone, {
    lines: [
      ...(left === undefined ? [] : [words.flushNext(gear, left, telling.figures)]),
      ...(left === undefined && batch !== undefined ? cleaningLines(telling, batch, false) : []),
      ...weak,
      ...question.lines,
    ],
    actions: [
      ...question.actions,
      ...(batch === undefined ? [] : cleaningTaps(telling, batch)),
      ...outcome.envelopes.slice(-1).map(({ seq }) => undoTap(telling, seq)),
    ],
  });
}

/** For no pot, with what was told to be too weak: that, and what it may have cost. */
function weakBottleLines(telling: Telling, { envelopes }: Act<CommandOf<'flush'>>['outcome']): readonly string[] {
  const { steps } = telling.words;
  return envelopes.flatMap(({ stream, body, happenedAt }) => {
    const isOfNone = stream === crewStream && body.type === 'GearFlushed';
    const lacking = isOfNone ? lackingBottle(telling.shop, { fact: body, happenedAt }) : undefined;
    return lacking === undefined ? [] : [steps.lacking(lacking, telling.figures), steps.weakCost];
  });
}
