// A monitor of several gases in one line: an entry each, one alarm for what is beyond, and what cannot be is asked.

import { expect, it } from 'vitest';
import { talkAfter, taps } from './session-talk.ts';

it('given all within, then each stands with its limit, and one tap takes all back', async () => {
  const { say } = await talkAfter('set law us');
  const answer = await say('o2 20.9 lel 0 co 0 h2s 0');
  expect(answer.text).toContain('Gas monitor, room: hydrogen sulphide 0 ppm');
  expect(answer.text).toContain('At least 19.5 % (29 CFR 1910.146(b)) is asked for.');
  const { text } = await say(taps(answer).undo ?? '');
  expect(text).toContain('LEL 0 %, oxygen 20.9 %, carbon monoxide 0 ppm, hydrogen sulphide 0 ppm');
});

it('given two beyond, then one alarm rings, and what to do of both stands there', async () => {
  const { card, say } = await talkAfter('set law us');
  const { title, tone, lines } = await card('o2 20.9 lel 14 co 0 h2s 30 booth');
  expect([title, tone]).toEqual(['Gas monitor, booth: LEL 14 %', 'stop']);
  expect(lines[0]).toContain('Stop spraying, everybody out');
  expect(lines.join('\n')).toContain('Everybody out into fresh air now, upwind.');
  const over = await say('alarm over');
  expect(over.recorded).toBe(true);
  expect((await say('alarm over')).text).toContain('No alarm is on.');
});

it('given more oxygen than air can hold, then the slip is offered, and not what cannot be', async () => {
  const { say } = await talkAfter();
  expect(taps(await say('o2 209%'))).toEqual({ 'meant-1': 'o2 20.9%' });
  expect(taps(await say('o2 209 lel 0'))).toEqual({ 'meant-1': 'gases lel 0% o2 20.9%' });
  expect(taps(await say('o2 29%'))['as-read']).toContain('o2 29%');
});
