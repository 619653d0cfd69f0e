// What is recorded of films: readings in one line, or a set that is told spot by spot, each as it is told. A set goes on until it
// is whole, whoever tells the next spot and however much later; what is told after that begins another.

import type { CommandOf } from '../commands.ts';
import { jobLimits } from '../crew/job-limits.ts';
import { roleShort } from '../crew/who-may.ts';
import { accepted, type Decision, type Said, unclear } from '../decision.ts';
import { isSprayed } from '../film-tests.ts';
import type { FactOf, NewEvent } from '../history.ts';
import { partStream } from '../ids.ts';
import { known } from '../known.ts';
import { editionOfToday } from '../rule-editions.ts';
import type { Shop } from '../shop.ts';
import type { Micrometres } from '../units.ts';
import type { SpotSaid } from '../verbs/said.ts';
import { askedOf, type Failed, failedBy, holdForReadings, unlifted } from './failed-readings.ts';
import { filmSheet } from './film-rule.ts';
import { halfSet, setsJudged } from './film-set-failed.ts';
import { judgeSet, type SetJudged } from './film-set-judge.ts';
import { type FilmTerms, filmTerms } from './film-terms.ts';
import { filmReading, type Part } from './part.ts';
import { onParts, onReading } from './part-decide.ts';
import { joined, numbered, type SpotsNumbered } from './spot-numbers.ts';

type FilmSaid = Said<CommandOf<'film'>>;
type FilmRead = FactOf<'FilmRead'>;

export function decideWet(shop: Shop, said: Said<CommandOf<'wet'>>): Decision {
  const { part, wetFilmMicrometres } = said.command;
  return onReading(shop, said, part, { type: 'FilmRead', state: 'wet', micrometres: [...wetFilmMicrometres] });
}

export function decideFilm(shop: Shop, said: FilmSaid): Decision {
  const { part: name, dryFilmMicrometres: readings = [], spots = [], anew, retest, baseMicrometres } = said.command;
  const part = shop.parts.get(name);
  const sheet = part && filmSheet(shop, part, said.at);
  const terms = part && sheet?.filmRule && filmTerms(sheet.filmRule, part.details.areaSquareMetres);
  const all = [...readings, ...spots.flatMap(({ micrometres }) => micrometres)];
  if (part === undefined || terms === undefined) {
    const dropped = spots.flatMap((spot) => spot.dropped ?? []);
    const more = known({ retest, baseMicrometres, dropped: dropped.length === 0 ? undefined : dropped });
    return orAsked(shop, said, all, { type: 'FilmRead', state: 'dry', micrometres: [...all], ...more });
  }
  const half = halfSet(part, sheet);
  const isOneLine = terms.rule.rule === 'own' && spots.length === 0 && anew === undefined && half === undefined;
  if (isOneLine && readings.length >= terms.spots) {
    const more = known({ retest, baseMicrometres });
    return onReading(shop, said, name, { type: 'FilmRead', state: 'dry', micrometres: [...readings], ...more });
  }
  const told: readonly SpotSaid[] = readings.length === 0 ? spots : [{ micrometres: readings }, ...spots];
  const last = setsJudged(part, sheet).at(-1);
  const set = anew === true || beginsAnew(told, last) ? undefined : last;
  // `film hub-1 spot 3`: which readings it has is asked.
  if (told.every(({ micrometres, dropped }) => micrometres.length === 0 && dropped === undefined))
    return asked(shop, said, set?.next === undefined ? nothingTold(terms, part) : set);
  const each = numbered(told, terms, set);
  const again = each.find(({ spot, dropped }) => dropped === undefined && set !== undefined && isWhole(set, spot));
  if (again !== undefined) {
    const before = set?.spots.find(({ number }) => number === again.spot);
    const { spot, micrometres } = again;
    return unclear({ code: 'spot-told', part: name, spot, readings: before?.readings ?? [], again: micrometres });
  }
  return spotsRead(shop, said, part, { number: set?.set.number ?? nextSet(part), each: joined(each, terms) });
}

/** Nothing told: what is asked for. A name that nobody knows is asked about first. */
function orAsked(shop: Shop, said: FilmSaid, all: readonly Micrometres[], body: FilmRead): Decision {
  return all.length > 0 ? onReading(shop, said, said.command.part, body) : asked(shop, said, undefined);
}

function asked(shop: Shop, said: FilmSaid, set: SetJudged | undefined): Decision {
  const { part } = said.command;
  const decision = onParts(shop, said, [part], [], { type: 'FilmDry' });
  if (decision.kind !== 'accepted') return decision;
  return unclear({ code: 'film-asked', part, set, anew: said.command.anew });
}

const nothingTold = (terms: FilmTerms, part: Part): SetJudged => {
  const set = { number: nextSet(part), spots: [], baseMicrometres: undefined, retest: undefined };
  return judgeSet(set, terms, part.details.areaSquareMetres);
};

/** Of a whole set whatever is told of no spot of it, or of its first, begins another. */
function beginsAnew(told: readonly SpotSaid[], last: SetJudged | undefined): boolean {
  if (last === undefined) return true;
  if (last.next !== undefined) return false;
  return told.every(({ spot, near, dropped }) => near === undefined && dropped === undefined && (spot ?? 1) === 1);
}

const isWhole = ({ spots }: SetJudged, spot: number): boolean =>
  spots.some(({ number, lacks }) => number === spot && lacks === 0);

const nextSet = ({ entries }: Part): number =>
  1 + Math.max(0, ...entries.map(({ fact }) => (fact.type === 'FilmRead' ? (fact.set ?? 0) : 0)));

/** Each by itself; what fails holds the part with it, and a set that passes after one that failed counts for it where it says why. */
function spotsRead(
  shop: Shop,
  said: FilmSaid,
  part: Part,
  { number: set, each }: { readonly number: number; readonly each: readonly SpotsNumbered[] },
): Decision {
  const { retest } = said.command;
  // As the job has it, where it was not said with the readings.
  const ofJob = jobLimits(shop.crew, part.details.job, said.at)?.filmBaseMicrometres;
  const baseMicrometres = said.command.baseMicrometres ?? ofJob;
  const sheet = filmSheet(shop, part, said.at);
  const asked = askedOf(shop, part, { happenedAt: said.at, edition: editionOfToday });
  const events: NewEvent[] = [];
  const failed: Failed[] = [];
  let { films } = part;
  for (const [i, spot] of each.entries()) {
    const of = { ...spot, micrometres: [...spot.micrometres], dropped: spot.dropped && [...spot.dropped] };
    const body: FilmRead = {
      ...{ type: 'FilmRead', state: 'dry', set, micrometres: of.micrometres, spot: of.spot },
      ...known({
        each: of.each,
        near: of.near,
        dropped: of.dropped,
        baseMicrometres,
        retest: i === 0 ? retest : undefined,
      }),
    };
    const decision = onParts(shop, said, [part.name], [], body);
    if (decision.kind !== 'accepted') return decision;
    events.push(...decision.events);
    const one = failedBy(body, { part, sheet, asked, films, sprayed: isSprayed(part) });
    if (one !== undefined) failed.push(one);
    films = [...films, filmReading(body, said.at)];
  }
  const hold = failed.length === 0 ? [] : [holdForReadings(part, failed, said.now)];
  const after = setsJudged({ ...part, films }, sheet).at(-1);
  return accepted(...events, ...hold, ...(failed.length === 0 ? answered(shop, said, part, after) : []));
}

/** Only if whoever may release told its last spot. */
function answered(shop: Shop, said: FilmSaid, part: Part, set: SetJudged | undefined): readonly NewEvent[] {
  const why = set?.set.retest;
  if (why === undefined || set?.finding.is !== 'within' || roleShort(shop.crew, said.by, 'lead') !== undefined)
    return [];
  const held = part.verdict?.is === 'held' ? part.verdict.failed : [];
  const failed = [...held, ...unlifted(shop, part).map(({ reading }) => reading)].filter(({ of }) => of === 'film');
  if (failed.length === 0) return [];
  return [{ streams: [partStream(part.name)], happenedAt: said.now, body: { type: 'FailureAnswered', why, failed } }];
}
