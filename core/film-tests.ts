// What else is tested on a coated part, one kind each: its figure, its standard, what a job may ask of it, and when it passes. What was
// read and what is asked have the same tag, so that one switch judges them all.

import { z } from 'zod';
import { type Method, methodRows } from './methods.ts';
import { Megapascals, Micrometres as MicrometresSchema, Volts } from './unit-schemas.ts';
import type { Micrometres } from './units.ts';

/** Pencils from the softest, as ASTM D3363 and ISO 15184 have them (their order from memory). */
export const pencils = [
  ...(['6B', '5B', '4B', '3B', '2B', 'B', 'HB', 'F'] as const),
  ...(['H', '2H', '3H', '4H', '5H', '6H', '7H', '8H', '9H'] as const),
] as const;

/** Where a pulled dolly let go (from memory of ISO 4624): in its glue it proves only that the film bears so much. */
export const breaks = ['glue', 'in-coat', 'off-metal'] as const;
export type Break = (typeof breaks)[number];

/** What a look shows; `good`: none of the others. */
export const looks = [
  ...(['good', 'specks', 'orange-peel', 'mottle', 'runs', 'lines', 'bubbles', 'craters', 'bare-spots'] as const),
  ...(['dirt', 'blush'] as const),
] as const;
export type Look = (typeof looks)[number];

/** Of a spray a fine orange peel or mottle is to be expected: common practice, no source. */
const expectedOfSpray: ReadonlySet<Look> = new Set(['orange-peel', 'mottle']);

export const filmTestNames = ['pull-off', 'gloss', 'hardness', 'holidays', 'visual'] as const;
export type FilmTestName = (typeof filmTestNames)[number];

/** Named where the bot speaks of a test; all from memory of the trade. */
export const standardsOfTest: Readonly<Record<FilmTestName, string>> = {
  'pull-off': 'ISO 4624, ASTM D4541',
  gloss: 'ISO 2813, ASTM D523',
  hardness: 'ASTM D3363, ISO 15184',
  holidays: 'ASTM D5162',
  visual: '',
};

/** As it is recorded, each tagged by its test. */
export const testShapes = {
  'pull-off': { of: z.literal('pull-off'), megapascals: Megapascals, brokeAt: z.enum(breaks).optional() },
  /** At 60 degrees. */
  gloss: { of: z.literal('gloss'), glossUnits: z.number().nonnegative() },
  /** The hardest that leaves no mark. */
  hardness: { of: z.literal('hardness'), pencil: z.enum(pencils) },
  holidays: { of: z.literal('holidays'), found: z.number().int().nonnegative(), volts: Volts.optional() },
  visual: { of: z.literal('visual'), looks: z.array(z.enum(looks)).min(1) },
} as const satisfies Readonly<Record<FilmTestName, z.ZodRawShape>>;

export type FilmTestRead = {
  [Name in FilmTestName]: z.infer<z.ZodObject<(typeof testShapes)[Name]>>;
}[FilmTestName];

/** What a job asks of a coated part, at most one of each. */
export const TestAsked = z.discriminatedUnion('of', [
  z.object({ of: z.literal('wet'), leastMicrometres: MicrometresSchema, mostMicrometres: MicrometresSchema }),
  z.object({ of: z.literal('pull-off'), leastMegapascals: Megapascals }),
  /** One figure is the least. */
  z.object({ of: z.literal('gloss'), leastUnits: z.number(), mostUnits: z.number().optional() }),
  z.object({ of: z.literal('hardness'), least: z.enum(pencils) }),
  /** Tested at no less than these. */
  z.object({ of: z.literal('holidays'), volts: Volts.optional() }),
  z.object({ of: z.literal('visual') }),
]);
export type TestAsked = z.infer<typeof TestAsked>;
export type TestAskedName = TestAsked['of'];

export type TestRead = FilmTestRead | { readonly of: 'wet'; readonly micrometres: readonly Micrometres[] };

/** `open`: it proves neither, as a dolly whose glue gave way, or holidays sought at fewer volts than are asked. */
export type TestFinding = 'passes' | 'fails' | 'open';

/** `asked`: by the job, of the same test; without it only what fails by itself is told. `sprayed`: its last coat was. */
export function judgeTest(read: TestRead, asked: TestAsked | undefined, sprayed: boolean): TestFinding {
  switch (read.of) {
    case 'wet': {
      if (asked?.of !== 'wet') return 'open';
      const { leastMicrometres: least, mostMicrometres: most } = asked;
      return read.micrometres.every((one) => one >= least && one <= most) ? 'passes' : 'fails';
    }
    case 'pull-off': {
      if (asked?.of !== 'pull-off') return 'open';
      if (read.megapascals >= asked.leastMegapascals) return 'passes';
      return read.brokeAt === 'glue' ? 'open' : 'fails';
    }
    case 'gloss': {
      if (asked?.of !== 'gloss') return 'open';
      const { leastUnits, mostUnits = Number.POSITIVE_INFINITY } = asked;
      return read.glossUnits >= leastUnits && read.glossUnits <= mostUnits ? 'passes' : 'fails';
    }
    case 'hardness':
      if (asked?.of !== 'hardness') return 'open';
      return pencils.indexOf(read.pencil) >= pencils.indexOf(asked.least) ? 'passes' : 'fails';
    case 'holidays': {
      // One that was found is there whatever anybody asks, and at any voltage.
      if (read.found > 0) return 'fails';
      if (asked?.of !== 'holidays') return 'open';
      const { volts } = asked;
      return volts === undefined || (read.volts !== undefined && read.volts >= volts) ? 'passes' : 'open';
    }
    case 'visual': {
      if (asked?.of !== 'visual') return 'open';
      return blemishesIn(read.looks, sprayed).length === 0 ? 'passes' : 'fails';
    }
  }
}

/** What of a look counts against it. */
const blemishesIn = (seen: readonly Look[], sprayed: boolean): readonly Look[] =>
  seen.filter((look) => look !== 'good' && !(sprayed && expectedOfSpray.has(look)));

/** Its last coat. */
export function isSprayed({ coats }: { readonly coats: readonly { readonly method: Method }[] }): boolean {
  const last = coats.at(-1);
  return last !== undefined && methodRows[last.method].atomised;
}
