// What follows from a command about parts: their events, or why not. One line may name several parts; they stand or
// fall together.

import { asItStoodAt } from '../as-it-stands.ts';
import { type CommandOf, verbRows } from '../commands.ts';
import { roleShort } from '../crew/who-may.ts';
import { accepted, type Decision, type Said, unclear } from '../decision.ts';
import { type FilmTestName, type FilmTestRead, isSprayed } from '../film-tests.ts';
import type { EventBody, NewEvent } from '../history.ts';
import { crewStream, type PartName, partStream } from '../ids.ts';
import { cureRestsOn, releaseRestsOn } from '../instrument/rests-on-readings.ts';
import { known } from '../known.ts';
import { editionOfToday } from '../rule-editions.ts';
import { judge, type Rule } from '../rules.ts';
import { airLog, batchOf, livePartNames, type Shop } from '../shop.ts';
import { lackingStep } from '../steps/step-rules.ts';
import type { EpochMs } from '../units.ts';
import type { CureWay, NamedPart } from '../verbs/said.ts';
import type { Reading } from './answered.ts';
import { askedOf, failedBy, holdForReadings, kindOf, unlifted } from './failed-readings.ts';
import { filmSheet } from './film-rule.ts';
import { holdAfter } from './holding.ts';
import { askedAsNew } from './new-part.ts';
import { foldPart, type Part } from './part.ts';
import { heatNotKnown } from './part-heat.ts';
import { type CureCase, cureRules, dryRules, type PartCase } from './part-rules.ts';
import { askedForRelease, halfTold } from './release-asked.ts';
import { leftRules, releaseRules } from './release-rules.ts';

/**
 * Of several some of which are known, what would be new is shown first: those that are known stay as they are. The first of which it
 * is told what it bears is filed under the crew too, which from then on notes it of its parts.
 */
export function decidePart({ crew, parts }: Shop, said: Said<CommandOf<'part'>>): Decision {
  const { part, details, unread, more = [], isAsked = false } = said.command;
  const named: readonly NamedPart[] = [{ part, details, ...known({ unread }) }, ...more];
  const fresh = named.filter((each) => !parts.has(each.part));
  const isMixed = fresh.length > 0 && fresh.length < named.length;
  if (isAsked || isMixed) {
    return unclear({ code: 'parts-in', fresh, known: named.filter((each) => parts.has(each.part)) });
  }
  const first =
    crew.heatNotedAt === undefined ? named.findIndex(({ details }) => details.highestCelsius !== undefined) : -1;
  return accepted(
    ...named.map(({ part, details }, i): NewEvent => {
      const under = i === first ? [crewStream] : [];
      return { streams: [partStream(part), ...under], happenedAt: said.at, body: { type: 'PartReceived', ...details } };
    }),
  );
}

export function decideDry(shop: Shop, said: Said<CommandOf<'dry'>>): Decision {
  return onParts(shop, said, said.command.parts, dryRules, { type: 'FilmDry' });
}

export function decideCure(shop: Shop, said: Said<CommandOf<'cure'>>): Decision {
  const { way } = said.command;
  const setCelsius = way.kind === 'oven' ? way.setCelsius : undefined;
  const body: EventBody = { type: 'CureStarted', way: way.kind, ...known({ setCelsius }) };
  return onParts(shop, said, said.command.parts, cureRules, body, (part) => ({
    ...neededFor(shop, part, way, said.at),
  }));
}

/** What its kind of cure needs: what the crew has said that it lacks, and what nobody has told of the part. */
export function neededFor(
  shop: Shop,
  part: Part,
  way: CureWay,
  at: EpochMs,
): Pick<CureCase, 'way' | 'lacking' | 'heat' | 'readWithFailed'> {
  const batch = batchOf(shop, part);
  const lacking = batch && lackingStep(shop.crew.stepAnswers, batch, `cure-${way.kind}`, at);
  const heat = way.kind === 'oven' ? heatNotKnown(shop, part, at, way.setCelsius) : undefined;
  return { way, lacking, heat, ...cureRestsOn(shop, part, way.kind, at) };
}

/** A decision counts from when it is given, whatever time is said with it. */
export function decideRelease(shop: Shop, said: Said<CommandOf<'release'>>): Decision {
  const given = { ...said, at: said.now };
  return onParts(shop, given, said.command.parts, releaseRules, { type: 'PartReleased' }, (part) => ({
    unlifted: unlifted(shop, part),
    by: said.by,
    asked: askedForRelease(shop, part, given.at),
    half: halfTold(part, filmSheet(shop, part, given.at)),
    ...releaseRestsOn(shop, part, given.at),
  }));
}

/** Recorded by whoever says it and however: what left without a release is held, so that whoever leads settles what becomes of it. */
export function decideShipped(shop: Shop, said: Said<CommandOf<'shipped'>>): Decision {
  const gone = { ...said, stance: { is: 'happened' as const } };
  return onParts(shop, gone, said.command.parts, leftRules, { type: 'PartLeft' });
}

export function decideTested(shop: Shop, said: Said<CommandOf<'adhesion' | 'rub'>>): Decision {
  const { command } = said;
  const coupon = known({ coupon: command.coupon, retest: command.retest });
  const body: Reading =
    command.verb === 'adhesion'
      ? { type: 'AdhesionTested', rating: command.rating, ...coupon }
      : { type: 'SolventRubbed', doubleRubs: command.doubleRubs, result: command.result, ...coupon };
  return onReading(shop, said, command.part, body);
}

export function decideFilmTested(shop: Shop, said: Said<CommandOf<FilmTestName>>): Decision {
  const { part, coupon, retest } = said.command;
  const body: Reading = { type: 'FilmTested', ...testRead(said.command), ...known({ coupon, retest }) };
  return onReading(shop, said, part, body);
}

function testRead(command: CommandOf<FilmTestName>): FilmTestRead {
  switch (command.verb) {
    case 'pull-off':
      return { of: 'pull-off', megapascals: command.megapascals, ...known({ brokeAt: command.brokeAt }) };
    case 'gloss':
      return { of: 'gloss', glossUnits: command.glossUnits };
    case 'hardness':
      return { of: 'hardness', pencil: command.pencil };
    case 'holidays':
      return { of: 'holidays', found: command.found, ...known({ volts: command.volts }) };
    case 'visual':
      return { of: 'visual', looks: [...command.looks] };
  }
}

/** A reading is recorded, whatever it says; one that fails holds its part with it. */
export function onReading(shop: Shop, said: Said, name: PartName, body: Reading): Decision {
  const decision = onParts(shop, said, [name], [], body);
  if (decision.kind !== 'accepted') return decision;
  return accepted(
    ...decision.events,
    ...holdForReading(shop, said, name, body),
    ...answerForRetest(shop, said, name, body),
  );
}

export function holdForReading(shop: Shop, said: Said, name: PartName, body: Reading): readonly NewEvent[] {
  const part = partAsOf(shop, name, said.at);
  if (part === undefined) return [];
  const asked = askedOf(shop, part, { happenedAt: said.at, edition: editionOfToday });
  const sheet = filmSheet(shop, part, said.at);
  const failed = failedBy(body, {
    part: shop.parts.get(name) ?? part,
    sheet,
    asked,
    films: part.films,
    sprayed: isSprayed(part),
  });
  return failed === undefined ? [] : [holdForReadings(part, [failed], said.now)];
}

/** One that passes stands in place of those of its kind that failed where it says why, and only if whoever may release read it. */
function answerForRetest(shop: Shop, said: Said, name: PartName, body: Reading): readonly NewEvent[] {
  const why = 'retest' in body ? body.retest : undefined;
  const part = partAsOf(shop, name, said.now);
  if (why === undefined || part === undefined || roleShort(shop.crew, said.by, 'lead') !== undefined) return [];
  if (holdForReading(shop, said, name, body).length > 0) return [];
  const kind = kindOf(body);
  const held = part.verdict?.is === 'held' ? part.verdict.failed : [];
  const failed = [...held, ...unlifted(shop, part).map(({ reading }) => reading)].filter(({ of }) => of === kind);
  if (failed.length === 0) return [];
  return [{ streams: [partStream(name)], happenedAt: said.now, body: { type: 'FailureAnswered', why, failed } }];
}

/** The same event on each of these parts, or none at all. */
export function onParts<More extends object>(
  shop: Shop,
  said: Said,
  names: readonly PartName[],
  rules: readonly Rule<PartCase & More>[],
  body: EventBody,
  more?: (part: Part) => More,
): Decision {
  const { command } = said;
  const mayBeNew = verbRows[command.verb].fields.asNew !== undefined;
  const asNew = 'asNew' in command && command.asNew === true;
  const asked = mayBeNew ? askedAsNew(shop, { names, asNew }) : undefined;
  if (asked !== undefined) return asked;
  const cases: (PartCase & More)[] = [];
  for (const name of names) {
    const part = partAsOf(shop, name, said.at) ?? (asNew ? foldPart(name, []) : undefined);
    if (part === undefined) return unclear({ code: 'no-such-part', part: name, live: livePartNames(shop) });
    const batch = batchOf(shop, part);
    const situation: PartCase = { part, sheet: batch?.sheet, air: airLog(shop, batch?.place), at: said.at };
    cases.push({ ...situation, ...(more?.(part) as More) });
  }
  return judge(shop, said, rules, cases, (saidWith) =>
    names.flatMap((name): readonly NewEvent[] => [
      { streams: [partStream(name)], happenedAt: said.at, body, saidWith },
      ...holdAfter(name, said.at, saidWith),
    ]),
  );
}

/** The part as it was just before something that happens at `at`; said late, what came after does not count. */
export function partAsOf(shop: Shop, name: PartName, at: EpochMs): Part | undefined {
  const part = shop.parts.get(name);
  return part === undefined ? undefined : foldPart(name, asItStoodAt(part.entries, at));
}
