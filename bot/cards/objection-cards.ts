// "Not yet": what was checked, whose rule it is, what to do instead, and the tap that records what has happened all the
// same. And "not clear": the question back.

import { ruleOf } from '../../core/allowed.ts';
import { type Command, isDecision, takesBatch, withBatch } from '../../core/commands.ts';
import type { Outcome, Request } from '../../core/execute.ts';
import type { Objection, ObjectionCode, Unclear } from '../../core/objections.ts';
import { writeLine } from '../language/write-line.ts';
import { type Card, type CardAction, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { heatHazards } from './dead-pot.ts';
import { partsMeant } from './did-you-mean-part.ts';
import { personsMeant } from './did-you-mean-person.ts';
import { insteadTaps, ventilationCaution } from './instead.ts';
import { materialMeant } from './material-taps.ts';
import { newPartTaps } from './new-part-taps.ts';
import { sheetTaps, withSheet } from './sheet-taps.ts';
import { undoLine } from './undo-tap.ts';

/** Where a wet film meets an oven, both dangers are named. */
const hazardous: readonly ObjectionCode[] = ['flash-off-not-over', 'not-dry'];

export function objectionCard(t: Telling, request: Request, outcome: Extract<Outcome, { kind: 'objected' }>): Card {
  const { replies } = t.words;
  const sources = new Set(
    reasonsTold(outcome.objections).map((objection) => ruleOf(request.command.verb, objection.code).source),
  );
  const oven = request.command.verb === 'cure' && request.command.way.kind === 'oven';
  return makeCard(replies.notNow(reasonsTold(outcome.objections).map(({ code }) => code)), 'stop', {
    lines: [
      ...new Set(reasonsTold(outcome.objections).map((objection) => t.words.objection(objection, t.f))),
      replies.askedBy([...sources], t.f),
      ...ventilationCaution(t, outcome.objections),
      ...(isDecision(request.command) && request.stance.is === 'happened' ? [replies.noFact] : []),
      replies.nothingRecorded,
    ],
    hazards: [
      ...(oven && outcome.objections.some(({ code }) => hazardous.includes(code))
        ? [{ text: replies.wetInOven, source: t.words.ruleSources['common practice, no source'] }]
        : []),
      ...outcome.objections.flatMap((each) => (each.code === 'pot-dead' ? heatHazards(t, each.seen) : [])),
    ],
    actions: [
      ...(isDecision(request.command) ? leftTap(t, request, outcome.objections) : [happenedTap(t, request)]),
      ...insteadTaps(t, request, outcome.objections),
    ],
  });
}

/** No part is released by having left: that it did is a hold, so that whoever leads settles what becomes of it. */
function leftTap(t: Telling, { command }: Request, objections: readonly Objection[]): readonly CardAction[] {
  if (command.verb !== 'release' || objections.some(({ code }) => code === 'already-released')) return [];
  const hold: Command = { verb: 'hold', parts: command.parts, why: t.words.replies.leftUnreleased };
  return [tap(t, 'left-unreleased', writeLine({ command: hold, stance: { is: 'asked' } }, t.shop.crew.zone))];
}

/** Of a dead pot nothing else is told: what its other rules ask ("start the stirrer") would be work on it. */
function reasonsTold(objections: readonly Objection[]): readonly Objection[] {
  const dead = objections.filter(({ code }) => code === 'pot-dead');
  return dead.length > 0 ? dead : objections;
}

/** The act with the time at which it was said, so that the true clocks start whenever the tap is pressed. */
function happenedTap(t: Telling, request: Request): CardAction {
  const line = writeLine({ command: request.command, at: request.at, stance: { is: 'happened' } }, t.shop.crew.zone);
  return tap(t, 'happened', line);
}

export function unclearCard(t: Telling, request: Request, unclear: Unclear): Card {
  const { replies } = t.words;
  const isClear = ['may-not-settle', 'may-not-permit', 'may-not-judge'].includes(unclear.code);
  return makeCard(isClear ? replies.notYours : replies.notClear, 'warn', {
    lines: [t.words.unclear(unclear, t.f), replies.nothingRecorded],
    actions: meantTaps(t, request, unclear),
  });
}

/** The same line with each thing that could be meant. */
function meantTaps(t: Telling, request: Request, unclear: Unclear): readonly CardAction[] {
  const { command, stance } = request;
  // What has happened keeps the time at which it was said, whenever the tap is pressed.
  const isTimed = request.at < request.now || stance.is === 'happened';
  const line = (changed: Request['command']) =>
    writeLine({ command: changed, stance, ...(isTimed ? { at: request.at } : {}) }, t.shop.crew.zone);
  const label = (meant: string | number) => `${t.words.buttons.meant} ${meant}`;
  switch (unclear.code) {
    case 'no-such-batch':
    case 'which-batch':
      if (!takesBatch(command)) return [];
      return unclear.live.slice(0, 4).map((batch) => ({
        id: `batch-${batch}`,
        label: label(batch),
        line: line(withBatch(command, batch)),
      }));
    case 'new-part':
      return newPartTaps(t, command, unclear, line);
    case 'no-such-part':
    case 'which-part':
      return partsMeant(command, unclear).map((meant, i) => ({
        id: `part-${i + 1}`,
        label: label(meant.part),
        line: line(meant.command),
      }));
    case 'no-such-person':
      return personsMeant(command, unclear).map((meant, i) => ({
        id: `person-${i + 1}`,
        label: label(meant.person),
        line: line(meant.command),
      }));
    case 'no-such-sheet':
    case 'which-sheet':
      return sheetTaps(t, unclear, (sheet) => line(withSheet(command, sheet)));
    case 'undo-asks':
      return takeBackTap(t, unclear);
    default:
      return materialMeant(t, request, unclear);
  }
}

/** The second tap says what it takes back, and up to which entry it was told what rests on it: what comes after asks anew. */
function takeBackTap(
  t: Telling,
  { entry: named, acts, rests }: Extract<Unclear, { code: 'undo-asks' }>,
): readonly CardAction[] {
  const label = t.words.undo.takeBack(t.f.list(acts.map(({ entry }) => t.words.undo.act(entry, t.f))));
  const shown = rests.length === 0 ? {} : { despite: Math.max(...rests.map(({ entry }) => entry.seq)) };
  return [{ id: 'undo', label, line: undoLine(t, { entry: named, ...shown }) }];
}
