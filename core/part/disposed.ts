// A part once it is decided what becomes of it.

import type { Entry, FactOf } from '../history.ts';
import { readingKey } from './failed-reading.ts';
import type { Part, Verdict } from './part.ts';

export function disposedBy(part: Part, fact: FactOf<'PartDisposed'>, entry: Entry): Part {
  const { happenedAt: at, by, seq } = entry;
  const { as, why, to, person = '', document = '', date = '' } = fact;
  switch (as) {
    case 'rework':
      return {
        ...part,
        earlier: [...part.earlier, ...part.coats],
        reworked: { at, by, why, seq, under: part.coats.at(-1) ?? part.reworked?.under },
        ...{
          prepared: undefined,
          coats: [],
          dryAt: undefined,
          cure: undefined,
          surfaces: [],
          temperatures: [],
          films: [],
        },
        ...{ verdict: undefined, leftAt: undefined, concession: undefined },
      };
    case 'concession':
      return { ...part, verdict: undefined, concession: { at, by, person, document, date } };
    case 'scrap':
      return { ...part, verdict: { is: 'scrapped', at, by, why } };
    case 'return':
      return { ...part, verdict: { is: 'returned', at, by, why, to } };
  }
}

const codesOf = {
  film: 'film-outside',
  adhesion: 'adhesion-failed',
  rub: 'rubbed-through',
  heat: 'overheated',
} as const;

/** What of the hold they alone stood for is gone with them; what else holds it stays. */
export function answeredBy(verdict: Verdict | undefined, { failed }: FactOf<'FailureAnswered'>): Verdict | undefined {
  if (verdict?.is !== 'held') return verdict;
  const answered = new Set(failed.map(readingKey));
  const left = verdict.failed.filter((reading) => !answered.has(readingKey(reading)));
  const gone = failed.map(({ of }) => codesOf[of]).filter((code) => left.every(({ of }) => codesOf[of] !== code));
  const because = verdict.because.filter((code) => !gone.some((each) => each === code));
  return verdict.why === '' && because.length === 0 ? undefined : { ...verdict, because, failed: left };
}
