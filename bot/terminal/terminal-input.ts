// What a line of the terminal is, before anybody reads its words: who speaks, a tap, a wait, a delivery with an id.

import { DateTime } from 'luxon';
import { z } from 'zod';
import { type EpochMs, epochMs } from '../../core/units.ts';
import type { Hearing } from '../language/hearing.ts';

export type TerminalLine =
  | { readonly kind: 'silence' }
  | { readonly kind: 'say'; readonly as: string; readonly text: string; readonly id: string | undefined }
  /** `fill`: what follows the tap's id, for the fields of its line in their order. */
  | {
      readonly kind: 'tap';
      readonly as: string;
      readonly tap: string;
      readonly fill: readonly string[];
      readonly id: string | undefined;
    }
  | { readonly kind: 'wait'; readonly as: string; readonly until: EpochMs }
  /** `exit`, `quit`: whoever types it wants to know how. */
  | { readonly kind: 'leave'; readonly as: string; readonly id: string | undefined }
  /** How long, it does not say. */
  | { readonly kind: 'wait-bare'; readonly as: string; readonly id: string | undefined };

const Delivery = z.strictObject({
  id: z.string().min(1).optional(),
  as: z.string().min(1).optional(),
  text: z.string(),
});

export interface TerminalContext {
  readonly as: string;
  readonly now: EpochMs;
  readonly zone: string;
  readonly hearing: Hearing;
  /** Whoever does waits by their own clock. */
  readonly practises?: (as: string) => boolean;
}

export function readTerminalLine(raw: string, context: TerminalContext): TerminalLine {
  const line = raw.trim();
  if (line === '' || /^#(?!\d)/.test(line)) return { kind: 'silence' };
  if (line.startsWith('{')) {
    const delivery = parsed(line);
    if (delivery !== undefined) return meant(delivery.text, delivery.as ?? context.as, delivery.id, context);
  }
  const spoken = /^@([^\s:]+)\s*:\s*(.*)$/su.exec(line);
  return meant(spoken?.[2] ?? line, spoken?.[1] ?? context.as, undefined, context);
}

function parsed(line: string): z.infer<typeof Delivery> | undefined {
  try {
    return Delivery.safeParse(JSON.parse(line)).data;
  } catch {
    return undefined;
  }
}

function meant(text: string, as: string, id: string | undefined, context: TerminalContext): TerminalLine {
  const tap = /^tap\s+(\S+)\s*(.*)$/iu.exec(text.trim());
  if (tap?.[1] !== undefined) {
    const fill = (tap[2] ?? '').split(/\s+/).filter((word) => word !== '');
    return { kind: 'tap', as, tap: tap[1], fill, id };
  }
  if (/^wait\b/iu.test(text.trim()) && context.practises?.(as) === true) return { kind: 'say', as, text, id };
  const until = waitUntil(text.trim(), context);
  if (until !== undefined) return { kind: 'wait', as, until };
  if (/^wait[.!]*$/iu.test(text.trim())) return { kind: 'wait-bare', as, id };
  if (
    context.hearing.leaves.has(
      text
        .trim()
        .toLowerCase()
        .replace(/[.!]+$/, ''),
    )
  )
    return { kind: 'leave', as, id };
  return { kind: 'say', as, text, id };
}

const lengthsMs = { d: 86_400_000, h: 3_600_000, m: 60_000, s: 1_000 } as const;

/** `wait 90m`, `wait 1h30m`, `wait until 14:30`, `wait until 2026-03-03T08:00`. A time of day is its next one. */
function waitUntil(text: string, { now, zone }: TerminalContext): EpochMs | undefined {
  const span = /^wait\s+((?:\d+(?:\.\d+)?\s*(?:d|h|min|m|s)\s*)+)$/iu.exec(text)?.[1];
  if (span !== undefined) {
    let total = 0;
    for (const [, value = '0', unit = 'm'] of span.matchAll(/(\d+(?:\.\d+)?)\s*(d|h|min|m|s)/giu)) {
      total += Number(value) * lengthsMs[unit.toLowerCase().charAt(0) as keyof typeof lengthsMs];
    }
    return epochMs(now + Math.round(total));
  }
  const said = /^wait\s+until\s+(\S+)$/iu.exec(text)?.[1];
  if (said === undefined) return undefined;
  const clock = /^(\d{1,2}):(\d{2})$/.exec(said);
  if (clock === null) {
    const at = DateTime.fromISO(said, { zone });
    return at.isValid ? epochMs(at.toMillis()) : undefined;
  }
  const today = DateTime.fromMillis(now, { zone })
    .startOf('day')
    .set({ hour: Number(clock[1]), minute: Number(clock[2]) });
  if (!today.isValid || Number(clock[1]) > 23 || Number(clock[2]) > 59) return undefined;
  return epochMs((today.toMillis() > now ? today : today.plus({ days: 1 })).toMillis());
}
