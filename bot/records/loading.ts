// Loads what a question about the past names: streams into the shop until nothing new is named, ledger entries straight
// from the store, since a year of batches is more than a shop should hold.

import { asItStands } from '../../core/as-it-stands.ts';
import { type Batch, foldBatch } from '../../core/batch/batch.ts';
import type { Executor } from '../../core/execute.ts';
import { type CrewId, nounOf, type StreamId } from '../../core/ids.ts';
import type { Store } from '../../core/ports.ts';
import { coatingEntries, type LedgerEntry, solventEntries } from '../../core/records/solvent-ledger.ts';
import type { Shop } from '../../core/shop.ts';
import type { EpochMs } from '../../core/units.ts';

export interface RecordSource {
  readonly executor: Executor;
  readonly store: Store;
  readonly crew: CrewId;
}

/** `name`: the streams that the question needs, as far as what is loaded shows them. */
export async function loadNamed(executor: Executor, name: (shop: Shop) => readonly StreamId[]): Promise<Shop> {
  let shop = await executor.look();
  let named: ReadonlySet<StreamId> = new Set();
  for (;;) {
    const wanted = new Set([...named, ...name(shop)]);
    if (wanted.size === named.size) return shop;
    named = wanted;
    shop = await executor.look([...wanted]);
  }
}

/** Everything used from `from` on and before `to`: batches by their weighing, solvents as they were said. */
export async function loadLedger(source: RecordSource, from: EpochMs, to: EpochMs): Promise<readonly LedgerEntry[]> {
  const { executor, store, crew } = source;
  const entries: LedgerEntry[] = [];
  for (const stream of store.archive.filedBetween(crew, from, to)) {
    const noun = nounOf(stream);
    if (noun !== 'batch' && noun !== 'crew' && noun !== 'session') continue;
    const { envelopes, unread } = await store.readUnder(crew, stream);
    // Loaded, it is told of beside the answer.
    if (unread.length > 0) await executor.look([stream]);
    const standing = asItStands(envelopes);
    if (noun === 'batch') entries.push(...entriesOfBatch(foldBatch(standing)));
    else entries.push(...standing.flatMap(solventEntries));
  }
  return entries.filter(({ at }) => at >= from && at < to).sort((a, b) => a.at - b.at);
}

function entriesOfBatch(batch: Batch | undefined): readonly LedgerEntry[] {
  return batch === undefined ? [] : coatingEntries(batch);
}
