// Of held parts, in English: who sees to them, what is to be done, and what becomes of them.

import type { Concession, DispositionTelling } from '../../../../core/disposition.ts';
import type { FactOf } from '../../../../core/history.ts';
import type { PersonName } from '../../../../core/ids.ts';
import type { HoldObjection } from '../../../../core/part/part-objections.ts';
import type { Verdict } from '../../../../core/part/verdict.ts';
import type { Figures } from '../../figures.ts';
import { englishRecalls } from './recalls.ts';

type Disposed = FactOf<'PartDisposed'>;

const asked: Readonly<Record<DispositionTelling, string>> = {
  why: 'why',
  person: 'who of the customer takes it as it is',
  document: 'the document that says so',
  date: 'the date of it, no later than today',
  to: 'whether it goes back to the customer or the supplier',
};

const back = { customer: ' to the customer', supplier: ' to the supplier' };

export const englishHeld = {
  recalls: englishRecalls,
  seenTo: (owners: readonly PersonName[], toDo: string | undefined, figures: Figures) =>
    `${owners.length === 0 ? 'Nobody sees to it' : `${figures.list([...owners])} ${owners.length === 1 ? 'sees' : 'see'} to it`}${toDo === undefined ? '' : `: ${toDo}`}`,
  assigned: (part: string) => `${part}: who sees to its hold`,
  toType: (part: string) =>
    `To settle ${part}, type rework, concession, scrap or return with its name and why; or release ${part} permit hold, and why.`,
  nothingLeft: 'Nothing of yours is on hold any more.',
  titles: {
    rework: (part: string) => `${part}: rework`,
    concession: (part: string) => `${part}: released by concession`,
    scrap: (part: string) => `${part}: scrapped`,
    return: (part: string) => `${part}: given back`,
  },
  told: (why: string) => `Why: ${why}`,
  stripIt: 'Next: take the old coat off, since its sheet lets nothing lie on it; prepare, and coat it anew.',
  abradeIt: 'Next: strip or abrade it, and coat it anew within what its sheet allows.',
  startsAnew: 'Its earlier coats stay in the trace. Before a release only what is given from now on counts.',
  earlier: (coats: number) => `Coats before it was reworked: ${coats}`,
  nothingMore: 'Nothing more is asked of it, and it rings no more.',
  concession: ({ person, document, date, by, at }: Concession, figures: Figures) =>
    `By concession of the customer: ${person}, ${document}, dated ${figures.date(date)} (${by}, ${figures.timeDown(at)}).`,
  disposed: (verdict: Extract<Verdict, { is: 'scrapped' | 'returned' }>, figures: Figures) =>
    `${verdict.is === 'scrapped' ? 'Scrapped' : `Given back${verdict.to === undefined ? '' : back[verdict.to]}`} by ${verdict.by}, ${figures.timeDown(verdict.at)}: ${verdict.why}.`,
  retestStands: 'What failed before still stands: a lead lifts it, or reads again with retest and why.',
  retestAsks: 'What failed before still stands. Where this reading counts in its place, say so with retest and why.',
  eachNamed: 'Each needs its own reason.',
};

export function englishHoldObjection(objection: HoldObjection, figures: Figures): string {
  switch (objection.code) {
    case 'not-on-hold':
      return 'It is not on hold.';
    case 'disposed':
      return `It was ${objection.is === 'scrapped' ? 'scrapped' : 'given back'} by ${objection.by}, ${figures.timeDown(objection.at)}. To work on it after all, a lead says rework and why.`;
    case 'not-told':
      return `Still to tell: ${figures.list(objection.lacking.map((telling) => asked[telling]))}.`;
  }
}

export const englishAssigned = ({ owner, toDo }: Pick<FactOf<'HoldAssigned'>, 'owner' | 'toDo'>): readonly string[] => [
  ...(owner === undefined ? [] : [`${owner} sees to it`]),
  ...(toDo === undefined ? [] : [`to do: ${toDo}`]),
];

export function englishDisposed({ as, why, to, person = '', document = '', date }: Disposed, figures: Figures): string {
  switch (as) {
    case 'rework':
      return `to be reworked: ${why}`;
    case 'concession':
      return `used as it is by concession: ${person}, ${document}${date === undefined ? '' : `, dated ${figures.date(date)}`}`;
    case 'scrap':
      return `scrapped: ${why}`;
    case 'return':
      return `given back${to === undefined ? '' : back[to]}: ${why}`;
  }
}

/** Behind a reading. */
export const englishRetest = ({ retest }: { readonly retest?: string | undefined }): string =>
  retest === undefined ? '' : `, retest: ${retest}`;
