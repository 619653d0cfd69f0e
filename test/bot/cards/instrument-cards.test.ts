// What the cards say of instruments: which one a reading was made with, how its check stands, and whom a failed one calls.

import { expect, it } from 'vitest';
import { sessionTalk, sprayCrew } from './session-talk.ts';

const people = [
  ...sprayCrew.people,
  { name: 'bea', role: 'supervisor' as const, language: 'en', units: 'metric' as const },
];
const cured = [
  ...['instrument gauge-1 gauge due 2026-12-01', 'instrument gauge-2 gauge due 2026-03-01'],
  ...[
    'air 24C 48%',
    'mix 2.4kg',
    'weigh 1 1200g 1200g',
    'wait 102m',
    'filter 1',
    'coat new a1 new a2 1 brush',
    'wait 12m',
  ],
  ...[
    'dry a1 a2',
    'cure a1 a2 oven 90C',
    'temp a1 90C',
    'temp a2 90C',
    'wait 60m',
    'temp a1 90C',
    'temp a2 90C',
    'out a1 a2',
  ],
];

async function said(...lines: readonly string[]) {
  const talk = sessionTalk(':memory:', { ...sprayCrew, people });
  for (const line of lines) await talk.say(line);
  return talk;
}

it('given a reading, then its card names what it was made with, with a tap for the other, and calls nobody for an overdue check', async () => {
  const { say } = await said(...cured);
  const none = (await say('film a1 12 12 13um')).card;
  expect(none.lines).toContain('With which instrument was not said.');
  const taps = none.actions.filter(({ id }) => id.startsWith('instrument-'));
  expect(taps.map(({ line }) => line)).toEqual(['amend a1 film with gauge-1 ""', 'amend a1 film with gauge-2 ""']);
  await say(taps[1]?.line ?? '');
  const { card } = await say('@kari: film a2 12 12 13um');
  expect(card.lines.join('\n')).toMatch(/Read with gauge-2, whose check was due Sun 1 Mar: marked/);
  expect(card.actions.filter(({ id }) => id.startsWith('instrument-')).map(({ line }) => line)).toEqual([
    'amend a2 film with gauge-1 ""',
  ]);
  expect(card.ping).toEqual([]);
});

it('given a check failed, then its card names who is held and who has left, calls lead and supervisor, and the list says so', async () => {
  const { say } = await said(
    ...cured,
    ...['film a1 12 12 13um with gauge-2', 'film a2 12 12 13um with gauge-2', 'release a1', 'shipped a1', 'wait 1m'],
  );
  const { card } = await say('@kari: checked gauge-2 failed');
  const text = card.lines.join('\n');
  expect(card.title).toBe('gauge-2: check FAILED');
  expect(text).toMatch(
    /^Taken as: calibrated gauge-2 failed\nLeft the shop before this was known: a1\. Tell the customer/,
  );
  expect(text).toContain('On hold, since they rest on it: a1, a2.');
  expect(card.ping).toEqual(expect.arrayContaining(['omar', 'bea']));
  expect((await say('instruments')).card.lines.join('\n')).toMatch(/gauge-2, dry film gauge · checked .*, FAILED/);
  const trace = (await say('trace a1')).card.lines.join('\n');
  expect(trace).toMatch(/dry film 12 µm.*with gauge-2 \(no check on record, check holds until Sun 1 Mar\)/);
  expect(trace).toContain('failed its check');
});

it('given a crew keeps no instruments, then its cards say nothing of any', async () => {
  const { say } = await said(...cured.slice(2));
  const { card } = await say('film a1 12 12 13um');
  expect(card.lines.join('\n')).not.toMatch(/instrument|Read with/);
  expect((await say('instruments')).card.lines.join('\n')).toContain('No instruments are kept');
});

it('given another kind was named, or nobody said what a new one is, then there is a tap for each that may be meant', async () => {
  const { say } = await said(...cured, 'instrument scale-1 scale');
  const other = (await say('film a1 12 12 13um with scale-1')).card;
  expect(other.actions.map(({ line }) => line)).toEqual([
    'film a1 12 12 13um with gauge-1',
    'film a1 12 12 13um with gauge-2',
  ]);
  const fresh = (await say('instrument spark-1')).card;
  expect(fresh.actions.map(({ line }) => line)).toContain('instrument spark-1 holiday-tester');
  await say('instrument spark-1 holiday-tester');
  expect((await say('instruments')).card.lines.join('\n')).toContain('spark-1, holiday tester');
});
