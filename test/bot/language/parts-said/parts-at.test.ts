// Which parts a line names, whatever it spells them like: only those that the shop has, and what may be another thing is not sure.

import { describe, expect, it } from 'vitest';
import { partsAt } from '../../../../bot/language/parts-said/parts-at.ts';
import { partsInLine } from '../../../../bot/language/parts-said/parts-in-line.ts';
import type { LineContext } from '../../../../bot/language/reading.ts';
import { tokenize } from '../../../../bot/language/typed/tokens.ts';
import { shopAtTen, tallerALasDiez } from '../shop-at-ten.ts';

const parts = ['impeller-1', 'impeller-2', 'impeller-3', 'impeller-7', 'impeller-08', 'pump-housing-3'];
const booked = (context: LineContext): LineContext => ({
  ...context,
  parts,
  live: () => ({
    parts: parts.map((name, i) => ({
      name,
      phase: 'bare',
      serial: `440${i}`,
      job: i < 2 ? '87' : '88',
      metal: name === 'pump-housing-3' ? 'steel' : 'aluminium',
    })),
    ...{ batches: [], cans: [] },
  }),
});
const english = booked(shopAtTen);
const spanish = booked(tallerALasDiez);

/** What the first that names any names. */
function foundIn(line: string, context: LineContext) {
  const tokens = tokenize(line, context.hearing);
  const inLine = partsInLine(line, tokens, context);
  return tokens.map((_, at) => partsAt(inLine, at)).find((found) => found !== undefined);
}

describe('parts that a line names', () => {
  it.each([
    ['impeller-7', ['impeller-7']],
    ['Impeller #7', ['impeller-7']],
    ['impeller7', ['impeller-7']],
    ['impeller 8', ['impeller-08']],
    ['imp 7', ['impeller-7']],
    ['i7', ['impeller-7']],
    ['impellers 1 to 3', ['impeller-1', 'impeller-2', 'impeller-3']],
    ['impeller-1, -2 and -3', ['impeller-1', 'impeller-2', 'impeller-3']],
    ['impellers 1,2 and 7', ['impeller-1', 'impeller-2', 'impeller-7']],
    ['2, 7 and 8', ['impeller-2', 'impeller-7', 'impeller-08']],
    ['the steel one', ['pump-housing-3']],
    ['1 to 3', ['impeller-1', 'impeller-2', 'impeller-3']],
    ['the 7 and the 8', ['impeller-7', 'impeller-08']],
    ['7/8', ['impeller-7', 'impeller-08']],
    ['the pump housing', ['pump-housing-3']],
    ['the housing', ['pump-housing-3']],
    ['serial 4403', ['impeller-7']],
  ] as const)('given "%s", then each is named, and that is sure', (line, names) => {
    expect(foundIn(line, english)).toMatchObject({ names, is: 'named', isSure: true });
  });

  it.each([
    ['la carcasa', ['pump-housing-3']],
    ['carcasa de la bomba 3', ['pump-housing-3']],
    ['el impulsor 7', ['impeller-7']],
    ['de la 1 a la 3', ['impeller-1', 'impeller-2', 'impeller-3']],
  ] as const)('given "%s" in Spanish, then each is named', (line, names) => {
    expect(foundIn(line, spanish)).toMatchObject({ names, is: 'named', isSure: true });
  });

  it.each([
    // The second may be the pot.
    ['impeller 7, 1', english],
    ['impeler 7', english],
    // Two have the 3.
    ['1, 2 and 3', english],
    ['las 2, la 7 y la 8', spanish],
  ] as const)('given "%s", then it is not sure', (line, context) => {
    expect(foundIn(line, context)).toMatchObject({ isSure: false });
  });

  it.each([
    ['la 2, la 7 y la 8', ['impeller-2', 'impeller-7', 'impeller-08']],
    ['la de acero', ['pump-housing-3']],
  ])('given "%s" in Spanish, then none is left out', (line, names) => {
    expect(foundIn(line, spanish)).toMatchObject({ names, is: 'named' });
  });

  it.each([
    ['the brass one', english],
    ['la de bronce', spanish],
  ] as const)('given "%s", which is of a metal that no part has, then none is meant', (line, context) => {
    expect(foundIn(line, context)).toMatchObject({ names: [], is: 'one-of' });
  });

  it('given how many before their numbers, then that is no number of a part', () => {
    expect(foundIn('las 2, la 7 y la 8', spanish)?.names).toEqual(['impeller-7', 'impeller-08']);
  });

  it.each([
    ['impellers', 'fitting', 5],
    ['job 87', 'fitting', 2],
    ['all of 87', 'fitting', 2],
    ['the aluminium ones', 'fitting', 5],
    ['the impeller', 'one-of', 5],
  ] as const)('given "%s", then it is %s of %i', (line, is, many) => {
    const found = foundIn(line, english);
    expect([found?.is, found?.names.length]).toEqual([is, many]);
  });

  it.each(['impeller 5', 'valves 1 to 3', '7.5', 'sa 2,5', 'batch 7 and 8', 'the 7', 'coat', 'serial 12'])(
    'given "%s", then none is named',
    (line) => {
      expect(foundIn(line, spanish)).toBeUndefined();
    },
  );
});
