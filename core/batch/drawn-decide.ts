// From which can a part came that has been weighed already: it happened, so that the can's clock runs from the pour.

import type { CommandOf } from '../commands.ts';
import { type Decision, type Said, unclear } from '../decision.ts';
import { isFailed } from '../failed.ts';
import { batchStream, canStream } from '../ids.ts';
import { judge } from '../rules.ts';
import type { Shop } from '../shop.ts';
import { findBatch } from './batch-decide.ts';
import { unnamedIn } from './unnamed-cans.ts';
import { cansNamed, poursOf, shared } from './weigh-decide.ts';
import { namedRules } from './weigh-rules.ts';

export function decideDrawn(shop: Shop, said: Said<CommandOf<'drawn'>>): Decision {
  const { batch: named, component, cans: numbers } = said.command;
  const batch = findBatch(shop, named, (each) => unnamedIn(each).some((open) => open.component === component));
  if (isFailed(batch)) return unclear(batch.failed);
  const cans = cansNamed(shop, numbers, [component]);
  if (isFailed(cans)) return unclear(cans.failed);
  // One after the other, where more than one waits: each pour finds the can as the one before left it.
  const open = unnamedIn(batch).find((each) => each.component === component);
  if (open === undefined) return unclear({ code: 'no-can-wanted', batch: batch.number, component });
  const { seq, happenedAt } = open.weighing;
  const from = shared(cans, component, open.grams);
  const pours = poursOf(shop, batch, from, happenedAt, {});
  return judge(shop, { ...said, stance: { is: 'happened' } }, namedRules, [{ pours }], (saidWith) => [
    {
      streams: [batchStream(batch.number), ...new Set(from.map(({ can }) => canStream(can)))],
      happenedAt,
      body: { type: 'CanNamed' as const, weighing: seq, component, fromCans: [...from] },
      saidWith,
    },
  ]);
}
