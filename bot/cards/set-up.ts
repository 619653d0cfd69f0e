// What sets up a crew and what a person sets for themselves, as fields with their present values: whoever shows a form
// fills them in, and each changed one is a line like any other. People and channels are the platform's own to choose.

import { type CrewFile, peopleWithRole } from '../../core/crew/crew.ts';
import type { Role, Setting } from '../../core/crew/crew-commands.ts';
import { peopleFrom, roleMissingFor } from '../../core/crew/who-may-set.ts';
import type { PersonName } from '../../core/ids.ts';
import { offeredSheets, sheetMeant } from '../../core/products/shelf.ts';
import { writeSetting } from '../language/write-setting.ts';
import type { Telling } from './card-context.ts';

export interface SetUpField {
  readonly id: Named;
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

export function setUpOf(t: Telling, name: PersonName): SetUp {
  const { crew } = t.shop;
  const fields = crewFields(t);
  return {
    crew: fields,
    personal: personalFields(t, name),
    mayCrew: fields.every(({ id }) => roleMissingFor(crew, name, id) === undefined),
    who: peopleFrom(crew, 'lead'),
    leads: peopleWithRole(crew, 'lead'),
    supervisors: peopleWithRole(crew, 'supervisor'),
    nobodyLeads: peopleFrom(crew, 'lead').length === 0,
  };
}

function crewFields(t: Telling): readonly SetUpField[] {
  const { crew, shelf } = t.shop;
  const { quiet } = crew.spray;
  const sheets = offeredSheets(shelf).map((id) => ({ value: id, label: id }));
  const usual = sheetMeant(shelf, crew.defaultSheet);
  return [
    words(t, 'crew', crew.name, (crewName) => writeSetting({ name: 'crew', crewName })),
    words(t, 'zone', crew.zone, (zone) => ['set zone', zone]),
    choice(t, 'crew-language', crew.language, languageChoices(t)),
    choice(t, 'crew-units', crew.units, unitChoices(t)),
    choice(t, 'sheet', 'sheet' in usual ? usual.sheet.id : '', sheets),
    {
      ...words(t, 'quiet', quiet === undefined ? '' : `${quiet.fromHour}-${quiet.toHour}`, (hours) => [
        'set quiet',
        hours,
      ]),
      // Emptied, there are none.
      line: (typed) => `set quiet ${typed.trim() === '' ? 'off' : typed.trim()}`,
    },
  ];
}

function personalFields(t: Telling, name: PersonName): readonly SetUpField[] {
  const { crew } = t.shop;
  const person = crew.people.find((each) => each.name === name);
  const { rings } = t.words.settings;
  return [
    choice(t, 'language', person?.language ?? crew.language, languageChoices(t)),
    choice(t, 'units', person?.units ?? crew.units, unitChoices(t)),
    choice(t, 'rings', person?.rings ?? 'thread', [
      { value: 'thread', label: rings.thread },
      { value: 'direct', label: rings.direct },
    ]),
  ];
}

const languageChoices = ({ words: { settings } }: Telling) =>
  Object.entries(settings.languages).map(([value, label]) => ({ value, label }));
const unitChoices = ({ words: { settings } }: Telling) =>
  Object.entries(settings.units).map(([value, label]) => ({ value, label }));

/** What a form can hold: a brief is no field. */
type Named = Exclude<Setting['name'], 'brief'>;

function words(t: Telling, id: Named, value: string, said: (typed: string) => readonly string[]): SetUpField {
  const line = (typed: string) => (typed.trim() === '' ? undefined : said(typed.trim()).join(' '));
  return { id, label: t.words.settings.names[id], value, choices: [], hint: t.words.settings.hints[id], line };
}

function choice(t: Telling, id: Named, value: string, choices: SetUpField['choices']): SetUpField {
  const line = (typed: string) => (typed === '' ? undefined : `set ${id} ${typed}`);
  return { id, label: t.words.settings.names[id], value, choices, hint: t.words.settings.hints[id], line };
}

/** The line that makes these the crew's leads and supervisors; `undefined` where they are. Whoever is both supervises. */
export function roleLine(
  { people }: Pick<CrewFile, 'people'>,
  leads: readonly PersonName[],
  supervisors: readonly PersonName[],
): string | undefined {
  const wanted = (name: PersonName): Role =>
    supervisors.includes(name) ? 'supervisor' : leads.includes(name) ? 'lead' : 'crew';
  const now = (name: PersonName) => people.find((person) => person.name === name)?.role ?? 'crew';
  const named = new Set([...people.map(({ name }) => name), ...leads, ...supervisors]);
  const given = [...named]
    .filter((name) => wanted(name) !== now(name))
    .map((person) => ({ person, role: wanted(person) }));
  return given.length === 0 ? undefined : writeSetting({ name: 'role', given }).join(' ');
}
