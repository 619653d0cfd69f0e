// The invented shop with what a drawn command names in it.

import type { LineContext } from '../../../bot/language/reading.ts';
import type { Command } from '../../../core/commands.ts';
import { shopAtTen } from './shop-at-ten.ts';

export function shopWith(command: Command, zone: string): LineContext {
  const parts =
    'parts' in command ? command.parts : 'part' in command && command.part !== undefined ? [command.part] : [];
  const amended = command.verb === 'amend' && command.of.part !== undefined ? [command.of.part] : [];
  const sheet = command.verb === 'amend' ? command.change.ofSheet : 'sheet' in command ? command.sheet : undefined;
  const set = command.verb === 'set' && command.setting.name === 'sheet' ? [command.setting.sheet] : [];
  return {
    ...shopAtTen,
    zone,
    parts: [...parts, ...amended],
    sheetIds: [...(sheet === undefined ? [] : [sheet]), ...set],
  };
}
