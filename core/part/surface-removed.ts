// What the sheet wants off a part's steel before its coat, what was said to be off it, and of whom the rest is asked: with one
// tap, after every step of the paper that somebody has still to answer, and of one part between one batch and the next.

import { type Contaminant, type SurfaceGrade, takenOffTo } from '../grades.ts';
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
