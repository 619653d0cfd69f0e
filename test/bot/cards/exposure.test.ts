// What people breathed, as it is answered, asked and told on the day, in either tongue.

import { expect, it } from 'vitest';
import { talkAfter, taps } from './session-talk.ts';

it('given a task over the limit, then what to do stands first, and whoever leads is to be told', async () => {
  const { card } = await talkAfter('set law us');
  const { title, tone, lines, ping } = await card('@kari: exposure kari 250ppm mek 8h');
  expect([title, tone]).toEqual(['What kari breathed, Mon 2 Mar', 'stop']);
  expect(lines[0]).toContain('Over the limit: out of that air now.');
  expect(lines).toContain(
    'methyl ethyl ketone: 250 ppm (736.8 mg/m³) over 8 h, 125 % of 200 ppm (29 CFR 1910.1000, Table Z-1): OVER',
  );
  expect(ping).toEqual(['omar']);
});

it('given hours that nobody measured, then what was assumed is told, and a tap says that there was none', async () => {
  const { say } = await talkAfter('set law us');
  const answer = await say('exposure kari: 12 ppm of acetone for 2 hours');
  expect(answer.text).toContain('6 h of acetone were not measured: taken at the highest told, 12 ppm.');
  expect(answer.text).toContain('NIOSH advises 250 ppm over the day: this is 5 % of that.');
  const none = taps(answer)['no-acetone'];
  expect(none).toBe('exposure kari acetone 360min 0ppm');
  const { card } = await say(none ?? '');
  expect(card.lines).toContain('acetone: 3 ppm (7.1 mg/m³) over 8 h, 0.3 % of 1000 ppm (29 CFR 1910.1000, Table Z-1)');
  expect(card.lines.join()).not.toContain('not measured');
});

it('given it is asked, then of all, of one, and of another day', async () => {
  const { say } = await talkAfter('exposure kari 12ppm acetone 8h', 'exposure lia 20ppm acetone 8h');
  const all = (await say('exposures')).text;
  expect(all).toContain('kari: acetone: 12 ppm');
  expect(all).toContain('lia: acetone: 20 ppm');
  expect((await say('exposures lia')).text).not.toContain('kari: acetone');
  expect((await say('exposures lia yesterday')).text).toContain('Nothing was measured of anybody’s air then.');
  expect((await say('day')).text).toContain('lia: acetone: 20 ppm');
});

it('given nothing was said of how long, then that is asked', async () => {
  const { say } = await talkAfter();
  const { text, card } = await say('exposure kari 12ppm acetone');
  expect(text).toContain('Needed: how long the task was');
  expect(card.actions.map(({ line }) => line)).toContain('exposure kari 12ppm acetone 2h');
});

it('given Spanish, then it reads and says the same', async () => {
  const { card, say } = await talkAfter('set law us', 'set language es');
  const { lines } = await card('exposición kari 250 ppm de mek durante 8 horas');
  expect(lines[0]).toContain('Límite superado: salga ya de ese aire.');
  expect((await say('exposiciones kari')).text).toContain('metiletilcetona: 250 ppm (736,8 mg/m³) en 8 h');
  expect((await say('resumen')).text).toContain('metiletilcetona: 250 ppm (736,8 mg/m³) en 8 h');
});
