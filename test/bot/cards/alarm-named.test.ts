// An alarm is called by what was seen, and of what: on now, on the day's card and where it ends.

import { expect, it } from 'vitest';
import { sessionTalk } from './session-talk.ts';

async function said(...lines: readonly string[]) {
  const talk = sessionTalk();
  for (const line of lines) await talk.say(line);
  return talk;
}

const cries = ['open A lot 7731 5kg gas', 'can 1 swells', 'lel 12% in booth'];

it('given a can that swells and a monitor beyond its limit, then now, the day and the end name both', async () => {
  const { say } = await said(...cries);
  const now = (await say('now')).text;
  expect(now).toContain('ALARM, can 1 swells: since 08:00');
  expect(now).toContain('ALARM, gas beyond its limit, LEL 12 %: since 08:00');
  const over = (await say('alarm over all')).text;
  expect(over).toContain('Over: can 1 swells, gas beyond its limit, LEL 12 %.');
  const day = (await say('day')).text;
  expect(day).toContain('can 1 swells');
  expect(`${now}${over}${day}`).not.toMatch(/pot is heating|needs help/);
});

it.each([
  ['can 7 is swelling', 'en', 'No can 7 is on record: look from afar which can it is.'],
  ['lata 7 hinchada', 'es', 'No consta ninguna lata 7: miren de lejos cuál es.'],
])(
  'given "%s" where no can 7 is known, then it rings with what to do, and says that it is not on record',
  async (line, language, unknown) => {
    const { say } = await said('open A lot 7731 5kg gas', `set language ${language}`);
    const { card, to } = await say(line);
    expect(card.tone).toBe('stop');
    expect(to.length).toBeGreaterThan(1);
    expect(card.lines.join(' ')).toContain(unknown);
    expect(card.lines[0]).toMatch(/Stand off|Apártense|Aléjense/);
  },
);

it('given the can is known, then nothing is said of the record', async () => {
  const { say } = await said('open A lot 7731 5kg gas');
  expect((await say('can 1 is swelling')).text).not.toContain('on record');
});
