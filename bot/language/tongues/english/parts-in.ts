// Parts that come in, many at once: what would be booked, what is known already, what could not be read.

import type { PartName } from '../../../../core/ids.ts';
import type { NamedPart } from '../../../../core/verbs/said.ts';
import type { Figures } from '../../figures.ts';
import { jobOfAll, partsListed } from '../../parts-listed.ts';
import type { FaultyLine } from '../../reading.ts';
import { englishFault } from './misreads.ts';

export const partsNamed = (names: readonly PartName[], figures: Figures): string => partsListed(names, 'to', figures);

const counted = (count: number): string => (count === 1 ? '1 part' : `${count} parts`);

export const englishPartsIn = {
  named: partsNamed,
  asked: (count: number) => `${counted(count)} to book in`,
  noneNew: 'Nothing new to book in',
  known: (names: readonly PartName[], figures: Figures) =>
    `Known already, and left as ${names.length === 1 ? 'it is' : 'they are'}: ${partsNamed(names, figures)}.`,
  columnsNotTaken: (heads: readonly string[], figures: Figures) =>
    `Nothing is booked of the ${heads.length === 1 ? 'column' : 'columns'} ${figures.list(heads)}.`,
  rowUnread: ({ number, line, code, token }: FaultyLine) =>
    `Row ${number} is left out: ${line}: ${englishFault(code, token)}.`,
  moreRows: (count: number) => `${count} more rows are left out.`,
  moreDescribed: (names: readonly PartName[], figures: Figures) =>
    `And ${counted(names.length)} more, each with its own: ${partsNamed(names, figures)}.`,
  oneTap: 'One tap books them all; undo takes them all back.',
  book: (parts: readonly NamedPart[], figures: Figures) => {
    const names = parts.map(({ part }) => part);
    const told = names.length === 1 ? names.join('') : `${counted(names.length)}: ${partsNamed(names, figures)}`;
    const job = jobOfAll(parts);
    return `Book in ${told}${job === undefined ? '' : `, job ${job}`}`;
  },
  noteKnown: (count: number) => (count === 1 ? 'Note it of the known one' : `Note it of the ${count} known`),
};
