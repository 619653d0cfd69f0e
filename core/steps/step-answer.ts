// The event of an answer about a step: under the crew, for which it counts beyond the batch, and under the batch that asked.

import type { NewEvent } from '../history.ts';
import { type BatchNumber, batchStream, crewStream, type PlaceName } from '../ids.ts';
import { known } from '../known.ts';
import type { Sheet } from '../products/sheet.ts';
import { papersRevision } from '../products/sheet-papers.ts';
import type { EpochMs, Percent } from '../units.ts';
import type { AskedStep } from './step-rows.ts';

export interface Answer {
  readonly step: AskedStep;
  readonly kept: boolean;
  readonly purityPercent?: Percent | undefined;
  /** Whose paper asks. */
  readonly sheet: Pick<Sheet, 'id' | 'revision' | 'steps'>;
  readonly place: PlaceName;
  readonly batch: BatchNumber | undefined;
}

export function stepAnswer({ sheet, batch, purityPercent, ...answer }: Answer, happenedAt: EpochMs): NewEvent {
  const under = batch === undefined ? [] : [batchStream(batch)];
  const paper = {
    sheet: sheet.id,
    revision: answer.step === 'papers' ? papersRevision(sheet) : sheet.revision,
  };
  const body = { type: 'StepAnswered' as const, ...answer, ...paper, ...known({ batch, purityPercent }) };
  return { streams: [crewStream, ...under], happenedAt, body };
}
