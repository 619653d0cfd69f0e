// The solvent and VOC ledger against hand sums from the demo sheets' invented figures and 40 CFR as read.

import { describe, expect, it } from 'vitest';
import { coatingEntries, ledgerRows, ledgerTotals, solventEntry } from '../../../core/records/solvent-ledger.ts';
import { limitStandings } from '../../../core/records/voc-limits.ts';
import { type EpochMs, epochMs, grams, litres } from '../../../core/units.ts';
import { given } from '../given.ts';

const noon: EpochMs = epochMs(Date.UTC(2026, 2, 2, 12));
const acetone = solventEntry(
  { type: 'SolventUsed', material: 'acetone', use: 'gun-cleaning', amount: { kind: 'volume', litres: litres(0.5) } },
  noon,
);
const alcohol = solventEntry(
  { type: 'SolventUsed', material: 'ipa', use: 'gun-cleaning', amount: { kind: 'volume', litres: litres(0.25) } },
  noon,
);

async function batchOfTheDemoClear() {
  const shift = await given(['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g']);
  const batch = (await shift.shop()).batches.get(1);
  if (batch === undefined) throw new Error('the batch is missing');
  return batch;
}

describe('the solvent ledger', () => {
  it('given a batch of the demo clear, then VOC by the litre of each part, and less its exempt share', async () => {
    const [row] = ledgerRows(coatingEntries(await batchOfTheDemoClear()));
    // A: 1.2 / 0.95 = 1.26316 L of 420 g/L = 530.53 g; B: 1.2 / 0.92 = 1.30435 L of 350 g/L = 456.52 g.
    expect(row?.vocGrams).toBeCloseTo(987.05, 2);
    expect(row?.litres).toBeCloseTo(2.56751, 5);
    // 987.05 g / 2.56751 L; less exempt: 15 % of A's litres out of the volume, 40 CFR 59.406(a).
    expect(row?.actual).toBeCloseTo(384.44, 2);
    expect(row?.lessExempt).toBeCloseTo(987.05 / (2.56751 - 0.15 * 1.26316), 1);
    expect(row).toMatchObject({ kind: 'coating', name: 'Demo Clear', figure: 'sheet' });
  });

  it('given acetone, then it is used but no VOC, and has no content less exempt: 40 CFR 51.100(s)', () => {
    const [row] = ledgerRows([acetone]);
    // 0.5 L of 0.7922 kg/L: the density in the table of solvents.
    expect(row?.grams).toBeCloseTo(396.1, 6);
    expect(row).toMatchObject({ vocGrams: 0, actual: 0, lessExempt: undefined, name: 'acetone', kind: 'cleaner' });
  });

  it('given alcohol under its shop name, then all of it is VOC', () => {
    const [row] = ledgerRows([alcohol]);
    expect(row?.name).toBe('isopropyl-alcohol');
    // 0.25 L of 0.7867 kg/L.
    expect(row?.vocGrams).toBeCloseTo(196.675, 6);
    expect(row?.lessExempt).toBeCloseTo(786.7, 6);
  });

  it('given a thinner that nobody has a figure for, then its whole mass counts and the row says so', () => {
    const thinner = solventEntry(
      {
        type: 'SolventUsed',
        material: 'shop-thinner-2',
        use: 'thinning',
        amount: { kind: 'volume', litres: litres(2) },
      },
      noon,
    );
    expect(ledgerRows([thinner])).toMatchObject([{ kind: 'thinner', vocGrams: 2000, figure: 'none' }]);
    expect(ledgerTotals([thinner, acetone])).toMatchObject({ vocGrams: 2000, withoutFigure: 1 });
  });

  it('given a limit, then it is told from four fifths on, our own choice, no source, and over it', () => {
    const used = (kilograms: number) =>
      solventEntry(
        {
          type: 'SolventUsed',
          material: 'toluene',
          use: 'other',
          amount: { kind: 'mass', grams: grams(kilograms * 1000) },
        },
        noon,
      );
    const stands = (kilograms: number) =>
      limitStandings([{ name: 'voc-limit', grams: grams(10_000), per: 'month' }], [used(kilograms)], noon, 'UTC')[0]
        ?.state;
    expect([stands(7.9), stands(8), stands(10), stands(10.1)]).toEqual(['below', 'near', 'near', 'over']);
  });

  it('given use of last month and last year, then a month counts its own and the rolling year all twelve', () => {
    const at = (year: number, month: number) =>
      solventEntry(
        { type: 'SolventUsed', material: 'toluene', use: 'other', amount: { kind: 'mass', grams: grams(1000) } },
        epochMs(Date.UTC(year, month - 1, 3)),
      );
    const limits = [
      { name: 'voc-limit', grams: grams(1), per: 'month' },
      { name: 'voc-limit', grams: grams(1), per: 'year' },
    ] as const;
    const entries = [at(2025, 3), at(2025, 4), at(2026, 2), at(2026, 3)];
    const used = limitStandings(limits, entries, epochMs(Date.UTC(2026, 2, 20)), 'UTC').map(
      ({ usedGrams }) => usedGrams,
    );
    // From 21 March 2025 on: April, February and March.
    expect(used).toEqual([1000, 3000]);
  });
});
