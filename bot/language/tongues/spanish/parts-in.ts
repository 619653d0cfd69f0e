// Piezas que llegan, muchas a la vez: lo que se anotaría, lo que ya consta, lo que no se pudo leer.

import type { PartName } from '../../../../core/ids.ts';
import type { Figures } from '../../figures.ts';
import { jobOfAll, partsListed } from '../../parts-listed.ts';
import type { englishPartsIn } from '../english/parts-in.ts';
import { spanishFault } from './misreads.ts';

export const partsNamed = (names: readonly PartName[], figures: Figures): string => partsListed(names, 'a', figures);

const counted = (count: number): string => (count === 1 ? '1 pieza' : `${count} piezas`);

export const spanishPartsIn: typeof englishPartsIn = {
  named: partsNamed,
  asked: (count) => `${counted(count)} por dar entrada`,
  noneNew: 'Nada nuevo a lo que dar entrada',
  known: (names, figures) =>
    `Ya ${names.length === 1 ? 'consta, y queda como está' : 'constan, y quedan como están'}: ${partsNamed(names, figures)}.`,
  columnsNotTaken: (heads, figures) =>
    `No se anota nada de ${heads.length === 1 ? 'la columna' : 'las columnas'} ${figures.list(heads)}.`,
  rowUnread: ({ number, line, code, token }) => `La fila ${number} queda fuera: ${line}: ${spanishFault(code, token)}.`,
  moreRows: (count) => `Quedan fuera ${count} filas más.`,
  moreDescribed: (names, figures) =>
    `Y ${counted(names.length)} más, cada una con lo suyo: ${partsNamed(names, figures)}.`,
  oneTap: 'Se les da entrada a todas con un toque; con deshacer se quitan todas.',
  book: (parts, figures) => {
    const names = parts.map(({ part }) => part);
    const told = names.length === 1 ? names.join('') : `${counted(names.length)}: ${partsNamed(names, figures)}`;
    const job = jobOfAll(parts);
    return `Dar entrada a ${told}${job === undefined ? '' : `, orden ${job}`}`;
  },
  noteKnown: (count) =>
    count === 1 ? 'Anotarlo también en la que ya consta' : `Anotarlo también en las ${count} que ya constan`,
};
