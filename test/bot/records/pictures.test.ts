// Pictures: drawn in this process, with marks that follow the data; two shifts give two pictures.

import { afterEach, describe, expect, it } from 'vitest';
import { english } from '../../../bot/language/tongues/english/sentences.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { airDrawings } from '../../../bot/records/pictures/air-drawing.ts';
import { axesFor } from '../../../bot/records/pictures/axes.ts';
import { drawSvg, pictureOf } from '../../../bot/records/pictures/draw.ts';
import { cureDrawings, filmDrawing } from '../../../bot/records/pictures/part-drawing.ts';
import { barLook } from '../../../bot/records/pictures/picture-look.ts';
import { pictureFrom, pictureRef } from '../../../bot/records/pictures/picture-refs.ts';
import { timelineDrawing } from '../../../bot/records/pictures/timeline-drawing.ts';
import { airCurve, cureCurve, filmCurve } from '../../../core/records/curves.ts';
import { spanOf } from '../../../core/records/span.ts';
import { timelineOf } from '../../../core/records/timeline.ts';
import { given } from '../../core/given.ts';
import { givenTheMorning, type RecordsShop } from './records-shop.ts';

const shift = [
  '07:50 air 24C 48%',
  '07:51 surface 22C',
  '08:00 mix 2.4kg',
  '08:00 weigh 1 1200g 1200g',
  '09:50 filter 1',
  '10:00 coat new impeller-7 1 brush',
  '10:12 dry impeller-7',
  '10:15 cure impeller-7 oven 90C',
  '10:30 temp impeller-7 60C',
  '10:45 temp impeller-7 92C',
  '11:50 temp impeller-7 90C',
  '11:50 out impeller-7',
  '11:55 film impeller-7 12 14 13um',
];

/** Every row of data in a drawing, wherever it stands. */
function valuesIn(drawing: unknown): readonly Readonly<Record<string, unknown>>[] {
  if (typeof drawing !== 'object' || drawing === null) return [];
  if ('values' in drawing && Array.isArray(drawing.values)) return drawing.values;
  return Object.values(drawing).flatMap(valuesIn);
}

async function drawn() {
  const told = await given(shift);
  const shop = await told.shop();
  const now = told.time('Mon 12:00');
  const span = spanOf({ kind: 'day', day: 'today' }, now, 'UTC');
  const part = shop.parts.get('impeller-7');
  if (span === undefined || part === undefined) throw new Error('the shift is missing');
  return { told, shop, now, span, part };
}

describe('what a picture shows to somebody in US units', () => {
  it('given a shift, then axes, readings and limits are in °F and mils', async () => {
    const { shop, now, span, part } = await drawn();
    const axes = axesFor({ units: 'us', profile: shipped.profileOf('es', 'us') });
    const air = airDrawings(airCurve(shop, span), english, 'UTC', undefined, axes).flatMap(valuesIn);
    expect(air.map(({ value }) => value)).toContain(75.2);
    const curve = cureCurve(shop, part, now);
    if (curve === undefined) throw new Error('no cure');
    const cure = JSON.stringify(cureDrawings(curve, english, 'UTC', axes));
    expect(cure).toContain('"title":"°F"');
    expect(cure).toContain('"value":197.6');
    const film = JSON.stringify(filmDrawing(filmCurve(shop, part), english, axes));
    expect(film).toContain('"title":"mils"');
    // 12 µm over 25.4.
    expect(film).toContain('"shown":0.47');
    expect(film).not.toContain('µm');
  });
});

describe('the hours on a picture', () => {
  it.each([
    ['es-US', 'us', /\d+:00 [AP]M/],
    ['es-ES', 'metric', />\d\d:00</],
  ] as const)('given a reader of %s, then they are those of that country', async (language, units, hour) => {
    const { shop, now, span } = await drawn();
    const drawing = timelineDrawing(timelineOf(shop, span, now), english, 'UTC');
    if (drawing === undefined) throw new Error('nothing was drawn');
    const svg = await drawSvg(pictureOf([drawing], shipped.profileOf(language, units)));
    expect(svg).toMatch(hour);
  });
});

describe('what a picture shows', () => {
  it('given a shift, then its bars begin and end where the record says', async () => {
    const { told, shop, now, span } = await drawn();
    const drawing = timelineDrawing(timelineOf(shop, span, now), english, 'UTC');
    const bars = valuesIn(drawing).filter(({ kind }) => kind !== undefined);
    const bar = (kind: string) => bars.find((each) => each.kind === kind);
    expect(bar('pot life')).toMatchObject({ row: 'Batch 1', from: told.time('Mon 08:00') });
    expect(bar('stirring')).toMatchObject({ from: told.time('Mon 08:00'), to: told.time('Mon 09:50') });
    expect(bar('cure')).toMatchObject({ row: 'impeller-7', from: told.time('Mon 10:15'), to: told.time('Mon 11:50') });
    expect(valuesIn(drawing).find(({ mark }) => mark === 'coat')).toMatchObject({ at: told.time('Mon 10:00') });
  });

  it('given another zone, then the bars stand on its wall clock', async () => {
    const { told, shop, now, span } = await drawn();
    const bars = valuesIn(timelineDrawing(timelineOf(shop, span, now), english, 'Europe/Madrid'));
    // An hour ahead in March.
    expect(bars.find(({ kind }) => kind === 'stirring')).toMatchObject({ from: told.time('Mon 09:00') });
  });

  it('given the air read once and the sheet in use, then points, dew point and its limits', async () => {
    const { shop, span } = await drawn();
    const values = airDrawings(airCurve(shop, span), english, 'UTC').flatMap(valuesIn);
    expect(values).toEqual(expect.arrayContaining([expect.objectContaining({ series: 'air', value: 24 })]));
    expect(values).toEqual(expect.arrayContaining([expect.objectContaining({ series: 'surface', value: 22 })]));
    // 24 degC at 48 %: 12.3 degC, check of the psychrometric sums.
    expect(values.find(({ series }) => series === 'dew point')?.value).toBeCloseTo(12.3, 1);
    expect(new Set(values.flatMap(({ limit }) => limit ?? []))).toEqual(new Set([10, 35, 25, 85]));
  });

  it('given an oven cure, then its progress begins with the reading that reached 90 degC and ends at 100 %', async () => {
    const { told, shop, now, part } = await drawn();
    const curve = cureCurve(shop, part, now);
    if (curve === undefined) throw new Error('no cure');
    const shares = valuesIn(cureDrawings(curve, english, 'UTC')).filter(({ share }) => share !== undefined);
    const before = shares.filter(({ at }) => Number(at) <= told.time('Mon 10:45'));
    expect(before.every(({ share }) => share === 0)).toBe(true);
    expect(shares.at(-1)?.share).toBe(100);
  });

  it('given film readings, then a point each, and the limits of the rule that the sheet names', async () => {
    const { shop, part } = await drawn();
    const values = valuesIn(filmDrawing(filmCurve(shop, part), english));
    expect(values.filter(({ state }) => state === 'dry').map(({ micrometres }) => micrometres)).toEqual([12, 14, 13]);
    expect(values.some(({ limit }) => limit !== undefined)).toBe(true);
  });

  it('given a day without anything, then there is nothing to draw', async () => {
    const { shop, now } = await drawn();
    const empty = spanOf({ kind: 'range', from: '2026-02-02', to: '2026-02-02' }, now, 'UTC');
    if (empty === undefined) throw new Error('no such day');
    expect(timelineDrawing(timelineOf(shop, empty, now), english, 'UTC')).toBeUndefined();
  });
});

describe('colours', () => {
  /** Relative luminance, WCAG 2.1: what a grey printer keeps. */
  function luminance(hex: string): number {
    const channel = (at: number) => {
      const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
      return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
    };
    return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
  }

  it.each([
    ['pot-life', 'stirring'],
    ['flash-off', 'cure'],
    ['pot-life', 'flash-off'],
  ] as const)('given a grey printer, then %s and %s that meet on a row stay apart', (one, other) => {
    const [light = 0, dark = 0] = [luminance(barLook[one].fill), luminance(barLook[other].fill)].sort((a, b) => b - a);
    // Our own choice: 1.8 to 1, no source.
    expect((light + 0.05) / (dark + 0.05)).toBeGreaterThan(1.8);
  });
});

describe('a picture as a file', () => {
  let shop: RecordsShop | undefined;
  afterEach(() => shop?.close());
  const isPng = (png: Uint8Array | undefined) =>
    Buffer.from(png ?? [])
      .subarray(1, 4)
      .toString() === 'PNG';

  it('given two different shifts, then two different PNGs; given the same twice, then the same', async () => {
    shop = await givenTheMorning();
    const { card } = await shop.say('12:00 day');
    const before = await shop.picture(card.image ?? '');
    const again = await shop.picture(card.image ?? '');
    await shop.say('12:00 mix 1kg');
    await shop.say('12:00 weigh 500g 500g already');
    await shop.say('12:30 air 30C 60%');
    const after = await shop.picture(card.image ?? '');
    expect([isPng(before), isPng(after)]).toEqual([true, true]);
    expect(Buffer.from(before ?? []).equals(Buffer.from(again ?? []))).toBe(true);
    expect(Buffer.from(before ?? []).equals(Buffer.from(after ?? []))).toBe(false);
    expect(isPng(await shop.picture('pictures/part/impeller-7.png'))).toBe(true);
    expect(await shop.picture('pictures/part/nobody.png')).toBeUndefined();
  });

  it('given references, then there and back, and nothing that leaves the folder', () => {
    const refs = [
      { of: 'days', first: '2026-03-02', last: '2026-03-02' },
      { of: 'days', first: '2026-03-02', last: '2026-03-08' },
      { of: 'part', part: 'válvula/7' },
    ] as const;
    for (const ref of refs) expect(pictureFrom(pictureRef(ref))).toEqual(ref);
    for (const bad of ['', '../x', 'pictures/part/../../x.png', 'pictures/day/today.png', 'pictures/part/%.png']) {
      expect(pictureFrom(bad), bad).toBeUndefined();
    }
  });
});
