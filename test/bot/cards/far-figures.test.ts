// Figures that can hardly be: asked about once, with taps that say what each would record; as read, they are recorded. By
// hand: 85 degF is 29.44 degC; Demo Clear (invented) keeps 30 % and asks for 8 to 15 um, so 26.7 to 50 um wet.

import { describe, expect, it } from 'vitest';
import { usualRanges } from '../../../core/usual-ranges.ts';
import { talkAfter, taps } from './session-talk.ts';

const air = 'air 24C 48%';
const coated = [air, 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 102m', 'filter 1', 'coat new a1 1 brush'];

/** What the taps would record, by their labels. */
const offered = (card: { readonly actions: readonly { readonly label: string; readonly line: string }[] }) =>
  card.actions.map(({ label }) => label);

describe.each([
  ['air 70C 50%', 'air temperature 70 °C', ['21.1 °C?', '7 °C?', 'As read: 70 °C']],
  ['air 65C 50%', 'air temperature 65 °C', ['18.3 °C?', '6.5 °C?', 'As read: 65 °C']],
  ['air -40C 50%', 'air temperature −40 °C', ['−4 °C?', 'As read: −40 °C']],
  ['air 20C 100%', 'humidity 100 %', ['As read: 100 %']],
  ['surface 85C', 'surface temperature 85 °C', ['29.4 °C?', '8.5 °C?', 'As read: 85 °C']],
  ['surface a1 85C', 'surface temperature 85 °C', ['29.4 °C?', '8.5 °C?', 'As read: 85 °C']],
  ['night -35C', 'lowest temperature −35 °C', ['−3.5 °C?', 'As read: −35 °C']],
  ['part b1 steel 10mm max 2000C', 'highest temperature it bears 2000 °C', ['200 °C?', 'As read: 2000 °C']],
  [
    'wet a1 150 160 140um',
    'wet film 150 µm, 160 µm, 140 µm',
    ['15 µm, 16 µm, 14 µm?', 'As read: 150 µm, 160 µm, 140 µm'],
  ],
  ['film a1 9500um', 'dry film 9500 µm', ['9.5 µm?', 'As read: 9500 µm']],
  ['film a1 0.4 0.5um', 'dry film 0.4 µm, 0.5 µm', ['10.2 µm, 12.7 µm?', 'As read: 0.4 µm, 0.5 µm']],
  ['open A lot 7731 500kg gas', 'weight in the can 500 kg', ['500 g?', '50 kg?', 'As read: 500 kg']],
  ['received 4 A lot 7731 500kg', 'weight in the can 500 kg', ['500 g?', '50 kg?', 'As read: 500 kg']],
  ['door a1 90m', 'how long the door was open 1 h 30 min', ['2 min?', '9 min?', 'As read: 1 h 30 min']],
  ['temp a1 300C', 'temperature read on the part 300 °C', ['148.9 °C?', '30 °C?', 'As read: 300 °C']],
  ['flush gun acetone 1ml', 'how much solvent 1 mL', ['1 L?', '0.1 L?', 'As read: 1 mL']],
  ['o2 90%', 'share that the monitor shows 90 %', ['As read: 90 %']],
  ['fan 6m/s', 'face velocity 6 m/s', ['0.6 m/s?', '0.06 m/s?', 'As read: 6 m/s']],
  ['set booth 400m2', 'area 400 m²', ['37.16 m²?', '40 m²?', 'As read: 400 m²']],
] as const)('given "%s"', (line, asked, labels) => {
  it('then it is asked, and as read it is recorded', async () => {
    const { say } = await talkAfter(...coated, 'brief 1 kari');
    const { card, recorded, code } = await say(line);
    expect([code, recorded]).toEqual(['far-reading', false]);
    expect(card.lines[0]).toContain(`Is it so: ${asked}`);
    expect(offered(card)).toEqual(labels);
    expect((await say('tap as-read')).recorded).toBe(true);
  });

  it.runIf(labels.length > 1)('then what may have been meant is recorded by its tap', async () => {
    const { say } = await talkAfter(...coated, 'brief 1 kari');
    await say(line);
    expect((await say('tap meant-1')).recorded).toBe(true);
  });
});

it.each([
  ...[air, 'air 5C 20%', 'air 45C 98%', 'surface 60C', 'surface a1 -5C', 'night 1C', 'part b1 steel 10mm max 400C'],
  ...['wet a1 40 45um', 'wet a1 120 130 125um', 'wet a1 20um', 'film a1 4 5 5um', 'film a1 0um', 'film a1 30um'],
  ...['open A lot 7731 200kg gas', 'door a1 15m', 'temp a1 165C', 'fan 0.6m/s', 'set booth 4m2'],
  ...['flush gun acetone 300ml', 'flush gun acetone 20ml', 'flush brush acetone 10ml', 'flush gun'],
])('given "%s", then nothing is asked', async (line) => {
  const { say } = await talkAfter(...coated, 'brief 1 kari');
  expect((await say(line)).recorded).toBe(true);
});

it('given mils where micrometres were meant, then the other way round is offered to who reads mils', async () => {
  const { say } = await talkAfter(...coated, 'set units us');
  const { card } = await say('wet a1 40mil');
  expect(card.actions[0]?.line).toBe('wet a1 40um');
});

it('given a speaker in Fahrenheit, then the decimal sign is looked for in that', async () => {
  const { say } = await talkAfter(...coated, 'set units us');
  expect(offered((await say('air 700F 50%')).card)).toEqual([]);
  // 195 degF is 90.6 degC; 19.5 degF is -6.9 degC.
  expect(offered((await say('surface 195F')).card)).toEqual(['20 °F?', 'As read: 195 °F']);
});

it('given a speaker of Spanish, then it is asked in Spanish', async () => {
  const { say } = await talkAfter(...coated, 'set language es');
  const { card } = await say('superficie 85C');
  expect(card.lines[0]).toBe(
    '¿Es así: temperatura del sustrato 85 °C, cuando lo corriente es de −20 °C a 60 °C (práctica común, sin fuente)?',
  );
  expect(offered(card)).toEqual(['29,4 °C?', '8,5 °C?', 'Así se leyó: 85 °C']);
  expect(taps(await say('película húmeda a1 150um'))['as-read']).toBe(undefined);
});

it('given 150 % of the explosive limit, then it is recorded at once, and what follows is said', async () => {
  const { say } = await talkAfter(air);
  const read = await say('lel 150%');
  expect([read.recorded, read.card.tone]).toEqual([true, 'stop']);
});

it('given 0 %, then no hygrometer shows it, and the gate stays as it was', async () => {
  const { say } = await talkAfter('air 8C 50%');
  const { text, recorded } = await say('air 8C 0%');
  expect(recorded).toBe(false);
  expect(text).toContain('No hygrometer gives that reading: read it again.');
  expect((await say('mix 2kg')).recorded).toBe(false);
});

it('given air that was read so, then its humidity counts as not read, and the sheet speaks', async () => {
  const { say } = await talkAfter('air 70C 50%', 'tap as-read');
  expect((await say('mix 2kg')).text).toContain('air 70 °C, at most 35 °C');
});

it('given every range, then its ends are in order and its source is named', () => {
  for (const [slot, { lowest, highest, source }] of Object.entries(usualRanges)) {
    expect(lowest, slot).toBeLessThan(highest);
    expect(source).toContain('no source');
  }
});
