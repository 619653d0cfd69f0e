// What the sheet wants off a part's steel before its coat, what was said to be off it, and of whom the rest is asked: with one
// tap, after every step of the paper that somebody has still to answer, and of one part between one batch and the next.

import { type Contaminant, type SurfaceGrade, takenOffTo } from '../grades.ts';
import type { Entry } from '../history.ts';
import { defaultPlace, type PartName, type PersonName } from '../ids.ts';
import type { Sheet } from '../products/sheet.ts';
import type { Shop } from '../shop.ts';
import { answerTo, firstUnanswered, stepsAskedBy } from '../steps/steps-answered.ts';
import type { EpochMs } from '../units.ts';
import type { Part } from './part.ts';

interface Cleaned {
  readonly removed?: readonly Contaminant[] | undefined;
  readonly grade?: SurfaceGrade | undefined;
}

/** What nobody has said to be off it. A grade says what is off as well. */
export function stillOn({ surface }: Pick<Sheet, 'surface'>, { removed = [], grade }: Cleaned): readonly Contaminant[] {
  const isOff = (each: Contaminant): boolean =>
    removed.includes(each) || (grade !== undefined && takenOffTo(grade).includes(each));
  return (surface?.remove?.what ?? []).filter((each) => !isOff(each));
}

/**
 * What is said of the parts just noted: of those that are bare and not yet clean, and once for all of a job, or of no job, from
 * one batch to the next.
 */
export function removalToSay(
  { batches, parts }: Pick<Shop, 'batches' | 'parts'>,
  noted: readonly Part[],
  sheet: Sheet,
): readonly Contaminant[] {
  const since = batches.get(Math.max(0, ...batches.keys()))?.entries[0]?.seq ?? 0;
  const now = new Set(noted.map(({ entries }) => notedAt(entries, since).at(-1)));
  const isHeard = ({ details: { job } }: Part): boolean =>
    [...parts.values()].some(
      (other) =>
        other.details.job?.toLowerCase() === job?.toLowerCase() &&
        notedAt(other.entries, since).some((seq) => !now.has(seq)),
    );
  const unheard = noted.filter((part) => part.coats.length === 0 && !isHeard(part));
  const still = new Set(unheard.flatMap((part) => stillOn(sheet, part.prepared ?? {})));
  return stillOn(sheet, {}).filter((each) => still.has(each));
}

/** Whether a part that nobody noted before it was prepared is the first, from one batch to the next, that is wiped with solvent. */
export function isFirstWiping(
  { batches, parts }: Pick<Shop, 'batches' | 'parts'>,
  named: readonly PartName[],
): boolean {
  const since = batches.get(Math.max(0, ...batches.keys()))?.entries[0]?.seq ?? 0;
  const wiped = ({ fact, seq }: Entry): boolean =>
    seq > since && fact.type === 'SurfacePrepared' && fact.solvents !== undefined;
  const last = named.map((name) => parts.get(name)?.entries.findLast(wiped)?.seq ?? Number.POSITIVE_INFINITY);
  const said = Math.min(...last);
  const isBefore = (entry: Entry): boolean =>
    entry.seq < said && (wiped(entry) || (entry.fact.type === 'PartReceived' && entry.seq > since));
  return Number.isFinite(said) && ![...parts.values()].some(({ entries }) => entries.some(isBefore));
}

const notedAt = (entries: readonly Entry[], since: number): readonly number[] =>
  entries.flatMap(({ fact, seq }) => (fact.type === 'PartReceived' && seq > since ? [seq] : []));

/** Empty where nothing is asked, or another question comes first. */
export function removalAsked(
  { crew, batches, parts }: Pick<Shop, 'crew' | 'batches' | 'parts'>,
  part: Part,
  sheet: Sheet,
  {
    by,
    at,
    named,
  }: {
    readonly by: PersonName;
    readonly at: EpochMs /** Of the line that says it. */;
    readonly named: readonly PartName[];
  },
): readonly Contaminant[] {
  const still = stillOn(sheet, part.prepared ?? {});
  const batch = batches.get(Math.max(0, ...batches.keys()));
  const stepAsked =
    batch !== undefined && batch.emptied === undefined
      ? firstUnanswered(crew.stepAnswers, batch, at, true)
      : stepsAskedBy(sheet).find(
          (step) => answerTo(crew.stepAnswers, step, { sheet, place: defaultPlace, reader: by }, at) === undefined,
        );
  const said = Math.min(
    ...named.map((name) => parts.get(name)?.entries.findLast(({ fact }) => fact.type === 'SurfacePrepared')?.seq ?? 0),
  );
  const since = batch?.entries[0]?.seq ?? 0;
  const askedBefore = [...parts.values()].some(({ entries }) =>
    entries.some(
      ({ fact, seq }) =>
        fact.type === 'SurfacePrepared' && seq > since && seq < said && stillOn(sheet, fact).length > 0,
    ),
  );
  return part.coats.length > 0 || stepAsked !== undefined || askedBefore ? [] : still;
}
