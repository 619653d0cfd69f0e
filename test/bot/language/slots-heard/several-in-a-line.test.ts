// Several acts in one line, each clause by what its own words tell (invented lines; common practice, no source).

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../../bot/language/read-line.ts';
import type { Reading } from '../../../../bot/language/reading.ts';
import { shipped } from '../../../../bot/language/tongues/tongues.ts';
import { shopAtTen } from '../shop-at-ten.ts';

const inUse = {
  ...shopAtTen,
  batches: [1, 2],
  parts: ['flange-4', 'flange-5', 'flange-6', 'flange-7', 'flange-8', 'valve-body-9', 'bracket-10'],
  live: () => ({
    parts: [
      ...['flange-4', 'flange-5', 'flange-6'].map((name) => ({ name, phase: 'bare' as const, job: '61' })),
      ...['flange-7', 'flange-8'].map((name) => ({ name, phase: 'curing' as const, job: '62' })),
      { name: 'valve-body-9', phase: 'cured' as const, job: '62' },
      { name: 'bracket-10', phase: 'bare' as const, job: '63' },
    ],
    batches: [
      { number: 1, phase: 'filtered' as const },
      { number: 2, phase: 'over' as const },
    ],
    cans: [{ number: 3, isLidOff: false }],
  }),
};

const weighing = {
  ...inUse,
  live: () => ({
    ...inUse.live(),
    batches: [
      { number: 1, phase: 'filtered' as const },
      { number: 2, phase: 'to-weigh' as const },
    ],
  }),
};

const linesOf = (read: Reading): readonly string[] =>
  read.kind === 'misread'
    ? read.misread.suggestions
    : read.kind === 'several'
      ? [read.lines.join('; ')]
      : 'takenAs' in read && read.takenAs !== undefined
        ? [read.takenAs]
        : [];

describe('several acts in one line', () => {
  it.each([
    ['I am done with flange-5, I brushed it out of pot 1', 'coat flange-5 1 brush'],
    ['flange-4 got its coat from pot 1, I used the brush', 'coat flange-4 1 brush'],
  ])('given %s, then it is one coat, and no pot is empty and nothing asked', (said, line) => {
    expect(linesOf(readLine(said, inUse))).toEqual([line]);
  });

  it.each([
    ['flange-5 just got its coat, brush, out of pot 1', 'coat flange-5 1 brush'],
    ['painted 5 with the roller, out of pot 1', 'coat flange-5 1 roller'],
    ['did 4 thru 6 with the roller out of pot 1', 'coat flange-4 flange-5 flange-6 1 roller'],
  ])('given %s, then whence it came is no act of its own', (said, line) => {
    expect(readLine(said, inUse)).toMatchObject({ kind: 'command', takenAs: line });
  });

  it.each([
    ['I measured both parts in the oven: 7 is at 85 degrees and 8 is at 90', 'temp flange-7 85C; temp flange-8 90C'],
    ['batch 2 is 901 grams of A and 899 of B, and I have started the stirrer', 'weigh 2 901 grams 899grams; stir 2'],
    [
      'I put argon over can 3 and closed the lid, and the air is 24 degrees with 47 percent',
      'blanket 3; air 24C 47 percent',
    ],
  ])('given %s, then each is told, and none is lost', (said, lines) => {
    expect(linesOf(readLine(said, weighing))[0]).toBe(lines);
  });

  it.each([
    ['A came to 1001 and B to 998', 'weigh 1 1001g 998g'],
    ['A can of B came to 998', undefined],
    ['pot 1 got its B at 9:38. scale said 1198 for A, 1201 for B', 'weigh 1 1198g 1201g at 2026-03-02T09:38'],
  ])('given %s, then the letters are those of the figures behind them', (said, line) => {
    const raw = {
      ...weighing,
      batches: [1],
      live: () => ({ ...weighing.live(), batches: [{ number: 1, phase: 'to-weigh' as const }] }),
    };
    expect(linesOf(readLine(said, raw))[0]).toBe(line);
  });

  it.each([
    ['we degreased and then wiped flange-4 and flange-5', 'prep flange-4 flange-5 grease-off wiping'],
    ['I degreased 4 and wiped it down, it is clean and dry', 'prep flange-4 grease-off wiping'],
  ])('given %s, then it is one preparation, and its being dry is no touch of a film', (said, line) => {
    expect(linesOf(readLine(said, inUse))).toEqual([line]);
  });

  it.each(['cleaned flange-4, flange-5 and bracket-10', 'limpié flange-4, flange-5 y bracket-10'])(
    'given %s, which are bare, then how is asked of the parts, and of no gear',
    (said) => {
      const both = { ...inUse, hearing: shipped.hearingIn('es') };
      expect(linesOf(readLine(said, both))).toEqual([
        'prep flange-4 flange-5 bracket-10 wiping',
        'prep flange-4 flange-5 bracket-10 grease-off',
      ]);
    },
  );

  it('given what is in cure was cleaned, or a gun, then no preparation is offered', () => {
    for (const said of ['cleaned flange-7 and flange-8', 'cleaned the gun', 'nobody cleaned flange-4'])
      expect(linesOf(readLine(said, inUse)).filter((line) => line.startsWith('prep'))).toEqual([]);
  });

  it('given the metal’s heat of parts that are in no cure, then no act is taken for it without a tap', () => {
    const read = readLine('metal temp on 4, 5 and 6 is 19 C', inUse);
    expect(read.kind).toBe('misread');
    expect(linesOf(read)).toContain('surface flange-4 19 C; surface flange-5 19 C; surface flange-6 19 C');
  });

  it('given a part that is in cure already and what shows on it, then its heat is offered and nothing is recorded', () => {
    const said = 'just brushed 5 from pot 1, and number 8 in the oven now shows 91 degrees on the part';
    const read = readLine(said, inUse);
    expect(read.kind).toBe('misread');
    expect(linesOf(read)[0]).toBe('coat flange-5 1 brush; temp flange-8 91C');
    expect(linesOf(read).join()).not.toContain('cure');
  });

  it('given a room’s heat and its humidity in two clauses, then it is one reading of the air', () => {
    const us = { ...inUse, units: 'us' as const, country: shipped.profileOf('en', 'us') };
    expect(linesOf(readLine('the gadget says 76 and 45 percent', us))).toEqual(['air 76F 45 percent']);
  });

  it.each([
    ["room's 24 and 50 percent and seven's hot, 88", 'air 24C 50 percent room; temp flange-7 88C'],
    ['hosed the gun out with acetone, and pot 2 is empty', 'flush gun acetone; empty 2'],
    ['9 came to 18 um, release it', 'film valve-body-9 18 um; release valve-body-9'],
    ['7 is at 88 and 8 is at 90, both on the metal', 'temp flange-7 88C; temp flange-8 90C'],
    ["the bracket's 19 on the surface, room's 21 and 44%", 'surface bracket-10 19C; air 21C 44% room'],
    ['did 4 with the brush and 5 with the roller, both from batch 1', 'coat flange-4 1 brush; coat flange-5 1 roller'],
    ['9 looks good, released. also 8 at 91', 'release valve-body-9; temp flange-8 91C'],
    ['7 was hot enough so i pulled it out and put argon on can 3', 'out flange-7; blanket 3'],
    ['pulled 8 and 9 is released', 'out flange-8; release valve-body-9'],
    ["4's surface is 20, 5's is 21", 'surface flange-4 20C; surface flange-5 21C'],
    ['gun cleaned, acetone then ipa', 'flush gun acetone; flush gun isopropyl-alcohol'],
    ['hosed out the gun with acetone and after that ipa', 'flush gun acetone; flush gun isopropyl-alcohol'],
    ["bracket-10's dry n chucked it in the oven at 90", 'dry bracket-10; cure bracket-10 oven 90C'],
    ['stirrer off on 1 then ran it through the filter', 'stop 1; filter 1'],
  ])('given %s, then both are taken or offered together', (said, lines) => {
    expect(linesOf(readLine(said, inUse))).toContain(lines);
  });

  it.each([
    'have we weighed 600 grams of A for batch 2, and is the pot covered',
    'hosed the gun out with acetone, but pot 2 is not empty',
    'maybe 9 came to 18 um, release it later',
  ])('given %s, then none of them is taken', (said) => {
    expect(readLine(said, inUse).kind).toBe('misread');
  });
});

describe('parts told one after the other', () => {
  it.each([
    ['4 thru 5 and also the 6 got flow coated, batch 1', 'coat flange-4 flange-5 flange-6 1 flow'],
    ['blasted 4 5 6', 'prep flange-4 flange-5 flange-6 blasting'],
    ['6 and the bracket are sanded', 'prep flange-6 bracket-10 sanding'],
    ['the first two of job 61 got the roller, batch 1', 'coat flange-4 flange-5 1 roller'],
    ['every bare one of job 61 has had the roller, out of pot 1', 'coat flange-4 flange-5 flange-6 1 roller'],
  ])('given %s, then all of them are meant', (said, line) => {
    expect(linesOf(readLine(said, inUse))).toContain(line);
  });
});

describe('two pots that wait to be weighed', () => {
  const raw = {
    ...inUse,
    live: () => ({ ...inUse.live(), batches: [1, 2].map((number) => ({ number, phase: 'to-weigh' as const })) }),
  };

  it.each(['weighed both. 1 was 1200 and 1201, 2 was 599 and 600', '1: 1200 1201, 2: 599 600'])(
    'given %s, then each is offered with its own weights',
    (said) => {
      expect(linesOf(readLine(said, raw))).toContain('weigh 1 1200g 1201g; weigh 2 599g 600g');
    },
  );

  it('given three weights for two pots, then none is given to another pot', () => {
    expect(linesOf(readLine('weighed both. 1 was 1200 and 1201, 2 was 599', raw)).join()).not.toContain('weigh 2');
  });
});

describe('one act that is told in two clauses', () => {
  const waiting = {
    ...inUse,
    live: () => ({
      parts: [{ name: 'flange-4', phase: 'dry' as const }],
      batches: [{ number: 1, phase: 'to-weigh' as const }],
      cans: [],
    }),
  };

  it.each([
    ["slid 4 in the oven, she's set at 95", 'cure flange-4 oven 95C'],
    ["slid 4 into the oven, she's set for 95", 'cure flange-4 oven 95C'],
    ['pot 1 poured, 1201 of A and 1198 of B', 'weigh 1 1201g 1198g'],
  ])('given %s, then first of all it is %s', (said, act) => {
    expect(linesOf(readLine(said, waiting))[0]).toBe(act);
  });
});

describe('a way of coating said by its verb, in Spanish', () => {
  it('given that parts were dipped, then it is no brush', () => {
    const taller = { ...inUse, hearing: shipped.hearingIn('es'), country: shipped.profileOf('es', 'metric') };
    expect(linesOf(readLine('la 4 y la 5 ya se sumergieron en la mezcla 1', taller))).toContain(
      'coat flange-4 flange-5 1 dip',
    );
  });
});

describe('an act that another one of the same line makes possible', () => {
  const wet = {
    ...inUse,
    live: () => ({ ...inUse.live(), parts: [{ name: 'flange-7', phase: 'flashing' as const }] }),
  };

  it.each(['7 is dry now and I have set it in the oven', '7 is dry and into the oven it went'])(
    'given %s, then both are said, the second of what the first names',
    (said) => {
      expect(readLine(said, wet)).toMatchObject({ kind: 'several', lines: ['dry flange-7', 'cure flange-7 oven'] });
    },
  );

  it.each([
    '7 is dry now and I will set it in the oven',
    '7 is dry, I think, and I have set it in the oven',
    '7 is not dry and I have not set it in the oven',
    '7 is dry now and somebody should set it in the oven',
  ])('given %s, then not both are said', (said) => {
    expect(readLine(said, wet).kind).not.toBe('several');
  });

  it('given a short word that is said of many things, then it is no slip of an act', () => {
    expect(linesOf(readLine('7 is dry now and somebody set it down', wet)).join()).not.toContain('wet ');
  });
});

describe('the reason of a hold', () => {
  it.each([
    ['dejo retenida la 9 por descuelgues', 'descuelgues'],
    ['te dejo apartada la 9 por cráteres', 'cráteres'],
  ])('given %s, then what leads in to the act is no part of it, and it is a tap', (said, why) => {
    const read = readLine(said, { ...inUse, hearing: shipped.hearingIn('es') });
    expect(read.kind).toBe('misread');
    expect(linesOf(read)).toEqual([`hold valve-body-9 "${why}"`]);
  });

  it('given it ahead of the act, then it stays', () => {
    expect(linesOf(readLine('runs near the hub, hold 9', inUse)).join()).toContain('runs near the hub');
  });
});
