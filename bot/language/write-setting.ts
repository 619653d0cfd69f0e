// A setting as the reader takes it back.

import type { Setting } from '../../core/crew/crew-commands.ts';
import { writeName } from './people-typed.ts';
import { written } from './write-quantities.ts';
import { writeSpraySetting } from './write-session.ts';

export function writeSetting(setting: Setting): readonly string[] {
  switch (setting.name) {
    case 'sheet':
      return ['set sheet', setting.sheet];
    case 'air-limit':
      return ['set air-limit', written(setting.minutes, 'min')];
    case 'digest':
      return ['set digest', String(setting.hour)];
    case 'morning':
      return ['set morning', String(setting.hour)];
    case 'rate':
      return ['set rate', written(setting.squareMetresPerHour, 'm2/h')];
    case 'voc-limit':
      return ['set voc-limit', `${written(setting.grams, 'g')}/${setting.per}`];
    case 'crew':
      return ['set crew', JSON.stringify(setting.crewName)];
    case 'zone':
      return ['set zone', setting.zone];
    case 'role':
      return ['set role', ...setting.given.flatMap(({ person, role }) => [writeName(person), role])];
    case 'crew-language':
    case 'language':
      return [`set ${setting.name}`, setting.language];
    case 'crew-units':
    case 'units':
      return [`set ${setting.name}`, setting.units];
    case 'rings':
      return ['set rings', setting.rings];
    // What is left is for spraying and for need; a setting that is none of them does not compile here.
    default:
      return writeSpraySetting(setting);
  }
}
