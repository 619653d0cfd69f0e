// What a job asks for before a part is released, and what of it is still lacking: of the last coat, and of the worst reading of each
// kind, since a better one afterwards makes none better. What no reading was taken of is not given: unknown never passes.

import { adhesionClass } from '../calc/adhesion.ts';
import { jobLimits, type ReleaseLimits, type SurfaceLimits } from '../crew/job-limits.ts';
import { isSprayed, judgeTest, type TestAsked, type TestAskedName, type TestRead } from '../film-tests.ts';
import type { AdhesionRating } from '../grades.ts';
import type { Entry, Fact } from '../history.ts';
import type { PersonName } from '../ids.ts';
import type { Sheet } from '../products/sheet.ts';
import { type Edition, editionOfToday, holdsIn } from '../rule-editions.ts';
import type { Shop } from '../shop.ts';
import type { EpochMs } from '../units.ts';
import { whoApplied } from '../who-applied.ts';
import { answeredIn } from './answered.ts';
import { judgeFilm } from './film-acceptance.ts';
import { filmSheet } from './film-rule.ts';
import { halfSet, setsJudged } from './film-set-failed.ts';
import type { Part } from './part.ts';
import { figuresAsked, isGiven, type SurfaceBreach, type SurfaceFigure, surfaceBreaches } from './surface-limits.ts';

export type ReleaseLacking =
  /** `read`: read, but the rule of its sheet tells nothing by what was read. */
  | {
      readonly of: 'film';
      readonly read: boolean;
      /** Of spots, where it is told spot by spot and not to its end. */
      readonly half?: { readonly told: number; readonly needed: number };
    }
  | { readonly of: 'adhesion'; readonly least: AdhesionRating; readonly worst: AdhesionRating | undefined }
  /** `most`: double rubs that it bore, of those that were done. */
  | { readonly of: 'rub'; readonly least: number; readonly most: number | undefined }
  /** Of the steel under its coats. `breach`: what was told of it, where that is outside. */
  | { readonly of: 'prep'; readonly figure: SurfaceFigure; readonly breach: SurfaceBreach | undefined }
  /** `read`: the worst, where it proves nothing or fails. */
  | { readonly of: TestAskedName; readonly asked: TestAsked; readonly read: TestRead | undefined };

/** Who put its coats on or told of them, whom the job lets release nothing of their own. */
export interface SecondEyes {
  readonly job: string;
  readonly coatedBy: readonly PersonName[];
}

export interface ReleaseAsked {
  readonly job: string;
  readonly lacking: readonly ReleaseLacking[];
  readonly secondEyes: SecondEyes | undefined;
}

/** By the job that it came in under, as it stood then, and who had a hand in its coats as far as anybody said. */
export function askedForRelease(
  shop: Shop,
  part: Part,
  at: EpochMs,
  edition: Edition = editionOfToday,
): ReleaseAsked | undefined {
  const { job } = part.details;
  const limits = jobLimits(shop.crew, job, at);
  if (job === undefined || limits === undefined) return undefined;
  const since = part.reworked?.seq ?? 0;
  // What was stripped off went on by hands that have no part in what is there now.
  const coated = part.entries.filter(({ seq, fact }) => fact.type === 'CoatApplied' && seq > since);
  const hands = coated.flatMap((entry) => {
    const { person, typedBy } = whoApplied(shop, entry);
    return person === undefined ? [typedBy] : [person, typedBy];
  });
  const secondEyes = limits.secondEyes === true ? { job, coatedBy: [...new Set(hands)] } : undefined;
  const ofSteel = holdsIn({ since: 11 }, edition) ? steelLacking(job, limits, part) : [];
  const lacking = [...ofSteel, ...lackingOf(limits, part, filmSheet(shop, part, at))];
  return { job, lacking, secondEyes };
}

/** Of a part that waits for its coat: what its job asks of the steel and nobody told yet. */
export function steelAsked(shop: Shop, part: Part, at: EpochMs): Pick<ReleaseAsked, 'job' | 'lacking'> | undefined {
  const { job } = part.details;
  const limits = jobLimits(shop.crew, job, at);
  if (job === undefined || limits === undefined) return undefined;
  // What was told outside it is told as that.
  const lacking = steelLacking(job, limits, part).filter((each) => each.of === 'prep' && each.breach === undefined);
  return lacking.length === 0 ? undefined : { job, lacking };
}

function lackingOf(limits: ReleaseLimits, part: Part, sheet: Sheet | undefined): readonly ReleaseLacking[] {
  const { film, filmRule, leastAdhesion, leastDoubleRubs, tests = [] } = limits;
  const answered = answeredIn(part);
  const sinceCoat = part.entries
    .slice(part.entries.findLastIndex(({ fact }) => fact.type === 'CoatApplied') + 1)
    .filter(({ seq }) => !answered.has(seq));
  return [
    ...(film === true ? filmLacking(part, sheet, sinceCoat, filmRule !== undefined) : []),
    ...(leastAdhesion === undefined ? [] : adhesionLacking(leastAdhesion, sinceCoat)),
    ...(leastDoubleRubs === undefined ? [] : rubLacking(leastDoubleRubs, sinceCoat)),
    ...tests.flatMap((asked) => testLacking(asked, sinceCoat, isSprayed(part))),
  ];
}

/** What the job asks of the steel and nobody told, or told outside it, before the coats that are on it: a coat that lies does not undo that. */
function steelLacking(job: string, limits: SurfaceLimits, { prepared }: Part): readonly ReleaseLacking[] {
  const breaches = surfaceBreaches([{ by: { is: 'job', job }, limits }], prepared);
  return figuresAsked(limits).flatMap((figure): readonly ReleaseLacking[] => {
    const breach = breaches.find(({ of }) => of === figure);
    return breach === undefined && isGiven(prepared, figure) ? [] : [{ of: 'prep', figure, breach }];
  });
}

/** All that were read pass, and one at least. */
function testLacking(asked: TestAsked, since: readonly Entry[], sprayed: boolean): readonly ReleaseLacking[] {
  const read = since.flatMap(({ fact }) => testRead(fact) ?? []).filter(({ of }) => of === asked.of);
  const found = read.map((each) => ({ each, is: judgeTest(each, asked, sprayed) }));
  const failed = found.find(({ is }) => is === 'fails');
  if (failed === undefined && found.some(({ is }) => is === 'passes')) return [];
  return [{ of: asked.of, asked, read: (failed ?? found.at(-1))?.each }];
}

function testRead(fact: Fact): TestRead | undefined {
  if (fact.type === 'FilmTested') return fact;
  return fact.type === 'FilmRead' && fact.state === 'wet' ? { of: 'wet', micrometres: fact.micrometres } : undefined;
}

/** A set that fails holds the part by itself; where no rule says, any reading is one. Half a set of spots is none, whatever was before it. */
function filmLacking(
  part: Part,
  sheet: Sheet | undefined,
  since: readonly Entry[],
  isRuleAsked: boolean,
): readonly ReleaseLacking[] {
  const half = halfTold(part, sheet);
  if (half !== undefined) return [{ of: 'film', read: true, half }];
  const read = since.flatMap(({ fact }) => (fact.type === 'FilmRead' && fact.state === 'dry' ? [fact] : []));
  const told = new Set(read.map(({ set }) => set));
  const findings = [
    ...read
      .filter(({ set }) => set === undefined)
      .map(({ micrometres }) => judgeFilm(micrometres, sheet?.filmRule, part.details.areaSquareMetres)),
    ...setsJudged(part, sheet).flatMap(({ set, finding }) => (told.has(set.number) ? [finding] : [])),
  ];
  // Of a job that names a rule for which nobody gave the figures no reading is judged.
  const isTold = findings.some(({ is }) => is === 'within' || is === 'outside' || (is === 'no-rule' && !isRuleAsked));
  return isTold ? [] : [{ of: 'film', read: read.length > 0 }];
}

/** How far its last set of spots is told, where that is not whole. */
export function halfTold(part: Part, sheet: Sheet | undefined) {
  const half = halfSet(part, sheet);
  return half === undefined ? undefined : { told: half.told, needed: half.terms.spots };
}

function adhesionLacking(least: AdhesionRating, since: readonly Entry[]): readonly ReleaseLacking[] {
  const read = since.flatMap(({ fact }) => (fact.type === 'AdhesionTested' ? [fact.rating] : []));
  const [worst] = read.toSorted((one, other) => adhesionClass(other) - adhesionClass(one));
  return worst !== undefined && adhesionClass(worst) <= adhesionClass(least) ? [] : [{ of: 'adhesion', least, worst }];
}

function rubLacking(least: number, since: readonly Entry[]): readonly ReleaseLacking[] {
  const borne = since.flatMap(({ fact }) =>
    fact.type === 'SolventRubbed' && fact.result !== 'through' ? [fact.doubleRubs] : [],
  );
  const most = borne.length === 0 ? undefined : Math.max(...borne);
  return most !== undefined && most >= least ? [] : [{ of: 'rub', least, most }];
}
