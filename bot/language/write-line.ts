// The canonical line of a command, for buttons and suggestions: read back it is the same command, to the last digit.
// Base units; free words in quotes.

import type { Command, Stance } from '../../core/commands.ts';
import type { EpochMs } from '../../core/units.ts';
import { isoLocal } from './times/wall-clock.ts';
import { writeAmend } from './write-amend.ts';
import { type WrittenFor, writeFields } from './write-fields.ts';
import { writePart } from './write-part.ts';
import { writeSetting } from './write-setting.ts';

export interface SaidCommand {
  readonly command: Command;
  readonly at?: EpochMs;
  readonly stance?: Stance;
}

/** An earlier time implies that it happened, so `asked` with a past `at` reads back as `happened`. */
export function writeLine({ command, at, stance }: SaidCommand, crew: WrittenFor): string {
  const time = at === undefined ? [] : [`at ${isoLocal(at, crew.zone)}`];
  const manner = stance === undefined ? [] : writeStance(stance);
  // On an amend a time after the act is the corrected one, so its own stands in front.
  const pieces =
    command.verb === 'amend'
      ? [...time, ...writeAct(command, crew), ...manner]
      : [...writeAct(command, crew), ...time, ...manner];
  return pieces.filter((piece) => piece !== '').join(' ');
}

function writeStance(stance: Stance): readonly string[] {
  switch (stance.is) {
    case 'asked':
      return [];
    case 'happened':
      return ['already'];
    case 'permitted':
      return stance.lifts === undefined
        ? [`permit ${JSON.stringify(stance.why)}`]
        : stance.lifts.map(({ of, why }) => `permit ${of} ${JSON.stringify(why)}`);
    default: {
      const never: never = stance;
      return never;
    }
  }
}

function writeAct(command: Command, crew: WrittenFor): readonly string[] {
  const { verb } = command;
  switch (verb) {
    case 'part':
      return [verb, ...writePart(command, crew.hearing)];
    case 'amend':
      return writeAmend(command, crew);
    case 'hot':
      // Alone it may be the weather.
      return [command.batch === undefined ? 'hot-pot' : verb, ...writeFields(command, crew)];
    case 'remind': {
      const { minutes, text } = command;
      return [verb, `${minutes}min`, text === '' ? '' : JSON.stringify(text)];
    }
    case 'near-miss':
      return [verb, command.anonymous ? 'anonymous' : '', JSON.stringify(command.text)];
    case 'set':
      return writeSetting(command.setting, crew.hearing);
    default:
      return [verb, ...writeFields(command, crew)];
  }
}
