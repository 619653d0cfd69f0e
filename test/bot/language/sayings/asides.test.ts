// What is said round an act and is no part of it (invented lines; common practice, no source).

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../../bot/language/read-line.ts';
import { withoutAsides } from '../../../../bot/language/sayings/asides.ts';
import { shopAtTen, tallerALasDiez } from '../shop-at-ten.ts';

const inUse = {
  batches: [1],
  parts: ['flange-1', 'flange-2'],
  live: () => ({
    parts: [
      { name: 'flange-1', phase: 'flashing' as const },
      { name: 'flange-2', phase: 'bare' as const },
    ],
    batches: [{ number: 1, phase: 'filtered' as const }],
    cans: [],
  }),
};
const shop = { ...shopAtTen, ...inUse };
const taller = { ...tallerALasDiez, ...inUse };

describe('what is said beside an act', () => {
  it.each([
    ["1 went dry 2min ago I couldn't get my gloves off", '1 went dry 2min ago'],
    ['brushed 2 from pot 1, forgot to say', 'brushed 2 from pot 1'],
    ['so I walked past the oven, 1 reads 91', '1 reads 91'],
    ['la 1 ya no pega, se me olvidó avisar', 'la 1 ya no pega'],
    ['forgot to tell you 1 went dry 2min ago', '1 went dry 2min ago'],
    ['just wanted to let you know 1 is dry', '1 is dry'],
    ['se me olvidó decirte que la 1 ya no pega', 'la 1 ya no pega'],
    ['saqué la 1, tenía las manos ocupadas', 'saqué la 1'],
    ['la 1 ya no pega, a ver si acabamos pronto', 'la 1 ya no pega'],
    ['la 1 ya no pega, que se nos hace tarde', 'la 1 ya no pega'],
    ["air 21C 52% I guess we're starting", 'air 21C 52%'],
    ['air 21C 52% might as well begin', 'air 21C 52%'],
    ['aire 21C 52%, a ver si hoy terminamos pronto', 'aire 21C 52%'],
  ])('given %s, then %s is told', (line, told) => {
    expect(withoutAsides(line, shop)).toBe(told);
  });

  it.each([
    '1 is dry I think',
    'air 21C 52% I guess',
    'aire 21C 52% supongo',
    'brushed 2 from pot 1, not sure though',
    '1 went dry, no mark on the glove',
    'hold flange-1, forgot to wipe 2',
    'forgot to wipe 2',
    'forgot to tell you to brush 2 from pot 1',
    'se me olvidó decirle a Omar que pinte la 2',
    'la 1 está seca, pero no estoy seguro',
    'forgot to say',
  ])('given %s, then nothing of it stands beside', (line) => {
    expect(withoutAsides(line, shop)).toBeUndefined();
  });

  it('given why it is told so late, then the act is read as if it were told alone', () => {
    expect(readLine('brushed 2 from pot 1, had my hands full', shop)).toMatchObject({
      command: { verb: 'coat', batch: 1 },
      takenAs: 'coat flange-2 1 brush',
    });
    expect(readLine('la 1 está seca, perdón por la tardanza', taller)).toMatchObject({ command: { verb: 'dry' } });
  });
});
