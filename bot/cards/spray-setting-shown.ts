// A setting for spraying or for need, as the card that settles it says it.

import type { SettingChanged } from '../../core/crew/crew-events.ts';
import type { SpraySetting } from '../../core/session/session-commands.ts';
import { litres } from '../../core/units.ts';
import type { Telling } from './card-context.ts';

/** As it is filed. */
type Filed = Extract<SettingChanged['setting'], { readonly name: SpraySetting['name'] }>;

export function spraySettingShown(t: Telling, setting: Filed): string {
  const words = t.words.session.settings;
  switch (setting.name) {
    case 'brief':
    case 'bell':
      return setting.on ? words.on : words.off;
    case 'brief-ahead':
      return t.f.minutesDown(setting.minutes);
    case 'sprayers':
      return setting.people.length === 0 ? words.nobodyNamed : t.f.list(setting.people);
    case 'booth': {
      const room = setting.cubicMetres === undefined ? [] : [t.f.volume(litres(setting.cubicMetres * 1000))];
      return t.f.list([t.words.names.place(setting.place), t.f.area(setting.faceSquareMetres), ...room]);
    }
    case 'lel':
      return t.f.percent(setting.percent, 1);
    case 'mixing':
      return t.f.decimal(setting.factor);
    case 'emergency':
      return `${t.words.names.emergencyField(setting.field)}: ${setting.text}`;
    case 'quiet':
      return setting.fromHour === setting.toHour
        ? words.off
        : words.quiet(`${setting.fromHour}:00`, `${setting.toHour}:00`);
    default: {
      const never: never = setting;
      return never;
    }
  }
}
