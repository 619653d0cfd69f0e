// Settings, solvent that was used, and "heard": what rang for the speaker is answered by name.

import type { CommandOf } from '../commands.ts';
import { accepted, type Decision, onCrew, type Said, unclear } from '../decision.ts';
import { isFailed } from '../failed.ts';
import type { NewEvent } from '../history.ts';
import { nameIn, nounOf, type PersonName, type StreamId } from '../ids.ts';
import { personNamed } from '../person-named.ts';
import { maybeUsual, offeredSheets, sheetMeant } from '../products/shelf.ts';
import type { Setting, SettingOf } from '../settings.ts';
import { allSaid } from '../settled.ts';
import { nounsIn, type Shop } from '../shop.ts';
import type { Crew } from './crew.ts';
import type { CrewUnclear } from './crew-unclear.ts';
import { isSameJob } from './job-limits.ts';
import { mayNotSettle, roleMissingToSet } from './who-may.ts';

export function decideSet(shop: Shop, said: Said<CommandOf<'set'>>): Decision {
  const setting = asKnown(shop.crew, said.command.setting);
  if (setting.name === 'sheet') {
    const meant = sheetMeant(shop.shelf, undefined, setting.sheet);
    if (isFailed(meant)) return unclear(meant.failed);
    if (!maybeUsual(shop.shelf, setting.sheet)) {
      return unclear({ code: 'which-sheet', known: offeredSheets(shop.shelf), faults: [], invented: setting.sheet });
    }
  }
  const wanted = roleMissingToSet(shop.crew, said.by, setting);
  if (wanted !== undefined) {
    return unclear(mayNotSettle(shop.crew, wanted));
  }
  const stranger = setting.name === 'sprayers' ? strangerAmong(shop.crew, setting.people) : undefined;
  if (stranger !== undefined) return unclear(stranger);
  return onCrew(said, { type: 'SettingChanged', setting });
}

export function decideUsed(_: Shop, said: Said<CommandOf<'used'>>): Decision {
  const { material, use, amount } = said.command;
  return onCrew(said, { type: 'SolventUsed', material, use, amount });
}

/** Whoever is listed by a slip could never spray, and nobody would see why. A crew of one has no list to hold names against. */
function strangerAmong({ people }: Crew, names: readonly PersonName[]): CrewUnclear | undefined {
  const known = people.map(({ name }) => name);
  const stranger = names.find((name) => !known.includes(name));
  if (stranger === undefined || known.length < 2) return undefined;
  return { code: 'no-such-person', person: stranger, known };
}

/** Names that the crew has, as the crew writes them; another is new, and joins by it where it is given a role. */
function asKnown(crew: Crew, setting: Setting): Setting {
  const nameOf = (typed: PersonName) => personNamed(crew.people, typed) ?? typed;
  if (setting.name === 'role') {
    return { ...setting, given: setting.given.map(({ person, role }) => ({ person: nameOf(person), role })) };
  }
  if (setting.name === 'job') return withWhatStands(crew, setting);
  if (setting.name === 'sprayers') return { ...setting, people: [...new Set(setting.people.map(nameOf))] };
  return setting;
}

/** A later line adds to what a job asks; one that asks for nothing lifts it all. */
function withWhatStands(crew: Crew, setting: SettingOf<'job'>): SettingOf<'job'> {
  const stood = allSaid(crew, 'job').find(({ job }) => isSameJob(job, setting.job));
  const lifts = Object.keys(setting).length === 2;
  return { ...(lifts ? {} : stood), ...setting, job: stood?.job ?? setting.job };
}

/**
 * Answers the bells that are named; else every ring that went to the speaker and that nobody has answered; if there is none,
 * the latest of anybody's.
 */
export function decideOk(shop: Shop, said: Said<CommandOf<'ok'>>): Decision {
  const { key, also = [] } = said.command;
  const isNamed = (ring: string) => key === undefined || ring === key || also.includes(ring);
  const open = ringsOpen(shop).filter((ring) => ring.rangAt <= said.at && isNamed(ring.key));
  const theirs = open.filter((ring) => ring.to.includes(said.by));
  const latest = open.toSorted((a, b) => b.rangAt - a.rangAt).slice(0, 1);
  const answered = key !== undefined ? open : theirs.length > 0 ? theirs : latest;
  if (answered.length === 0) return unclear({ code: 'nothing-rang' });
  return accepted(
    ...answered.map(({ stream, key }): NewEvent => {
      return { streams: [stream], happenedAt: said.at, body: { type: 'RingAnswered', key } };
    }),
  );
}

/** A released part waits for what comes after its cure alone: what rang before is past. */
function isOfEndedWork({ parts }: Shop, stream: StreamId, key: string): boolean {
  const part = nounOf(stream) === 'part' ? parts.get(nameIn(stream)) : undefined;
  const is = part?.verdict?.is;
  return is === 'scrapped' || is === 'returned' || (is === 'released' && !key.startsWith(`${stream}/after-`));
}

/** The last ring of each key that nobody has answered. */
export function ringsOpen(shop: Shop) {
  return nounsIn(shop).flatMap(({ stream, noun }) =>
    [...noun.rings].flatMap(([key, rings]) => {
      if (isOfEndedWork(shop, stream, key)) return [];
      const unheard = rings.filter(({ answered }) => answered === undefined);
      const last = unheard.at(-1);
      // It went on to the lead because whoever it rang for first had not answered: they still may.
      return last === undefined ? [] : [{ stream, key, ...last, to: unheard.flatMap(({ to }) => to) }];
    }),
  );
}
