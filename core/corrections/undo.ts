// Takes back one's own last act or amendment, of the last hours and until somebody else goes on from it; where anything of
// one's own rests on it, after a second tap. Nothing is erased: the correction stands in the record.

import type { CommandOf } from '../commands.ts';
import { mayNotSettle, roleMissing } from '../crew/who-may.ts';
import { accepted, type Decision, type Said, unclear } from '../decision.ts';
import { type Correction, type Entry, type EventBody, type Fact, isAct, type NewEvent } from '../history.ts';
import type { PersonName } from '../ids.ts';
import { entriesIn, type Shop } from '../shop.ts';
import { minutes, minutesAfter } from '../units.ts';
import { amendTargetOf } from './act-corrected.ts';
import { coatBack } from './moved-coat.ts';
import { goesOnFrom, restingOn } from './rests-on.ts';
import type { ActTold } from './undo-objections.ts';

/** Stands as the reason of what an undo records. */
export const undoWhy = 'undo';

/** A shift: what is older belongs to another day's record. Common practice, no source. */
const undoable = minutes(8 * 60);

/** A slip of the thumb is seen at once. What is older may no longer be what is meant, and clocks have run on it: asked first. */
const undoneAtOnce = minutes(10);

/** What would be taken back: an act with all that one line left, or an amendment with the holds that followed from it. */
interface Latest {
  readonly seq: number;
  readonly saidAt: Entry['recordedAt'];
  readonly entries: readonly Entry[];
  readonly amended: AmendedEntry | undefined;
  /** What the same amendment put right with it. */
  readonly alongside: readonly AmendedEntry[];
}

interface AmendedEntry {
  readonly entry: Entry;
  readonly correction: Correction;
}

export function decideUndo(shop: Shop, said: Said<CommandOf<'undo'>>): Decision {
  const { entry: named, despite } = said.command;
  const acts = entriesIn(shop).filter(isAct);
  const latest = latestOf(said.by, acts);
  if (named !== undefined && (latest === undefined || !isMeant(latest, named)))
    return notLast(said.by, named, acts, latest);
  if (latest === undefined) return unclear({ code: 'nothing-to-undo' });
  const last = told(latest);
  if (said.now > minutesAfter(latest.saidAt, undoable)) {
    return unclear({ code: 'undo-too-late', last, amend: amendTargetOf(last.entry) });
  }
  const wanted = latest.entries
    .map(({ fact }) => roleToUnsettle(shop, said.by, fact))
    .find((role) => role !== undefined);
  if (wanted !== undefined) return unclear(mayNotSettle(shop.crew, wanted));
  const later = goneOnBy(said.by, latest, acts);
  if (later !== undefined) return unclear({ code: 'undo-rests', last, later });
  const rests = latest.amended === undefined ? restingOn(shop, acts, latest.entries) : [];
  const isOld = named === undefined && said.now > minutesAfter(latest.saidAt, undoneAtOnce);
  if (isOld || Math.max(0, ...rests.map(({ seq }) => seq)) > (despite ?? 0)) {
    const own = latest.entries.filter(({ fact }) => !isFollowing(fact)).map(actOf);
    const acts = latest.amended === undefined ? own : [last];
    return unclear({ code: 'undo-asks', entry: latest.seq, acts, rests: rests.map(actOf) });
  }
  return accepted(...takingBack(latest, said));
}

/** A person's latest act, or the act that their latest amendment corrects. `entries`: all that the one line left. */
export function ownLatest(shop: Shop, by: PersonName) {
  const latest = latestOf(by, entriesIn(shop).filter(isAct));
  if (latest === undefined) return undefined;
  const { entry, corrected } = told(latest);
  return { seq: latest.seq, entry, corrected, entries: latest.entries };
}

/** The latest that a person said, not what followed from it by itself. */
function latestOf(by: PersonName, acts: readonly Entry[]): Latest | undefined {
  const last = acts.findLast((entry) => entry.by === by && !isFollowing(entry.fact));
  const [amended, ...alongside] = lastAmendedBy(by, acts);
  if (amended !== undefined && amended.correction.seq > (last?.seq ?? 0)) {
    const { seq, at, request } = amended.correction;
    const holds = acts.filter((entry) => entry.request === request && isFollowing(entry.fact));
    return { seq, saidAt: at, entries: holds, amended, alongside };
  }
  if (last === undefined) return undefined;
  const entries = acts.filter((entry) => entry.request === last.request);
  return { seq: last.seq, saidAt: last.recordedAt, entries, amended: undefined, alongside: [] };
}

/** A hold that the rules put on a part when an earlier act came to look otherwise: it goes and stays with what brought it. */
function isFollowing(fact: Fact): boolean {
  return fact.type === 'InstrumentTaken' || (fact.type === 'PartHeld' && (fact.because ?? []).length > 0);
}

/** A hold for a reading that failed stays though the reading goes: a lead lifts it, and says why. */
function isOfReading(fact: Fact): boolean {
  return fact.type === 'PartHeld' && (fact.failed ?? []).length > 0;
}

const isMeant = ({ seq, entries }: Latest, named: number) =>
  named === seq || entries.some((entry) => entry.seq === named);

const actOf = (entry: Entry): ActTold => ({ entry, corrected: false });

function told({ seq, entries, amended }: Latest): ActTold {
  const entry = amended?.entry ?? entries.find((each) => each.seq === seq);
  if (entry === undefined) throw new Error(`entry ${seq} is the last act and is not there`);
  return { entry, corrected: amended !== undefined };
}

function notLast(by: PersonName, named: number, acts: readonly Entry[], latest: Latest | undefined): Decision {
  const entry = acts.find(({ seq }) => seq === named);
  return unclear({
    code: 'undo-not-last',
    named: entry === undefined ? undefined : actOf(entry),
    isTheirs: entry?.by === by,
    last: latest === undefined ? undefined : told(latest),
  });
}

/** All that a person's last amendment that still stands has put right. */
function lastAmendedBy(by: string, acts: readonly Entry[]): readonly AmendedEntry[] {
  const amended = acts
    .flatMap((entry) => standing(entry).map((correction) => ({ entry, correction })))
    .filter(({ correction }) => correction.by === by)
    .sort((a, b) => a.correction.seq - b.correction.seq);
  const last = amended.at(-1);
  return amended.filter(({ correction }) => correction.request === last?.correction.request);
}

/** An entry's corrections without those that were taken back: each undo takes back the one before it. */
function standing(entry: Entry): readonly Correction[] {
  const kept: Correction[] = [];
  for (const correction of entry.corrections) {
    if (correction.why === undoWhy) kept.pop();
    else kept.push(correction);
  }
  return kept;
}

/** Somebody else's act that goes on from it, or their correction of it: that is not the speaker's to undo. */
function goneOnBy(by: PersonName, { seq, entries, amended }: Latest, acts: readonly Entry[]): ActTold | undefined {
  const taken = amended === undefined ? entries : [amended.entry, ...entries];
  for (const entry of taken) {
    const since = amended?.entry === entry ? seq : entry.seq;
    const corrected = standing(entry).find((each) => each.seq > since && each.by !== by);
    if (corrected !== undefined)
      return { entry: { ...entry, by: corrected.by, happenedAt: corrected.at }, corrected: true };
    const later = acts.find(
      (other) => other.seq > since && other.by !== by && !taken.includes(other) && goesOnFrom(other, entry),
    );
    if (later !== undefined) return actOf(later);
  }
  return undefined;
}

/** A slip in what one may settle is one's own to take back; but whoever may not put the brief off does not do so by undo. */
function roleToUnsettle(shop: Shop, by: PersonName, fact: Fact) {
  const putOn = fact.type === 'SettingChanged' && fact.setting.name === 'brief' && fact.setting.on;
  return putOn ? roleMissing(shop.crew, by, { set: 'brief', off: true }) : undefined;
}

function takingBack({ entries, amended, alongside }: Latest, said: Said): readonly NewEvent[] {
  const undone = entries
    .filter(({ fact }) => !isOfReading(fact))
    .map((entry) => amendedTo(entry, { kind: 'undone' }, said));
  if (amended === undefined) return [...undone, ...entries.flatMap((entry) => coatBack(entry, said))];
  return [
    ...[amended, ...alongside].map(({ entry, correction }) => {
      const to = { kind: 'corrected' as const, fact: correction.wasFact, happenedAt: correction.wasAt };
      return amendedTo(entry, to, said);
    }),
    ...undone,
  ];
}

function amendedTo(entry: Entry, to: Extract<EventBody, { type: 'Amended' }>['to'], said: Said): NewEvent {
  return {
    streams: [entry.stream, ...entry.alsoUnder],
    happenedAt: said.now,
    body: { type: 'Amended', amends: entry.seq, to, why: undoWhy },
  };
}
