// What a reading that is told spot by spot makes fail of its set: its own spot as soon as that is whole, or a mean that it makes
// whole. What failed before it failed with an earlier reading.

import type { FactOf } from '../history.ts';
import { known } from '../known.ts';
import type { Sheet } from '../products/sheet.ts';
import { epochMs, type Micrometres } from '../units.ts';
import type { Beyond, FilmFinding } from './film-acceptance.ts';
import { judgeSet, type SetJudged } from './film-set-judge.ts';
import { type FilmSet, filmSets, setsIn } from './film-sets.ts';
import { filmTerms } from './film-terms.ts';
import { type FilmReading, filmReading, type Part } from './part.ts';
import type { FailedReading } from './part-events.ts';

type OfSet = Pick<Part, 'films' | 'coats' | 'details'>;

/** Every set of the coat that is on it, by the rule of its sheet; none where that is silent or refuses. */
export function setsJudged(part: OfSet, sheet: Sheet | undefined): readonly SetJudged[] {
  return filmSets(part).flatMap((set) => judged(set, part, sheet) ?? []);
}

/** The last set, where it is told by half. */
export function halfSet(part: OfSet, sheet: Sheet | undefined): SetJudged | undefined {
  const last = setsJudged(part, sheet).at(-1);
  return last?.next === undefined ? undefined : last;
}

function judged(set: FilmSet, { details }: OfSet, sheet: Sheet | undefined): SetJudged | undefined {
  const area = details.areaSquareMetres;
  const terms = sheet?.filmRule && filmTerms(sheet.filmRule, area);
  return terms && judgeSet(set, terms, area);
}

export interface FailedOfSet {
  readonly reading: Extract<FailedReading, { of: 'film' }>;
  readonly finding: Extract<FilmFinding, { is: 'outside' }>;
}

/** `films`: those before it. */
export function failedOfSet(
  fact: FactOf<'FilmRead'>,
  films: readonly FilmReading[],
  part: OfSet,
  sheet: Sheet | undefined,
): FailedOfSet | undefined {
  const after = [...films, filmReading(fact, epochMs(0))];
  const set = setIn(after, fact.set, part, sheet);
  if (set?.finding.is !== 'outside') return undefined;
  const earlier = new Set(beyondIn(setIn(films, fact.set, part, sheet)).map(nameOf));
  const findings = set.finding.findings.filter((each) => !earlier.has(nameOf(each)));
  if (findings.length === 0) return undefined;
  const [own, ...others] = findings.flatMap(({ spot }) => set.spots.find(({ number }) => number === spot) ?? []);
  const ofOwn = others.length === 0 ? own?.mean?.counted : undefined;
  const mean: Micrometres | undefined = own === undefined ? set.mean : ofOwn;
  const reading = { of: 'film' as const, micrometres: fact.micrometres, set: fact.set, spot: fact.spot };
  return {
    reading: { ...known(reading), ...known({ meanMicrometres: mean }) },
    finding: { ...set.finding, findings },
  };
}

function setIn(films: readonly FilmReading[], number: number | undefined, part: OfSet, sheet: Sheet | undefined) {
  const set = setsIn(films).find((each) => each.number === number);
  return set && judged(set, part, sheet);
}

const beyondIn = (set: SetJudged | undefined): readonly Beyond[] =>
  set?.finding.is === 'outside' ? set.finding.findings : [];

const nameOf = ({ what, spot, measured, limit }: Beyond): string => `${what} ${spot} ${measured} ${limit}`;
