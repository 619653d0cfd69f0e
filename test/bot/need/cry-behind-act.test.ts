// A cry behind an act or a reading rings, whatever stands before it; what reads whole stays an act, and calm words stay calm.
// Lines are invented: common practice and our own choice, no source.

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import { alarmNamed } from '../../../core/session/session-commands.ts';
import { shopAtTen, tallerALasDiez } from '../language/shop-at-ten.ts';

const linesOf = (text: string): readonly string[] => text.split('|').map((line) => line.replace(/\s+/g, ' ').trim());

const rings: Readonly<Record<string, string>> = {
  fire: `lel 0 fire in booth! | o2 20.9% fire in booth! | air 24C 48% fire in booth | 24C 48% fire in booth |
    weigh 1 1200g 1201g fire in booth! | mix 2.4kg fire!! | coat impeller-7 spray fire in booth! | flush fire in booth |
    oven 80C fire in oven | aire 24C 48% fuego en la cabina! | lel 0 fuego en la cabina | 24C 48% fuego! |
    pesar 1 1200g 1201g fuego en la cabina! | lavar pistola fuego en la cabina!`,
  emergency: `lel 12 o2 20 help!!! | stir 1 help!!! | dry impeller-7 help!!! | filtrar 1 auxilio | remover 1 socorro`,
  down: `lel 12 kari fainted | coat impeller-7 1 spray kari fainted | lel 0 man down | stir 1 down kari!`,
  breathless: `stir 1 kari can't breathe | pesar 1 1200g 1201g no puedo respirar`,
  spill: `purge can 3 spill on lid | open A lot 7731 5kg gas spill`,
};

const asks = `stir 1 help | 24C 48% help | stir 1 kari hurt | coat impeller-7 1 spray help me | lel 0 down in booth! |
  coat impeller-7 1 spray yesterday fire in booth!`;

const calm = `air 24C 48% no fire today | lel 0 no fire in booth! | lel 0, fire door shut | air 24C 48% down | oven 80C hot |
  air 24C 48% down from 55% | temp impeller-7 80C hot | weigh 1 1200g 1201g eyes on the scale | stir 1 fire drill at 10 |
  weigh 1 1200g 1201g spill wiped up | stir 1 in case of fire | release impeller-7 fire out | mix 2.4kg hot pot tape |
  mix 2.4kg after the fire! | air 24C 48% all good, fire watch done! | coat impeller-7 1 spray 55um great!!! |
  mix 2.4kg lunch at 12, smoke break! | aire 24C 48% sin fuego hoy | filtrar 1 no hay fuego! | mezclar 2,4kg fuera fuego de ayer |
  pesar 1 1200g 1201g todo bien! | set emergency ring 112 fire in booth! | fijar emergencia llamar 112`;

const acts = [
  ['hold impeller-7 fire scale', 'hold'],
  ['hold impeller-7 fire in booth', 'hold'],
  ['near miss 1 fire in booth!', 'near-miss'],
  ['set emergency call 112, fire in booth too', 'set'],
] as const;

describe.each([
  ['an English', shopAtTen],
  ['a Spanish', tallerALasDiez],
])('a cry behind an act, in %s crew', (_, shop) => {
  it.each(Object.entries(rings).flatMap(([verb, text]) => linesOf(text).map((line) => [line, verb])))(
    'given "%s", then %s rings at once',
    (line, verb) => {
      const read = readLine(line, shop);
      expect(read).toMatchObject({ kind: 'command', command: { verb, note: expect.any(String) } });
      expect(read).not.toMatchObject({ command: { unsure: true } });
    },
  );

  it.each(linesOf(asks))('given "%s", then nobody is called, and two taps stand first', (line) => {
    const read = readLine(line, shop);
    expect(read).toMatchObject({ kind: 'misread', misread: { code: 'which-cry' } });
    const taps = read.kind === 'misread' ? read.misread.suggestions.slice(0, 2) : [];
    expect(taps.map((tap) => readLine(tap, shop))).toMatchObject([
      { command: { verb: 'emergency' } },
      { command: { verb: 'no-alarm' } },
    ]);
  });

  it.each(linesOf(calm))('given "%s", then nobody is called or asked', (line) => {
    const read = readLine(line, shop);
    expect(read).not.toMatchObject({ misread: { code: 'which-cry' } });
    expect(read.kind === 'command' && alarmNamed(read.command.verb)).toBeFalsy();
  });
});

it.each(acts)('given "%s", which reads whole, then it stays %s', (line, verb) => {
  expect(readLine(line, shopAtTen)).toMatchObject({ kind: 'command', command: { verb } });
});
