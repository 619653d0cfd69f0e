// Films and what was tested on them: readings against the rule that the sheet names, adhesion, solvent rub; and what
// stands against a part when it is released.

import type { CommandOf } from '../../core/commands.ts';
import { partStream } from '../../core/ids.ts';
import { failedReadings } from '../../core/part/failed-readings.ts';
import { judgeFilm } from '../../core/part/film-acceptance.ts';
import type { Part } from '../../core/part/part.ts';
import { deviationsIn } from '../../core/records/deviations.ts';
import { batchOf } from '../../core/shop.ts';
import { statusOf } from '../../core/status.ts';
import type { Micrometres } from '../../core/units.ts';
import { type Card, makeCard } from './card.ts';
import type { Telling } from './card-context.ts';
import { filmFacts } from './film-facts.ts';
import { heldLines, partTaps } from './part-cards.ts';

export function filmCard(t: Telling, part: Part): Card {
  const { replies, parts } = t.words;
  const film = part.films.at(-1);
  if (film === undefined) return makeCard(replies.partNoted(part.name), 'plain');
  const finding = film.state === 'dry' ? findingOf(t, part, film.micrometres) : undefined;
  // A film outside its rule is told as the deviation that it is.
  const lines =
    finding === undefined ? [replies.filmCheckOnly] : finding.is === 'outside' ? [] : [parts.film(finding, t.f)];
  return readingCard(t, part, replies.filmRead(part.name, film.state), lines, filmFacts(t, film.micrometres));
}

/** With the hold that stands on the part, whether this reading made it or one before. */
function readingCard(t: Telling, part: Part, title: string, lines: readonly string[], facts: Card['facts'] = []): Card {
  const status = statusOf.part(t, part);
  const held = heldLines(t, status);
  return makeCard(title, held.length > 0 ? 'warn' : 'plain', {
    facts,
    lines: [...held, ...lines],
    actions: partTaps(t, status),
  });
}

function findingOf(t: Telling, part: Part, readings: readonly Micrometres[]) {
  return judgeFilm(readings, batchOf(t.shop, part)?.sheet.filmRule, part.details.areaSquareMetres);
}

/** The set that stands for the part: of its last coat the last that failed, whatever was read after it; else the last. */
function verdictOf(part: Part, t: Telling) {
  const coatedAt = part.coats.at(-1)?.at ?? 0;
  const failed = failedReadings(t.shop, part).findLast(
    ({ objection, entry }) => objection.code === 'film-outside' && entry.happenedAt >= coatedAt,
  );
  if (failed?.objection.code === 'film-outside') return failed.objection.finding;
  const dry = part.films.findLast(({ state }) => state === 'dry');
  return dry === undefined ? undefined : findingOf(t, part, dry.micrometres);
}

export function testedCard(t: Telling, part: Part, command: CommandOf<'adhesion' | 'rub'>): Card {
  const { parts } = t.words;
  const coupon = command.coupon === true ? [parts.coupon] : [];
  return command.verb === 'adhesion'
    ? readingCard(t, part, parts.adhesion(part.name, command.rating), [parts.adhesionScale(command.rating), ...coupon])
    : readingCard(t, part, parts.rub(part.name, command.doubleRubs, command.result), [parts.rubMeaning, ...coupon]);
}

/** What whoever takes a part out or releases it must see: its film by the rule, and every deviation on it. */
export function standsAgainst(t: Telling, part: Part): readonly string[] {
  const { parts } = t.words;
  const finding = verdictOf(part, t);
  const home = partStream(part.name);
  const deviations = deviationsIn(t.shop, ({ stream }) => stream === home);
  return [
    finding === undefined ? parts.filmNotRead : parts.film(finding, t.f),
    ...(deviations.length === 0 ? [] : [parts.deviationsOn(deviations.length)]),
    ...deviations.map(({ entry, objection, permitted }) =>
      parts.deviation(
        entry.happenedAt,
        entry.by,
        `${t.words.fact(entry.fact, t.f)}. ${t.words.objection(objection, t.f)}`,
        permitted,
        t.f,
      ),
    ),
  ];
}
