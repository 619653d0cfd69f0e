// Films and what was tested on them: readings against the rule that the sheet names, adhesion, solvent rub; and what
// stands against a part when it is released.

import type { CommandOf } from '../../core/commands.ts';
import { partStream } from '../../core/ids.ts';
import { judgeFilm } from '../../core/part/film-acceptance.ts';
import type { Part } from '../../core/part/part.ts';
import { batchOf } from '../../core/part/part-decide.ts';
import { deviationsIn } from '../../core/records/deviations.ts';
import { type Card, makeCard } from './card.ts';
import { filmFacts } from './film-facts.ts';
import { partTaps } from './part-cards.ts';
import type { Telling } from './telling.ts';

export function filmCard(t: Telling, part: Part): Card {
  const { replies, parts } = t.words;
  const film = part.films.at(-1);
  if (film === undefined) return makeCard(replies.partNoted(part.name), 'plain');
  const finding = film.state === 'dry' ? verdictOf(part, t) : undefined;
  return makeCard(replies.filmRead(part.name, film.state), finding?.is === 'outside' ? 'warn' : 'plain', {
    facts: filmFacts(t, film.micrometres),
    lines: [finding === undefined ? replies.filmCheckOnly : parts.film(finding, t.f)],
    actions: partTaps(t, part),
  });
}

/** Of the last dry readings; `undefined` while there are none. */
function verdictOf(part: Part, t: Telling) {
  const dry = part.films.findLast(({ state }) => state === 'dry');
  if (dry === undefined) return undefined;
  return judgeFilm(dry.micrometres, batchOf(t.shop, part)?.sheet.filmRule, part.details.areaSquareMetres);
}

export function testedCard(t: Telling, part: Part, command: CommandOf<'adhesion' | 'rub'>): Card {
  const { parts } = t.words;
  const coupon = command.coupon === true ? [parts.coupon] : [];
  return command.verb === 'adhesion'
    ? makeCard(parts.adhesion(part.name, command.rating), 'plain', {
        lines: [parts.adhesionScale(command.rating), ...coupon],
        actions: partTaps(t, part),
      })
    : makeCard(parts.rub(part.name, command.doubleRubs, parts.rubs[command.result]), 'plain', {
        lines: [parts.rubMeaning, ...coupon],
        actions: partTaps(t, part),
      });
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
        t.f.timeDown(entry.happenedAt),
        entry.by,
        `${t.words.fact(entry.fact, t.f)}. ${t.words.objection(objection, t.f)}`,
        permitted,
      ),
    ),
  ];
}
