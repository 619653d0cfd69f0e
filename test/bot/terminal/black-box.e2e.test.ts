import { expect, test } from 'vitest';
import { chat, crewOfThree, factsOf, file, repliesIn, ringsIn } from './chat.ts';

const weighed = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1201g 1198g'];

test('blank lines and comments get no answer; every other line exactly one, named by its line', async () => {
  const { answers, code } = await chat(['', 'air 24C 48%', '# a comment', '   ', 'frobnicate', 'mix', 'help', 'now']);
  expect(code).toBe(0);
  expect(answers.map((answer) => [answer.in, answer.kind])).toEqual([
    ['2', 'reply'],
    ['5', 'misread'],
    ['6', 'misread'],
    ['7', 'reply'],
    ['8', 'reply'],
  ]);
});

test('only what was recorded says recorded', async () => {
  const { answers } = await chat([...weighed, 'filter 1', 'mix', 'day', 'wait 1m', 'stop 1']);
  expect(answers.map(({ recorded }) => recorded)).toEqual([true, true, true, false, false, false, false, true]);
});

test('what rings comes after the answer to the line, by due time, then key, and is pinged and recorded', async () => {
  const ran = await chat([...weighed, 'wait 5h']);
  const after = ran.answers.slice(4);
  expect(after.every(({ kind, recorded }) => kind === 'reminder' && recorded)).toBe(true);
  expect(after.length).toBeGreaterThan(3);
  const order = after.map(({ at, key }) => `${at} ${key}`);
  expect(order).toEqual(order.toSorted());
  expect(after[0]).toMatchObject({ key: 'batch/1/stir-done', in: null, as: null, to: ['lead'] });
  expect(after[0]?.card.ping).toEqual(['lead']);
});

test('values stand unrounded in base units, the text is the whole card, and what rings next is on it', async () => {
  const { answers } = await chat(weighed);
  const card = answers[2]?.card;
  expect(factsOf(answers[2])['ratio-error']).toBe(1198 / 1201 / 1 - 1);
  expect(card?.facts.find(({ id }) => id === 'part-a')?.unit).toBe('g');
  // Pot life at 24 degC: 360 min at 20, 270 at 25: 288 (the demo sheet).
  expect(card?.next).toContainEqual({ key: 'batch/1/pot-half', dueAt: '2026-03-02T10:24:00Z' });
  expect(card?.next).toContainEqual({ key: 'batch/1/stir-done', dueAt: '2026-03-02T09:42:00Z' });
  for (const { text, card: shown } of answers) {
    for (const piece of [shown.title, ...shown.lines, ...shown.facts.map(({ label }) => label)]) {
      expect(text).toContain(piece);
    }
  }
});

test('@kari: speaks as Kari, --as names who speaks otherwise, and capitals do not matter', async () => {
  const crew = file('crew.json', crewOfThree);
  const lines = ['air 24C 48%', '@kari: mix 1kg', '@KARI: weigh 1 500g 500g', 'wait 2h'];
  const ran = await chat(lines, { flags: ['--crew', crew, '--as', 'ada'] });
  expect(repliesIn(ran).map(({ as }) => as)).toEqual(['ada', 'kari', 'kari', 'ada']);
  const stirDone = ran.answers.filter(({ key }) => key?.startsWith('batch/1/stir-done'));
  // Unanswered, it goes on after 10 minutes to the lead, then to the supervisor.
  expect(stirDone.map(({ to }) => to)).toEqual([['kari'], ['ada']]);
});

test('tap presses an action of the last card that this speaker saw, not of somebody else’s', async () => {
  const crew = file('crew.json', crewOfThree);
  const lines = ['air 24C 48%', '@kari: mix 1kg', '@kari: weigh 1 500g 500g', 'now', '@kari: tap stop', 'tap stop'];
  const { answers } = await chat(lines, { flags: ['--crew', crew, '--as', 'ada'] });
  expect(answers.at(4)).toMatchObject({ kind: 'reply', as: 'kari', recorded: true });
  expect(answers.at(5)).toMatchObject({ kind: 'misread', code: 'no-such-tap', as: 'ada', recorded: false });
});

test.each([
  ['wait 90m', '09:30'],
  ['wait 1h30m', '09:30'],
  ['wait 2h', '10:00'],
  ['wait until 14:30', '14:30'],
  ['wait until 2026-03-02T11:15', '11:15'],
])('%s moves the virtual clock to %s', async (line, time) => {
  const { answers } = await chat([line, 'air 24C 48%']);
  expect(answers.at(1)?.at).toBe(`2026-03-02T${time}:00Z`);
});

test('wait until a time of day that is past goes to the next day, ringing on the way', async () => {
  const ran = await chat([...weighed, 'wait until 07:00', 'now']);
  expect(ran.answers.at(-1)?.at).toBe('2026-03-03T07:00:00Z');
  expect(ringsIn(ran)).toContain('17:00 crew/digest/2026-03-02');
});

test('a US reader sees pounds, ounces and degrees Fahrenheit; the values stay in base units', async () => {
  const crew = file('crew.json', crewOfThree);
  const { answers } = await chat(['air 24C 48%', 'mix 2.4kg'], { flags: ['--crew', crew, '--as', 'bo'] });
  // 24 degC is 75.2 degF; 1200 g is 2 lb 10.3 oz (453.59237 g to the pound).
  expect(answers[0]?.text).toContain('75 °F');
  expect(answers[1]?.text).toContain('2 lb 10.3 oz');
  expect(factsOf(answers[1])).toMatchObject({ 'part-a': 1200, 'air-temperature': 24 });
});

test('what was typed in pounds or Fahrenheit is taken as such', async () => {
  const { answers } = await chat(['air 75.2F 48%', 'mix 2lb']);
  expect(factsOf(answers[0])['air-temperature']).toBeCloseTo(24, 9);
  expect(factsOf(answers[1])['part-a']).toBeCloseTo(453.59237, 6);
});

test('with --zone the clock is local; a night of daylight saving takes what it takes', async () => {
  // Madrid, 29 March 2026: 02:00 becomes 03:00. 102 minutes from 01:00 end at 03:42.
  const spring = await chat([...weighed, 'wait until 04:00'], {
    clock: '2026-03-29T01:00',
    flags: ['--zone', 'Europe/Madrid'],
  });
  expect(spring.answers[0]?.at).toBe('2026-03-29T01:00:00+01:00');
  expect(spring.answers.find(({ key }) => key === 'batch/1/stir-done')?.at).toBe('2026-03-29T03:42:00+02:00');
  // 25 October 2026: 03:00 becomes 02:00. 102 minutes from 01:30 end at 02:12, the second time round.
  const autumn = await chat([...weighed, 'wait until 04:00', 'wait until 18:00'], {
    clock: '2026-10-25T01:30',
    flags: ['--zone', 'Europe/Madrid'],
  });
  expect(autumn.answers.find(({ key }) => key === 'batch/1/stir-done')?.at).toBe('2026-10-25T02:12:00+01:00');
  expect(autumn.answers.find(({ kind }) => kind === 'digest')?.at).toBe('2026-10-25T17:00:00+01:00');
});

test('the day comes by itself, at the crew’s hour, to the supervisor; an idle day rings nothing', async () => {
  const crew = file('crew.json', { ...crewOfThree, digestHour: 15 });
  const ran = await chat(['air 24C 48%', 'wait until 2026-03-05T08:00'], { flags: ['--crew', crew, '--as', 'ada'] });
  const digests = ran.answers.filter(({ kind }) => kind === 'digest');
  expect(digests.map(({ at, to, key }) => [at, to, key])).toEqual([
    ['2026-03-02T15:00:00Z', ['bo'], 'crew/digest/2026-03-02'],
  ]);
});

test('with --json, standard output holds JSON only, and logs go to standard error', async () => {
  const sheets = file('broken.json', '{ no');
  const ran = await chat(weighed, { flags: ['--sheets', sheets.slice(0, sheets.lastIndexOf('/'))] });
  expect(ran.answers).toHaveLength(3);
  expect(ran.err).toContain('sheet-fault');
  for (const line of ran.err.split('\n').filter(Boolean)) expect(() => JSON.parse(line)).not.toThrow();
});
