// What is told otherwise in another country, and one name for one thing on every card. All invented.

import { expect, it } from 'vitest';
import type { CrewFile } from '../../../core/crew/crew.ts';
import { demoCrew } from '../../core/given.ts';
import { sessionTalk } from './session-talk.ts';

const crewOf = (language: string, units: 'metric' | 'us' = 'metric'): CrewFile => ({
  ...demoCrew,
  people: demoCrew.people.map((person) => ({ ...person, language, units })),
});

async function lastOf(crew: CrewFile, ...lines: readonly string[]) {
  const { say, close } = sessionTalk(':memory:', crew);
  let answer = await say('air 24C 48%');
  for (const line of lines) answer = await say(line);
  close();
  return answer;
}

const pot = ['mix 2.4kg already', 'weigh 1 1200g 1200g'];

it.each([
  ['en-GB', true],
  ['en-US', false],
])('given a brief in %s, then whose rules are quoted is said where others hold', async (language, isSaid) => {
  const { text } = await lastOf(crewOf(language), ...pot, 'brief 1 in booth spray omar');
  expect(text.includes('The rules quoted are of the United States')).toBe(isSaid);
});

it.each([
  ['en', 'kari stands outside in session 2 and has nothing to acknowledge'],
  ['es', 'kari queda fuera de la zona en la sesión 2 y no tiene nada que firmar'],
])(
  'given somebody who was moved out acknowledges in %s, then the answer knows where they stand',
  async (language, said) => {
    const { text } = await lastOf(crewOf(language), ...pot, 'brief 1 in booth spray omar out kari', '@kari: ack');
    expect(text).toContain(said);
  },
);

it('given what a spray coat is called in America, then its way and its finish call it so too', async () => {
  const { say, close } = sessionTalk(':memory:', crewOf('es-US', 'us'));
  for (const line of ['air 24C 48%', ...pot, 'wait 110m']) await say(line);
  await say('filter 1');
  const { lines } = (await say('tap way-spray')).card;
  expect(lines).toContainEqual(expect.stringMatching(/^Aspersión: pasadas ligeras/));
  expect(lines.join()).not.toMatch(/pistola/i);
  close();
});

it('given what runs in English, then a pot is a batch and a can a can', async () => {
  const { card } = await lastOf(crewOf('en'), 'open A lot 7731 5kg exp 12/26 gas', 'mix 2.4kg', 'now');
  expect(card.lines.slice(0, 2)).toEqual([
    expect.stringMatching(/^Batch 2 Demo Clear: /),
    expect.stringMatching(/^Can 1, Part A: /),
  ]);
});

it.each([
  ['en', 'Looked for: 88', 'Found'],
  ['es', 'Buscado: 88', 'Encontrados'],
])('given a search in %s, then what was looked for is not called what was found', async (language, title, label) => {
  const { card } = await lastOf(crewOf(language), 'part rail-2 job 88 3mm', 'find job 88');
  expect([card.title, card.facts[0]?.label]).toEqual([title, label]);
});

it.each([
  ['en-GB', 'earthed', 'ground'],
  ['en-US', 'grounded', 'earth'],
])('given a brief and the steps of the paper in %s, then metal is %s everywhere', async (language, said, never) => {
  const { say, heard, close } = sessionTalk(':memory:', crewOf(language));
  const briefed = ['brief 1 in booth spray omar', 'tap brief-rest'];
  for (const line of ['air 24C 48%', ...pot, 'confirm bonding yes', ...briefed, 'card 1', 'day']) await say(line);
  await say('mix 1kg');
  await say('confirm bonding no');
  await say('weigh 3 500g 500g');
  const text = heard.map((answer) => answer.text).join('\n');
  expect(text.match(new RegExp(said, 'g'))?.length).toBeGreaterThan(2);
  expect(text).not.toContain(never);
  close();
});

it.each([
  ['en', 'Emergency'],
  ['es', 'mergencia'],
])('given nobody has set whom to call in %s, then it has one name wherever it is asked for', async (language, name) => {
  const { say, close } = sessionTalk(':memory:', crewOf(language));
  const { card } = await say('now');
  expect(card.actions.find(({ id }) => id === 'numbers')?.label).toContain(name);
  expect((await say('set emergency call 112')).text).toContain(name);
  for (const line of ['air 24C 48%', ...pot]) await say(line);
  expect((await say('brief 1 in booth spray omar')).text).toContain(
    language === 'en' ? 'Emergency numbers: 112' : 'Teléfonos de emergencia: 112',
  );
  close();
});

it.each([
  ['en-GB', 'metric', 'The day: Mon 2 Mar', 'Thu 1 Jan to Sat 31 Jan', 'Booth: 4 m², 20 m³'],
  ['en-US', 'us', 'The day: Mon Mar 2', 'Thu Jan 1 to Sat Jan 31', 'Booth: 43.1 ft², 706 ft³'],
  ['es-ES', 'metric', 'El día: 2 mar 2026', 'Del 1 ene 2026 al 31 ene 2026', 'Cabina: 4 m², 20 m³'],
] as const)('given %s, then a day and a room are told as the country writes them', async (language, units, ...told) => {
  const { say, close } = sessionTalk(':memory:', crewOf(language, units));
  const titles = [];
  for (const line of ['day', 'from 2026-01-01 to 2026-01-31']) titles.push((await say(line)).card.title);
  const { lines } = (await say('set booth 4m2 20m3')).card;
  expect([...titles, lines[0]]).toEqual(told);
  close();
});

it('given a date of another year, then the year is told with it', async () => {
  const { text } = await lastOf(crewOf('en-US'), '@rosa: fit kari 2027-01-31');
  expect(text).toContain('fit test of kari: until Sun Jan 31 2027');
});

it.each([
  ['en-US', 'us', 'stock', 'open A lot 7731 11lb exp 2026-12 gas'],
  ['en-US', 'us', 'brief 7 in booth spray omar', 'start one with mix 5lb'],
  ['en-US', 'us', 'vent oven 800g 90C', 'say set booth oven 1ft2. Then its velocity: vent oven 800g 194F 394fpm.'],
  [
    'es-US',
    'us',
    'ventilación horno 800g 90C',
    'fijar cabina horno 1ft2. Después su velocidad: ventilación horno 800g 194F',
  ],
  ['es-MX', 'metric', 'ventilación horno 800g 90C', 'fijar cabina horno 0.05m2'],
  ['en-GB', 'metric', 'stock', 'open A lot 7731 5kg exp 2026-12 gas'],
] as const)('given %s with %s units and "%s", then its examples are in them', async (language, units, line, said) => {
  const { say, close } = sessionTalk(':memory:', crewOf(language, units));
  expect((await say(line)).text).toContain(said);
  close();
});

it('given what a session is flushed with, then the ounces of the example are no number of a session', async () => {
  const { text } = await lastOf(crewOf('en-US', 'us'), ...pot, 'brief 1 in booth spray omar', 'help flush');
  expect(text).toContain('flush gun acetone 10 fl oz');
});

it.each([
  ['en-US', 'open A lot 7731 11lb 1.6gal'],
  ['es-US', 'abrir A lote 7731 11lb 1.6gal'],
])('given a can of no known size in %s, then the next one is opened in its units', async (language, said) => {
  const { text } = await lastOf(crewOf(language, 'us'), 'open A lot 7731 2oz gas', 'blanket 1');
  expect(text).toContain(said);
});
