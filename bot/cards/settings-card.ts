// Every setting as it stands, under who may set it; and a tap for each that is worth one and that this person may set.

import { personIn } from '../../core/crew/crew.ts';
import { roles } from '../../core/crew/crew-commands.ts';
import { type Deed, leastRole, roleMissing } from '../../core/crew/who-may.ts';
import type { PersonName } from '../../core/ids.ts';
import { offeredSheets } from '../../core/products/shelf.ts';
import { qualifications } from '../../core/session/session-commands.ts';
import { type SettingName, type SettingRow, settingNames, settingRows } from '../../core/settings.ts';
import { type Card, type CardAction, makeCard } from './card.ts';
import type { Telling } from './card-context.ts';
import { asItStands, settingShown } from './setting-shown.ts';

export function settingsCard(telling: Telling, name: PersonName): Card {
  const { chat, session } = telling.words;
  const { crew } = telling.shop;
  const dates = crew.spray.dates.get(name) ?? {};
  return makeCard(chat.settingsTitle, 'plain', {
    lines: [
      chat.you(name, personIn(crew, name).role),
      ...roles.flatMap((role) => {
        const theirs = settingNames.filter((each) => leastRole(deedFor(telling, name, each)) === role);
        return theirs.length === 0 ? [] : [chat.whoSets[role], ...theirs.map((each) => lineOf(telling, name, each))];
      }),
      ...qualifications.flatMap((what) => {
        const until = dates[what];
        return until === undefined ? [] : [session.qualified(name, what, until, telling.figures)];
      }),
    ],
    actions: settingNames
      .filter(
        (each) => tapPlace(each) !== undefined && roleMissing(crew, name, deedFor(telling, name, each)) === undefined,
      )
      .sort((one, other) => (tapPlace(one) ?? 0) - (tapPlace(other) ?? 0))
      .flatMap((each) => tapsFor(telling, name, each)),
  });
}

/** Of one that is put off by others than who puts it on: what changes it now. */
function deedFor(telling: Telling, person: PersonName, name: SettingName): Deed {
  const [now] = asItStands(telling, person, name);
  return { set: name, off: now !== undefined && 'on' in now && now.on };
}

function lineOf(telling: Telling, person: PersonName, name: SettingName): string {
  const now = asItStands(telling, person, name).map((setting) => settingShown(telling, setting));
  const unset = name === 'sheet' ? telling.words.chat.noUsualSheet : telling.words.chat.notSet;
  return `${telling.words.settings.names[name].label}: ${now.length === 0 ? unset : now.join('; ')}.`;
}

function tapPlace(name: SettingName): number | undefined {
  const row: SettingRow = settingRows[name];
  return row.tap;
}

function tapsFor(telling: Telling, person: PersonName, name: SettingName): readonly CardAction[] {
  const { chat, settings } = telling.words;
  const { label } = settings.names[name];
  const asking = (blank: string): readonly CardAction[] => [
    { id: `set-${name}`, label: `${label}…`, line: `set ${name} ${blank}` },
  ];
  const { kind } = settingRows[name];
  switch (kind) {
    case 'units': {
      const other = personIn(telling.shop.crew, person).units === 'metric' ? 'us' : 'metric';
      return [{ id: `set-${other}`, label: chat.setTaps[other], line: `set ${name} ${other}` }];
    }
    case 'sheet': {
      const [now] = asItStands(telling, person, 'sheet').map((setting) => settingShown(telling, setting));
      const others = offeredSheets(telling.shop.shelf).filter((id) => id !== now);
      return others.slice(0, 4).map((id) => ({ id: `set-${id}`, label: `${label} ${id}`, line: `set ${name} ${id}` }));
    }
    case 'hours':
      return asking('{quiet-from}-{quiet-to}');
    case 'hour':
      return asking('{hour}');
    case 'duration':
      return asking('{duration}h');
    default:
      return asking(`{${name}}`);
  }
}
