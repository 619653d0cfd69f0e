// Whether an act can be done now to what a line names, by how it stands: what happened is recorded all the same, but seldom happens.

import type { BatchNumber, PartName } from '../../../core/ids.ts';
import type { LiveNow } from '../live-now.ts';
import type { SaidAct } from '../tongues/said-words.ts';
import { actRows } from './act-rows.ts';

interface Named {
  readonly parts: readonly PartName[];
  readonly batch?: BatchNumber;
}

export function fits(act: SaidAct, { parts, batch }: Named, now: LiveNow | undefined): boolean {
  const { on, parts: phases, batches } = actRows[act];
  if (now === undefined) return true;
  const isPart = parts.every(
    (name) => phases?.some((phase) => now.parts.some((part) => part.name === name && part.phase === phase)) !== false,
  );
  const pot = batch === undefined || on !== 'batch' ? undefined : now.batches.find(({ number }) => number === batch);
  return isPart && (pot === undefined || batches?.includes(pot.phase) !== false);
}
