// A coat is where a part meets a batch: both have their say, and the event is filed under both.

import { findBatch } from '../batch/batch-decide.ts';
import { coatFromBatchRules } from '../batch/batch-rules.ts';
import type { CommandOf } from '../commands.ts';
import { type Decision, type Said, unclear } from '../decision.ts';
import type { NewEvent } from '../history.ts';
import { batchStream, partStream } from '../ids.ts';
import { holdAfter } from '../part/holding.ts';
import { nearNames } from '../part/near-names.ts';
import { partAsOf } from '../part/part-decide.ts';
import { coatOnPartRules } from '../part/part-rules.ts';
import { airServing } from '../place/place.ts';
import { judge } from '../rules.ts';
import { airLog, liveParts, type Shop } from '../shop.ts';

export function decideCoat(shop: Shop, said: Said<CommandOf<'coat'>>): Decision {
  const { parts, method } = said.command;
  const batch = findBatch(shop, said.command.batch, ({ weighing, thickened }) => weighing !== undefined && !thickened);
  if ('kind' in batch) return batch;
  for (const name of parts) {
    if (shop.parts.has(name)) continue;
    const near = nearNames(
      name,
      liveParts(shop).map((part) => part.name),
    );
    if (near.length > 0 && said.stance.is !== 'happened') return unclear({ code: 'near-part', part: name, near });
  }
  const { sheet } = batch;
  const read = airServing(shop.places.get(batch.place), said.at, shop.crew.airLimitMinutes);
  const air = airLog(shop, batch.place);
  const cases = parts.map((name) => ({
    part: partAsOf(shop, name, said.at),
    batch,
    sheet,
    air,
    at: said.at,
    method,
    ...read,
  }));
  return judge(shop, said, [...coatFromBatchRules, ...coatOnPartRules], cases, (saidWith) =>
    parts.flatMap((part): readonly NewEvent[] => [
      {
        streams: [partStream(part), batchStream(batch.number)],
        happenedAt: said.at,
        body: { type: 'CoatApplied', part, batch: batch.number, method },
        saidWith,
      },
      ...holdAfter(part, said.at, saidWith),
    ]),
  );
}
