// Proves a crew's chain from the rows as they lie in the store: each row's hash made again from what it holds, each row's
// link to the one before it, the numbers without a gap, and the hashes that were given out.

import { z } from 'zod';
import { sealNames } from '../seal-names.ts';
import { firstHash, hashOf } from '../seal-sums.ts';
import { type EpochMs, epochMs } from '../units.ts';
import type { RecordRow } from './archive.ts';

export type ChainFault =
  /** The row does not make its own hash: something in it was changed. */
  | { readonly fault: 'edited'; readonly seq: number; readonly stream: string; readonly type: string }
  /** Rows from `from` to `to` are gone. */
  | { readonly fault: 'missing'; readonly from: number; readonly to: number }
  /** It makes its own hash, but not from the one before it: put in place of another. */
  | { readonly fault: 'replaced'; readonly seq: number; readonly stream: string; readonly type: string }
  /** Something beside the rows knows of later ones: they were filed under a stream. */
  | { readonly fault: 'tail-cut'; readonly endsAt: number; readonly known: number }
  /** A hash that was given out does not stand where it stood. */
  | { readonly fault: 'given-differs'; readonly seq: number };

export interface ChainProof {
  readonly events: number;
  readonly lastHash: string;
  readonly lastAt: EpochMs | undefined;
  readonly faults: readonly ChainFault[];
  /** How many hashes given out on digests and travellers stand where they stood. */
  readonly givenFound: number;
  /** The hash asked about; `undefined` where none was. */
  readonly asked: AskedHash | undefined;
}

/** `found: false`: the record ends before it, or is not the one that it was taken from. */
export type AskedHash =
  | { readonly hash: string; readonly found: false }
  | { readonly hash: string; readonly found: true; readonly seq: number; readonly at: EpochMs };

export interface ChainWitness {
  readonly crew: string;
  /** The highest number filed under a stream. */
  readonly filedEnd: number;
  readonly hashAt: (seq: number) => string | undefined;
  /** From paper, or its beginning. */
  readonly hash?: string | undefined;
}

export interface ChainProver {
  /** The next rows, in order. */
  readonly take: (rows: readonly RecordRow[]) => void;
  readonly proof: () => ChainProof;
}

/** Only its outline: a row that was tampered with may hold anything. */
const Given = z.object({ type: z.literal('HashGiven'), seq: z.number(), hash: z.string() });
type Given = z.infer<typeof Given>;

/** Takes the rows piece by piece, so that a long record is proved between other work. */
export function chainProver({ crew, filedEnd, hashAt, hash }: ChainWitness): ChainProver {
  const faults: ChainFault[] = [];
  const given: Given[] = [];
  let asked: AskedHash | undefined = hash === undefined ? undefined : { hash, found: false };
  let events = 0;
  let last: RecordRow | undefined;

  function takeOne(row: RecordRow): void {
    events += 1;
    const { seq, stream, type } = row;
    const expected = (last?.seq ?? 0) + 1;
    if (seq > expected) faults.push({ fault: 'missing', from: expected, to: seq - 1 });
    if (hashOfRow(crew, row) !== row.hash || typeIn(row.body) !== type)
      faults.push({ fault: 'edited', seq, stream, type });
    // After a gap the link cannot fit; the gap is told already.
    else if (seq === expected && row.previous_hash !== (last?.hash ?? firstHash)) {
      faults.push({ fault: 'replaced', seq, stream, type });
    }
    if (asked?.found === false && row.hash.startsWith(asked.hash)) {
      asked = { hash: asked.hash, found: true, seq, at: epochMs(row.recorded_at) };
    }
    const note = type === 'HashGiven' ? Given.safeParse(parsed(row.body)).data : undefined;
    if (note !== undefined) given.push(note);
    last = row;
  }

  function proof(): ChainProof {
    const endsAt = last?.seq ?? 0;
    const standing = given.filter((note) => hashAt(note.seq) === note.hash);
    const differing = given.filter((note) => !standing.includes(note));
    return {
      events,
      lastHash: last?.hash ?? firstHash,
      lastAt: last === undefined ? undefined : epochMs(last.recorded_at),
      faults: [
        ...faults,
        ...differing.map(({ seq }): ChainFault => ({ fault: 'given-differs', seq })),
        ...(filedEnd > endsAt ? [{ fault: 'tail-cut' as const, endsAt, known: filedEnd }] : []),
      ],
      givenFound: standing.length,
      asked,
    };
  }

  return {
    take: (rows) => {
      for (const row of rows) takeOne(row);
    },
    proof,
  };
}

/** The sum that sealed it, over what the row holds now, unparsed by any schema; `undefined` where it is no JSON any more. */
export function hashOfRow(crew: string, row: RecordRow): string | undefined {
  const alsoUnder = parsed(row.also_under);
  const saidWith = parsed(row.said_with);
  const body = parsed(row.body);
  const seal = sealNames.find((name) => name === row.seal);
  if (alsoUnder === undefined || saidWith === undefined || body === undefined || seal === undefined) return undefined;
  const sealed: unknown = {
    crew,
    seq: row.seq,
    stream: row.stream,
    version: row.version,
    alsoUnder,
    happenedAt: row.happened_at,
    recordedAt: row.recorded_at,
    by: row.by_person,
    request: row.request,
    saidWith,
    body,
    edition: row.edition,
    shape: row.shape,
    seal,
    previousHash: row.previous_hash,
  };
  return hashOf(sealed as Parameters<typeof hashOf>[0]);
}

/** The column beside the body is not sealed, so it must say what the body says. */
function typeIn(body: string): unknown {
  const first = /^\{"type":"(\w+)"/.exec(body)?.[1];
  if (first !== undefined) return first;
  const json = parsed(body);
  return typeof json === 'object' && json !== null && 'type' in json ? json.type : undefined;
}

function parsed(body: string): unknown {
  try {
    return JSON.parse(body);
  } catch {
    return undefined;
  }
}
