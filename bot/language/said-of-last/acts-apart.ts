// Several acts that are each said as the strict reader knows them. A tap that does more than one says them so.

import { linesApart } from '../lines-apart.ts';
import type { Understands } from '../understood.ts';

export const actsApart: Understands = (line, _, strictly) => {
  const lines = linesApart(line);
  const areActs = lines.length > 1 && lines.every((one) => strictly(one).kind === 'command');
  return areActs ? { is: 'several', lines } : undefined;
};
