// The same done to several parts is told once: `rail-01 to rail-40: part noted`.

import type { Entry } from '../../core/history.ts';
import { nameIn, nounOf, type PartName, partStream } from '../../core/ids.ts';

export type ActEntry = Pick<Entry, 'stream' | 'fact'>;

/** In their order; `act` tells one of them, `named` several parts. */
export function actsAlike(
  entries: readonly ActEntry[],
  act: (entry: ActEntry) => string,
  named: (parts: readonly PartName[]) => string,
): readonly string[] {
  const alike = new Map<string, { readonly first: ActEntry; readonly parts: PartName[] }>();
  for (const entry of entries) {
    const key = act(of(entry, '*'));
    const same = alike.get(key);
    if (same === undefined) alike.set(key, { first: entry, parts: [nameIn(entry.stream)] });
    else same.parts.push(nameIn(entry.stream));
  }
  return [...alike.values()].map(({ first, parts }) => act(parts.length === 1 ? first : of(first, named(parts))));
}

function of(entry: ActEntry, part: PartName): ActEntry {
  if (nounOf(entry.stream) !== 'part') return entry;
  const { fact } = entry;
  return { stream: partStream(part), fact: fact.type === 'CoatApplied' ? { ...fact, part } : fact };
}
