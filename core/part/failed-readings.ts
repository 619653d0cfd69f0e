// What a reading says against its part by itself: a dry film outside the rule of its sheet, adhesion below the cut, a
// solvent rub that went through, more heat than part or film bears. It is recorded whatever it says, and holds the part until a lead lifts that; a better
// reading afterwards does not.

import { adhesionClass, crossCutFails } from '../calc/adhesion.ts';
import { jobLimits, type ReleaseLimits } from '../crew/job-limits.ts';
import { isSprayed, judgeTest, type TestRead } from '../film-tests.ts';
import type { Entry, Fact, NewEvent } from '../history.ts';
import { partStream } from '../ids.ts';
import { known } from '../known.ts';
import type { Sheet } from '../products/sheet.ts';
import { holdsIn } from '../rule-editions.ts';
import type { Shop } from '../shop.ts';
import { celsius as celsiusOf, type EpochMs } from '../units.ts';
import { answeredIn, isReading, type Reading, testRead } from './answered.ts';
import { readingKey } from './failed-reading.ts';
import { judgeFilm } from './film-acceptance.ts';
import { filmSheet } from './film-rule.ts';
import { failedOfSet } from './film-set-failed.ts';
import { type FilmReading, foldPart, type Part } from './part.ts';
import type { FailedReading } from './part-events.ts';
import type { ReadingObjection } from './part-objections.ts';

export interface Failed {
  readonly reading: FailedReading;
  readonly objection: ReadingObjection;
}

/** What was read is judged by. */
export interface ReadingCase {
  readonly part: Part;
  /** Of the coat that was read. */
  readonly sheet: Sheet | undefined;
  /** By the job. */
  readonly asked: ReleaseLimits | undefined;
  /** Read before it. */
  readonly films: readonly FilmReading[];
  /** The coat that was read. */
  readonly sprayed: boolean;
}

/** `undefined` where it passes, and where no rule says. */
export function failedBy(fact: Reading, { part, sheet, asked, films, sprayed }: ReadingCase): Failed | undefined {
  switch (fact.type) {
    case 'FilmRead': {
      if (fact.state === 'wet') return failedTest({ of: 'wet', micrometres: fact.micrometres }, sprayed, asked);
      if (fact.set !== undefined) {
        const ofSet = failedOfSet(fact, films, part, sheet);
        return ofSet && { reading: ofSet.reading, objection: { code: 'film-outside', finding: ofSet.finding } };
      }
      const { micrometres } = fact;
      const finding = judgeFilm(micrometres, sheet?.filmRule, part.details.areaSquareMetres);
      if (finding.is !== 'outside') return undefined;
      return { reading: { of: 'film', micrometres }, objection: { code: 'film-outside', finding } };
    }
    case 'AdhesionTested': {
      const { rating, coupon } = fact;
      const reading = { of: 'adhesion' as const, rating, ...known({ coupon }) };
      if (crossCutFails(rating)) return { reading, objection: { code: 'adhesion-failed', rating } };
      const least = asked?.leastAdhesion;
      return least === undefined || adhesionClass(rating) <= adhesionClass(least)
        ? undefined
        : { reading, objection: { code: 'adhesion-failed', rating, least } };
    }
    case 'SolventRubbed': {
      const { doubleRubs, result, coupon } = fact;
      if (result !== 'through') return undefined;
      const reading = { of: 'rub' as const, doubleRubs, ...known({ coupon }) };
      return { reading, objection: { code: 'rubbed-through', doubleRubs } };
    }
    case 'FilmTested':
      return failedTest(testRead(fact), sprayed, asked);
    case 'PartTemperatureRead': {
      const { celsius } = fact;
      const limits = [part.details.highestCelsius, sheet?.cure.oven?.highestCelsius].filter(
        (limit) => limit !== undefined,
      );
      const highestCelsius = limits.length === 0 ? undefined : Math.min(...limits);
      if (highestCelsius === undefined || celsius <= highestCelsius) return undefined;
      const figures = { celsius, highestCelsius: celsiusOf(highestCelsius) };
      return { reading: { of: 'heat', ...figures }, objection: { code: 'overheated', ...figures } };
    }
  }
}

/** As its job asks for it; of holidays one that is found fails whatever is asked. */
function failedTest(
  reading: Extract<FailedReading, { of: TestRead['of'] }>,
  sprayed: boolean,
  limits: ReleaseLimits | undefined,
): Failed | undefined {
  const asked = limits?.tests?.find(({ of }) => of === reading.of);
  return judgeTest(reading, asked, sprayed) === 'fails'
    ? { reading, objection: { code: 'test-failed', read: reading, asked } }
    : undefined;
}

/** As what it would fail. */
export function kindOf(fact: Reading): FailedReading['of'] {
  switch (fact.type) {
    case 'FilmRead':
      return fact.state === 'dry' ? 'film' : 'wet';
    case 'AdhesionTested':
      return 'adhesion';
    case 'SolventRubbed':
      return 'rub';
    case 'FilmTested':
      return fact.of;
    case 'PartTemperatureRead':
      return 'heat';
  }
}

/** Every reading of the part that fails, as the record now stands, in the order in which they were taken. */
export function failedReadings(shop: Shop, part: Part): readonly (Failed & { readonly entry: Entry })[] {
  return part.entries.flatMap((entry, i) => {
    const { fact, edition } = entry;
    // Before edition 5 no temperature held anything.
    const isOfOld = fact.type === 'PartTemperatureRead' && !holdsIn({ since: 5 }, edition);
    if (!isReading(fact) || isOfOld) return [];
    const found = foldPart(part.name, part.entries.slice(0, i));
    const sheet = filmSheet(shop, found, entry.happenedAt);
    const failed = failedBy(fact, {
      part,
      sheet,
      asked: askedOf(shop, part, entry),
      films: found.films,
      sprayed: isSprayed(found),
    });
    return failed === undefined ? [] : [{ ...failed, entry }];
  });
}

/** Before edition 8 a job asked for no reading. */
export const askedOf = (
  { crew }: Pick<Shop, 'crew'>,
  { details: { job } }: Part,
  { happenedAt, edition }: Pick<Entry, 'happenedAt' | 'edition'>,
): ReleaseLimits | undefined => (holdsIn({ since: 8 }, edition) ? jobLimits(crew, job, happenedAt) : undefined);

/**
 * Those that a hold in the record names. Others were taken before readings held anything: they are not marked anew, but
 * stand in the way of a release to come.
 */
export function isMarked(part: Part, reading: FailedReading): boolean {
  const key = readingKey(reading);
  return part.entries.some(
    ({ fact }) => fact.type === 'PartHeld' && fact.failed?.some((held) => readingKey(held) === key) === true,
  );
}

/** What was read before says nothing against the part as it is now. */
const ends: ReadonlySet<Fact['type']> = new Set(['CoatApplied', 'PartReleased', 'PartDisposed']);

/** Of the last coat, that no hold names and no release has lifted since. */
export function unlifted(shop: Shop, part: Part): readonly Failed[] {
  const since = part.entries.findLastIndex(({ fact }) => ends.has(fact.type));
  const answered = answeredIn(part);
  const standing = new Set(part.entries.slice(since + 1).flatMap(({ seq }) => (answered.has(seq) ? [] : [seq])));
  return failedReadings(shop, part).filter(({ entry, reading }) => standing.has(entry.seq) && !isMarked(part, reading));
}

/** `at`: of now, though the reading is told late. What was decided in between did not know of it. */
export function holdForReadings(part: Part, failed: readonly Failed[], at: EpochMs): NewEvent {
  const because = [...new Set(failed.map(({ objection }) => objection.code))];
  const readings = failed.map(({ reading }) => reading);
  const body = { type: 'PartHeld' as const, why: '', because, failed: readings };
  return { streams: [partStream(part.name)], happenedAt: at, body };
}
