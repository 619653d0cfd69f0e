// What can be set, in English: its name, and what it can be set to.

import type { Setting } from '../../../../core/crew/crew-commands.ts';

const names: Readonly<Record<Setting['name'], string>> = {
  sheet: 'Sheet',
  'air-limit': 'Air serves for',
  digest: 'Hour of the day card',
  morning: 'Hour of the morning list',
  rate: 'Coated in an hour',
  'voc-limit': 'VOC limit',
  crew: 'Crew',
  zone: 'Time zone',
  'crew-language': 'Language of the crew',
  'crew-units': 'Units of the crew',
  role: 'Role',
  units: 'Units',
  language: 'Your language',
  rings: 'Your bells',
  brief: 'Brief before spraying',
  'brief-ahead': 'Brief ahead by',
  sprayers: 'May spray',
  booth: 'Booth',
  lel: 'Share of the explosive limit',
  mixing: 'Mixing factor',
  emergency: 'In need',
  bell: 'Bell test at each shift',
  quiet: 'Quiet hours',
};

export const englishSettings = {
  names,
  units: { metric: 'metric', us: 'US' },
  rings: { thread: 'in the batch’s thread', direct: 'by direct message' },
  languages: {
    en: 'English',
    'en-GB': 'English (UK)',
    'en-US': 'English (US)',
    es: 'Español',
    'es-ES': 'Español (España)',
    'es-MX': 'Español (México)',
    'es-US': 'Español (EE. UU.)',
  } as Readonly<Record<string, string>>,
  hints: {
    zone: 'Europe/Madrid, or the city alone',
    quiet: '22-6. What is urgent rings all the same. Empty: none.',
    rings: 'Where a bell for you goes.',
    'crew-language': 'Of a batch’s message, which all read. Each may have another for their own answers.',
  } as Readonly<Partial<Record<Setting['name'], string>>>,
  role: (person: string, role: string) => `${person} (${role})`,
};
