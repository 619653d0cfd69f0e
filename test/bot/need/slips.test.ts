// What may be offered for a slip of the thumb: no word that is known is guessed to be another, and least of all one that calls
// people or signs for something. Our own choice, no source.

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import { nearestVerbs } from '../../../bot/language/suggestions.ts';
import { alarmNamed, alarms } from '../../../core/session/session-commands.ts';
import { shopAtTen, tallerALasDiez } from '../language/shop-at-ten.ts';

const grave: ReadonlySet<string> = new Set([...alarms, 'no-alarm', 'alarm-over', 'ok', 'ack', 'first-shift-done']);

/** The one is near the other in its letters, and far from it in what it does. */
const apart = [
  ['cover', 'uncover'],
  ['tapar', 'destapar'],
  ['spray-on', 'spray-off'],
  ['recibido', 'enterado'],
  ['recogido', 'enterado'],
  ['visado', 'enterado'],
  ['leído', 'enterado'],
  ['llamar', 'fuego'],
  ['esperar', 'espesa'],
  ['espera', 'espesa'],
  ['used', 'set'],
  ['hold', 'help'],
  ['held', 'ok'],
  ['near', 'ok'],
  ['firme', 'fire'],
  ['down', 'drawn'],
] as const;

describe.each([
  ['an English', shopAtTen],
  ['a Spanish', tallerALasDiez],
])('slips in %s crew', (_, shop) => {
  const words = [...shop.hearing.every.verbs].filter(([word]) => !word.includes(' ') && word.length > 1);

  it('given any verb of any tongue, then no alarm, acknowledgement or signature of another row is offered for it', () => {
    const offered = words.flatMap(([word, { row }]) =>
      nearestVerbs(word, shop.hearing)
        .filter((near) => near.row.name !== row.name && grave.has(near.row.name))
        .map(({ printed }) => `${word}: ${printed}`),
    );
    expect(offered).toEqual([]);
  });

  it.each(apart)('given "%s", then "%s" is not offered, nor the other way round', (one, other) => {
    const near = (typed: string) => nearestVerbs(typed, shop.hearing).map(({ printed }) => printed);
    expect(near(one)).not.toContain(other);
    expect(near(other)).not.toContain(one);
  });

  it.each([
    'esperar 1h',
    'fijar emergencia llamar 112',
    'hemos tirado la mezcla 1',
    'recibido 2 latas',
    'coat impeller-7 1 spray fired',
    'coat impeller-7 1 spray firr',
    'lel 0 firr',
    'set emergency ring 112',
  ])('given "%s", which cries nothing, then no tap calls or speaks of an alarm', (line) => {
    const read = readLine(line, shop);
    const taps = read.kind === 'misread' ? read.misread.suggestions : [];
    expect(taps.filter((tap) => /fire|fuego|ojos|eyes|down|caído|espesa|thick/.test(tap))).toEqual([]);
    expect(read.kind === 'command' && alarmNamed(read.command.verb)).toBeFalsy();
  });

  it.each([
    ['firr', 'fire'],
    ['eyse', 'eyes'],
    ['okk', 'ok'],
    ['stri 1', 'stir 1'],
  ])('given the slip "%s" alone, then "%s" is offered', (line, tap) => {
    expect(readLine(line, shop)).toMatchObject({ misread: { suggestions: expect.arrayContaining([tap]) } });
  });
});

it('given somebody who lies there, then the taps that call are offered', () => {
  for (const line of ['kari tirado en el suelo', 'hay alguien tirado en la cabina'])
    expect(readLine(line, tallerALasDiez)).toMatchObject({ misread: { suggestions: ['caído', 'fuego', 'ojos'] } });
});
