// What stands of each setting: what was said last, else what the crew's file says, else what is usual. Of a booth, a length
// of time or a kind of trouble each has its own.

import {
  type Setting,
  type SettingName,
  type SettingRow,
  settingRows,
  type UsuallySet,
  usualSettings,
} from './settings.ts';

type Named<Name extends SettingName> = Extract<Setting, { readonly name: Name }>;

export type Settled = ReadonlyMap<SettingName, readonly Setting[]>;

/** Stands from now on in the place of what was said of the same thing. */
export function settle(settled: Map<SettingName, readonly Setting[]>, setting: Setting): void {
  const others = (settled.get(setting.name) ?? []).filter((other) => aspectOf(other) !== aspectOf(setting));
  settled.set(setting.name, [...others, setting]);
}

interface WithSettled {
  readonly settled: Settled;
}

/** All that somebody or the crew's file has said. */
export function allSaid<Name extends SettingName>({ settled }: WithSettled, name: Name): readonly Named<Name>[] {
  return named(settled.get(name) ?? [], name);
}

export function lastSaid<Name extends SettingName>(crew: WithSettled, name: Name): Named<Name> | undefined {
  return allSaid(crew, name).at(-1);
}

const usual: WithSettled = { settled: new Map(usualSettings.map((setting) => [setting.name, [setting]])) };

/** What holds, whether anybody has said it or not. */
export function standing<Name extends UsuallySet>(crew: WithSettled, name: Name): Named<Name> {
  const last = lastSaid(crew, name) ?? lastSaid(usual, name);
  if (last === undefined) throw new Error(`the row of "${name}" has lost what is usual`);
  return last;
}

function named<Name extends SettingName>(settings: readonly Setting[], name: Name): readonly Named<Name>[] {
  return settings.filter((setting): setting is Named<Name> => setting.name === name);
}

/** Of which there stand several beside each other; `undefined` where only one can. */
function aspectOf(setting: Setting): unknown {
  const row: SettingRow = settingRows[setting.name];
  return row.each === undefined ? undefined : new Map<string, unknown>(Object.entries(setting)).get(row.each);
}
