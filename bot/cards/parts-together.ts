// One tap for all parts that wait for the same: thirty brackets from one pot are dry at the same touch.

import type { PartName } from '../../core/ids.ts';
import type { CardAction } from './card.ts';

export interface PartTaps {
  readonly part: PartName;
  readonly taps: readonly CardAction[];
}

/** Acts that take several parts in one line. */
const forSeveral: readonly string[] = ['dry', 'cure', 'out', 'release', 'hold', 'door'];

/** `Dry (30)`, where the line differs in nothing but the part. */
export function tapsTogether(waiting: readonly PartTaps[]): readonly CardAction[] {
  const alike = new Map<string, { readonly tap: CardAction; readonly before: string; readonly parts: PartName[] }>();
  for (const { part, taps } of waiting) {
    for (const tap of taps) {
      const [verb = ''] = tap.line.split(' ');
      const before = `${verb} ${part}`;
      if (!forSeveral.includes(verb) || !tap.line.startsWith(before)) continue;
      const key = `${verb} ${tap.line.slice(before.length)}`;
      const known = alike.get(key);
      if (known === undefined) alike.set(key, { tap, before, parts: [part] });
      else known.parts.push(part);
    }
  }
  return [...alike.values()].flatMap(({ tap, before, parts }) => {
    if (parts.length < 2) return [];
    const [verb = ''] = before.split(' ');
    const line = `${verb} ${parts.join(' ')}${tap.line.slice(before.length)}`;
    return [{ id: `${tap.id}-together`, label: `${tap.label.replace(/…$/, '')} (${parts.length})${tail(tap)}`, line }];
  });
}

/** A tap that asks for figures first says so at its end. */
const tail = ({ label }: CardAction): string => (label.endsWith('…') ? '…' : '');
