// The canonical line of a command, for buttons and suggestions: read back it is the same command, to the last digit.
// Base units; free words in quotes.

import type { Command, Stance } from '../../core/commands.ts';
import type { EpochMs } from '../../core/units.ts';
import { isoLocal } from './times/wall-clock.ts';
import { writeAmend } from './write-amend.ts';
import { writeFields } from './write-fields.ts';
import { writePart } from './write-part.ts';
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
    case 'part':
      return [verb, ...writePart(command)];
    case 'amend':
      return writeAmend(command, zone);
    case 'near-miss':
      return [verb, command.anonymous ? 'anonymous' : '', JSON.stringify(command.text)];
    case 'set':
      return writeSetting(command.setting);
    default:
      return [verb, ...writeFields(command, zone)];
  }
}
