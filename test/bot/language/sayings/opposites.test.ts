// Words that tell one of two acts, of which the other undoes it: that one is never offered, however the thing stands (invented lines).

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../../bot/language/read-line.ts';
import { shopAtTen, tallerALasDiez } from '../shop-at-ten.ts';

const inUse = (isLidOff: boolean) => ({
  parts: ['flange-7', 'flange-8'],
  batches: [1],
  live: () => ({
    parts: [
      { name: 'flange-7', phase: 'dry' as const },
      { name: 'flange-8', phase: 'curing' as const },
    ],
    batches: [{ number: 1, phase: 'blending' as const }],
    cans: [
      { number: 4, isLidOff, component: 'A' as const },
      { number: 5, isLidOff: false, component: 'B' as const },
    ],
  }),
});

const shops = [true, false].flatMap((isLidOff) => [
  { ...shopAtTen, ...inUse(isLidOff) },
  { ...tallerALasDiez, ...inUse(isLidOff) },
]);

function actsOf(line: string): readonly string[] {
  return shops.flatMap((shop) => {
    const read = readLine(line, shop);
    if (read.kind === 'misread') return read.misread.suggestions;
    return read.kind === 'command' ? [read.takenAs ?? read.line] : [];
  });
}

describe('what undoes an act', () => {
  it.each([
    ['el bote 4 ya está cubierto', /\b(?:lid|uncover|destapar)\b/],
    ['he dejado el bote 4 cubierto', /\b(?:lid|uncover|destapar)\b/],
    ['la lata de la parte A está cubierta', /\b(?:lid|uncover|destapar)\b/],
    ['la mezcla 1 ya está cubierta', /\b(?:lid|uncover|destapar)\b/],
    ['la lata 4 está descubierta', /\b(?:shut|cover|blanket|tapar)\b/],
    ['can 4 uncapped', /\b(?:shut|cover|blanket)\b/],
    ['can 4 is capped now', /\b(?:lid|uncover)\b/],
    ['can 4 stands unsealed', /\b(?:shut|cover|blanket)\b/],
    ['la 8 está bloqueada', /\b(?:release|shipped|liberar)\b/],
  ])('given %s, then it is never offered', (line, opposite) => {
    expect(actsOf(line).filter((each) => opposite.test(each))).toEqual([]);
  });
});

describe('what the same words tell of a can and of a pot', () => {
  it.each([
    ['el bote 4 ya está cubierto', 'shut 4'],
    ['ya cubrí el bote 4', 'shut 4'],
    ['el bote de la parte A está cubierto', 'shut 4'],
    ['la mezcla 1 ya está cubierta', 'cover 1'],
  ])('given %s, then it is %s', (line, act) => {
    const read = readLine(line, { ...tallerALasDiez, ...inUse(true) });
    expect(read.kind === 'misread' ? read.misread.suggestions : [read.kind === 'command' && read.takenAs]).toContain(
      act,
    );
  });
});
