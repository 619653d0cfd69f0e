// What is cleaned after a coat, in Spanish.

import type { Gear } from '../../../../core/session/session-commands.ts';

export const spanishGears: Readonly<Record<Gear, string>> = {
  gun: 'pistola',
  vessels: 'recipientes',
  brush: 'brocha',
  roller: 'rodillo y bandeja',
  'dip-tank': 'cuba de inmersión',
  'flow-gear': 'útiles de flujo',
};
