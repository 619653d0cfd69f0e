// Until which day something counts, as it is set: `set monitor 2026-12-31`, `set monitor until dec 2026`.

import { isFailed } from '../../../core/failed.ts';
import type { SettingValues } from '../../../core/setting-kinds.ts';
import type { Fault } from '../reading.ts';
import { lastDayOf } from '../times/expiry-typed.ts';
import { wordIn } from '../typed/token.ts';
import { leftOver } from './act-line.ts';
import { missing, otherKind, type ValueSaid } from './setting-said.ts';

export function readLastDay(said: ValueSaid): SettingValues['last-day'] | Fault {
  const values = said.values.filter((token) => wordIn(token) !== 'until');
  const [first] = values;
  if (first === undefined) return missing(said);
  const day = lastDayOf(values, 0, said);
  if (day === undefined) return otherKind(said, first);
  if (isFailed(day)) return { ...day, setting: said.name };
  const stray = values[day.to];
  return stray === undefined ? { until: day.date } : leftOver(stray);
}
