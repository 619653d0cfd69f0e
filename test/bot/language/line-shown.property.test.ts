// A line that is shown is the reader's own to type: in every tongue and in either units it reads back as what the tap says, but
// for the digits that nobody reads and what only a tap can name.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figuresFor } from '../../../bot/language/figures.ts';
import { readLine } from '../../../bot/language/read-line.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { writeLine } from '../../../bot/language/write-line.ts';
import { emergencyFields } from '../../../core/session/session-commands.ts';
import { drawnAt, drawnCommand, drawnStance } from './drawn-commands.ts';
import { threeTongues } from './pseudo-shift.ts';
import { shopAtTen } from './shop-at-ten.ts';
import { shopWith } from './shop-with.ts';

const zone = 'UTC';
const { now } = shopAtTen;

/** What a tap names and nobody types: which entry is taken back, which bells were heard. */
const ofTheTap: ReadonlySet<string> = new Set(['entry', 'despite', 'key', 'also']);

/** But for the digits that are not shown. */
function alike(one: unknown, other: unknown): boolean {
  if (typeof one === 'number' && typeof other === 'number') {
    return Math.abs(one - other) <= Math.max(0.15, Math.abs(one) * 0.06);
  }
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return one === other;
  const keys = [...new Set([...Object.keys(one), ...Object.keys(other)])].filter((key) => !ofTheTap.has(key));
  const [here, there] = [
    new Map<string, unknown>(Object.entries(one)),
    new Map<string, unknown>(Object.entries(other)),
  ];
  return keys.every((key) => alike(here.get(key), there.get(key)));
}

describe('a line as it is shown', () => {
  it.each([
    ['es', 'metric'],
    ['es-US', 'us'],
    ['en', 'us'],
    ['fi', 'metric'],
  ] as const)('given any command told in %s and %s, then what is shown reads as the command', (language, units) => {
    const tongues = language === 'fi' ? threeTongues : shipped;
    const { lineShown } = tongues.wordsIn(language, units);
    const figures = figuresFor({ profile: tongues.profileOf(language, units), units, zone, now });
    fc.assert(
      fc.property(drawnCommand, drawnAt, drawnStance, (command, at, stance) => {
        const line = lineShown(
          writeLine({ command, stance, ...(at !== undefined && { at }) }, { zone, hearing: tongues.every }),
          figures,
        );
        const read = readLine(line, { ...shopWith(command, zone), hearing: tongues.hearingIn(language) });
        expect(read.kind === 'command' && alike(read.command, command), line).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it.each(emergencyFields)('given the shop’s own steps for %s in a third tongue, then they read as shown', (field) => {
    const { lineShown } = threeTongues.wordsIn('fi');
    const figures = figuresFor({ profile: threeTongues.profileOf('fi', 'metric'), units: 'metric', zone, now });
    const line = lineShown(`set emergency ${field} "gate 2"`, figures);
    expect(readLine(line, { ...shopAtTen, hearing: threeTongues.hearingIn('fi') }), line).toMatchObject({
      command: { setting: { name: 'emergency', field } },
    });
  });

  it.each([
    ['pesar 3 A 42oz lata 1', 'es', 'metric', 'weigh 2 A 1190.67997125g can 1', 'pesar 2 A 42oz lata 1'],
    ['a whole figure of a scale', 'es-US', 'us', 'weigh 2 A 1201g can 1', 'pesar 2 A 1201g lata 1'],
    ['a third of an ounce', 'en', 'us', 'weigh 2 A 9.44983333333g', 'weigh 2 A 9.45g'],
    ['a temperature in Bilbao', 'es', 'metric', 'air 21.5C 48.5%', 'aire 21,5C 48,5%'],
    ['a temperature in Houston', 'es-US', 'us', 'cure impeller-7 oven 90C', 'curar impeller-7 horno 194F'],
    ['an hour of today', 'es', 'metric', 'stir 1 at 2026-03-02T09:40 already', 'agitar 1 a las 9:40'],
    ['the same in Houston', 'es-US', 'us', 'stir 1 at 2026-03-02T09:40 already', 'agitar 1 a las 9:40am'],
    ['an afternoon there', 'en', 'us', 'stir 1 at 2026-03-02T13:40 already', 'stir 1 at 1:40pm'],
    ['one o’clock', 'es', 'metric', 'stir 1 at 2026-03-02T01:40 already', 'agitar 1 a la 1:40'],
    ['what happened at no hour', 'en', 'metric', 'stir 1 already', 'stir 1 already'],
    ['an entry taken back', 'en', 'metric', 'undo entry 8 despite 7', 'undo'],
    ['the same in Bilbao', 'es', 'metric', 'undo entry 9 despite 3', 'deshacer'],
    ['a bell that was heard', 'es', 'metric', 'ok can/1/blanket', 'enterado'],
    ['a bell put off', 'en', 'metric', 'snooze 5m can/1/blanket', 'snooze 5m'],
    ['a brief in Bilbao', 'es', 'metric', 'brief 1 in booth spray kari', 'charla 1 en cabina pintan kari'],
    ['a brief in Monterrey', 'es-MX', 'metric', 'brief 1 in booth spray kari', 'plática 1 en cabina pintan kari'],
    ['a coat there', 'es-MX', 'metric', 'coat a-7 1 spray', 'aplicar a-7 1 aspersión'],
    ['a gun washed', 'es', 'metric', 'flush 4 gun isopropyl-alcohol 300mL', 'lavar 4 pistola alcohol 300mL'],
    ['a shift taken there', 'es-MX', 'metric', 'take over', 'recibir turno'],
    ['an hour of another day', 'en', 'metric', 'stir 1 at 2026-03-01T09:40', 'stir 1 at 2026-03-01T09:40'],
    ['what is asked for', 'es', 'metric', 'air {air-temperature}C {humidity}%', 'aire {air-temperature}C {humidity}%'],
    ['somebody’s own words', 'es', 'metric', 'hold a-7 "out of the oven 9.5C"', 'retener a-7 "out of the oven 9.5C"'],
    ['readings of a gauge', 'en', 'us', 'film a-7 25.4 50.8um', 'film a-7 1 2mil'],
    [
      'a filtering',
      'es',
      'metric',
      'filter 1 1um glass-fibre second-vessel',
      'filtrar 1 1um fibra de vidrio otro recipiente',
    ],
  ] as const)('given %s, in %s with %s units, then %s is shown as %s', (_, language, units, line, shown) => {
    const figures = figuresFor({ profile: shipped.profileOf(language, units), units, zone, now });
    expect(shipped.wordsIn(language, units).lineShown(line, figures)).toBe(shown);
  });
});
