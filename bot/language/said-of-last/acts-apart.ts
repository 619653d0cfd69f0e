// `undo entry 12; coat impeller-8 brush`: an act that is taken back and said anew in its place, one after the other.

import type { Understands } from '../understood.ts';

const apart = /^(undo entry \d+); (.+)$/u;

export const linesApart = (line: string): readonly string[] => apart.exec(line)?.slice(1) ?? [];

export const actsApart: Understands = (line, _, strictly) => {
  const lines = linesApart(line);
  const areActs = lines.length > 0 && lines.every((each) => strictly(each).kind === 'command');
  return areActs ? { is: 'several', lines } : undefined;
};
