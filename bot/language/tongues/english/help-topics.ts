// The groups of all that can be typed, as English names them: the first word is the one printed.

import type { HelpGroup } from '../../help-groups.ts';

export const englishHelpGroups: Readonly<Record<HelpGroup, string>> = {
  pots: 'pots pot mixing mixes',
  cans: 'cans can tins',
  parts: 'parts part',
  air: 'air gas readings',
  spraying: 'spraying spray booth',
  emergencies: 'alarms alarm emergencies emergency',
  crew: 'crew shift people settings',
  asking: 'questions question records',
};
