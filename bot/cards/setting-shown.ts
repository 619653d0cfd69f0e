// A setting as a card says it, and as it stands: what was said, else what is usual.

import { personIn } from '../../core/crew/crew.ts';
import { isFailed } from '../../core/failed.ts';
import type { PersonName } from '../../core/ids.ts';
import { type SettingKind, type SettingValues, usualScale } from '../../core/setting-kinds.ts';
import {
  type KindOf,
  type Setting,
  type SettingName,
  type SettingOf,
  settingRows,
  usualSettings,
} from '../../core/settings.ts';
import { allSaid } from '../../core/settled.ts';
import { sheetFor } from '../../core/shop.ts';
import { squareMetres } from '../../core/units.ts';
import type { Telling } from './card-context.ts';

const shown: { readonly [Kind in SettingKind]: (telling: Telling, value: SettingValues[Kind]) => string } = {
  sheet: (_, { sheet }) => sheet,
  duration: (telling, { minutes }) => telling.figures.minutesDown(minutes),
  hour: (telling, { hour }) => telling.figures.hour(hour),
  hours: ({ words, figures }, { fromHour, toHour }) => {
    const { off, quiet } = words.session.settings;
    return fromHour === toHour ? off : quiet(fromHour, toHour, figures);
  },
  switch: ({ words }, { on }) => (on ? words.session.settings.on : words.session.settings.off),
  'place-switch': ({ words }, { place, on }) =>
    `${words.names.place(place)} ${on ? words.session.settings.on : words.session.settings.off}`,
  percent: (telling, { percent }) => telling.figures.percent(percent, 1),
  factor: (telling, { factor }) => telling.figures.decimal(factor),
  rate: (telling, { squareMetresPerHour }) => `${telling.figures.area(squareMetres(squareMetresPerHour))} / h`,
  'gas-flow': (telling, { litresPerMinute }) => telling.figures.gasFlow(litresPerMinute),
  'last-day': ({ words, figures }, { until }) => words.session.monitor.until(until, figures),
  quota: (telling, { grams, per }) => `${telling.figures.mass(grams)} / ${telling.words.records.limitPer[per]}`,
  law: ({ words }, { law }) => words.settings.laws[law],
  'day-limit': ({ words, figures }, { solvent, ppm }) => `${words.names.solvent(solvent)} ${figures.ppm(ppm)}`,
  'crew-name': (_, { crewName }) => crewName,
  zone: (_, { zone }) => zone,
  language: ({ languages }, { language }) => languages.get(language) ?? language,
  units: ({ words }, { units }) => words.settings.units[units],
  rings: ({ words }, { rings }) => words.settings.rings[rings],
  people: (telling, { people }) =>
    people.length === 0 ? telling.words.session.settings.nobodyNamed : telling.figures.list(people),
  roles: (telling, { given }) =>
    telling.figures.list(
      given.map(({ person, role }) => telling.words.settings.role(person, telling.words.chat.roles[role])),
    ),
  booth: (telling, { place, faceSquareMetres, cubicMetres }) => {
    const room = cubicMetres === undefined ? [] : [telling.figures.space(cubicMetres)];
    // `Cabina: 4 m²`: the label has named the usual one.
    const named = place === 'booth' ? [] : [telling.words.names.place(place)];
    return [...named, telling.figures.area(faceSquareMetres), ...room].join(', ');
  },
  scale: ({ words, figures }, { scale, stepGrams, mostGrams }) => {
    if (stepGrams === undefined)
      return scale === usualScale ? words.session.settings.off : `${scale} ${words.session.settings.off}`;
    return words.material.scaleSet(scale, stepGrams, mostGrams, figures);
  },
  'job-limits': ({ words, figures }, { job, ...limits }) => `${job}: ${words.parts.limits(limits, figures)}`,
  emergency: ({ words }, { field, text }) => `${words.names.emergencyField(field)} ${text}`,
};

export function settingShown<Name extends SettingName>(telling: Telling, setting: SettingOf<Name>): string {
  const kind: KindOf<Name> = settingRows[setting.name].kind;
  return shown[kind](telling, setting);
}

/** Of a booth, a kind of trouble or a length of time one each; none where nothing is set. */
export function asItStands(telling: Telling, person: PersonName, name: SettingName): readonly Setting[] {
  const { crew } = telling.shop;
  const { units, language, rings = 'thread' } = personIn(crew, person);
  switch (name) {
    case 'units':
      return [{ name, units }];
    case 'language':
      return [{ name, language }];
    case 'rings':
      return [{ name, rings }];
    case 'role':
      return crew.people.length === 0
        ? []
        : [{ name, given: crew.people.map((each) => ({ person: each.name, role: each.role })) }];
    case 'sheet': {
      const usual = sheetFor(telling.shop);
      return isFailed(usual) ? [] : [{ name, sheet: usual.id }];
    }
    default: {
      const said = allSaid(crew, name);
      return said.length > 0 ? said : usualSettings.filter((usual) => usual.name === name);
    }
  }
}
