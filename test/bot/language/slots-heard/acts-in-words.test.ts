// What crews say of an act in place of its verb, read by what is done and to what it is done (invented lines; common practice, no
// source), and what only greets.

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../../bot/language/read-line.ts';
import type { Reading } from '../../../../bot/language/reading.ts';
import { shipped } from '../../../../bot/language/tongues/tongues.ts';
import { grams } from '../../../../core/units.ts';
import { shopAtTen, tallerALasDiez } from '../shop-at-ten.ts';

const inUse = {
  ...shopAtTen,
  batches: [1],
  parts: ['flange-1', 'flange-2'],
  live: () => ({
    parts: [
      { name: 'flange-1', phase: 'flashing' as const },
      { name: 'flange-2', phase: 'dry' as const },
    ],
    batches: [{ number: 1, phase: 'filtered' as const }],
    cans: [{ number: 3, isLidOff: false }],
  }),
};

const shopInUse = (code: 'en' | 'es') => ({ ...inUse, hearing: shipped.hearingIn(code) });

const inCure = ['flange-1', 'flange-2'].map((name) => ({ name, phase: 'curing' as const }));
const twoCans = [
  { number: 3, isLidOff: true, component: 'A' as const },
  { number: 4, isLidOff: true, component: 'B' as const },
];

const rawPots = [
  { number: 1, phase: 'to-weigh' as const, grams: grams(2400) },
  { number: 2, phase: 'to-weigh' as const, grams: grams(1200) },
];
const twoRaw = { ...inUse, batches: [1, 2], live: () => ({ ...inUse.live(), batches: rawPots }) };
const withOneOver = {
  ...inUse.live(),
  batches: [...rawPots, { number: 3, phase: 'over' as const, grams: grams(900) }],
};

const linesOf = (read: Reading): readonly string[] =>
  read.kind === 'misread'
    ? read.misread.suggestions
    : 'takenAs' in read && read.takenAs !== undefined
      ? [read.takenAs]
      : [];

describe('what came out in some way', () => {
  it.each([
    ['flange-1 came out dry', shopInUse('en'), ['dry flange-1']],
    ['flange-1 came out nice and dry', shopInUse('en'), ['dry flange-1']],
    ['la flange-1 salió seca', shopInUse('es'), ['dry flange-1']],
  ])('given %s, then it is dry and out of no cure', (line, shop, lines) => {
    expect(linesOf(readLine(line, shop))).toEqual(lines);
  });

  it.each([
    ['flange-1 came out sticky', shopInUse('en')],
    ['flange-1 came out fine', shopInUse('en')],
    ['la flange-1 salió pegajosa', shopInUse('es')],
  ])('given %s, then it is out of no cure', (line, shop) => {
    expect(linesOf(readLine(line, shop)).filter((each) => /^(?:out|fuera|dry|seca) /.test(each))).toEqual([]);
  });
});

describe('an act by what is done and to what', () => {
  it.each([
    ["the gun's rinsed out", 'flush gun'],
    ['ran thinner through the gun', 'flush gun'],
    ['pried the top off can 3', 'lid 3'],
    ["can 3's uncovered now", 'lid 3'],
    ['switched the extractor off', 'fan off'],
    ['the blower is running, 0.6 m/s', 'fan on 0.6m/s'],
    ['dirty rags are in the bin', 'rags'],
    ['just started shooting', 'spray on'],
    ['flange-2 is on the oven rack, door shut, 90C', 'cure flange-2 oven 90C'],
    ["pot 1's a hockey puck", 'gel 1'],
    ['comb on flange-1 says 0.03 mm wet', 'wet flange-1 0.03 mm'],
    ['wiped flange-1 down, no grease left', 'prep flange-1 wiping grease-off'],
  ])('given %s, then it is %s', (said, line) => {
    expect(linesOf(readLine(said, inUse))).toContain(line);
  });

  it.each([
    'the fan on the left is broken',
    "the gun isn't rinsed out",
    'we will rinse the gun out',
    'somebody ought to pry the top off can 3',
  ])('given %s, then no act is taken or offered', (said) => {
    expect(linesOf(readLine(said, inUse))).toEqual([]);
  });

  it('given a thing that only says where another one is, then nothing is told of it', () => {
    expect(linesOf(readLine('flange-2 is sitting in the oven now next to flange-1', inUse))).toEqual([
      'cure flange-2 oven',
    ]);
  });

  it.each(['old', 'cold'])('given the plain word %s, then it is no slip of hold', (word) => {
    const oven = { ...inUse, live: () => ({ ...inUse.live(), parts: inCure }) };
    expect(linesOf(readLine(`flange-1 shows 192 fahrenheit on that ${word} yank gauge`, oven))).toEqual([
      'temp flange-1 192 fahrenheit',
    ]);
  });

  it('given a film in inches, whose sign is a word as well, then it is no bare number', () => {
    const said = readLine('film flange-1 0.0005 in', inUse);
    expect(said.kind === 'command' && said.command).toMatchObject({ dryFilmMicrometres: [expect.closeTo(12.7)] });
  });

  it.each([
    ['húmeda impulsor 7: 60 um', 'húmeda impeller-7: 60 um'],
    ['el impulsor 7 ya marca 91 en el mero metal', 'temp impeller-7 91C'],
  ])('given %s, then its number is the part’s', (said, line) => {
    const cure = { parts: [{ name: 'impeller-7', phase: 'curing' as const }], batches: [], cans: [] };
    expect(linesOf(readLine(said, { ...tallerALasDiez, live: () => cure }))).toEqual([line]);
  });

  it('given a reason for a hold, then the number of its part is none of it', () => {
    expect(linesOf(readLine("park flange-1, it's got fisheyes", inUse))).toEqual(['hold flange-1 "fisheyes"']);
  });

  it('given what a part has, in Spanish, then that alone is the reason', () => {
    const said = readLine('la flange-1 apartada, que tiene una burbuja', { ...inUse, hearing: tallerALasDiez.hearing });
    expect(linesOf(said)).toEqual(['hold flange-1 "burbuja"']);
  });

  it('given a coat’s word and a figure that no coat has, then it is no coat', () => {
    const oven = { ...inUse, live: () => ({ ...inUse.live(), parts: inCure }) };
    expect(linesOf(readLine('shot flange-1 with the gauge, 191', oven)).join()).not.toContain('coat');
  });

  it('given gas and one lid that is off, then a tap names that can', () => {
    const open = { ...inUse, live: () => ({ ...inUse.live(), cans: twoCans.slice(0, 1) }) };
    expect(linesOf(readLine("argon's on", open))).toEqual(['blanket 3']);
  });

  it('given parts that came in from a pot, in Spanish, then the pot’s number is none of them', () => {
    const said = readLine('le di brocha a la flange-1 y la flange-2, de la 1', {
      ...inUse,
      hearing: tallerALasDiez.hearing,
      live: () => ({
        ...inUse.live(),
        parts: inUse.parts.map((name) => ({ name, phase: 'bare' as const })),
      }),
    });
    expect(linesOf(said)).toEqual(['coat flange-1 flange-2 1 brush']);
  });

  it.each([
    ['first pot 1200 A 1203 B', 'weigh 1 1200g 1203g'],
    ['A is 1201 and B 1199 in the big one', 'weigh 1 1201g 1199g'],
    ['the small pot: A 601, B 599', 'weigh 2 601g 599g'],
  ])('given %s, then that pot is meant, where none of them is over', (said, line) => {
    expect(linesOf(readLine(said, twoRaw))).toEqual([line]);
    expect(linesOf(readLine(said, { ...twoRaw, live: () => withOneOver }))).not.toEqual([line]);
  });

  it('given a heat in degrees and a half, in Spanish, then the half is of it', () => {
    const said = readLine('hace veintidós grados y medio y la humedad al cuarenta por ciento', tallerALasDiez);
    expect(linesOf(said)[0]).toMatch(/^air 22[.,]5C 40/);
  });

  it.each([
    ['la 2 al horno, a 90 centígrados', /cure flange-2 oven 90 ?(?:centígrados|C)$/],
    ['la 2 al horno a 194 grados farenheit', /cure flange-2 oven 194 ?(?:grados farenheit|F)$/],
  ])('given %s, then its scale is that, whatever the speaker reads in', (said, line) => {
    for (const units of ['us', 'metric'] as const)
      expect(linesOf(readLine(said, { ...inUse, hearing: tallerALasDiez.hearing, units }))[0]).toMatch(line);
  });

  it('given a part called b, then it is named where the shop has it, and no new one may be', () => {
    const had = { ...inUse, parts: [...inUse.parts, 'b'] };
    for (const said of ['dry b', 'hold b dent in it', 'trace b', 'amend b temp 91C typed wrong'])
      expect(readLine(said, had)).toMatchObject({ kind: /^(?:trace)/.test(said) ? 'question' : 'command' });
    expect(readLine('dry b', inUse).kind).toBe('misread');
  });

  it('given the air in here, then here is no place’s name', () => {
    expect(linesOf(readLine('the air in here is 23C and 51 percent', inUse))[0]).toMatch(/^air 23C 51/);
  });

  it('given brush, from 1, then the number is the pot’s and no part is named', () => {
    const bare = inUse.parts.map((name) => ({ name, phase: 'bare' as const }));
    const said = readLine('brush, from 1', { ...inUse, live: () => ({ ...inUse.live(), parts: bare }) });
    expect(said.kind).toBe('misread');
    expect(linesOf(said)).toEqual(['coat flange-1 1 brush', 'coat flange-2 1 brush']);
  });

  it('given what was measured is said before each its own, then only each its own is told', () => {
    const oven = { ...inUse, live: () => ({ ...inUse.live(), parts: inCure }) };
    const said = readLine("checked both with the probe, 1 shows 91 C and 2's at 84 C", oven);
    expect(said).toMatchObject({ kind: 'several', lines: ['temp flange-1 91 C', 'temp flange-2 84 C'] });
  });

  it.each([
    ['2 looks good to me, ship it', 'release flange-2'],
    ['2 looks clean, sign it off', 'release flange-2'],
    ["oven 90C, that's where 2 is now", 'cure flange-2 oven 90C'],
    ['la 2 pasada a rodillo con el lote 1', 'coat flange-2 1 roller'],
  ])('given %s, then it is offered or taken as %s', (said, line) => {
    const bare = inUse.parts.map((name) => ({ name, phase: 'bare' as const }));
    const every = {
      ...inUse,
      hearing: shipped.every,
      live: () => ({ ...inUse.live(), ...(said.startsWith('la') && { parts: bare }) }),
    };
    expect(linesOf(readLine(said, every))[0]).toBe(line);
  });

  it.each([
    ['2: 91', 'temp flange-2 91C'],
    ['flange-2 84', 'temp flange-2 84C'],
    ['got 88 off number 2', 'temp flange-2 88C'],
  ])('given %s of what is in cure, then its heat is offered and not taken', (said, line) => {
    const oven = { ...inUse, live: () => ({ ...inUse.live(), parts: inCure }) };
    expect(readLine(said, oven)).toMatchObject({ kind: 'misread', misread: { suggestions: [line] } });
    expect(linesOf(readLine(said, inUse))).toEqual([]);
  });

  it.each([
    ['2 lb of clear', 'mix 2 lb'],
    ['two pounds eight of the clear', 'mix 2.5 pounds'],
    ['kilo n a half', 'mix 1.5 kilo'],
    ['1,202 kg', 'mix 1.202kg'],
    ['24 and 48 percent now. 2 kg of clear', 'air 24C 48 percent; mix 2 kg'],
    ['dos kilos del transparente', 'mix 2 kilos'],
  ])('given %s, an amount of something that is nothing here, then a mix of it is offered', (said, line) => {
    const read = readLine(said, { ...inUse, hearing: shipped.every });
    expect(read.kind).toBe('misread');
    expect(linesOf(read)[0]).toBe(line);
  });

  it('given an amount of what is here, then no mix is offered', () => {
    for (const said of ['200 g of pot 1', '300 g of acetone', '2 kg for flange-1'])
      expect(linesOf(readLine(said, inUse)).join()).not.toContain('mix');
  });

  it.each([
    ['the two of them, 1 and 2, are at 90', 'en' as const],
    ['tanto la 1 como la 2 están a 90', 'es' as const],
    ['las dos, la 1 y la 2, están a 90', 'es' as const],
  ])('given %s, then each of the two is told, and no number is left over', (said, code) => {
    const oven = { ...inUse, hearing: shipped.hearingIn(code), live: () => ({ ...inUse.live(), parts: inCure }) };
    const read = readLine(said, oven);
    const lines = read.kind === 'several' ? read.lines : linesOf(read);
    const each = lines.flatMap((line) => line.split('; ')).toSorted();
    expect(each).toEqual(['temp flange-1 90C', 'temp flange-2 90C']);
  });

  it.each([
    [['flange-1', 'flange-3'], ['coat flange-3 1 brush']],
    [['flange-1', 'flange-2', 'flange-3'], ['coat flange-3 1 brush']],
    // Another stands in that place.
    [
      ['flange-3', 'flange-4', 'flange-5'],
      ['coat flange-3 1 brush', 'coat flange-4 1 brush', 'coat flange-5 1 brush'],
    ],
  ])('given the third flange of %j, then it is %j', (parts, lines) => {
    const bare = parts.map((name) => ({ name, phase: 'bare' as const }));
    const shop = { ...inUse, parts, live: () => ({ ...inUse.live(), parts: bare }) };
    expect(linesOf(readLine('the third flange got its coat with the brush from pot 1', shop))).toEqual(lines);
  });

  it('given a cure without an oven, then what it is without denies nothing of it', () => {
    const taller = { ...inUse, hearing: tallerALasDiez.hearing };
    expect(linesOf(readLine('la flange-2 se cura en el rack, sin horno', taller))).toEqual(['cure flange-2 room']);
    expect(linesOf(readLine('la flange-2 no se está curando al aire', taller))).toEqual([]);
  });

  it('given what was looked at, then its number is no hour', () => {
    const cured = {
      ...inUse,
      live: () => ({ ...inUse.live(), parts: [{ name: 'flange-2', phase: 'cured' as const }] }),
    };
    expect(linesOf(readLine('had a look at 2, it is fine, release it', cured))).toEqual(['release flange-2']);
  });

  it('given set in front of an order for a mix, then it is no setting', () => {
    expect(linesOf(readLine('set us up with 1.2 kilos', inUse))).toEqual(['mix 1.2 kilos']);
    expect(linesOf(readLine('set units to kilos', inUse)).join()).not.toContain('mix');
  });

  it('given a figure that no part has in an oven, then no heat is offered', () => {
    const oven = { ...inUse, live: () => ({ ...inUse.live(), parts: inCure }) };
    for (const said of ['2: 9', '2 600', 'flange-2'])
      expect(linesOf(readLine(said, oven)).join()).not.toContain('temp');
  });

  it('given two weights and one letter between them, then no tap says of which of them it is', () => {
    expect(linesOf(readLine('1201 and B 1199 into pot 1', twoRaw))).toEqual([]);
  });

  it('given several parts with a figure each, then none is given another’s', () => {
    expect(linesOf(readLine('flange-1 is at 21, flange-2 23 and that is the steel', inUse))).not.toContain(
      'surface flange-1 flange-2 21C',
    );
    const oven = { ...inUse, live: () => ({ ...inUse.live(), parts: inCure }) };
    expect(linesOf(readLine('flange-1 is at 91, flange-2 90 degrees', oven))).toEqual([
      'temp flange-1 91C; temp flange-2 90C',
    ]);
    expect(linesOf(readLine('flange-1 and flange-2 are at 91 90 degrees', oven))).toEqual([]);
  });

  it('given two cans, then gas is over each of them', () => {
    const two = { ...inUse, live: () => ({ ...inUse.live(), cans: twoCans }) };
    expect(readLine('argon over can 3 and can 4, lids on', two)).toMatchObject({ lines: ['blanket 3', 'blanket 4'] });
  });

  it('given how long it took, then it did not begin so long ago', () => {
    const two = { ...inUse, live: () => ({ ...inUse.live(), cans: twoCans }) };
    expect(linesOf(readLine('stirred can A for 5 minutes, sediment all up', two))).toEqual(['prestir 3']);
    expect(linesOf(readLine('I gave can 3 a good stir before we poured', two))).toEqual(['prestir 3']);
    expect(linesOf(readLine('I gassed can 3 before I closed it', two))).toEqual(['blanket 3']);
    expect(linesOf(readLine('gas can 3 before closing it', two))).toEqual([]);
  });

  it('given a pot that there is none of, then it is told all the same, so that the answer says which there are', () => {
    expect(linesOf(readLine('painted flange-2 with the brush from pot 9', inUse))).toEqual(['coat flange-2 9 brush']);
  });

  it('given how a film sticks by its class, then it is no part’s number', () => {
    const cured = {
      ...inUse,
      live: () => ({ ...inUse.live(), parts: [{ name: 'flange-2', phase: 'cured' as const }] }),
    };
    expect(linesOf(readLine('tape test on 2 was 5b', cured))).toEqual(['adhesion flange-2 5B']);
  });

  it('given a number word, then it is nothing’s name', () => {
    expect(readLine('wet seven 55um', inUse)).not.toMatchObject({ command: { part: 'seven' } });
  });
});

describe('a greeting', () => {
  it.each(['hello', 'good morning everyone', 'thank you very much'])(
    'given %s, then whoever says it is led',
    (said) => {
      expect(readLine(said, inUse)).toMatchObject({ kind: 'question', question: { ask: 'what-now' } });
    },
  );

  it('given a yes that nothing waits for, then it is no greeting', () => {
    expect(readLine('yes', inUse)).toMatchObject({ kind: 'misread' });
  });
});
