// Los documentos del fabricante: cuáles hay, en qué revisión, y quién los ha leído.

import type { Sheet } from '../../../../core/products/sheet.ts';
import type { PaperKind } from '../../../../core/products/sheet-papers.ts';
import type { PaperReader } from '../../../../core/steps/papers-read.ts';
import type { Figures } from '../../figures.ts';
import type { PapersWords } from '../english/papers.ts';
import type { Spoken } from './spoken.ts';

const short: Readonly<Record<PaperKind, string>> = {
  instructions: 'instrucciones',
  'safety-a': 'seguridad A',
  'safety-b': 'seguridad B',
};

export function papersRevisionSaid({ revision, steps }: Pick<Sheet, 'revision' | 'steps'>, figures: Figures): string {
  const named = steps?.papers?.named;
  const all = new Set(named?.map((paper) => paper.revision) ?? [revision]);
  if (named === undefined || all.size === 1) return `revisión ${[...all].join()}`;
  return figures.list(named.map((paper) => `${short[paper.of]} revisión ${paper.revision}`));
}

const readers = (read: readonly PaperReader[], figures: Figures): string =>
  figures.list(
    read.map(({ by, at, isCurrent }) => `${by} ${figures.timeDown(at)}${isCurrent ? '' : ' (una revisión anterior)'}`),
  );

export function spanishPapers(say: Spoken): PapersWords {
  const kinds: Readonly<Record<PaperKind, string>> = {
    instructions: 'instrucciones',
    'safety-a': `${say.one('data-sheet')} de la parte A`,
    'safety-b': `${say.one('data-sheet')} de la parte B`,
  };
  return {
    revision: papersRevisionSaid,
    title: (sheet) => `Documentos de ${sheet}`,
    paper: (number, { of, title, revision }) => `${number}. ${title}: ${kinds[of]}, revisión ${revision}`,
    open: (of) => `Abrir: ${short[of]}`,
    notNamed: (sheet) =>
      `${say.the('sheet')} de ${sheet} no nombra documentos. Pídalos al proveedor.`.replace(/^\p{L}/u, (first) =>
        first.toUpperCase(),
      ),
    readBy: (read, figures) =>
      read.length === 0 ? 'Nadie ha dicho que los haya leído.' : `Leídos por ${readers(read, figures)}.`,
    ofPot: ({ sheet, read, notSaid }, figures) => {
      const said = read.length === 0 ? 'nadie ha dicho que los haya leído' : `leídos por ${readers(read, figures)}`;
      const silent = read.length === 0 || notSaid.length === 0 ? '' : `; no lo ha dicho: ${figures.list(notSaid)}`;
      return `Documentos de ${sheet.name} (${papersRevisionSaid(sheet, figures)}): ${said}${silent}`;
    },
    gone: (file) => `${file} no está en la carpeta ${say.ofThe('sheet')}`,
    tooBig: (file, mostMegabytes) => `${file} pasa de ${mostMegabytes} MB`,
    unknown: (number, count) => `No hay documento ${number}: hay ${count}`,
    askWhoKeeps: `Dígaselo a quien lleva ${say.theMany('sheet')}.`,
  };
}
