// How an event's hash is made. The name of the sum stands beside the hash and is part of what is sealed, so that a later
// program can seal otherwise without an old row looking edited.

import { hash } from 'node:crypto';
import type { Envelope } from './history.ts';

/** Before a crew's first event. */
export const firstHash = '0'.repeat(64);

/** SHA-256 over everything but the hash itself, in a fixed order, whatever order its keys were said in. */
export function hashOf(envelope: Omit<Envelope, 'hash'>): string {
  return hash('sha256', JSON.stringify(keysInOrder(sealedBy(envelope))));
}

function sealedBy(envelope: Omit<Envelope, 'hash'>): readonly unknown[] {
  const first = [
    envelope.previousHash,
    envelope.crew,
    envelope.seq,
    envelope.stream,
    envelope.version,
    envelope.alsoUnder,
    envelope.happenedAt,
    envelope.recordedAt,
    envelope.by,
    envelope.request,
    envelope.saidWith,
    envelope.body,
  ];
  switch (envelope.seal) {
    // Rows from before editions and shapes: theirs are 1, and 1 is all that they may say.
    case 'sha256/1':
      return envelope.edition === 1 && envelope.shape === 1 ? first : [...first, envelope.edition, envelope.shape];
    case 'sha256/2':
      return [...first, envelope.seal, envelope.edition, envelope.shape];
  }
}

/** A row that is read back has its keys in the schema's order: the hash must not see the difference. */
function keysInOrder(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(keysInOrder);
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, held]) => [key, keysInOrder(held)]));
}
