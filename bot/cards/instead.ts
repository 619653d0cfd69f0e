// What to do first where an act is objected to, as taps: mostly an act that the can, the batch or the session has next
// anyway; else an answer to what was asked.

import { type Command, type CommandOf, takesBatch } from '../../core/commands.ts';
import { isOfAlarm } from '../../core/crew/alarm-rules.ts';
import type { Request } from '../../core/execute.ts';
import type { BatchNumber, CanNumber, PartName } from '../../core/ids.ts';
import type { Objection } from '../../core/objections.ts';
import type { ReleaseLacking } from '../../core/part/release-asked.ts';
import { liveBatches } from '../../core/shop.ts';
import { type NextActId, statusOf } from '../../core/status.ts';
import type { Grams } from '../../core/units.ts';
import type { CardAction } from './card.ts';
import { lineOf, type Telling, tap } from './card-context.ts';
import { cautionLines } from './caution.ts';
import { tellingTaps } from './disposed-cards.ts';
import { insteadOfSpraying } from './instead-spraying.ts';
import { nextTaps } from './next-taps.ts';
import { bearsTap } from './part-cards.ts';
import { stepTap } from './step-lines.ts';

export function insteadTaps(
  telling: Telling,
  request: Request,
  objections: readonly Objection[],
): readonly CardAction[] {
  const taps = [
    ...objections.flatMap((objection) => insteadOf(telling, request, objection)),
    ...heatTaps(telling, objections),
  ];
  const shown = isOfAlarm(objections) ? taps.filter(({ id }) => id !== 'fan-on') : taps;
  return shown.filter((each, i) => shown.findIndex((other) => other.id === each.id) === i);
}

/** Of a part that is reworked the old coat comes off first. */
function stripTaps(telling: Telling, name: PartName): readonly CardAction[] {
  const part = telling.shop.parts.get(name);
  return part === undefined ? [] : nextTaps(telling, statusOf.part(telling, part).next(), ['strip']);
}

/** One tap for all parts of which it is asked. */
function heatTaps(telling: Telling, objections: readonly Objection[]): readonly CardAction[] {
  const asked = objections.filter((each) => each.code === 'heat-not-known');
  const parts = asked.map(({ part }) => part);
  return asked.slice(0, 1).flatMap(({ ovenCelsius }) => bearsTap(telling, parts, ovenCelsius));
}

function insteadOf(telling: Telling, { command }: Request, objection: Objection): readonly CardAction[] {
  const asked = (changed: Command) => lineOf(telling, { command: changed, stance: { is: 'asked' } });
  switch (objection.code) {
    case 'air-needed':
      return [tap(telling, 'air', 'air {air-temperature}C {humidity}%'), tap(telling, 'again', asked(command))];
    case 'scale-too-coarse':
      return command.verb === 'mix' && objection.smallestGrams !== undefined
        ? [smallestTap(telling, command, objection.smallestGrams)]
        : [];
    case 'not-prepared':
      return 'parts' in command
        ? [tap(telling, 'prep', `prep ${newOf(command)}${command.parts.join(' ')} {grade}`)]
        : [];
    case 'recoat-forbidden':
    case 'recoat-too-late':
      return 'parts' in command ? command.parts.flatMap((name) => stripTaps(telling, name)) : [];
    case 'not-told':
      return tellingTaps(telling, command, objection);
    case 'step-lacking':
      return [stepTap(telling, objection.step, true)];
    case 'no-gas':
      return opensCan(command)
        ? (['gas', 'whole'] as const).map((handling) => ({
            ...tap(telling, handling, asked({ ...command, handling })),
            bare: handling === 'whole' ? [handling, 'all'] : [handling, 'argon', 'nitrogen'],
          }))
        : [];
    case 'shut-without-gas':
      return [
        ...ofCan(telling, objection.can, ['blanket']),
        ...(command.verb === 'shut' ? [tap(telling, 'used-whole', asked({ ...command, handling: 'whole' }))] : []),
      ];
    case 'whole-left-over':
      return ofCan(telling, objection.can, ['blanket']);
    case 'can-doubtful':
      return ofCan(telling, objection.can, ['check', 'discard']);
    case 'part-a-not-stirred':
      return objection.dueAt === undefined ? ofCan(telling, objection.can, ['prestir', 'prestir-gas']) : [];
    case 'b-before-a': {
      const batch = command.verb === 'weigh' && command.batch !== undefined ? `${command.batch} ` : '';
      return [tap(telling, 'weigh-a', `weigh ${batch}a {part-a}g`)];
    }
    case 'caught-not-filtered': {
      const waits = liveBatches(telling.shop).find(({ caught }) =>
        caught.some(({ filteredAt }) => filteredAt === undefined),
      );
      return ofBatch(telling, batchNamed(command) ?? waits?.number, ['filter']);
    }
    case 'blend-not-done':
      return objection.dueAt === undefined ? ofBatch(telling, batchNamed(command), ['stir']) : [];
    case 'not-filtered':
    case 'filter-not-as-sheet':
      return ofBatch(telling, batchNamed(command), ['filter']);
    case 'still-in-oven':
      return ofPart(telling, command, ['out']);
    case 'cure-not-given':
      return ofPart(telling, command, ['temp']);
    case 'film-half':
      return ofPart(telling, command, ['film']);
    case 'not-given':
      return objection.lacking.flatMap((each) => givenBy(telling, command, each));
    default:
      return insteadOfSpraying(telling, command, objection);
  }
}

function smallestTap(telling: Telling, command: CommandOf<'mix'>, smallest: Grams): CardAction {
  const amount = { kind: 'mass', grams: smallest } as const;
  const line = lineOf(telling, { command: { ...command, amount }, stance: { is: 'asked' } });
  return { id: 'smallest', label: `${telling.words.buttons.mix} ${telling.figures.asRead(smallest)}`, line };
}

/** What is done with the lid off, and says what is at hand then. */
type OpensCan = CommandOf<'open' | 'lid' | 'prestir' | 'weigh' | 'add'>;
const opening: readonly string[] = ['open', 'lid', 'prestir', 'weigh', 'add'] satisfies readonly OpensCan['verb'][];
const opensCan = (command: Command): command is OpensCan => opening.includes(command.verb);

function ofCan(telling: Telling, number: CanNumber, ids: readonly NextActId[]): readonly CardAction[] {
  const can = telling.shop.cans.get(number);
  return can === undefined ? [] : nextTaps(telling, statusOf.can(telling, can).next(), ids);
}

function ofBatch(telling: Telling, number: BatchNumber | undefined, ids: readonly NextActId[]): readonly CardAction[] {
  const batch = number === undefined ? undefined : telling.shop.batches.get(number);
  return batch === undefined ? [] : nextTaps(telling, statusOf.batch(telling, batch).next(), ids);
}

/** Of one part alone: what proves one of several proves no other. */
function ofPart(telling: Telling, command: Command, ids: readonly NextActId[]): readonly CardAction[] {
  const [name = '', ...others] = 'parts' in command ? command.parts : [];
  const part = others.length === 0 ? telling.shop.parts.get(name) : undefined;
  return part === undefined ? [] : nextTaps(telling, statusOf.part(telling, part).next(), ids);
}

/** What is lacking for its release, of one part alone. */
function givenBy(telling: Telling, command: Command, lacking: ReleaseLacking): readonly CardAction[] {
  const [name, another] = 'parts' in command ? command.parts : [];
  return name === undefined || another !== undefined ? [] : givenTaps(telling, name, lacking);
}

export function givenTaps(telling: Telling, name: PartName, { of }: ReleaseLacking): readonly CardAction[] {
  switch (of) {
    case 'film':
      return [tap(telling, 'film', `film ${name} {dry-films}um`)];
    case 'adhesion':
      return [tap(telling, 'adhesion', `adhesion ${name} {rating}`)];
    case 'rub':
      return [tap(telling, 'rub', `rub ${name} {rubs} {rub-result}`)];
    case 'pull-off':
      return [tap(telling, 'pull-off', `pull-off ${name} {pull-off}MPa`)];
    case 'gloss':
      return [tap(telling, 'gloss', `gloss ${name} {gloss}GU`)];
    case 'hardness':
      return [tap(telling, 'hardness', `hardness ${name} {pencil}`)];
    case 'holidays':
      return [tap(telling, 'holidays', `holidays ${name} {holidays} {volts}V`)];
    case 'visual':
      return [tap(telling, 'visual', `visual ${name} {looks}`)];
    // Neither can be told any more once the coat lies, but of what was read then.
    case 'prep':
    case 'wet':
      return [];
  }
}

const newOf = (command: Command): string => ('asNew' in command && command.asNew === true ? 'new ' : '');
const batchNamed = (command: Command) => (takesBatch(command) ? command.batch : undefined);

export function ventilationCaution(telling: Telling, objections: readonly Objection[]): readonly string[] {
  const summed = objections.some(({ code }) => code.startsWith('fan-') || code === 'no-extraction-no-air');
  return summed ? [telling.words.session.sumOnly, ...cautionLines(telling)] : [];
}
