// What can be set, in English: its name, and what it can be set to.

import type { SettingName } from '../../../../core/settings.ts';

export interface SettingWords {
  readonly label: string;
  /** What is needed, where the value is missing; left out, as the label says it. */
  readonly asked?: string;
  /** What it may look like on a form. */
  readonly hint?: string;
  /** Its name as it is typed besides its own; two words at most, commas between. */
  readonly typed?: string;
}

const names: Readonly<Record<SettingName, SettingWords>> = {
  crew: { label: 'Crew', asked: 'the crew’s name' },
  zone: { label: 'Time zone', asked: 'a time zone', hint: 'Europe/Madrid, or the city alone' },
  'crew-language': {
    label: 'Language of the crew',
    asked: 'a language',
    hint: 'Of a batch’s message, which all read. Each may have another for their own answers.',
    typed: 'crew language, language crew',
  },
  'crew-units': { label: 'Units of the crew', asked: 'metric or us', typed: 'crew units, units crew' },
  role: { label: 'Role', asked: 'who; crew, lead or supervisor' },
  sheet: { label: 'Sheet', asked: 'product sheet' },
  prep: { label: 'Surfaces are kept', asked: 'on or off', typed: 'surfaces, surface-prep' },
  'new-parts': { label: 'Coats may name new parts', asked: 'on or off', typed: 'new parts, coats name' },
  job: {
    label: 'Asked by job',
    asked:
      'which job, and what it asks for: grade, profile, salts, dust 2 size 2 or water-break of the steel; film pa2 5 spots, adhesion 4B, rub 50, wet 60 80um, pull-off 5MPa, gloss 85GU, hardness 2H, holidays 500V, looks or second eyes before a release',
  },
  'air-limit': { label: 'Air serves for', asked: 'how long an air reading holds', typed: 'air limit' },
  'voc-limit': { label: 'VOC limit', typed: 'voc limit' },
  digest: { label: 'Hour of the day card', asked: 'hour of the digest' },
  morning: { label: 'Hour of the morning list', asked: 'hour of the morning list' },
  quiet: { label: 'Quiet hours', asked: 'quiet hours', hint: '22-6. What is urgent rings all the same. Empty: none.' },
  bell: { label: 'Bell test at each shift', asked: 'on or off' },
  emergency: { label: 'Emergency', asked: 'call, fire, breathless, down, eyes, skin-burn, spill, hot or emergency' },
  brief: { label: 'Brief before spraying', asked: 'on or off' },
  'brief-ahead': { label: 'Brief ahead by', asked: 'how long ahead' },
  sprayers: { label: 'May spray', asked: 'who' },
  scale: { label: 'Scale', asked: 'what it shows, and the most that it carries', typed: 'scales, balance' },
  booth: { label: 'Booth', asked: 'area' },
  confined: { label: 'Closed in, by its name', asked: 'which place; on or off' },
  lel: { label: 'Share of the explosive limit', asked: 'share of the lower explosive limit' },
  mixing: { label: 'Mixing factor', asked: 'air mixing factor' },
  law: { label: 'Whose law holds', asked: 'us, eu, uk, mexico or elsewhere' },
  limit: { label: 'Day limit of a solvent', asked: 'a solvent and its figure' },
  monitor: { label: 'Gas monitor in check', asked: 'until which day', typed: 'gas monitor' },
  'gas-flow': { label: 'Gas over a can runs at', asked: 'flow of the gas', typed: 'gas flow' },
  rate: { label: 'Coated in an hour', asked: 'coating rate' },
  units: { label: 'Units', asked: 'metric or us' },
  language: { label: 'Your language', asked: 'a language' },
  rings: { label: 'Your bells', asked: 'thread or direct', hint: 'Where a bell for you goes.' },
};

export const englishSettings = {
  names,
  laws: {
    us: 'the United States',
    eu: 'the European Union',
    uk: 'Great Britain',
    mexico: 'Mexico',
    elsewhere: 'another country, of which nothing is kept',
  },
  units: { metric: 'metric', us: 'US' },
  rings: { thread: 'in the batch’s thread', direct: 'by direct message' },
  role: (person: string, role: string) => `${person} (${role})`,
};
