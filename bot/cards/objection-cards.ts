// "Not yet": what was checked, whose rule it is, what to do instead, and the tap that records what has happened all the
// same. And "not clear": the question back.

import { ruleOf } from '../../core/allowed.ts';
import { type Command, isDecision, takesBatch, withBatch } from '../../core/commands.ts';
import type { Outcome, Request } from '../../core/execute.ts';
import { defaultPlace } from '../../core/ids.ts';
import type { Objection, ObjectionCode, Unclear } from '../../core/objections.ts';
import { sprayLaws } from '../../core/session/figure-sources.ts';
import type { FaultyLine } from '../language/reading.ts';
import { alarmTaps } from './alarms-over.ts';
import { type Card, type CardAction, makeCard } from './card.ts';
import { lineOf, type Telling, tap, undoLine } from './card-context.ts';
import { heatHazards } from './dead-pot.ts';
import { partsMeant } from './did-you-mean-part.ts';
import { personsMeant } from './did-you-mean-person.ts';
import { liftTaps } from './disposed-cards.ts';
import { farTaps } from './far-taps.ts';
import { insteadTaps, ventilationCaution } from './instead.ts';
import { instrumentsMeant } from './instrument-taps.ts';
import { materialMeant } from './material-taps.ts';
import { newPartTaps } from './new-part-taps.ts';
import { placeTaps } from './new-place-taps.ts';
import { partsInCard } from './parts-in-card.ts';
import { humidityLines } from './place-cards.ts';
import { sheetTaps, withSheet } from './sheet-taps.ts';
import { filmAskedCard, spotToldTaps } from './spot-cards.ts';
import { loadsMeant } from './which-load.ts';

/** Where a wet film meets an oven, both dangers are named. */
const hazardous: readonly ObjectionCode[] = ['flash-off-not-over', 'not-dry'];
/** What may be gone on with, knowing it. */
const knowing: readonly ObjectionCode[] = [
  ...([
    'air-not-summed',
    'not-qualified',
    'no-assessment',
    'near-not-named',
    'dates-not-known',
    'breathing-air-unchecked',
  ] as const),
];

export function objectionCard(
  telling: Telling,
  request: Request,
  outcome: Extract<Outcome, { kind: 'objected' }>,
): Card {
  const { replies } = telling.words;
  const sources = new Set(
    reasonsTold(outcome.objections).map((objection) => ruleOf(request.command.verb, objection.code).source),
  );
  const oven = request.command.verb === 'cure' && request.command.way.kind === 'oven';
  return makeCard(replies.notNow(reasonsTold(outcome.objections).map(({ code }) => code)), 'stop', {
    lines: [
      ...new Set(
        reasonsTold(outcome.objections).map((objection) => telling.words.objection(objection, telling.figures)),
      ),
      ...(judgesRoom(request, outcome.objections) ? humidityLines(telling, defaultPlace) : []),
      replies.askedBy([...sources], sprayLaws[telling.shop.crew.spray.law.frame], telling.figures),
      ...ventilationCaution(telling, outcome.objections),
      ...(isDecision(request.command) && request.stance.is === 'happened' ? [replies.noFact] : []),
      replies.nothingRecorded,
    ],
    hazards: [
      ...(oven && outcome.objections.some(({ code }) => hazardous.includes(code))
        ? [{ text: replies.wetInOven, source: telling.words.ruleSources['common practice, no source'] }]
        : []),
      ...outcome.objections.flatMap((each) => (each.code === 'pot-dead' ? heatHazards(telling, each.seen) : [])),
    ],
    actions: [
      ...(isDecision(request.command)
        ? leftTap(telling, request, outcome.objections)
        : [happenedTap(telling, request)]),
      ...insteadTaps(telling, request, outcome.objections),
      ...(isDecision(request.command)
        ? liftTaps(
            telling,
            request,
            outcome.objections,
            ({ code }) => ruleOf(request.command.verb, code).liftedBy !== 'nobody',
          )
        : []),
      ...goOnTap(telling, request, outcome.objections),
    ],
  });
}

/** By the air of the room, and by none that was said with the act. */
const judgesRoom = ({ command }: Request, objections: readonly Objection[]): boolean =>
  objections.some(({ code }) => code === 'air-outside') && !(command.verb === 'mix' && command.air !== undefined);

/** No part is released by having left: that it did is recorded and holds it, so that whoever leads settles what becomes of it. */
function leftTap(telling: Telling, { command }: Request, objections: readonly Objection[]): readonly CardAction[] {
  if (command.verb !== 'release' || objections.some(({ code }) => code === 'already-released')) return [];
  const left: Command = { verb: 'shipped', parts: command.parts };
  return [tap(telling, 'left-unreleased', lineOf(telling, { command: left, stance: { is: 'asked' } }))];
}

/** Of what nobody knows: whoever may go on, knowing it, says why. Not beside what nobody lifts. */
function goOnTap(telling: Telling, { command }: Request, objections: readonly Objection[]): readonly CardAction[] {
  const lifted = objections.every(({ code }) => ruleOf(command.verb, code).liftedBy !== 'nobody');
  if (!lifted || !objections.some(({ code }) => knowing.includes(code))) return [];
  return [tap(telling, 'go-on', `${lineOf(telling, { command, stance: { is: 'asked' } })} permit {why}`)];
}

/** Of a dead pot nothing else is told: what its other rules ask ("start the stirrer") would be work on it. */
function reasonsTold(objections: readonly Objection[]): readonly Objection[] {
  const dead = objections.filter(({ code }) => code === 'pot-dead');
  return dead.length > 0 ? dead : objections;
}

/** The act with the time at which it was said, so that the true clocks start whenever the tap is pressed. */
function happenedTap(telling: Telling, request: Request): CardAction {
  const line = lineOf(telling, { command: request.command, at: request.at, stance: { is: 'happened' } });
  return tap(telling, 'happened', line);
}

/** `unread`: rows of what was said that nobody could read. */
export function unclearCard(
  telling: Telling,
  request: Request,
  unclear: Unclear,
  unread: readonly FaultyLine[] = [],
): Card {
  const { replies } = telling.words;
  if (unclear.code === 'film-asked') return filmAskedCard(telling, request, unclear);
  if (unclear.code === 'parts-in') return partsInCard(telling, unclear, unread, lineSaid(telling, request));
  const isClear = ['may-not-settle', 'may-not-permit', 'may-not-judge', 'not-own-entry'].includes(unclear.code);
  return makeCard(isClear ? replies.notYours : replies.notClear, 'warn', {
    lines: [telling.words.unclear(unclear, telling.figures), replies.nothingRecorded],
    actions: meantTaps(telling, request, unclear),
  });
}

/** Another command said as this one was: what has happened keeps the time at which it was said, whenever its tap is pressed. */
function lineSaid(telling: Telling, { at, now, stance }: Request): (changed: Command) => string {
  const isTimed = at < now || stance.is === 'happened';
  return (command) => lineOf(telling, { command, stance, ...(isTimed ? { at } : {}) });
}

/** The same line with each thing that could be meant. */
function meantTaps(telling: Telling, request: Request, unclear: Unclear): readonly CardAction[] {
  const { command } = request;
  const line = lineSaid(telling, request);
  const meant = (id: string, name: string | number, changed: Command): CardAction => ({
    ...{ id, label: `${telling.words.buttons.meant} ${name}`, line: line(changed), bare: [String(name)] },
  });
  switch (unclear.code) {
    case 'no-such-batch':
    case 'which-batch':
      if (!takesBatch(command)) return [];
      return unclear.live.slice(0, 4).map((batch) => meant(`batch-${batch}`, batch, withBatch(command, batch)));
    case 'new-part':
      return newPartTaps(telling, command, unclear, line);
    case 'new-place':
      return placeTaps(telling, command, unclear, line);
    case 'no-such-part':
    case 'which-part':
      return partsMeant(command, unclear).map(({ part, command }, i) => meant(`part-${i + 1}`, part, command));
    case 'which-load':
      if (command.verb !== 'door' && command.verb !== 'out') return [];
      return loadsMeant(command, unclear.loads).map((said, i) =>
        meant(`load-${i + 1}`, telling.figures.list(said.parts), said),
      );
    case 'spot-told':
      return spotToldTaps(telling, request, unclear);
    case 'far-reading':
      return farTaps(telling, request, unclear, line);
    case 'wet-bulb-cannot-be': {
      const { celsius, wetBulbCelsius } = unclear;
      if (command.verb !== 'air' || celsius >= wetBulbCelsius) return [];
      const other = { ...command, air: { ...command.air, celsius: wetBulbCelsius }, wetBulbCelsius: celsius };
      return [
        meant(
          'other-bulb',
          `${telling.figures.temperature(wetBulbCelsius)}, ${telling.figures.temperature(celsius)}`,
          other,
        ),
      ];
    }
    case 'no-such-person':
      return personsMeant(command, unclear).map(({ person, command }, i) => meant(`person-${i + 1}`, person, command));
    case 'no-such-sheet':
    case 'which-sheet':
      return sheetTaps(telling, unclear, (sheet) => line(withSheet(command, sheet)));
    case 'no-such-instrument':
    case 'which-kind':
      return instrumentsMeant(telling, command, unclear, line);
    case 'which-alarm':
      return alarmTaps(telling, unclear.alarms);
    case 'undo-asks':
      return takeBackTap(telling, unclear);
    default:
      return materialMeant(telling, request, unclear, line);
  }
}

/** The second tap says what it takes back, and up to which entry it was told what rests on it: what comes after asks anew. */
function takeBackTap(
  telling: Telling,
  { entry: named, acts, rests }: Extract<Unclear, { code: 'undo-asks' }>,
): readonly CardAction[] {
  const label = telling.words.undo.takeBack(
    telling.figures.list(
      telling.words.undo.acts(
        acts.map(({ entry }) => entry),
        telling.figures,
      ),
    ),
  );
  const shown = rests.length === 0 ? {} : { despite: Math.max(...rests.map(({ entry }) => entry.seq)) };
  return [{ id: 'undo', label, line: undoLine(telling, { entry: named, ...shown }), bare: ['yes'] }];
}
