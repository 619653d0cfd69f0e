// Every word of the trade that stands on a card can be asked about, in each tongue; what is no such word is left to others.

import { describe, expect, it } from 'vitest';
import { type FactId, factUnits } from '../../../bot/cards/fact-ids.ts';
import { readLine } from '../../../bot/language/read-line.ts';
import { glossaryRows, type TermRow } from '../../../bot/language/tongues/glossary.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { withoutAccents } from '../../../bot/language/typed/without-accents.ts';
import { isOwnKey } from '../../../core/own-key.ts';
import { talkAfter } from '../cards/session-talk.ts';
import { shopAtTen, tallerALasDiez } from './shop-at-ten.ts';

/** What everybody knows, trade or not. */
const ordinary = {
  en: `above add after again against and answered by cans count done each estimate exact film for from full gas give given
    gives handled happened hour in late least left load lowest middle most needed off on open opened over part parts per read
    so stays the time to total until used wanted weighed weight with within volume by-the crew customer dust at how many
    answer share logged minutes unanswered found planned mixed gun room rings it be may is all breathing under of can job
    oven coatings sprayed`,
  es: `abierta abiertas al cada como con contra cuenta da de del desde dentro el en estimado exceso fin hasta hora la las
    lo los mas medio minima minimo necesidad no para parte piezas pieza por puede que quedan sobre son se segun sin su
    tiempo total volumen peso cantidad respondidos encontrado encontrados planeado añadir anadir aplicadas pesada pesadas
    transcurrido transcurrida requerida requerido le gas suma horno oxigeno restante maximo completa aperturas paso tocaba recubierta
    recubiertas disponible carga contestar previsto recubrimientos gastados respuesta mediana pulverizacion aspersion`,
} as const;

const factIds = Object.keys(factUnits).filter((id): id is FactId => isOwnKey(factUnits, id));
const rows: Readonly<Record<string, TermRow>> = glossaryRows;

it('given any figure of a card, then a word of the glossary stands for it', () => {
  const told = new Set(Object.values(rows).flatMap(({ facts = [] }) => facts));
  expect(factIds.filter((id) => !told.has(id))).toEqual([]);
});

describe.each([
  { code: 'en' as const, asks: 'what is', shop: shopAtTen },
  { code: 'es' as const, asks: 'qué es', shop: tallerALasDiez },
])('the words of $code', ({ code, asks, shop }) => {
  const words = shipped.wordsIn(code, 'metric');

  it('given any word on the labels of figures, then it is ordinary or part of one that can be asked', () => {
    const known = new Set(
      `${ordinary[code]} ${Object.values(words.termNames).join(' ')}`
        .split(/[\s,()-]+/)
        .map((word) => withoutAccents(word.toLowerCase())),
    );
    const asked = factIds.flatMap((id) => words.facts[id].split(/[\s,()-]+/));
    const unknown = new Set(asked.map((word) => withoutAccents(word.toLowerCase())).filter((word) => word.length > 2));
    expect([...unknown].filter((word) => !known.has(word))).toEqual([]);
  });

  it('given any name of the glossary, when it is asked, then it reads as that word', () => {
    for (const [term, names] of Object.entries(words.termNames)) {
      for (const name of names.split(', ')) {
        expect(readLine(`${asks} ${name}?`, shop), name).toMatchObject({ question: { ask: 'what-is', term } });
      }
    }
  });
});

it.each(['what is at risk', 'what is late', "what's left", 'what is that smoke', 'what is on fire', 'what’s burning'])(
  'given %s, then the glossary leaves it alone',
  (line) => {
    expect(readLine(line, shopAtTen)).not.toMatchObject({ question: { ask: 'what-is' } });
  },
);

it('given a word that is near to one, then that is a tap', () => {
  expect(readLine('what is dew pint', shopAtTen)).toMatchObject({
    kind: 'misread',
    misread: { suggestions: expect.arrayContaining(['define dew point']) },
  });
});

it('given a term that a standard has, then the answer says what it means, what the bot does, its field and the standard', async () => {
  const { say } = await talkAfter();
  expect((await say('what is flash-off')).card.lines).toEqual([
    'The wait after a coat in which solvent leaves the film, before heat or the next coat.',
    "Here: It waits for the sheet's least and for somebody to say that it is dry.",
    'In a sheet: flashOff.',
    'Standard: ISO 4618. The words are ours.',
  ]);
});
