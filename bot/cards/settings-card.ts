// The crew and the person as they are set, with a tap for each thing that this person may set by saying it.

import { type Person, personIn } from '../../core/crew/crew.ts';
import { roleMissingFor, type SettlingRow } from '../../core/crew/who-may-set.ts';
import type { PersonName } from '../../core/ids.ts';
import { ownValue } from '../../core/own-key.ts';
import { offeredSheets, sheetMeant } from '../../core/products/shelf.ts';
import { qualifications } from '../../core/session/session-commands.ts';
import { minutes } from '../../core/units.ts';
import { type Card, type CardAction, makeCard } from './card.ts';
import type { Telling } from './card-context.ts';

export function settingsCard(t: Telling, name: PersonName): Card {
  const { chat } = t.words;
  const { crew } = t.shop;
  const { session } = t.words;
  const { quiet } = crew.spray;
  const dates = crew.spray.dates.get(name) ?? {};
  const person = personIn(crew, name);
  const usual = sheetMeant(t.shop.shelf, crew.defaultSheet);
  const sheet = 'sheet' in usual ? usual.sheet.id : undefined;
  const sheets = offeredSheets(t.shop.shelf).filter((id) => id !== sheet);
  const units: CardAction =
    person.units === 'metric'
      ? { id: 'set-us', label: chat.setTaps.us, line: 'set units us' }
      : { id: 'set-metric', label: chat.setTaps.metric, line: 'set units metric' };
  const theirs = (row: SettlingRow, taps: readonly CardAction[]) =>
    roleMissingFor(crew, name, row) === undefined ? taps : [];
  return makeCard(chat.settingsTitle, 'plain', {
    lines: [
      ...chat.settings(crew.name, crew.zone, person.name, chat.roles[person.role]),
      mine(t, person),
      ...(crew.people.length === 0
        ? []
        : [chat.people(t.f.list(crew.people.map((each) => `${each.name} (${chat.roles[each.role]})`)))]),
      chat.sheetNow(sheet, t.f.minutesDown(minutes(crew.airLimitMinutes)), `${crew.digestHour}:00`),
      chat.quietNow(
        quiet === undefined ? undefined : session.settings.quiet(`${quiet.fromHour}:00`, `${quiet.toHour}:00`),
      ),
      ...qualifications.flatMap((what) => {
        const until = dates[what];
        return until === undefined ? [] : [session.qualified(person.name, session.qualifications[what], until)];
      }),
    ],
    actions: [
      units,
      ...theirs(
        'sheet',
        sheets.slice(0, 4).map((id) => ({ id: `set-${id}`, label: chat.setTaps.sheet(id), line: `set sheet ${id}` })),
      ),
      ...theirs('digest', [{ id: 'set-digest', label: chat.setTaps.digest, line: 'set digest {digest-hour}' }]),
      ...theirs('quiet', [{ id: 'set-quiet', label: chat.setTaps.quiet, line: 'set quiet {quiet-from}-{quiet-to}' }]),
      ...theirs('air-limit', [
        { id: 'set-air-limit', label: chat.setTaps.airLimit, line: 'set air-limit {air-limit}h' },
      ]),
    ],
  });
}

/** Language, units and bells in one line. */
function mine({ words }: Telling, person: Person): string {
  const { names, languages, units, rings } = words.settings;
  return [
    `${names.language}: ${ownValue(languages, person.language) ?? person.language}`,
    `${names.units}: ${units[person.units]}`,
    `${names.rings}: ${rings[person.rings ?? 'thread']}`,
  ].join(' · ');
}
