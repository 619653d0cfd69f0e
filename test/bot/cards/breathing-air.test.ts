// A check of breathing air as it is answered, and on the brief, in either tongue.

import { expect, it } from 'vitest';
import { talkAfter } from './session-talk.ts';

const read = 'breathing air o2 20.9% co 4ppm co2 450ppm oil 0.1mg dew -50C no-smell compressor 2';
const brief = ['mix 2.4kg', 'brief 1 in booth spray kari out lia', 'supplied yes'];

it('given a check, then each item stands with what is asked, by the standard of the crew’s country', async () => {
  const { card } = await talkAfter('air 24C 48%');
  const { title, tone, lines } = await card(read);
  expect([title, tone]).toEqual(['Breathing air: within', 'good']);
  expect(lines).toContain('Carbon monoxide: within (4 ppm, asked ≤ 5 ppm)');
  expect(lines).toContain('Held against EN 12021:2014, figures from memory; compressor 2.');
  const failed = await card('breathing air o2 20.9% co 14ppm');
  expect([failed.title, failed.tone]).toEqual(['Breathing air: FAILED', 'stop']);
  expect(failed.lines).toContain('Oil: not read (asked ≤ 0.5 mg/m³)');
});

it('given supplied air, then the brief says who checked it and when, or that nobody has', async () => {
  const { say } = await talkAfter('air 24C 48%', ...brief);
  expect((await say('hazards spray')).text).toContain('Breathing air: nobody has told of a check.');
  await say(read);
  expect((await say('hazards spray')).text).toContain('Breathing air checked: compressor 2, 2026-03-02 08:00 by omar');
  await say('breathing air o2 20.9% co 14ppm compressor 2');
  expect((await say('hazards spray')).text).toContain('by omar; it FAILED: nobody is fed from it');
});

it('given Spanish, then it reads and says the same', async () => {
  const { card, say } = await talkAfter('set language es', 'aire 24C 48%', ...brief);
  const { title, lines } = await card('aire respirable o2 20,9% co 14ppm aceite 0,1mg rocío -50C sin-olor');
  expect(title).toBe('Aire respirable: NO PASA');
  expect(lines).toContain('Monóxido de carbono: FUERA (14 ppm, se pide ≤ 5 ppm)');
  expect((await say('peligros pistola')).text).toContain('NO PASÓ: no alimenta a nadie');
});
