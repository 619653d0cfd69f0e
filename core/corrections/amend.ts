// Corrects the last act of a kind on one batch, can, part or place: only what is named changes; who, when and why are kept.

import { inOrder } from '../as-it-stands.ts';
import type { CommandOf } from '../commands.ts';
import { mayNotSettle, peopleFrom, roleMissing, roleShort } from '../crew/who-may.ts';
import { accepted, type Decision, type Said, unclear } from '../decision.ts';
import { type Failed, failed, isFailed } from '../failed.ts';
import type { Entry, NewEvent } from '../history.ts';
import { nameIn, nounOf, numberIn } from '../ids.ts';
import { readBeside, takenInstead, underInstrument, unknownInstrument } from '../instrument/put-right.ts';
import { known } from '../known.ts';
import type { Unclear } from '../objections.ts';
import { foldPart } from '../part/part.ts';
import type { Sheet } from '../products/sheet.ts';
import { namedIn } from '../session/people-named.ts';
import { type Shop, sheetFor } from '../shop.ts';
import { actMeant } from './act-corrected.ts';
import { type Corrected, correctedFact, following } from './corrected-fact.ts';
import { coatThere, movedCoat } from './moved-coat.ts';
import { amongOthers, besidesOfSpot } from './spot-corrected.ts';

export function decideAmend(shop: Shop, said: Said<CommandOf<'amend'>>): Decision {
  const { of, change } = said.command;
  const meant = actMeant(shop, of, change);
  if (isFailed(meant)) return unclear(meant.failed);
  const { entry } = meant;
  if (change.at !== undefined && change.at > said.now) {
    return unclear({ code: 'in-the-future', at: change.at, now: said.now });
  }
  const named = namedIn(shop, said, change.appliedBy === undefined ? [] : [change.appliedBy]);
  if (named.is === 'stranger') return named.decision;
  const appliedBy = change.appliedBy && named.asFiled(change.appliedBy);
  const sheet = change.ofSheet === undefined ? undefined : sheetInstead(shop, said, entry);
  if (isFailed(sheet)) return unclear(sheet.failed);
  const fact = correctedFact(
    of.verb,
    entry.fact,
    { ...amongOthers(entry.fact, of, change), ...known({ appliedBy, instrument: change.instrument?.toLowerCase() }) },
    sheet,
  );
  const unknown = unknownInstrument(shop, fact, entry.fact);
  if (unknown !== undefined) return unclear(unknown.failed);
  const happenedAt = (meant.isOfThatMinute ? undefined : change.at) ?? entry.happenedAt;
  if (happenedAt === entry.happenedAt && JSON.stringify(fact) === JSON.stringify(entry.fact)) {
    return unclear({ code: 'nothing-changed' });
  }
  const corrected = { entry, fact, happenedAt };
  const besides = besidesOfSpot(shop, entry, of).map((other) => ({ ...corrected, entry: other }));
  const against = [corrected, ...besides].map((each) => whyNot(shop, said, each)).find((each) => each !== undefined);
  return against === undefined ? putRight(shop, said, corrected) : unclear(against);
}

/** What it is mixed of stands once a part is in the vessel. */
function sheetInstead(shop: Shop, { command }: Said<CommandOf<'amend'>>, entry: Entry): Sheet | Failed<Unclear> {
  const batch = nounOf(entry.stream) === 'batch' ? shop.batches.get(numberIn(entry.stream)) : undefined;
  const at = batch?.inVessel['part-a']?.at ?? batch?.inVessel['part-b']?.at;
  if (batch !== undefined && at !== undefined) return failed({ code: 'product-stands', batch: batch.number, at });
  return sheetFor(shop, command.change.ofSheet);
}

/** A decision is nobody's to put right; what somebody else told is a lead's, or theirs whose work it tells of. */
function whyNot(shop: Shop, { by }: Said, corrected: Corrected): Unclear | undefined {
  const { entry, fact, happenedAt } = corrected;
  // A release counts from when it was given: no correction moves it, nor makes one.
  if (fact.type === 'PartReleased' || releases(shop, { ...entry, fact, happenedAt })) {
    return { code: 'decision-stands' };
  }
  const settles = fact.type === 'CanChecked' ? roleMissing(shop.crew, by, { say: 'check' }) : undefined;
  if (settles !== undefined) return mayNotSettle(shop.crew, settles);
  const isTheirs = entry.by === by || (entry.fact.type === 'CoatApplied' && entry.fact.appliedBy === by);
  const wanted = isTheirs ? undefined : roleShort(shop.crew, by, 'lead');
  if (wanted === undefined) return undefined;
  return { code: 'not-own-entry', act: { entry, corrected: false }, wanted, who: peopleFrom(shop.crew, wanted) };
}

function putRight(shop: Shop, said: Said<CommandOf<'amend'>>, corrected: Corrected): Decision {
  const { entry } = corrected;
  const { why } = said.command;
  const amending = (of: Entry, to: Extract<NewEvent['body'], { type: 'Amended' }>['to']): NewEvent => ({
    streams: [of.stream, ...new Set([...of.alsoUnder, ...underInstrument(to)])],
    happenedAt: said.now,
    body: { type: 'Amended', amends: of.seq, to, why },
  });
  const moved = movedCoat(entry, corrected.fact);
  if (moved !== undefined && entry.fact.type === 'CoatApplied') {
    const there = coatThere(shop, { ...entry, fact: entry.fact }, moved, {
      ...{ at: corrected.happenedAt, by: said.by, why },
    });
    return isFailed(there) ? unclear(there.failed) : accepted(amending(entry, { kind: 'undone' }), there);
  }
  return accepted(
    ...[corrected, ...following(shop, entry, corrected), ...readBeside(shop, entry, corrected.fact)].map(
      ({ entry, fact, happenedAt }) => amending(entry, { kind: 'corrected', fact, happenedAt }),
    ),
    ...besidesOfSpot(shop, entry, said.command.of).map((other) => amending(other, { kind: 'undone' })),
    ...takenInstead(shop, entry, corrected.fact),
  );
}

/** Whether with this in its place a part would be released that is not: moving a time decides nothing. */
function releases(shop: Shop, corrected: Entry): boolean {
  const part = nounOf(corrected.stream) === 'part' ? shop.parts.get(nameIn(corrected.stream)) : undefined;
  if (part === undefined || part.verdict?.is === 'released') return false;
  const entries = part.entries.map((entry) => (entry.seq === corrected.seq ? corrected : entry));
  return foldPart(part.name, entries.sort(inOrder)).verdict?.is === 'released';
}
