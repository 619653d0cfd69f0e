// The steps of the maker's paper on cards: the one that a batch asks about, and what is said before an act.

import type { Batch } from '../../core/batch/batch.ts';
import { batchStream } from '../../core/ids.ts';
import type { Method } from '../../core/methods.ts';
import type { AskedStep } from '../../core/steps/step-rows.ts';
import { stepAskedAt } from '../../core/steps/steps-answered.ts';
import { type StepSaid, saidBeforeCoat } from '../../core/steps/steps-said.ts';
import { unreadUnder } from '../../core/unread.ts';
import type { CardAction } from './card.ts';
import { type Telling, tap } from './card-context.ts';

export interface StepAsked {
  readonly step: AskedStep | undefined;
  readonly lines: readonly string[];
  readonly actions: readonly CardAction[];
}

/** One question with its two answers, or nothing. */
export function stepAsked(telling: Telling, batch: Batch): StepAsked {
  const step = stepAskedAt(telling.shop.crew.stepAnswers, batch, telling.now);
  // On a pot that does not read nothing would be recorded.
  const isBroken = unreadUnder(telling.shop, batchStream(batch.number)).length > 0;
  if (step === undefined || isBroken) return { step: undefined, lines: [], actions: [] };
  const { asked } = telling.words.steps.rows[step];
  const answers = [true, false].map((kept) => stepTap(telling, step, kept, batch));
  return { step, lines: [asked(batch.sheet, telling.figures)], actions: answers };
}

/** What it says is what is answered. */
export function stepTap(telling: Telling, step: AskedStep, kept: boolean, batch?: Batch): CardAction {
  const { yes, no } = telling.words.steps.rows[step];
  const of = batch === undefined ? '' : `${batch.number} `;
  const [id, label, says] = kept ? (['step-yes', yes, 'yes'] as const) : (['step-no', no, 'no'] as const);
  return { ...tap(telling, id, `confirm ${of}${step} ${says}`), label };
}

/** How it goes on and what to wear for it: of the method of the last coat, where there was one, else of each that the sheet allows. */
export function beforeCoatLines(telling: Telling, { sheet }: Batch): readonly string[] {
  const { parts, batches } = telling.shop;
  const nouns: readonly { readonly coats: readonly { readonly at: number; readonly method: Method }[] }[] = [
    ...parts.values(),
    ...batches.values(),
  ];
  const coats = nouns.flatMap((each) => each.coats.slice(-1));
  const last = coats.toSorted((a, b) => b.at - a.at).find(({ method }) => sheet.methods.includes(method));
  const methods = last === undefined ? sheet.methods : [last.method];
  return [
    ...methods.map((method) => telling.words.names.methodWay(method)),
    ...(last === undefined ? [] : saidLines(telling, saidBeforeCoat(sheet, last.method))),
  ];
}

export const saidLines = (telling: Telling, said: readonly StepSaid[]): readonly string[] =>
  said.map((each) => telling.words.steps.said(each, telling.figures));
