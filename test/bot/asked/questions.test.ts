// Questions in people's own words, in both tongues: each is answered with the fact that was asked for, nothing is recorded, and
// no tap of the answer records anything. What asks the listener to do something, or only states it, is no question.

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import { isStateQuestion } from '../../../core/verbs/question-rows.ts';
import { shopAtTen, tallerALasDiez } from '../language/shop-at-ten.ts';
import { englishQuestions } from './english-questions.ts';
import { shopAsked } from './shop-asked.ts';
import { spanishQuestions } from './spanish-questions.ts';

describe.each([
  { language: 'en', questions: englishQuestions },
  { language: 'es', questions: spanishQuestions },
] as const)('questions in $language', ({ language, questions }) => {
  it('given each of them, then its answer tells what was asked', async () => {
    const { say } = await shopAsked(language);
    const missed: string[] = [];
    for (const [line, tells] of questions) {
      const { text, recorded, kind } = await say(line);
      if (recorded || kind !== 'reply' || !tells.test(text)) missed.push(`${line} -> ${text}`);
    }
    expect(missed).toEqual([]);
  });

  it('given each of them, then no tap of the answer records at once', async () => {
    const { say } = await shopAsked(language);
    const recording: string[] = [];
    for (const [line] of questions) {
      const { card } = await say(line);
      // Whoever asks what to do is shown it.
      if (
        /^(what's next|what's left to do|what should I do|qué sigue|qué le falta|y ora qué hago|qué hay que hacer|¿qué hago)/.test(
          line,
        )
      )
        continue;
      for (const tap of card.actions.filter(({ line: said }) => !said.includes('{')))
        if ((await say(tap.line)).recorded) recording.push(`${line} -> ${tap.line}`);
    }
    expect(recording).toEqual([]);
  });
});

describe('what is no question about the state', () => {
  const answered = (line: string, shop = shopAtTen): boolean => {
    const read = readLine(line, shop);
    return read.kind === 'question' && isStateQuestion(read.question.ask);
  };

  it.each([
    "coat 7 when it's dry",
    'can you start a mix of 2 kilos?',
    'air was 24 when I looked',
    'skin temp of flange 7: 21 degrees',
    'did 7 with the brush',
    "haven't put any B in yet",
    'why 09:42',
    'is everyone ok',
    'the moon is made of cheese and so am I',
  ])('given %s, then it is not answered as one', (line) => expect(answered(line)).toBe(false));

  it.each([
    'puedes empezar una mezcla de 2 kilos?',
    'pinto la 7 cuando esté seca',
    'la 7 ya está seca',
    'a ver el aire está a 23 y 50',
    'estamos a 22 grados y 45 de humedad',
    'quiero practicar un rato, que estoy oxidado',
    'por qué 09:42',
  ])('given %s, then it is not answered as one', (line) => expect(answered(line, tallerALasDiez)).toBe(false));

  it.each(['is anyone down?', 'is pot 1 on fire?', 'who is hurt', 'fire in the booth, where is the extinguisher?'])(
    'given %s, then no question hides the need in it',
    (line) => expect(answered(line)).toBe(false),
  );
});

describe('what is asked and what is told in the same words', () => {
  it.each([
    ['en', 'got enough A for another 2 kilo mix'],
    ['es', 'nos llega el A pa otros dos kilos'],
  ] as const)('given in %s "%s", then no mix is taken from it, and no tap takes one', async (language, line) => {
    const { say } = await shopAsked(language);
    const { card, recorded } = await say(line);
    expect([recorded, card.actions.filter(({ line: tap }) => tap.startsWith('mix'))]).toEqual([false, []]);
  });

  it('given a line that asks why with one letter, then nothing is put on hold', async () => {
    const { say } = await shopAsked('en');
    expect((await say('y is 9 still on hold in there')).recorded).toBe(false);
  });

  it('given a Spanish line without marks that says what others did, then a tap says it and nothing is recorded before', async () => {
    const { say } = await shopAsked('es');
    const { card, recorded } = await say('le pusieron gas a la lata 3');
    expect([recorded, card.actions.map(({ line }) => line)]).toEqual([false, ['blanket 3']]);
  });

  it('given what a part can have done to it, then that is a tap, since nobody has done it', async () => {
    const { say } = await shopAsked('en');
    const { card, recorded } = await say('flange-7 can get a brush coat from pot 1');
    expect([recorded, card.actions.map(({ line }) => line)]).toEqual([false, ['coat flange-7 1 brush']]);
  });

  it.each(['guessing its about 25 in here', "8 isn't there yet, still grabs the glove"])(
    'given the hedge or denial %s, then no tap records it',
    async (line) => {
      const { say } = await shopAsked('en');
      const { card, recorded } = await say(line);
      expect([recorded, card.actions.filter(({ line: tap }) => /^(?:air|dry)/.test(tap))]).toEqual([false, []]);
    },
  );
});
