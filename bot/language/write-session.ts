// The settings of spraying and of need as the reader takes them back.

import type { SpraySetting } from '../../core/session/session-commands.ts';
import { writeName } from './people-typed.ts';
import { written } from './write-quantities.ts';

export function writeSpraySetting(setting: SpraySetting): readonly string[] {
  const name = `set ${setting.name}`;
  switch (setting.name) {
    case 'brief':
    case 'bell':
      return [name, setting.on ? 'on' : 'off'];
    case 'brief-ahead':
      return [name, written(setting.minutes, 'min')];
    case 'sprayers':
      return [name, ...(setting.people.length === 0 ? ['nobody'] : setting.people.map(writeName))];
    case 'booth': {
      const room = setting.cubicMetres === undefined ? '' : written(setting.cubicMetres, 'm3');
      return [name, setting.place, written(setting.faceSquareMetres, 'm2'), room];
    }
    case 'lel':
      return [name, written(setting.percent, '%')];
    case 'mixing':
      return [name, written(setting.factor, '')];
    case 'emergency':
      return [name, setting.field, JSON.stringify(setting.text)];
    case 'quiet':
      return [name, setting.fromHour === setting.toHour ? 'off' : `${setting.fromHour}-${setting.toHour}`];
    default: {
      const never: never = setting;
      return never;
    }
  }
}
