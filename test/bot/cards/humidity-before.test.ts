// A temperature read without its humidity: the moisture of the air stays, so that colder air is nearer to dew. By hand: air of
// 24 degC and 60 % holds 17.9 hPa; at 16 degC, where 18.2 hPa saturate it, that is 98 %; Demo Clear (invented) allows 85 %.

import { expect, it } from 'vitest';
import { talkAfter } from './session-talk.ts';

const colder = ['air 24C 60%', 'wait 30m', 'air 16C'];
const since =
  'The humidity is of 08:00, at 24 °C: the same air at 16 °C would have 98 %. Both count until it is read again.';

it('given air that has cooled since its humidity was read, then it is told, and the sheet judges it so', async () => {
  const { say } = await talkAfter(...colder.slice(0, 2));
  const { card } = await say('air 16C');
  expect(card.lines[0]).toBe(since);
  expect(card.lines[1]).toContain('humidity 98 %, at most 85 %');
  const asked = await say('mix 2kg');
  expect([asked.kind, asked.code]).toEqual(['objection', 'air-outside']);
  expect(asked.card.lines).toContain(since);
});

it('given steel that is too near to that dew point, then it is told so', async () => {
  const { say } = await talkAfter('air 24C 50%', 'wait 30m', 'air 17C', 'surface 15C');
  // 50 % of 24 degC is dew at 12.9 degC, and of 17 degC at 6.5 degC.
  expect((await say('mix 2kg')).text).toContain('steel 2.1 °C above the dew point, at least 3 °C above it');
});

it('given air as dry as may be that has warmed since, then it is judged as drier', async () => {
  const { say } = await talkAfter('air 12C 40%', 'wait 30m', 'air 30C');
  expect((await say('mix 2kg')).text).toContain('humidity 13 %, at least 25 %');
});

it.each([
  ['both are read again', ['air 16C 60%']],
  ['the humidity is read after it', ['air 16C', 'air 60%']],
  ['it is as warm as before', ['air 24C']],
])('given %s, then nothing is said and the mix is opened', async (_, lines) => {
  const { say } = await talkAfter('air 24C 60%', 'wait 30m', ...lines);
  const opened = await say('mix 2kg');
  expect(opened.recorded).toBe(true);
  expect(opened.text).not.toContain('The humidity is of');
});

it('given a speaker of Spanish, then it is told in Spanish', async () => {
  const { say } = await talkAfter(...colder.slice(0, 2), 'set language es');
  expect((await say('aire 16C')).card.lines[0]).toBe(
    'La humedad es de las 8:00, a 24 °C: ese mismo aire a 16 °C tendría el 98 %. Valen las dos hasta que se lea otra vez.',
  );
});
