// The steps of the maker's paper on cards: the one that a batch asks about, and what is said before an act.

import type { Batch } from '../../core/batch/batch.ts';
import { lastFiltering } from '../../core/batch/filtering.ts';
import { hasAskedOfCans } from '../../core/batch/unnamed-cans.ts';
import { methodLikely } from '../../core/coats-waiting.ts';
import type { CommandOf } from '../../core/commands.ts';
import { batchStream } from '../../core/ids.ts';
import { type Method, methodRows } from '../../core/methods.ts';
import type { Sheet } from '../../core/products/sheet.ts';
import { isFlushedWith } from '../../core/steps/alcohol.ts';
import type { AskedStep } from '../../core/steps/step-rows.ts';
import { lackingStep } from '../../core/steps/step-rules.ts';
import { stepAskedAt } from '../../core/steps/steps-answered.ts';
import { type StepSaid, saidBeforeCoat } from '../../core/steps/steps-said.ts';
import { unreadUnder } from '../../core/unread.ts';
import { briefsOffNow } from './briefs-off.ts';
import type { CardAction } from './card.ts';
import { type Telling, tap } from './card-context.ts';

export interface StepAsked {
  readonly step: AskedStep | undefined;
  readonly lines: readonly string[];
  readonly actions: readonly CardAction[];
}

/** One question with its two answers, or nothing. */
export function stepAsked(telling: Telling, batch: Batch, isFlushed?: true): StepAsked {
  const step = stepAskedAt(telling.shop.crew.stepAnswers, batch, telling.now, isFlushed);
  // On a pot that does not read nothing would be recorded.
  const isBroken = unreadUnder(telling.shop, batchStream(batch.number)).length > 0;
  if (step === undefined || isBroken) return { step: undefined, lines: [], actions: [] };
  const { asked } = telling.words.steps.rows[step];
  const asks = asked(batch.sheet, telling.figures);
  const answers = [true, false].map((kept) => ({ ...stepTap(telling, step, kept, batch), asks }));
  const opened = step === 'papers' ? openTaps(telling, batch.sheet) : [];
  return { step, lines: [asks], actions: [...opened, ...answers] };
}

/** What is to be read is one tap away, where the sheet names it. */
const openTaps = (telling: Telling, { id, steps }: Sheet): readonly CardAction[] =>
  steps?.papers?.named === undefined ? [] : [tap(telling, 'open-papers', `papers ${id}`)];

/** After a flush with what the sheet wants of a strength: how strong the bottle is, where the batch has asked nothing else. */
export function strengthQuestion(
  telling: Telling,
  batch: Batch | undefined,
  flush: CommandOf<'flush'>,
): Pick<StepAsked, 'lines' | 'actions'> {
  const isIt = batch !== undefined && isFlushedWith(batch.sheet, { fact: { type: 'GearFlushed', ...flush } });
  const asked = isIt && !hasAskedOfCans(telling.shop, batch) ? stepAsked(telling, batch, true) : undefined;
  return asked?.step === 'alcohol' ? asked : { lines: [], actions: [] };
}

/** Before a flush: that the bottle in use is weaker than the sheet asks, or nobody knows how strong. */
export function weakLines(telling: Telling, batch: Batch | undefined): readonly string[] {
  const { crew } = telling.shop;
  const lacking = batch && lackingStep(crew.stepAnswers, batch, 'flush', telling.now);
  return lacking === undefined ? [] : [telling.words.steps.lacking(lacking, telling.figures)];
}

/** What it says is what is answered. */
export function stepTap(telling: Telling, step: AskedStep, kept: boolean, batch?: Batch): CardAction {
  const { yes, no } = telling.words.steps.rows[step];
  const of = batch === undefined ? '' : `${batch.number} `;
  const [id, label, says] = kept ? (['step-yes', yes, 'yes'] as const) : (['step-no', no, 'no'] as const);
  return { ...tap(telling, id, `confirm ${of}${step} ${says}`), label, bare: [says] };
}

/** Through what and into what it was filtered, where somebody told. */
export function filterLines({ words, figures }: Telling, batch: Batch, of?: number): readonly string[] {
  const told = words.steps.filterTold(lastFiltering(batch) ?? {}, figures);
  return told === '' ? [] : [words.steps.filteredThrough(told, of)];
}

/** Said before the coat: by the method that most likely comes; where none is known, each is a tap that says its way. */
export function beforeCoat(telling: Telling, batch: Batch): Pick<StepAsked, 'lines' | 'actions'> {
  const { sheet } = batch;
  const likely = methodLikely(telling.shop, batch);
  const off = (likely === undefined ? sheet.methods : [likely]).some((method) => methodRows[method].atomised)
    ? briefsOffNow(telling)
    : [];
  if (likely !== undefined) return { lines: [...wayLines(telling, likely, sheet), ...off], actions: [] };
  const { names, buttons } = telling.words;
  const ways = sheet.methods.map((method) => ({
    ...tap(telling, 'way', `hazards ${method}`),
    id: `way-${method}`,
    label: `${buttons.way} ${names.method(method)}`,
    bare: [method],
  }));
  return { lines: [names.methodAsked, ...off], actions: ways };
}

/** How it goes on, and what to wear for it. */
export const wayLines = (telling: Telling, method: Method, sheet: Sheet | undefined): readonly string[] => [
  telling.words.names.methodWay(method),
  ...(sheet === undefined ? [] : saidLines(telling, saidBeforeCoat(sheet, method))),
];

export const saidLines = (telling: Telling, said: readonly StepSaid[]): readonly string[] =>
  said.map((each) => telling.words.steps.said(each, telling.figures));
