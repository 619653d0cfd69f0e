// The canonical line of a command, for buttons and suggestions: read back it is the same command, to the last digit.
// Base units; free words in quotes.

import type { Command, Stance } from '../../core/commands.ts';
import type { EpochMs } from '../../core/units.ts';
import { writeRingKey } from './ring-key.ts';
import { isoLocal } from './times/wall-clock.ts';
import { writeAmend } from './write-amend.ts';
import { letter, writeOpen, writeWeights } from './write-material.ts';
import { writePart, writePerson, writePrep, writeTested } from './write-parts.ts';
import { writeAir, writeAmount, writeFilms, written } from './write-quantities.ts';
import { writeSessionAct } from './write-session.ts';
import { writeSetting } from './write-setting.ts';

export interface SaidCommand {
  readonly command: Command;
  readonly at?: EpochMs;
  readonly stance?: Stance;
}

/** An earlier time implies that it happened, so `asked` with a past `at` reads back as `happened`. */
export function writeLine({ command, at, stance }: SaidCommand, zone: string): string {
  const time = at === undefined ? [] : [`at ${isoLocal(at, zone)}`];
  const manner = stance === undefined ? [] : writeStance(stance);
  // On an amend a time after the act is the corrected one, so its own stands in front.
  const pieces =
    command.verb === 'amend'
      ? [...time, ...writeAct(command, zone), ...manner]
      : [...writeAct(command, zone), ...time, ...manner];
  return pieces.filter((piece) => piece !== '').join(' ');
}

function writeStance(stance: Stance): readonly string[] {
  switch (stance.is) {
    case 'asked':
      return [];
    case 'happened':
      return ['already'];
    case 'permitted':
      return [`permit ${JSON.stringify(stance.why)}`];
    default: {
      const never: never = stance;
      return never;
    }
  }
}

function writeAct(command: Command, zone: string): readonly string[] {
  const { verb } = command;
  switch (verb) {
    case 'mix':
      return [
        verb,
        writeAmount(command.amount),
        command.sheet ?? '',
        ...writeAir(command.air),
        command.vesselLitres === undefined ? '' : `in ${written(command.vesselLitres, 'L')}`,
      ];
    case 'weigh':
      return [verb, batch(command.batch), ...writeWeights(command), cans(command.cans)];
    case 'add':
      return [verb, batch(command.batch), letter(command.component), written(command.grams, 'g'), cans(command.cans)];
    case 'open':
      return [verb, ...writeOpen(command)];
    case 'lid':
    case 'blanket':
    case 'check':
    case 'prestir':
      return [verb, batch(command.can)];
    case 'discard':
      return [verb, batch(command.can), JSON.stringify(command.why)];
    case 'catch':
      return [verb, batch(command.batch), written(command.grams, 'g')];
    case 'stir':
    case 'stop':
    case 'cover':
    case 'uncover':
    case 'filter':
    case 'thick':
    case 'gel':
      return [verb, batch(command.batch)];
    case 'empty':
      return [verb, batch(command.batch), command.leftGrams === undefined ? '' : written(command.leftGrams, 'g')];
    case 'part':
      return [verb, ...writePart(command)];
    case 'prep':
      return [verb, ...writePrep(command)];
    case 'coat':
      return [
        verb,
        command.asNew === undefined ? '' : 'new',
        ...command.parts,
        batch(command.batch),
        command.method,
        command.pass === undefined ? '' : 'touch-up',
      ];
    case 'dry':
    case 'out':
    case 'release':
      return [verb, ...command.parts];
    case 'cure': {
      const { way } = command;
      const set = way.kind === 'oven' && way.setCelsius !== undefined ? written(way.setCelsius, 'C') : '';
      return [verb, ...command.parts, way.kind, set];
    }
    case 'door':
      return [verb, ...command.parts, command.openMinutes === undefined ? '' : written(command.openMinutes, 'min')];
    case 'adhesion':
    case 'rub':
      return [verb, ...writeTested(command)];
    case 'temp':
      return [verb, command.part ?? '', written(command.celsius, 'C')];
    case 'wet':
      return [verb, command.part, writeFilms(command.wetFilmMicrometres)];
    case 'film':
      return [verb, command.part, writeFilms(command.dryFilmMicrometres)];
    case 'hold':
      return [verb, ...command.parts, JSON.stringify(command.why)];
    case 'air':
      return [verb, ...writeAir(command.air), place(command.place)];
    case 'surface':
      return [
        verb,
        command.asNew === undefined ? '' : 'new',
        command.part ?? '',
        written(command.celsius, 'C'),
        place(command.place),
      ];
    case 'night':
      return [verb, written(command.lowestCelsius, 'C'), place(command.place)];
    case 'ok':
      return [
        verb,
        ...[...(command.key === undefined ? [] : [command.key]), ...(command.also ?? [])].map(writeRingKey),
      ];
    case 'undo':
      return [
        verb,
        command.entry === undefined ? '' : `entry ${command.entry}`,
        command.entry === undefined || command.despite === undefined ? '' : `despite ${command.despite}`,
      ];
    case 'takeover':
      return [verb];
    case 'snooze':
      return [verb, written(command.minutes, 'min'), command.key === undefined ? '' : writeRingKey(command.key)];
    case 'shift':
      return [verb, command.on ? 'on' : 'off'];
    case 'handover':
      return [verb, writePerson(command.to)];
    case 'amend':
      return writeAmend(command, zone);
    case 'used': {
      const { material, amount, use } = command;
      return [verb, material, writeAmount(amount), use];
    }
    case 'set':
      return writeSetting(command.setting);
    // What is left are the acts of a session; a verb that is none of them does not compile here.
    default:
      return writeSessionAct(command, zone);
  }
}

function batch(number: number | undefined): string {
  return number === undefined ? '' : String(number);
}

function cans(numbers: readonly number[] | undefined): string {
  return numbers === undefined || numbers.length === 0 ? '' : `can ${numbers.join(' ')}`;
}

function place(name: string | undefined): string {
  return name === undefined ? '' : `in ${name}`;
}
