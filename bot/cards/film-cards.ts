// Films and what was tested on them: readings against the rule that the sheet names, adhesion, solvent rub; and what
// stands against a part when it is released.

import type { CommandOf } from '../../core/commands.ts';
import { isSprayed, judgeTest } from '../../core/film-tests.ts';
import type { Entry } from '../../core/history.ts';
import { partStream } from '../../core/ids.ts';
import { answeredIn, isReading } from '../../core/part/answered.ts';
import { dryToCome } from '../../core/part/dry-to-come.ts';
import { askedOf, failedReadings, kindOf } from '../../core/part/failed-readings.ts';
import { type FilmFinding, judgeFilm } from '../../core/part/film-acceptance.ts';
import { filmSheet } from '../../core/part/film-rule.ts';
import { setsJudged } from '../../core/part/film-set-failed.ts';
import { filmSets, spotsIn } from '../../core/part/film-sets.ts';
import { filmReading, type Part, type SpotTold } from '../../core/part/part.ts';
import { deviationsIn } from '../../core/records/deviations.ts';
import { batchOf } from '../../core/shop.ts';
import { statusOf } from '../../core/status.ts';
import { type Micrometres, micrometres } from '../../core/units.ts';
import { type Card, type CardFact, makeCard } from './card.ts';
import type { Telling } from './card-context.ts';
import { deviationSaid } from './deviation-lines.ts';
import { factsOf } from './facts.ts';
import { heldLines, partTaps } from './part-cards.ts';
import { type SpotsTold, spotsTold } from './spot-cards.ts';
import { stillAskedLines } from './still-asked.ts';

export function filmCard(telling: Telling, part: Part): Card {
  const { replies, parts } = telling.words;
  const latest = latestRead(part);
  const film = latest?.fact.type === 'FilmRead' ? filmReading(latest.fact, latest.happenedAt) : undefined;
  if (film === undefined) return makeCard(replies.partNoted(part.name), 'plain');
  const title = replies.filmRead(part.name, film.state);
  const facts = filmFacts(telling, film.micrometres);
  const spots = film.told === undefined ? undefined : spotsTold(telling, part, spotsOfLine(part));
  if (spots !== undefined) return spotsCard(telling, part, spots);
  if (film.state === 'wet') return readingCard(telling, part, title, wetLines(telling, part, film.micrometres), facts);
  const finding = findingOf(telling, part, film.micrometres);
  // A film outside its rule is told as the deviation that it is.
  const lines = finding.is === 'outside' ? [] : [parts.film(finding, telling.figures)];
  return readingCard(telling, part, title, lines, facts);
}

/** As it was told, whenever it was read. */
const latestRead = ({ entries }: Part): Entry | undefined =>
  entries.filter(({ fact }) => fact.type === 'FilmRead').toSorted((a, b) => b.seq - a.seq)[0];

/** Those that one line told. */
function spotsOfLine(part: Part): readonly SpotTold[] {
  const request = latestRead(part)?.request;
  return part.entries.flatMap(({ fact, happenedAt, request: of }) => {
    const told = fact.type === 'FilmRead' && of === request ? filmReading(fact, happenedAt).told : undefined;
    return told === undefined || fact.type !== 'FilmRead'
      ? []
      : spotsIn(told, fact.micrometres).map(({ spot }) => ({ ...told, spot }));
  });
}

/** What comes next of its set ahead of what comes next of the part. */
function spotsCard(telling: Telling, part: Part, { title, lines, actions, fields }: SpotsTold): Card {
  const card = readingCard(telling, part, title, lines);
  const others = card.actions.filter(({ id }) => id !== 'film' || actions.every((each) => each.id !== 'spot'));
  return { ...card, fields, actions: [...actions, ...others] };
}

/** What it means dry, where the sheet of the coat that it lies in lets it be known. */
function wetLines({ words, figures, shop }: Telling, part: Part, wet: readonly Micrometres[]): readonly string[] {
  const sheet = batchOf(shop, part)?.sheet;
  const dry = dryToCome(wet, sheet);
  const meaning = dry === undefined ? sheet && words.parts.dryNotKnown : words.parts.dryToCome(dry, figures);
  return [...(meaning === undefined ? [] : [meaning]), words.replies.filmCheckOnly];
}

/** With the hold that stands on the part, whether this reading made it or one before. */
function readingCard(
  telling: Telling,
  part: Part,
  title: string,
  lines: readonly string[],
  facts: Card['facts'] = [],
): Card {
  const status = statusOf.part(telling, part);
  const held = heldLines(telling, status);
  return makeCard(title, held.length > 0 ? 'warn' : 'plain', {
    facts,
    lines: [...held, ...lines, ...againLines(telling, part), ...stillAskedLines(telling, status)],
    actions: partTaps(telling, status),
  });
}

function findingOf(telling: Telling, part: Part, readings: readonly Micrometres[]): FilmFinding {
  if (part.coats.length === 0) return { is: 'not-coated' };
  return judgeFilm(readings, filmSheet(telling.shop, part, telling.now)?.filmRule, part.details.areaSquareMetres);
}

/** The set that stands for the part: of its last coat the last that failed, whatever was read after it; else the last. */
function verdictOf(part: Part, telling: Telling) {
  const coatedAt = part.coats.at(-1)?.at ?? 0;
  const answered = answeredIn(part);
  const failed = failedReadings(telling.shop, part).findLast(
    ({ objection, entry }) =>
      objection.code === 'film-outside' && entry.happenedAt >= coatedAt && !answered.has(entry.seq),
  );
  if (failed?.objection.code === 'film-outside') return failed.objection.finding;
  const dry = part.films.findLast(({ state }) => state === 'dry');
  if (dry?.told === undefined) return dry === undefined ? undefined : findingOf(telling, part, dry.micrometres);
  return (
    setsJudged(part, filmSheet(telling.shop, part, telling.now)).at(-1)?.finding ??
    findingOf(telling, part, dry.micrometres)
  );
}

export function testedCard(telling: Telling, part: Part, command: CommandOf<'adhesion' | 'rub'>): Card {
  const { parts } = telling.words;
  const coupon = command.coupon === true ? [parts.coupon] : [];
  const [title, meaning] =
    command.verb === 'adhesion'
      ? [parts.adhesion(part.name, command.rating), parts.adhesionScale(command.rating)]
      : [parts.rub(part.name, command.doubleRubs, command.result), parts.rubMeaning];
  return readingCard(telling, part, title, [meaning, ...coupon]);
}

/** As it was told, whenever it was read; with what no job asks said to be so. */
export function filmTestedCard(telling: Telling, part: Part): Card {
  const { filmTests, coupon } = telling.words.parts;
  const entry = part.entries.filter(({ fact }) => fact.type === 'FilmTested').toSorted((a, b) => b.seq - a.seq)[0];
  if (entry?.fact.type !== 'FilmTested') return makeCard(telling.words.replies.partNoted(part.name), 'plain');
  const { fact } = entry;
  const isAsked = askedOf(telling.shop, part, entry)?.tests?.some(({ of }) => of === fact.of) === true;
  const isUnjudged = !isAsked && judgeTest(fact, undefined, isSprayed(part)) === 'open';
  return readingCard(telling, part, filmTests.title(part.name, fact, telling.figures), [
    filmTests.meaning(fact.of),
    ...(isUnjudged ? [filmTests.noneAsks] : []),
    ...(fact.coupon === true ? [coupon] : []),
  ]);
}

/** What whoever takes a part out or releases it must see: its film by the rule, and every deviation on it. */
export function standsAgainst(telling: Telling, part: Part): readonly string[] {
  const { parts } = telling.words;
  const finding = verdictOf(part, telling);
  const home = partStream(part.name);
  const deviations = deviationsIn(telling.shop, ({ stream }) => stream === home);
  return [
    finding === undefined ? parts.filmNotRead : parts.film(finding, telling.figures),
    ...(deviations.length === 0 ? [] : [parts.deviationsOn(deviations.length)]),
    ...deviations.map((deviation) => {
      const { entry, permitted } = deviation;
      return parts.deviation(entry.happenedAt, entry.by, deviationSaid(telling, deviation), permitted, telling.figures);
    }),
  ];
}

export function filmFacts(telling: Telling, readings: readonly Micrometres[]): readonly CardFact[] {
  if (readings.length === 0) return [];
  const mean = readings.reduce<number>((sum, reading) => sum + reading, 0) / readings.length;
  return factsOf(telling, {
    'film-mean': micrometres(mean),
    'film-lowest': micrometres(Math.min(...readings)),
    'film-highest': micrometres(Math.max(...readings)),
  });
}

/** Read again after one that failed: what that takes to count. */
function againLines({ shop, words }: Telling, part: Part): readonly string[] {
  const last = part.entries.findLast(({ fact }) => isReading(fact));
  if (part.verdict?.is !== 'held' || last === undefined || !isReading(last.fact)) return [];
  const kind = kindOf(last.fact);
  const set = last.fact.type === 'FilmRead' ? last.fact.set : undefined;
  // The others of the set that failed are not in its place.
  if (set !== undefined && part.verdict.failed.some((each) => each.of === 'film' && each.set === set)) return [];
  const isFailed = failedReadings(shop, part).some(({ entry }) => entry.seq === last.seq);
  if (isFailed || !part.verdict.failed.some(({ of }) => of === kind)) return [];
  const { held } = words.parts;
  const why = 'retest' in last.fact ? last.fact.retest : undefined;
  const ofSet = filmSets(part).find(({ number }) => number === set)?.retest;
  return [(why ?? ofSet) !== undefined ? held.retestStands : held.retestAsks];
}
