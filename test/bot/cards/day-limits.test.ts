// What counts of a solvent over a day by the law of the crew's country, what is advised beyond it and what stands in where none is
// kept, as the card of a session's air tells it. All invented but for the limits.

import { expect, it, onTestFinished } from 'vitest';
import { shelfWith, sprayOf } from '../../core/session/own-sheets.ts';
import { sessionTalk, sprayCrew, value } from './session-talk.ts';

const briefed = [
  'mix 2.4kg already',
  'weigh 1 1200g 1200g',
  'set booth 4m2',
  'brief 1 in booth spray omar 1kg an hour',
];

async function airOf(solvent: string, zone: string, language: string, ...more: readonly string[]) {
  const people = sprayCrew.people.map((person) => ({ ...person, language }));
  const shelf = shelfWith({ spray: sprayOf(solvent) });
  const talk = sessionTalk(':memory:', { ...sprayCrew, zone, language, people }, undefined, undefined, shelf);
  onTestFinished(talk.close);
  for (const line of ['air 24C 48%', ...briefed, ...more]) await talk.say(line);
  const answer = await talk.say('vent');
  return { text: answer.text, air: Number(value(answer, 'air-for-exposure')) };
}

it.each([
  [
    'America/Chicago',
    'en',
    '2-butoxyethanol: 50 ppm over the day counts (29 CFR 1910.1000, Table Z-1). NIOSH advises 5 ppm, which takes 10 times the air: say set limit butoxyethanol 5 ppm',
  ],
  [
    'Europe/Madrid',
    'en',
    '2-butoxyethanol: 20 ppm over the day counts (Directive 2000/39/EC). NIOSH advises 5 ppm, which takes 4 times the air',
  ],
  [
    'Europe/London',
    'en',
    '2-butoxyethanol: 25 ppm over the day counts (EH40/2005, fourth edition, from memory). NIOSH advises 5 ppm, which takes 5 times the air',
  ],
  [
    'America/Mexico_City',
    'es',
    '2-butoxietanol: cuentan 20 ppm de media al día (NOM-010-STPS-2014, de memoria). NIOSH aconseja 5 ppm, que pide 4 veces más aire: escriba fijar límite butoxyethanol 5 ppm',
  ],
  [
    'America/Toronto',
    'en',
    "2-butoxyethanol: no limit of this country's own is kept. The lowest known stands in, 5 ppm over the day (NIOSH Pocket Guide). Ask whoever sees to health here",
  ],
  [
    'Europe/Madrid',
    'es',
    '2-butoxietanol: cuentan 20 ppm de media al día (Directiva 2000/39/CE). NIOSH aconseja 5 ppm',
  ],
])(
  'given 2-butoxyethanol sprayed in %s, told in %s, then whose limit counts and what is advised are said',
  async (...of) => {
    const [zone, language, said] = of;
    expect((await airOf('butoxyethanol', zone, language)).text).toContain(said);
  },
);

it('given advice that the crew makes its limit, then it takes ten times the air; a softer one than the law changes nothing', async () => {
  const law = await airOf('butoxyethanol', 'America/Chicago', 'en');
  const advice = await airOf('butoxyethanol', 'America/Chicago', 'en', '@rosa: set limit 2-butoxyethanol 5ppm');
  const softer = await airOf('butoxyethanol', 'America/Chicago', 'en', '@rosa: set limit 2-butoxyethanol 400ppm');
  expect(advice.air / law.air).toBeCloseTo(10, 6);
  expect(advice.text).toContain('2-butoxyethanol: 5 ppm over the day counts, as set here');
  expect(softer.air).toBe(law.air);
});

it('given a solvent of which no country’s limit is kept, then it is left out until one is set', async () => {
  expect((await airOf('turpentine', 'Europe/Madrid', 'en')).text).toContain('no published figure was read: turpentine');
  const { text, air } = await airOf('turpentine', 'Europe/Madrid', 'en', '@rosa: set limit turpentine 100ppm');
  expect(air).toBeGreaterThan(0);
  expect(text).toContain('turpentine: 100 ppm over the day counts, as set here');
});

it.each([
  ['en', 'Lower explosive limit from the old table alone (29 CFR 1910.94, Table G-11)'],
  ['es', 'Límite inferior de explosividad solo de la tabla antigua'],
])('given a solvent whose explosive limit no newer table gives, in %s, then it is told', async (language, said) => {
  expect((await airOf('mineral-spirits', 'America/Chicago', language)).text).toContain(said);
  expect((await airOf('propyl-acetate', 'America/Chicago', language)).text).not.toContain(said);
});

it('given a zone that names no place, then the air card asks under whose law they work, until it is set', async () => {
  const asked = 'Nothing tells under whose law this crew works';
  expect((await airOf('butyl-acetate', 'UTC', 'en')).text).toContain(asked);
  expect((await airOf('butyl-acetate', 'UTC', 'en', '@rosa: set law us')).text).not.toContain(asked);
  expect((await airOf('butyl-acetate', 'America/Chicago', 'en')).text).not.toContain(asked);
});

it('given a crew in Madrid that says it works under another law, then that law counts', async () => {
  expect((await airOf('butyl-acetate', 'Europe/Madrid', 'en')).text).toContain('50 ppm over the day counts');
  const { text } = await airOf('butyl-acetate', 'Europe/Madrid', 'en', '@rosa: set law uk');
  expect(text).toContain('150 ppm over the day counts (EH40/2005');
});
