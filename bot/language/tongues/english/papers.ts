// The papers of a product's maker, in English: what there is, in which revision, and who has read it.

import type { Sheet } from '../../../../core/products/sheet.ts';
import type { MakerPaper, PaperKind } from '../../../../core/products/sheet-papers.ts';
import type { PaperReader, PapersOfPot } from '../../../../core/steps/papers-read.ts';
import type { Figures } from '../../figures.ts';

const kinds: Readonly<Record<PaperKind, string>> = {
  instructions: 'instructions',
  'safety-a': 'safety data sheet of Part A',
  'safety-b': 'safety data sheet of Part B',
};

const short: Readonly<Record<PaperKind, string>> = {
  instructions: 'instructions',
  'safety-a': 'data sheet A',
  'safety-b': 'data sheet B',
};

/** Of the papers where the sheet names them, else its own. */
function revision({ revision, steps }: Pick<Sheet, 'revision' | 'steps'>, figures: Figures): string {
  const named = steps?.papers?.named;
  const all = new Set(named?.map((paper) => paper.revision) ?? [revision]);
  if (named === undefined || all.size === 1) return `revision ${[...all].join()}`;
  return figures.list(named.map((paper) => `${short[paper.of]} revision ${paper.revision}`));
}

const readers = (read: readonly PaperReader[], figures: Figures): string =>
  figures.list(
    read.map(({ by, at, isCurrent }) => `${by} ${figures.timeDown(at)}${isCurrent ? '' : ' (an earlier revision)'}`),
  );

export const englishPapers = {
  revision,
  title: (sheet: string) => `Papers of ${sheet}`,
  paper: (number: number, { of, title, revision }: MakerPaper) =>
    `${number}. ${title}: ${kinds[of]}, revision ${revision}`,
  open: (of: PaperKind) => `Open: ${short[of]}`,
  notNamed: (sheet: string) => `The sheet of ${sheet} names no papers. Ask the supplier for them.`,
  /** What their card says of who has read them. */
  readBy: (read: readonly PaperReader[], figures: Figures) =>
    read.length === 0 ? 'Nobody has said that they have read them.' : `Read by ${readers(read, figures)}.`,
  /** In the day, the trace and on paper: of those who had a hand in the pot. */
  ofPot: ({ sheet, read, notSaid }: PapersOfPot, figures: Figures): string => {
    const said = read.length === 0 ? 'nobody has said that they have read them' : `read by ${readers(read, figures)}`;
    const silent = read.length === 0 || notSaid.length === 0 ? '' : `; not said: ${figures.list(notSaid)}`;
    return `Papers of ${sheet.name} (${revision(sheet, figures)}): ${said}${silent}`;
  },
  gone: (file: string) => `${file} is not in the sheet’s folder`,
  tooBig: (file: string, mostMegabytes: number) => `${file} is over ${mostMegabytes} MB`,
  unknown: (number: number, count: number) => `There is no paper ${number}: there are ${count}`,
  askWhoKeeps: 'Tell whoever keeps the sheets.',
};
export type PapersWords = typeof englishPapers;
