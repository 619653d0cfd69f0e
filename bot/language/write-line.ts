// The canonical line of a command, for buttons and suggestions: read back it is the same command, to the last digit.
// Base units; free words in quotes.

import type { Command, Stance } from '../../core/commands.ts';
import type { EpochMs } from '../../core/units.ts';
import { isoLocal } from './times/wall-clock.ts';
import { writeAmend } from './write-amend.ts';
import { writeAir, writeAmount, writeDetails, writeFilms, written } from './write-quantities.ts';

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
      return [verb, writeAmount(command.amount), command.sheet ?? '', ...writeAir(command.air)];
    case 'weigh':
      return [verb, batch(command.batch), written(command.partAGrams, 'g'), written(command.partBGrams, 'g')];
    case 'stir':
    case 'stop':
    case 'filter':
    case 'thick':
    case 'gel':
      return [verb, batch(command.batch)];
    case 'empty':
      return [verb, batch(command.batch), command.leftGrams === undefined ? '' : written(command.leftGrams, 'g')];
    case 'part':
      return [verb, command.part, ...writeDetails(command.details)];
    case 'coat':
      return [verb, ...command.parts, batch(command.batch), command.method];
    case 'dry':
    case 'out':
    case 'release':
      return [verb, ...command.parts];
    case 'cure': {
      const { way } = command;
      const set = way.kind === 'oven' && way.setCelsius !== undefined ? written(way.setCelsius, 'C') : '';
      return [verb, ...command.parts, way.kind, set];
    }
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
      return [verb, written(command.celsius, 'C'), place(command.place)];
    case 'night':
      return [verb, written(command.lowestCelsius, 'C'), place(command.place)];
    case 'ok':
    case 'undo':
      return [verb];
    case 'amend':
      return writeAmend(command, zone);
    case 'set':
      return writeSetting(command.setting);
    default: {
      const never: never = verb;
      return never;
    }
  }
}

function writeSetting(setting: Extract<Command, { verb: 'set' }>['setting']): readonly string[] {
  switch (setting.name) {
    case 'sheet':
      return ['set sheet', setting.sheet];
    case 'air-limit':
      return ['set air-limit', written(setting.minutes, 'min')];
    case 'digest':
      return ['set digest', String(setting.hour)];
    case 'units':
      return ['set units', setting.units];
    default: {
      const never: never = setting;
      return never;
    }
  }
}

function batch(number: number | undefined): string {
  return number === undefined ? '' : String(number);
}

function place(name: string | undefined): string {
  return name === undefined ? '' : `in ${name}`;
}
