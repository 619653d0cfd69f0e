// Long lines as people talk: what is said beside an act, and several acts in one breath (invented lines; common practice, no source).

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import type { LineContext, Reading } from '../../../bot/language/reading.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { shopAtTen } from './shop-at-ten.ts';

const names = ['br-1', 'br-2', 'br-3'];

const shopWith = (
  code: 'en' | 'es',
  phase: 'bare' | 'flashing' | 'cured',
  pot: 'blending' | 'filtered',
): LineContext => ({
  ...shopAtTen,
  hearing: shipped.hearingIn(code),
  batches: [4],
  parts: names,
  live: () => ({
    parts: names.map((name) => ({ name, phase })),
    batches: [{ number: 4, phase: pot }],
    cans: [{ number: 5, isLidOff: false }],
  }),
});

const linesOf = (read: Reading): readonly string[] => {
  if (read.kind === 'several') return read.lines;
  return read.kind === 'misread' ? read.misread.suggestions : 'takenAs' in read ? [read.takenAs ?? ''] : [];
};

describe('what is as it should be', () => {
  it.each([
    [
      'en',
      'BR-1, BR-2 and BR-3 are degreased with acetone, no dust, no rust on them',
      'prep br-1 br-2 br-3 grease-off acetone',
    ],
    ['en', "I've brushed BR-1, BR-2 and BR-3, one thin coat each, no bubbles", 'coat br-1 br-2 br-3 4 brush'],
    ['es', 'br-1 y br-2 desengrasadas con acetona, sin polvo ni óxido', 'prep br-1 br-2 grease-off acetone'],
  ] as const)('given %s: %s, then it denies nothing that was done', (code, line, act) => {
    expect(readLine(line, shopWith(code, 'bare', 'filtered'))).toMatchObject({ kind: 'command', takenAs: act });
  });

  it.each(['did not coat br-1, no bubbles', 'no coat on br-1', 'br-1 has no coat and no dust'])(
    'given %s, then nothing is taken',
    (line) => {
      expect(['misread', 'question']).toContain(readLine(line, shopWith('en', 'bare', 'filtered')).kind);
    },
  );

  it('given one coat behind a list of parts, then it counts the coat and is no part of the list', () => {
    const read = readLine('brushed br-2 and br-3, 1 thin coat each', shopWith('en', 'bare', 'filtered'));
    expect(read).toMatchObject({ kind: 'command', takenAs: 'coat br-2 br-3 4 brush' });
  });
});

describe('several acts in one breath', () => {
  it('given what was prepared is also clean and dry, then no film is dry', () => {
    const line = "I've degreased BR-1 and BR-2 with acetone and wiped them, they're clean and dry. Surface is 22 C";
    const lines = linesOf(readLine(line, shopWith('en', 'bare', 'filtered')));
    expect(lines.filter((each) => each.startsWith('dry'))).toEqual([]);
    expect(lines.filter((each) => each.startsWith('surface'))).toHaveLength(2);
  });

  it('given no reading makes the whole of it, then its acts are one tap, which says what it leaves out', () => {
    const line = 'Stirrer is off, I filtered it into a clean second jar, looks clear and thin';
    const read = readLine(line, shopWith('en', 'bare', 'blending'));
    expect(linesOf(read)).toEqual(['stop 4; filter 4']);
    expect(read.kind === 'misread' && read.misread.untaken).toEqual(['looks clear and thin']);
  });

  it.each(['Stirrer is off, I have not filtered it yet, looks clear', 'stirrer is off, I think, and filtered'])(
    'given %s, then a clause that denies or doubts keeps the others from a tap',
    (line) => {
      expect(linesOf(readLine(line, shopWith('en', 'bare', 'blending')))).not.toContain('stop 4; filter 4');
    },
  );
});

describe('a hold that is lifted', () => {
  it.each([
    ['en', 'take br-1 off hold', 'release br-1'],
    ['en', 'Nils lifts the hold on BR-1 and BR-2, the gauge was misread', 'release br-1 br-2'],
    ['es', 'levanto la retención de br-1', 'release br-1'],
  ] as const)('given %s: %s, then it is asked about as a release, and holds nothing', (code, line, act) => {
    expect(linesOf(readLine(line, shopWith(code, 'cured', 'filtered')))).toEqual([act]);
  });
});

describe('what is denied or put off beside what is told', () => {
  it.each([
    ['en', 'blending', 'I stopped pot 4, I have not filtered it yet', 'stop 4', 'I have not filtered it yet'],
    ['en', 'blending', 'stopped pot 4, will wash the brush in a bit', 'stopped pot 4', 'will wash the brush in a bit'],
    [
      'en',
      'filtered',
      'Nobody ships br-2 today: I am putting it on hold because of sags',
      'hold br-2 "sags"',
      'Nobody ships br-2 today',
    ],
    ['es', 'blending', 'he parado la mezcla 4, todavía no la he filtrado', 'stop 4', 'todavía no la he filtrado'],
  ] as const)(
    'given %s, a pot that is %s: %s, then one tap tells the act, and what it leaves out',
    (code, pot, line, act, left) => {
      const read = readLine(line, shopWith(code, 'bare', pot));
      expect(linesOf(read)).toEqual([act]);
      expect(read.kind === 'misread' && read.misread.untaken).toEqual([left]);
    },
  );

  it.each([
    ['en', 'I did not wash the brush, filter the pot or cover it'],
    ['en', 'I have not stopped it, filtered it, poured it'],
    ['en', 'stopped pot 4, not really stopped yet'],
    ['en', 'stopped pot 4, I think'],
    ['en', 'stopped pot 4, not sure though'],
    ['en', 'stopped pot 4, or Omar filtered it'],
    ['en', 'br-2 is dry, still tacky at the rim'],
    ['en', "br-2 is dry, haven't checked yet"],
    ['en', 'br-2 is dry, not touched it yet'],
    ['en', 'if br-2 is dry, put it in the oven'],
    ['en', 'we should wash the brush, empty pot 4'],
    ['en', 'nobody washed the brush, filtered 4 or wiped br-3'],
    ['en', 'not wiped br-1, br-2 or br-3'],
    ['es', 'no he filtrado la 4, parado ni pesado'],
    ['es', 'no lavé la brocha, ni vacié la 4'],
    ['es', 'br-2 está seca, creo'],
    ['es', 'br-2 está seca, todavía pega un poco'],
    ['es', 'br-2 está seca, no la he tocado todavía'],
    ['es', 'br-2 está seca, o eso parece'],
    ['es', 'tenemos que lavar la brocha, vaciar la 4'],
    ['es', 'mañana filtramos la 4, lavamos la brocha'],
  ] as const)('given %s: %s, then no act is taken or offered', (code, line) => {
    const shop = shopWith(code, 'flashing', 'blending');
    const acts = linesOf(readLine(line, shop)).filter((each) => readLine(each, shop).kind !== 'question');
    expect(acts.filter((each) => each !== 'undo')).toEqual([]);
  });
});

describe('what goes on with a joint', () => {
  it('given a can’s label behind another act, then one tap says both', () => {
    const line =
      'the room is at 23 degrees and 51 percent, and I opened a can of A, lot 88, 5 kg, good until December 2027';
    const [tap = ''] = linesOf(readLine(line, shopWith('en', 'bare', 'blending')));
    expect(tap).toMatch(/^air 23C 51.*; open A lot 88 5kg exp 2027-12-31$/);
  });

  it.each([
    'the room is at 23 degrees and 51 percent, and I will open a can of A, lot 88, 5 kg, good until December 2027',
    'the room is at 23 degrees and 51 percent, and nobody opened a can of A, lot 88, 5 kg, good until December 2027',
  ])('given %s, then no can is opened', (line) => {
    expect(linesOf(readLine(line, shopWith('en', 'bare', 'blending'))).join()).not.toContain('open ');
  });
});

describe('a pot by its letter', () => {
  it.each([
    ['en', 'brushed br-1 br-2 n 3 from b4'],
    ['es', 'br-1 y br-2 a brocha de la m4'],
  ] as const)('given %s: %s, then it is that pot and no new part', (code, line) => {
    const read = readLine(line, shopWith(code, 'bare', 'filtered'));
    expect(read).toMatchObject({
      kind: 'command',
      command: { verb: 'coat', batch: 4, parts: expect.arrayContaining(['br-1', 'br-2']) },
    });
  });
});

describe('a word of an act in a line that asks', () => {
  it('given it hardly speaks for that act, then it is no tap', () => {
    const lines = linesOf(
      readLine('can u pull up all that we did so far this morning', shopWith('en', 'cured', 'filtered')),
    );
    expect(lines.filter((line) => line.startsWith('out'))).toEqual([]);
  });
});
