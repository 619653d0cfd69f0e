// The Spanish of the vocabulary: every row has its words and an example that reads as the row; both languages are
// understood on any line, with accents or without.

import { describe, expect, it } from 'vitest';
import { meaningOf } from '../../../bot/language/hearing.ts';
import { readLine } from '../../../bot/language/read-line.ts';
import type { Reading } from '../../../bot/language/reading.ts';
import { englishVerbs } from '../../../bot/language/tongues/english/verbs.ts';
import { spanishVerbs } from '../../../bot/language/tongues/spanish/verbs.ts';
import { withoutAccents } from '../../../bot/language/typed/without-accents.ts';
import { verbNamed } from '../../../bot/language/verbs-typed.ts';
import { tallerALasDiez } from './shop-at-ten.ts';
import { spanishLines } from './spanish-lines.ts';
import { spanishSpokenLines } from './spanish-spoken-lines.ts';
import { vocabularyNames } from './vocabulary-names.ts';

const shop = { ...tallerALasDiez, parts: [...tallerALasDiez.parts, 'impulsor-7'] };

function nameOf(reading: Reading): string {
  if (reading.kind === 'command') return reading.command.verb;
  return reading.kind === 'question' ? reading.question.ask : `${reading.kind}: ${JSON.stringify(reading)}`;
}

describe('the Spanish words', () => {
  it.each(vocabularyNames)('given the Spanish example of %s, then it reads as that', (name) => {
    expect(nameOf(readLine(spanishVerbs[name].example, shop))).toBe(name);
  });

  it.each(vocabularyNames)(
    'given the rest of the Spanish example after any Spanish word for %s, then it reads as that',
    (name) => {
      const { words, example } = spanishVerbs[name];
      const printed = words[0] ?? '';
      const rest = withoutAccents(example).slice(printed.length);
      // The example of the traveller begins with three words.
      if (!withoutAccents(example).startsWith(printed)) return;
      // `caliente` alone may be the weather, `ojo` a warning.
      const said = words.filter((word) => !['caliente', 'calienta', 'hierve', 'ojo'].includes(word));
      for (const word of said) expect(nameOf(readLine(`${word}${rest}`, shop)), word).toBe(name);
    },
  );

  it.each(vocabularyNames)('given any Spanish word for %s, then no other row has it', (name) => {
    for (const word of spanishVerbs[name].words) {
      expect(verbNamed(word, shop.hearing)?.row.name).toBe(name);
      expect(verbNamed(withoutAccents(word), shop.hearing)?.row.name).toBe(name);
    }
  });

  it('given any English word that starts a line, then it does not mean another one in Spanish', () => {
    const taken = vocabularyNames
      .flatMap((name) => englishVerbs[name].words)
      .filter((word) => meaningOf(word, shop.hearing) !== word);
    expect(taken).toEqual([]);
  });

  it('given the Spanish corpus without its accents, then every line says the same', () => {
    const meaning = (line: string): unknown => ({ ...readLine(line, tallerALasDiez), line: '' });
    const typed = [...spanishLines, ...spanishSpokenLines];
    const plain = typed.filter(({ expected }) => expected.kind !== 'misread').map(({ line }) => line);
    const accented = plain.filter((line) => withoutAccents(line) !== line && !/["“]/.test(line));
    expect(accented.length).toBeGreaterThan(8);
    for (const line of accented) {
      // What stands behind these is kept as it was typed.
      if (/retener|devolver|concesi|corregir|permiso|desechar|casi|buscar|por que/.test(line)) continue;
      expect(meaning(withoutAccents(line)), line).toEqual(meaning(line));
    }
  });

  it.each([
    ['aire 24C 48%', 'air'],
    ['pesa 1 1201g 1198g', 'weigh'],
    ['filtra 1', 'filter'],
    ['agrega 1 b 14g', 'add'],
    ['aplica impulsor-7 1 pistola', 'coat'],
    ['saca impulsor-7', 'out'],
    ['libera impulsor-7', 'release'],
    ['desecha 3 gelificada', 'discard'],
    ['ajustes ritmo 4m2/h', 'set'],
    ['mezclar 2,4kg', 'mix'],
    ['aplicar impulsor-7 1 pistola', 'coat'],
    ['superficie impulsor-7 19C', 'surface'],
    ['pieza impulsor-7 0,8m2', 'part'],
    ['abrir A lote 7731 5kg gas', 'open'],
    ['abrir A lote 7731 5kg entera', 'open'],
    ['pesar 1 a 1201g lata 1 2', 'weigh'],
    ['revisar 3', 'check'],
    ['preagitar 3', 'prestir'],
    ['inertizar', 'blanket'],
    ['noche 16C', 'night'],
    ['extracción sí (sin medir)', 'fan'],
    ['extracción no', 'fan'],
    ['suministrado no', 'supplied'],
    ['leída kari', 'ack'],
    ['cerca lia queda', 'near'],
    ['cerca lia pinta', 'near'],
    ['lavar recipientes', 'flush'],
    ['relevo kari', 'handover'],
    ['tomar relevo', 'takeover'],
    ['entregar turno kari', 'handover'],
    ['entrega de turno kari', 'handover'],
    ['recibir turno', 'takeover'],
    ['hoja viajera impulsor-7', 'traveller'],
    ['abanico sí 120ft/min', 'fan'],
    ['preparar impulsor-7 chorreado sa2.5 60um', 'prep'],
    ['fijar límite cov 660lb/mes', 'set'],
    ['fijar cabina horno 40ft2', 'set'],
    ['fijar emergencia teléfono 112 y puerta 3', 'set'],
    ['fijar emergencia caído no entrar sin aire', 'set'],
    ['fijar cabina horno 4m2', 'set'],
    ['fijar ritmo 4m2/h', 'set'],
    ['fijar límite-cov 300kg/mes', 'set'],
    ['fijar límite cov 300kg/mes', 'set'],
    ['agitar lata 3', 'prestir'],
    ['gas puesto', 'blanket'],
    ['pieza impulsor-8 fundición 12mm; pieza válvula-4 acero 6mm', 'part'],
    ['copia viernes.sqlite', 'backup'],
    ['sonda impulsor-7 90C a las 9:40', 'temp'],
  ])('given the line "%s", which the cards tell a Spanish reader to say, then it reads', (line, name) => {
    expect(nameOf(readLine(line, shop))).toBe(name);
  });

  it('given the words, then none promises anything', () => {
    const words = Object.values(spanishVerbs).flatMap((row) => row.words);
    expect(words.filter((word) => /segur|apto|libre|vale|listo/.test(word))).toEqual([]);
  });
});
