// What is cleaned after a coat, in English.

import type { Gear } from '../../../../core/session/session-commands.ts';

export const englishGears: Readonly<Record<Gear, string>> = {
  gun: 'gun',
  vessels: 'vessels',
  brush: 'brush',
  roller: 'roller and tray',
  'dip-tank': 'dip tank',
  'flow-gear': 'flow gear',
};
