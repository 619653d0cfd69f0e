// In the European Union nobody works with diisocyanates untrained: a sheet that names isocyanates asks for the date of each, of a
// crew that keeps no dates too. Invented but for the law.

import { expect, it, onTestFinished } from 'vitest';
import { shelfWith } from '../../core/session/own-sheets.ts';
import { sessionTalk, sprayCrew } from './session-talk.ts';

const named = { named: [{ kind: 'isocyanates' }], source: 'invented' };
const silanes = { named: [{ kind: 'silanes' }], source: 'invented' };
const lines = [
  ...['air 24C 48%', 'mix 2.4kg already', 'weigh 1 1200g 1200g', 'wait 110m', 'filter 1', 'set booth 4m2'],
  ...['brief 1 in booth spray omar', 'ack', 'fan on 0.6m/s', 'supplied yes'],
];

async function talkIn(zone: string, sensitisers: object, language = 'en', more: readonly string[] = []) {
  const people = sprayCrew.people.map((person) => ({ ...person, language }));
  const crew = { ...sprayCrew, zone, language, people };
  const talk = sessionTalk(':memory:', crew, undefined, undefined, shelfWith({ sensitisers }));
  onTestFinished(talk.close);
  for (const line of [...lines, ...more]) await talk.say(line);
  return talk;
}

it.each([
  ['en', 'spray training of omar', 'annex XVII, entry 74'],
  ['es', 'formación de pintor de omar', 'anexo XVII, entrada 74'],
])(
  'given a crew in Madrid and isocyanates, in %s, then spraying asks for the training of who sprays, and whose law that is',
  async (...of) => {
    const [language, whose, law] = of;
    const { say } = await talkIn('Europe/Madrid', named, language);
    const { text, card } = await say('spray on');
    expect(text).toContain(whose);
    expect(text).toContain(law);
    expect(card.actions.map(({ id }) => id)).toEqual(expect.arrayContaining(['dated-training', 'go-on']));
  },
);

it('given the date is told, or a supervisor goes on knowing it, then it is not asked again', async () => {
  const dated = await talkIn('Europe/Madrid', named, 'en', ['@rosa: training omar 2027-01-31']);
  expect((await dated.say('spray on')).text).toContain('spraying starts');
  const knowing = await talkIn('Europe/Madrid', named);
  await knowing.say('@rosa: spray on permit trained on Friday, paper to come');
  expect((await knowing.say('coat new rail-1 1 spray')).text).not.toContain('entry 74');
});

it('given the training has run out, then it objects as any other', async () => {
  const { say } = await talkIn('Europe/Madrid', named, 'en', ['@rosa: training omar 2026-01-31']);
  expect((await say('spray on')).text).toContain('Out of date: spray training of omar');
});

it.each([
  ['Europe/Madrid', silanes],
  ['America/Chicago', named],
  ['UTC', named],
])('given %s and %j, then nothing is asked of a crew that keeps no dates', async (zone, sensitisers) => {
  const { say } = await talkIn(zone, sensitisers);
  expect((await say('spray on')).text).not.toContain('entry 74');
});
