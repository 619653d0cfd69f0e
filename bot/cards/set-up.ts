// What sets up a crew and what a person sets for themselves, as fields with their present values: whoever shows a form
// fills them in, and each changed one is a line like any other. People and channels are the platform's own to choose.

import { type CrewFile, peopleWithRole } from '../../core/crew/crew.ts';
import type { Role } from '../../core/crew/crew-commands.ts';
import { peopleFrom, roleMissing } from '../../core/crew/who-may.ts';
import type { PersonName } from '../../core/ids.ts';
import { offeredSheets } from '../../core/products/shelf.ts';
import type { SettingKind } from '../../core/setting-kinds.ts';
import { type Setting, type SettingName, type SettingRow, settingNames, settingRows } from '../../core/settings.ts';
import type { Hearing } from '../language/hearing.ts';
import { writeSetting, writtenValue } from '../language/write-setting.ts';
import type { Telling } from './card-context.ts';
import { asItStands } from './setting-shown.ts';

export interface SetUpField {
  readonly id: SettingName;
  readonly label: string;
  /** As it is now; empty where nothing is set. */
  readonly value: string;
  /** Empty: words. */
  readonly choices: readonly { readonly value: string; readonly label: string }[];
  /** What it may look like. */
  readonly hint: string | undefined;
  /** What sets it; `undefined` where an empty field leaves it as it is. */
  readonly line: (typed: string) => string | undefined;
}

export interface SetUp {
  readonly crew: readonly SetUpField[];
  readonly personal: readonly SetUpField[];
  /** Whether this person may settle each of them, and else who may. A form that is open already is answered field by field. */
  readonly mayCrew: boolean;
  readonly who: readonly PersonName[];
  readonly leads: readonly PersonName[];
  readonly supervisors: readonly PersonName[];
  /** Of the day's bells: without a lead nobody else is told of what nobody answers. */
  readonly nobodyLeads: boolean;
}

export function setUpOf(telling: Telling, name: PersonName): SetUp {
  const { crew } = telling.shop;
  const fields = fieldsOf(telling, name, 'crew');
  return {
    crew: fields,
    personal: fieldsOf(telling, name, 'person'),
    mayCrew: fields.every(({ id }) => roleMissing(crew, name, { set: id }) === undefined),
    who: peopleFrom(crew, 'lead'),
    leads: peopleWithRole(crew, 'lead'),
    supervisors: peopleWithRole(crew, 'supervisor'),
    nobodyLeads: peopleFrom(crew, 'lead').length === 0,
  };
}

function fieldsOf(telling: Telling, person: PersonName, whose: 'crew' | 'person'): readonly SetUpField[] {
  const rows: readonly (SettingRow & { readonly name: SettingName })[] = settingNames.map((name) => ({
    ...settingRows[name],
    name,
  }));
  return rows
    .filter(({ field, personal }) => field !== undefined && (personal === true) === (whose === 'person'))
    .sort((one, other) => (one.field ?? 0) - (other.field ?? 0))
    .map(({ name, kind }) => fieldOf(telling, person, name, kind));
}

function fieldOf(telling: Telling, person: PersonName, name: SettingName, kind: SettingKind): SetUpField {
  const { label, hint } = telling.words.settings.names[name];
  const [now] = asItStands(telling, person, name);
  return {
    id: name,
    label,
    value: now === undefined ? '' : fieldValue(now, telling),
    choices: choicesOf(telling, kind),
    hint,
    line: (typed) => lineOf(name, kind, typed.trim()),
  };
}

/** As it is typed, without what only a line needs. */
function fieldValue(setting: Setting, { hearing }: Telling): string {
  if (setting.name === 'crew') return setting.crewName;
  if (setting.name === 'quiet' && setting.fromHour === setting.toHour) return '';
  return writtenValue(setting, hearing).join(' ');
}

function lineOf(name: SettingName, kind: SettingKind, typed: string): string | undefined {
  // Emptied, there are none.
  if (typed === '') return kind === 'hours' ? `set ${name} off` : undefined;
  return `set ${name} ${kind === 'crew-name' ? JSON.stringify(typed) : typed}`;
}

function choicesOf(
  { words: { settings, session }, languages, shop }: Telling,
  kind: SettingKind,
): SetUpField['choices'] {
  const labelled = (labels: Readonly<Record<string, string>>) =>
    Object.entries(labels).map(([value, label]) => ({ value, label }));
  switch (kind) {
    case 'language':
      return [...languages].map(([value, label]) => ({ value, label }));
    case 'units':
      return labelled(settings.units);
    case 'law':
      return labelled(settings.laws);
    case 'rings':
      return labelled(settings.rings);
    case 'switch':
      return labelled({ on: session.settings.on, off: session.settings.off });
    case 'sheet':
      return offeredSheets(shop.shelf).map((id) => ({ value: id, label: id }));
    default:
      return [];
  }
}

/** The line that makes these the crew's leads and supervisors; `undefined` where they are. Whoever is both supervises. */
export function roleLine(
  { people }: Pick<CrewFile, 'people'>,
  leads: readonly PersonName[],
  supervisors: readonly PersonName[],
  hearing: Hearing,
): string | undefined {
  const wanted = (name: PersonName): Role =>
    supervisors.includes(name) ? 'supervisor' : leads.includes(name) ? 'lead' : 'crew';
  const now = (name: PersonName) => people.find((person) => person.name === name)?.role ?? 'crew';
  const named = new Set([...people.map(({ name }) => name), ...leads, ...supervisors]);
  const given = [...named]
    .filter((name) => wanted(name) !== now(name))
    .map((person) => ({ person, role: wanted(person) }));
  return given.length === 0 ? undefined : writeSetting({ name: 'role', given }, hearing).join(' ');
}
