// A setting as the reader takes it back.

import type { JobFilmRule } from '../../core/crew/job-limits.ts';
import type { TestAsked } from '../../core/film-tests.ts';
import type { SettingKind, SettingValues } from '../../core/setting-kinds.ts';
import { type KindOf, type Setting, type SettingName, type SettingOf, settingRows } from '../../core/settings.ts';
import type { Hearing } from './hearing.ts';
import { writeName } from './people-typed.ts';
import { writeFilms, written } from './write-quantities.ts';

const writers: { readonly [Kind in SettingKind]: (value: SettingValues[Kind], hearing: Hearing) => readonly string[] } =
  {
    sheet: ({ sheet }) => [sheet],
    duration: ({ minutes }) => [written(minutes, 'min')],
    hour: ({ hour }) => [String(hour)],
    hours: ({ fromHour, toHour }) => [fromHour === toHour ? 'off' : `${fromHour}-${toHour}`],
    switch: ({ on }) => [on ? 'on' : 'off'],
    'place-switch': ({ place, on }) => [place, on ? 'on' : 'off'],
    percent: ({ percent }) => [written(percent, '%')],
    factor: ({ factor }) => [written(factor, '')],
    rate: ({ squareMetresPerHour }) => [written(squareMetresPerHour, 'm2/h')],
    'gas-flow': ({ litresPerMinute }) => [written(litresPerMinute, 'L/min')],
    'last-day': ({ until }) => [until],
    quota: ({ grams, per }) => [`${written(grams, 'g')}/${per}`],
    law: ({ law }) => [law],
    'day-limit': ({ solvent, ppm }) => [solvent, written(ppm, 'ppm')],
    'crew-name': ({ crewName }) => [JSON.stringify(crewName)],
    zone: ({ zone }) => [zone],
    language: ({ language }) => [language],
    units: ({ units }) => [units],
    rings: ({ rings }) => [rings],
    people: ({ people }, hearing) =>
      people.length === 0 ? ['nobody'] : people.map((name) => writeName(name, hearing)),
    roles: ({ given }, hearing) => given.flatMap(({ person, role }) => [writeName(person, hearing), role]),
    booth: ({ place, faceSquareMetres, cubicMetres }) => [
      ...[place, written(faceSquareMetres, 'm2')],
      ...(cubicMetres === undefined ? [] : [written(cubicMetres, 'm3')]),
    ],
    scale: ({ scale, stepGrams, mostGrams }) => [
      scale,
      ...(stepGrams === undefined ? ['off'] : [written(stepGrams, 'g')]),
      ...(mostGrams === undefined ? [] : [written(mostGrams, 'g')]),
    ],
    'job-limits': ({ job, ...limits }) => [/^\d+$/.test(job) ? job : JSON.stringify(job), ...writeLimits(limits)],
    emergency: ({ field, text }) => [field, JSON.stringify(text)],
  };

function writeLimits(limits: Omit<SettingValues['job-limits'], 'job'>): readonly string[] {
  const { grades = [], profile, mostSaltsMilligramsPerSquareMetre: salts, mostDustRating: dust } = limits;
  const asked = [
    ...grades,
    ...(profile === undefined ? [] : [writeFilms([profile.leastMicrometres, profile.mostMicrometres])]),
    ...(salts === undefined ? [] : [`salts ${written(salts, 'mg/m2')}`]),
    ...(dust === undefined ? [] : [`dust ${dust}`]),
    ...(limits.mostDustSize === undefined ? [] : [`size ${limits.mostDustSize}`]),
    ...(limits.waterBreak === true ? ['water-break'] : []),
    ...(limits.film === true ? ['film', ...writeFilmRule(limits.filmRule ?? {})] : []),
    ...(limits.filmBaseMicrometres === undefined ? [] : [`base ${written(limits.filmBaseMicrometres, 'um')}`]),
    ...(limits.leastAdhesion === undefined ? [] : [`adhesion ${limits.leastAdhesion}`]),
    ...(limits.leastDoubleRubs === undefined ? [] : [`rub ${limits.leastDoubleRubs}`]),
    ...(limits.tests ?? []).map(writeTest),
    ...(limits.secondEyes === true ? ['second-eyes'] : []),
  ];
  return asked.length === 0 ? ['off'] : asked;
}

function writeFilmRule({ rule, level, leastMicrometres, mostMicrometres, spots }: JobFilmRule): readonly string[] {
  const films = [leastMicrometres, mostMicrometres].filter((film) => film !== undefined);
  return [
    ...(rule === undefined ? [] : [rule.replace('-', '')]),
    ...(level === undefined ? [] : [`film-level ${level}`]),
    ...(films.length === 0 ? [] : [writeFilms(films)]),
    ...(spots === undefined ? [] : [`${spots} spot`]),
  ];
}

function writeTest(asked: TestAsked): string {
  switch (asked.of) {
    case 'wet':
      return `wet ${writeFilms([asked.leastMicrometres, asked.mostMicrometres])}`;
    case 'pull-off':
      return `pull-off ${written(asked.leastMegapascals, 'MPa')}`;
    case 'gloss':
      return `gloss ${[asked.leastUnits, asked.mostUnits].flatMap((each) => (each === undefined ? [] : [written(each, 'GU')])).join(' ')}`;
    case 'hardness':
      return `hardness ${asked.least}`;
    case 'holidays':
      return asked.volts === undefined ? 'holidays' : `holidays ${written(asked.volts, 'V')}`;
    case 'visual':
      return 'visual';
  }
}

export function writeSetting(setting: Setting, hearing: Hearing): readonly string[] {
  return [`set ${setting.name}`, ...writtenValue(setting, hearing)];
}

/** What stands behind its name. */
export function writtenValue<Name extends SettingName>(setting: SettingOf<Name>, hearing: Hearing): readonly string[] {
  const kind: KindOf<Name> = settingRows[setting.name].kind;
  return writers[kind](setting, hearing);
}
