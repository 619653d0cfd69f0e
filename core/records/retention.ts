// How long a class of record is kept at least, and who says so. Data: the bot deletes nothing by itself, so these tell
// a shop how long its files and backups must last. Paragraphs as read in the 2015 edition; check today's text.

import type { LegalFrame } from '../calc/legal-frame.ts';
import { namedAbroad } from '../session/figure-sources.ts';

interface RetentionClass {
  readonly id: string;
  /** `undefined`: no period was found; the words say until when. */
  readonly years: number | undefined;
  readonly source: string;
  /** Where the law of another country says otherwise. */
  readonly elsewhere?: Readonly<Partial<Record<LegalFrame, { readonly years: number; readonly source: string }>>>;
}

export const retention = [
  { id: 'solvent-use', years: 5, source: '40 CFR 63.3931' },
  { id: 'voc-district-log', years: 3, source: "a California district's monthly log form" },
  { id: 'voc-state-records', years: 6, source: 'Maine chapter 129, 7' },
  { id: 'painter-training', years: 5, source: '40 CFR 63.11173(g)' },
  { id: 'fit-test', years: undefined, source: '29 CFR 1910.134(m)(2)(ii)' },
  {
    id: 'exposure',
    years: 30,
    source: '29 CFR 1910.1020(d)(1)(ii)',
    elsewhere: {
      eu: { years: 40, source: 'Directive 2004/37/EC, of carcinogens, from memory' },
      uk: { years: 40, source: 'COSHH 2002, from memory' },
    },
  },
  { id: 'medical', years: 30, source: '29 CFR 1910.1020(d)(1)(i)' },
  { id: 'substance-identity', years: 30, source: '29 CFR 1910.1020(d)(1)(ii)(B)' },
  { id: 'coating-record', years: undefined, source: 'MIL-HDBK-1110 9.4.1(h)' },
] as const satisfies readonly RetentionClass[];
/** How long and by whose rule, for a crew under that law. */
export function retentionUnder(frame: LegalFrame) {
  return retention.map((row) => {
    const { elsewhere }: RetentionClass = row;
    const { years, source }: Pick<RetentionClass, 'years' | 'source'> = elsewhere?.[frame] ?? row;
    return { id: row.id, years, source: namedAbroad(source, frame) };
  });
}

export type RetentionId = (typeof retention)[number]['id'];

/** What must stand in the ledger: 40 CFR 63.3930(d) to (g), and the state and district forms beside it. */
export const ledgerFields = [
  { field: 'name', source: '40 CFR 63.3930(d)' },
  { field: 'volume', source: '40 CFR 63.3930(d)' },
  { field: 'volume-solids', source: '40 CFR 63.3930(f)' },
  { field: 'density', source: '40 CFR 63.3930(g)' },
  { field: 'voc-less-exempt', source: 'Maine chapter 129, 7' },
  { field: 'voc-actual', source: "a California district's monthly log form" },
] as const;
export type LedgerField = (typeof ledgerFields)[number]['field'];
