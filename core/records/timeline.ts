// A stretch of time as bars: when stirrers ran, pots lived, films flashed off, parts cured. Figures only; whoever draws
// them chooses how.

import type { Batch } from '../batch/batch.ts';
import { potLifeTimes } from '../batch/batch-clocks.ts';
import { isGasSensitive } from '../can/can.ts';
import { isFor } from '../event-readers.ts';
import type { Entry } from '../history.ts';
import { inNaturalOrder } from '../natural-order.ts';
import { foldPart, type Part } from '../part/part.ts';
import { airLog, type Shop } from '../shop.ts';
import { type EpochMs, epochMs } from '../units.ts';
import { isWithin, type Span } from './span.ts';

export const barKinds = ['stirring', 'induction', 'pot-life', 'flash-off', 'cure', 'can-open', 'spray'] as const;
export type BarKind = (typeof barKinds)[number];

export interface Bar {
  /** `Batch 1` is the catalogue's; here `batch/1`. */
  readonly stream: Entry['stream'];
  readonly kind: BarKind;
  readonly from: EpochMs;
  readonly to: EpochMs;
  /** Still running at the end of what is drawn. */
  readonly open: boolean;
}

/** A moment that stands out on a row. */
export interface Mark {
  readonly stream: Entry['stream'];
  readonly kind: 'coat' | 'thick' | 'released' | 'held';
  readonly at: EpochMs;
}

export interface Timeline {
  readonly from: EpochMs;
  readonly to: EpochMs;
  readonly bars: readonly Bar[];
  readonly marks: readonly Mark[];
}

type Stretch = Pick<Bar, 'stream' | 'kind'> & { readonly from: EpochMs; readonly to: EpochMs | undefined };

/** What falls into the span, cut to it; what still runs is drawn up to `now`. */
export function timelineOf(shop: Shop, span: Span, now: EpochMs): Timeline {
  const stretches = [
    ...[...shop.batches.values()].flatMap((batch) => stretchesOfBatch(shop, batch)),
    ...[...shop.parts.values()].flatMap(stretchesOfPart),
    ...[...shop.sessions.values()].flatMap(({ number, spraying }) =>
      spraying.map((run): Stretch => ({ stream: `session/${number}`, kind: 'spray', ...run })),
    ),
    // What needs no gas over it may stand open all day.
    ...[...shop.cans.values()]
      .filter(isGasSensitive)
      .flatMap((can) => can.lidOff.map((run): Stretch => ({ stream: `can/${can.number}`, kind: 'can-open', ...run }))),
  ];
  const end = Math.min(span.to, now);
  const bars = stretches.flatMap(({ stream, kind, from, to }): readonly Bar[] => {
    const cutFrom = epochMs(Math.max(from, span.from));
    const cutTo = epochMs(Math.min(to ?? end, end));
    return cutTo <= cutFrom ? [] : [{ stream, kind, from: cutFrom, to: cutTo, open: to === undefined || to > end }];
  });
  const marks = [...shop.parts.values(), ...shop.batches.values()]
    .flatMap(({ entries }) => entries.flatMap(markOf))
    .filter(({ at }) => isWithin(span, at));
  const times = [...bars.flatMap(({ from, to }) => [from, to]), ...marks.map(({ at }) => at)];
  return {
    from: epochMs(Math.min(...times, end)),
    to: epochMs(Math.max(...times, Math.min(span.from, end))),
    bars: bars.sort((a, b) => inNaturalOrder(a.stream, b.stream) || a.from - b.from),
    marks: [...new Map(marks.map((mark) => [`${mark.stream} ${mark.kind} ${mark.at}`, mark])).values()],
  };
}

function stretchesOfBatch(shop: Shop, batch: Batch): readonly Stretch[] {
  const stream = `batch/${batch.number}` as const;
  const { weighing, sheet } = batch;
  const life = potLifeTimes(batch, airLog(shop, batch.place));
  const died = [life?.endAt, batch.thickened?.at, batch.emptied?.at].filter((at) => at !== undefined);
  const pot: readonly Stretch[] =
    weighing === undefined ? [] : [{ stream, kind: 'pot-life', from: weighing.at, to: epochMs(Math.min(...died)) }];
  const blending = batch.stirring.map(
    (run): Stretch => ({ stream, kind: sheet.blend.way === 'stir' ? 'stirring' : 'induction', ...run }),
  );
  return [...pot, ...(sheet.blend.way === 'stir' ? blending : [])];
}

/** Of every coat, not only the last. */
function stretchesOfPart(part: Part): readonly Stretch[] {
  const stream = `part/${part.name}` as const;
  const coats = [...part.earlier, ...part.coats];
  const reworks = part.entries.filter(({ fact }) => fact.type === 'PartDisposed' && fact.as === 'rework');
  return coats.flatMap((coat, i) => {
    const ends = [coats[i + 1]?.at, reworks.find(({ happenedAt }) => happenedAt >= coat.at)?.happenedAt];
    const known = ends.filter((at) => at !== undefined);
    const nextAt = known.length === 0 ? undefined : epochMs(Math.min(...known));
    const then = foldPart(
      part.name,
      part.entries.filter((entry) => nextAt === undefined || entry.happenedAt < nextAt),
    );
    const flashEnd = then.dryAt ?? then.cure?.run.from ?? nextAt;
    const flash: Stretch = { stream, kind: 'flash-off', from: coat.at, to: flashEnd };
    return then.cure === undefined
      ? [flash]
      : [flash, { stream, kind: 'cure' as const, from: then.cure.run.from, to: then.cure.run.to ?? nextAt }];
  });
}

function markOf({ stream, fact, happenedAt: at }: Entry): readonly Mark[] {
  if (!isFor('timeline', fact)) return [];
  switch (fact.type) {
    case 'CoatApplied':
      return [{ stream, kind: 'coat', at }];
    case 'MixThickened':
      return [{ stream, kind: 'thick', at }];
    case 'PartReleased':
      return [{ stream, kind: 'released', at }];
    case 'PartHeld':
      return [{ stream, kind: 'held', at }];
  }
}
