// A part's name that nobody knows: the same line with each part that may have been meant, for one tap.

import type { Command } from '../../core/commands.ts';
import type { PartName } from '../../core/ids.ts';
import type { Unclear } from '../../core/objections.ts';
import { nearNames } from '../../core/part/near-names.ts';

export interface PartMeant {
  readonly part: PartName;
  readonly command: Command;
}

/** The nearest of the parts that wait; without a name of their own, the first of them. */
const most = 4;

export function partsMeant(command: Command, unclear: Unclear): readonly PartMeant[] {
  switch (unclear.code) {
    case 'no-such-part': {
      const near = nearNames(unclear.part, unclear.live);
      return near.slice(0, most).flatMap((part) => inPlaceOf(command, unclear.part, part));
    }
    case 'which-part':
      return unclear.live.slice(0, most).flatMap((part) => naming(command, part));
    default:
      return [];
  }
}

/** The command with a known part where it named another. */
export function inPlaceOf(command: Command, typed: PartName, part: PartName): readonly PartMeant[] {
  if (command.verb === 'amend') return [{ part, command: { ...command, of: { ...command.of, part } } }];
  if ('parts' in command) {
    const parts = command.parts.map((each) => (each === typed ? part : each));
    return [{ part, command: { ...command, parts } }];
  }
  return naming(command, part);
}

function naming(command: Command, part: PartName): readonly PartMeant[] {
  if ('parts' in command) return [{ part, command: { ...command, parts: [part] } }];
  switch (command.verb) {
    case 'temp':
    case 'surface':
    case 'wet':
    case 'film':
    case 'adhesion':
    case 'rub':
    case 'pull-off':
    case 'gloss':
    case 'hardness':
    case 'holidays':
    case 'visual':
      return [{ part, command: { ...command, part } }];
    default:
      return [];
  }
}
