// What the sheet promises once the cure is given: from when the part may serve, from when it has its full properties, until
// when it still improves. Nothing of a cure that no reading proves.

import type { Sheet } from '../products/sheet.ts';
import type { AfterCure } from '../products/sheet-part.ts';
import { type EpochMs, minutesAfter } from '../units.ts';
import type { Cure } from './part.ts';
import type { PartStatus } from './part-status.ts';

export const afterStages = ['service', 'full', 'improves'] as const;
type AfterStage = (typeof afterStages)[number];

const waits = { service: 'serviceMinutes', full: 'fullMinutes', improves: 'improvesMinutes' } as const satisfies Record<
  AfterStage,
  keyof AfterCure
>;

export interface AfterDue {
  readonly stage: AfterStage;
  readonly at: EpochMs;
}

export function afterCure({ part, sheet, cure }: PartStatus, now: EpochMs): readonly AfterDue[] {
  const doneAt = cure?.given?.doneAt;
  if (sheet === undefined || part.cure === undefined || doneAt === undefined || doneAt > now) return [];
  return afterGiven(sheet, part.cure.way, doneAt);
}

/** `doneAt`: when the cure was given. */
export function afterGiven(sheet: Sheet, way: Cure['way'], doneAt: EpochMs | undefined): readonly AfterDue[] {
  const after = sheet.cure[way]?.after;
  if (after === undefined || doneAt === undefined) return [];
  return afterStages.flatMap((stage) => {
    const wait = after[waits[stage]];
    return wait === undefined ? [] : [{ stage, at: minutesAfter(doneAt, wait) }];
  });
}
