// An invented crew, for show.

import type { CrewFile } from '../../core/crew/crew.ts';
import { minutes } from '../../core/units.ts';

const spoken = { language: 'en', units: 'metric' } as const;

export const demoCrew: CrewFile = {
  name: 'Demo crew (invented)',
  zone: 'UTC',
  language: 'en',
  units: 'metric',
  people: [
    { name: 'Ines', role: 'lead', ...spoken },
    { name: 'Kari', role: 'crew', ...spoken },
    { name: 'Tomas', role: 'crew', ...spoken },
    { name: 'Maren', role: 'supervisor', ...spoken },
  ],
  digestHour: 17,
  escalationMinutes: minutes(10),
};

export const demoNotice = 'Demo: all invented. An hour takes a minute.';
