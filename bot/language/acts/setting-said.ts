// What a reader of a setting's value gets, and what it answers where the value is missing, of another kind or out of reach.

import { type SettingName, type SettingRow, settingRows } from '../../../core/settings.ts';
import type { Limits } from '../../../core/verbs/slot-row.ts';
import type { Fault, LineContext } from '../reading.ts';
import { unitOfSetting } from '../setting-units.ts';
import { isOutside } from '../slots.ts';
import type { Token } from '../typed/token.ts';
import { leftOver } from './act-line.ts';

export interface ValueSaid {
  readonly name: SettingName;
  readonly line: string;
  readonly context: LineContext;
  /** All that follows the name. */
  readonly rest: readonly Token[];
  /** Without the words that only round a sentence off. */
  readonly values: readonly Token[];
}

type Piece = NonNullable<Fault['token']>;

export const missing = ({ name: setting }: ValueSaid): Fault => ({ failed: 'incomplete', setting });

export const otherKind = ({ name: setting }: ValueSaid, token: Piece): Fault => ({
  failed: 'left-over',
  token,
  setting,
});

/** Reads the only value; a second one is too much. */
export const readOne =
  <Value>(read: (value: Token, said: ValueSaid) => Value | Fault) =>
  (said: ValueSaid): Value | Fault => {
    const [value, second] = said.values;
    if (value === undefined) return missing(said);
    return second === undefined ? read(value, said) : leftOver(second);
  };

/** Outside what the setting's row allows. */
export function outside({ name: setting }: ValueSaid, token: Piece, value: number): Fault | undefined {
  const limits = limitsOf(setting);
  return limits !== undefined && isOutside(limits, value)
    ? { failed: 'impossible', token, setting, limits }
    : undefined;
}

export function limitsOf(name: SettingName): Limits | undefined {
  const row: SettingRow = settingRows[name];
  return row.limits === undefined ? undefined : { ...row.limits, unit: unitOfSetting(name) };
}

/** All the values as one piece of the line. */
export function asOnePiece({ line, values }: ValueSaid): Piece | undefined {
  const [first] = values;
  const last = values.at(-1);
  if (first === undefined || last === undefined) return undefined;
  return { text: line.slice(first.start, last.end), start: first.start, end: last.end };
}
