// The solvent ledger over a span, and how near the shop's limits stand.

import { DateTime } from 'luxon';
import { type LedgerEntry, type LedgerTotals, ledgerRows, ledgerTotals } from '../../core/records/solvent-ledger.ts';
import { isWithin, type Span } from '../../core/records/span.ts';
import { type LimitStanding, limitStandings, windowStart } from '../../core/records/voc-limits.ts';
import { allSaid } from '../../core/settled.ts';
import { type EpochMs, epochMs } from '../../core/units.ts';
import type { Card, CardFact } from '../cards/card.ts';
import type { Telling } from '../cards/card-context.ts';
import { factsOf } from '../cards/facts.ts';
import { ledgerCard, limitLines } from '../cards/ledger-card.ts';
import { loadLedger, type RecordSource } from './loading.ts';

export interface LedgerAsked {
  readonly entries: readonly LedgerEntry[];
  readonly totals: LedgerTotals;
  readonly limits: readonly LimitStanding[];
}

/** Reaches back as far as the longest limit does; `entries` are those of the span. */
export async function ledgerOf(source: RecordSource, telling: Telling, span: Span): Promise<LedgerAsked> {
  const { zone } = telling.shop.crew;
  const vocLimits = allSaid(telling.shop.crew, 'voc-limit');
  const at: EpochMs = epochMs(Math.min(telling.now, span.to - 1));
  const starts = vocLimits.map(({ per }) => windowStart(per, at, zone));
  const all = await loadLedger(source, epochMs(Math.min(span.from, ...starts)), span.to);
  const entries = all.filter((entry) => isWithin(span, entry.at));
  return { entries, totals: ledgerTotals(entries), limits: limitStandings(vocLimits, all, at, zone) };
}

/** For the day's card: its VOC, and the limits only where they are near. */
export async function limitsAt(
  source: RecordSource,
  telling: Telling,
  span: Span,
): Promise<{ readonly facts: readonly CardFact[]; readonly lines: readonly string[] }> {
  const { totals, limits } = await ledgerOf(source, telling, span);
  const near = limits.filter(({ state }) => state !== 'below');
  return { facts: factsOf(telling, { voc: totals.vocGrams }), lines: limitLines(telling, near) };
}

const dayMs = 86_400_000;

export async function solventCard(source: RecordSource, telling: Telling, span: Span): Promise<Card> {
  const { zone } = telling.shop.crew;
  const { entries, totals, limits } = await ledgerOf(source, telling, span);
  const each = span.to - span.from > 62 * dayMs ? 'yyyy-MM' : 'yyyy-MM-dd';
  const label = (at: EpochMs) => DateTime.fromMillis(at, { zone }).toFormat(each);
  const labels = [...new Set(entries.map(({ at }) => label(at)))];
  const parts = labels.map((name) => ({
    label: name,
    vocGrams: ledgerTotals(entries.filter(({ at }) => label(at) === name)).vocGrams,
  }));
  return ledgerCard(telling, { span, rows: ledgerRows(entries), totals, parts, limits });
}
