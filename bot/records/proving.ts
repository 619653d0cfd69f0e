// Proves the record piece by piece, so that bells ring meanwhile.

import { setImmediate } from 'node:timers/promises';
import type { CrewId } from '../../core/ids.ts';
import type { Archive } from '../../core/records/archive.ts';
import { type ChainProof, chainProver } from '../../core/records/chain.ts';

/** Some 10 ms of work. */
const pieceRows = 300;

export async function proveRecord(archive: Archive, crew: CrewId, hash: string | undefined): Promise<ChainProof> {
  const witness = { crew, filedEnd: archive.filedEnd(crew), hashAt: (seq: number) => archive.hashAt(crew, seq), hash };
  const prover = chainProver(witness);
  for (let after = 0; ; ) {
    const rows = archive.rowsAfter(crew, after, pieceRows);
    prover.take(rows);
    const last = rows.at(-1);
    if (last === undefined) return prover.proof();
    after = last.seq;
    await setImmediate();
  }
}
