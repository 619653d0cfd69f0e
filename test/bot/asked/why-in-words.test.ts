// Why, in the asker's own words: of a figure, of what a line says of a thing, of an objection, of an older card; and what a word means.

import { describe, expect, it } from 'vitest';
import { shopAsked } from './shop-asked.ts';

const english: readonly (readonly [line: string, tells: RegExp])[] = [
  ['why do i have to wait on 8', /^Why: Flash-off, least until 10:57[\s\S]*Source: Demo Clear/],
  ['why must 8 wait until 10:57', /^Why: Flash-off, least until 10:57/],
  ['how come pot 1 has to be gone by then', /^Why: Pot life ends 1[123]:\d\d/],
  ['9 has been in forever why doesnt the hour count', /^Why: Cure time given at/],
  ['wait why such a long stir', /Mixing time: |^Why: Stirring/],
  [
    'where does the 90 degrees for the oven come from',
    /^Cure: 1 h with the part itself at 90 °C[\s\S]*Source: Demo Clear/,
  ],
  ['why does can 3 need gas', /^Blanket\n.*moist air/],
  ['how did you get 10:57', /^Why: Flash-off, least until 10:57/],
  ["what's the pot life based on", /^Why: Pot life ends/],
  ['how was the ratio worked out on batch 1', /^Why: Ratio off by/],
  ['why dew point 8.6', /^Why: Dew point /],
  ["why can't i coat 8 again", /^coat flange-8: not as things stand[\s\S]*forbids a coat over film/],
  ['why cant 8 go in the oven', /not as things stand[\s\S]*10:57/],
  ['what do you mean by flash off', /^Flash-off\n/],
  ['no idea what spread means', /^Spread\n/],
  ['whats that dew point thing', /^Dew point\n/],
  ['flash off?', /^Flash-off\n/],
];

const spanish: readonly (readonly [line: string, tells: RegExp])[] = [
  ['por qué tengo que esperar con la 8', /^Por qué: Oreo, mínimo hasta 10:57/],
  ['¿Por qué tiene que esperar la 8 hasta las 10:57?', /^Por qué: Oreo, mínimo hasta 10:57/],
  ['y por qué no le corre la hora a la 9', /^Por qué: .*[Cc]urado/],
  ['y eso de que la mezcla 1 se acaba a esa hora de dónde sale', /^Por qué: Fin de la vida de la mezcla/],
  ['cómo que tanto rato batiendo', /Tiempo de mezclado|^Por qué: /],
  ['de dónde salen los 90 grados del horno', /^Curado: 1 h con la propia pieza a 90 °C/],
  ['para qué le echamos gas al bote 3', /^Manto\n.*húmedo/],
  ['cómo sacaste 10:57', /^Por qué: Oreo, mínimo hasta 10:57/],
  ['por qué el punto de rocío 8,6', /^Por qué: Punto de rocío /],
  ['por qué no puedo pintar la 8', /^aplicar flange-8: tal como está, no/],
  ['por qué no me deja meter la 8 al horno', /tal como está, no[\s\S]*10:57/],
  ['qué quieres decir con punto de rocío', /^Punto de rocío\n/],
  ['el oreo qué es', /^Oreo\n/],
  ['explícame lo de la película húmeda', /^Película húmeda\n/],
];

describe.each([
  { language: 'en', questions: english },
  { language: 'es', questions: spanish },
] as const)('why in $language', ({ language, questions }) => {
  it('given each of them, then its answer tells why, and nothing is recorded', async () => {
    const { say } = await shopAsked(language);
    const missed: string[] = [];
    for (const [line, tells] of questions) {
      const { text, recorded, kind } = await say(line);
      if (recorded || kind !== 'reply' || !tells.test(text)) missed.push(`${line} -> ${text}`);
    }
    expect(missed).toEqual([]);
  });
});

describe('why of a card', () => {
  it.each(['says who', 'but why', 'how so'])('given an objection, then %s tells whose rule it is', async (why) => {
    const { say } = await shopAsked('en');
    await say('coat flange-8 1 brush');
    expect((await say(why)).text).toMatch(/^Why not[\s\S]*forbids a coat over film/);
  });

  it('given the steel was read too, then the dew point and how far the steel is from it are two things', async () => {
    const { say } = await shopAsked('en');
    await say('surface 20C');
    expect((await say('why is the dew point so high')).card.title).toMatch(/^Why: Dew point /);
    expect((await say('why so close to the dew point')).card.title).toMatch(/^Why: Above the dew point by/);
  });

  it('given another card since, then a figure that only the older one shows is asked of that one', async () => {
    const { say } = await shopAsked('en');
    await say('plan 3x0.4m2 brush');
    const { card } = await say('plan 3x0.4m2 brush');
    const shown = card.facts.find(({ id }) => id === 'mixed-mass')?.shown ?? '';
    await say('air 23C 51%');
    expect((await say(`how did you get ${shown}`)).card.title).toContain(shown);
  });

  it('given how long a pot lasts was asked, then its why has what it was made from', async () => {
    const { say } = await shopAsked('es');
    await say('cuánto le queda a la mezcla 1');
    expect((await say('por qué tan tarde')).text).toMatch(/^Por qué: Fin de la vida de la mezcla[\s\S]*Leído: /);
  });

  it('given a part that was put on hold before, then why it was tells by whom and when', async () => {
    const { say } = await shopAsked('en');
    await say('hold flange-7 runs');
    await say('air 23C 51%');
    expect((await say('why did you hold flange-7')).text).toMatch(/^Why flange-7 is held[\s\S]*runs/);
  });
});

describe('what is asked for', () => {
  it.each([
    ['en', 'switch my units to us pls'],
    ['en', 'please answer me in spanish from now on'],
    ['es', 'ponme las unidades gringas porfa'],
  ] as const)('given in %s "%s", which is only of how the speaker is told, then it is done', async (language, line) => {
    const { say } = await shopAsked(language);
    expect((await say(line)).recorded).toBe(true);
  });

  it('given it less clearly, then one tap does it and nothing is recorded before', async () => {
    const { say } = await shopAsked('es');
    const { card, recorded } = await say('a partir de ahora contéstame en inglés');
    expect([recorded, card.actions.length]).toEqual([false, 1]);
    expect((await say(card.actions[0]?.line ?? '')).recorded).toBe(true);
  });

  it.each([
    ['en', 'send me the traveler for flange-9 pls', /^Traveller: flange-9/],
    ['en', 'gimme the whole day so far', /^The day/],
    ['en', 'just tell me the next step', /^What now/],
    ['en', 'whats first?', /^What now/],
    ['en', 'ok next?', /^What now/],
    ['en', 'where do I start?', /^What now/],
    ['es', '¿qué hago primero?', /^Qué toca ahora/],
    ['es', 'por dónde empiezo', /^Qué toca ahora/],
    ['en', 'show me where pot 2 is at', /^Batch 2: to be weighed/],
    ['es', 'mándame el traveler de flange-9', /flange-9/],
    ['es', 'resumen del día porfa', /^El día/],
    ['es', 'nomás dime qué sigue', /^Qué toca/],
    ['es', 'enséñame cómo va la 9', /^flange-9: Curado/],
  ] as const)('given in %s "%s", then it is shown', async (language, line, tells) => {
    const { text, recorded } = await (await shopAsked(language)).say(line);
    expect(recorded).toBe(false);
    expect(text).toMatch(tells);
  });
});
