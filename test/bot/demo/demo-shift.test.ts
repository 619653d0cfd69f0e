import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoCrew } from '../../../bot/demo/demo-crew.ts';
import { demoShift, demoShiftStart } from '../../../bot/demo/demo-shift.ts';
import { demoClock, playShift } from '../../../bot/demo/play-shift.ts';
import type { Answer } from '../../../bot/talk/answer.ts';
import { openShop, type ShopPage } from '../web/shop-page.ts';

describe('the invented shift', () => {
  let shop: ShopPage;
  const answers: { readonly line: string; readonly answer: Answer | undefined }[] = [];
  beforeAll(async () => {
    shop = await openShop({ crew: demoCrew });
    let at = 0;
    for (const { afterMinutes, as, line } of demoShift) {
      await shop.wait(afterMinutes - at);
      at = afterMinutes;
      answers.push({ line, answer: await shop.say(as, line) });
    }
  });
  afterAll(() => shop.stop());

  test('every line is read, and recorded but for the two that the bot objects to', () => {
    const not = answers
      .filter(({ answer }) => answer?.recorded !== true)
      .map(({ line, answer }) => [line, answer?.code]);
    expect(not).toEqual([
      ['filter 1', 'blend-not-done'],
      ['cure demo-valve-3 oven 90C', 'hotter-than-part-bears'],
      ['day', null],
    ]);
  });

  test('crew and parts are marked as invented', () => {
    expect(demoCrew.name).toContain('invented');
    const parts = demoShift.flatMap(({ line }) => /^part (\S+)/.exec(line)?.[1] ?? []);
    expect(parts.length).toBeGreaterThan(2);
    expect(parts.every((part) => part.startsWith('demo-'))).toBe(true);
    expect(new Set(demoShift.map(({ as }) => as)).size).toBeGreaterThan(2);
  });

  test('the bells of a shift ring in it: stirring, flash-off, cure', () => {
    const rang = shop
      .conversation()
      .newest(500, 'Kari')
      .flatMap(({ answer }) => answer.key ?? []);
    expect(rang).toContain('batch/1/stir-done');
    expect(rang).toContain('part/demo-impeller-7/flash-least');
    expect(rang).toContain('part/demo-impeller-7/cure-done');
  });
});

describe('playing it', () => {
  test('each line is said at its time by the fast clock, which then slows down to the wall’s', async () => {
    const clock = demoClock(demoShiftStart, 1_000_000, performance.now.bind(performance));
    const said: { line: string; afterMinutes: number }[] = [];
    const shift = demoShift.slice(0, 8);
    const host = { handle: async () => undefined };
    const onLine = ({ line }: { line: string }) =>
      said.push({ line, afterMinutes: (clock.now() - demoShiftStart) / 60_000 });
    await playShift({ host, clock, shift, onLine, signal: new AbortController().signal });
    expect(said.map(({ line }) => line)).toEqual(shift.map(({ line }) => line));
    for (const [i, { afterMinutes }] of said.entries()) {
      expect(afterMinutes).toBeGreaterThanOrEqual((shift[i]?.afterMinutes ?? 0) - 0.001);
    }
    let wall = 0;
    const slow = demoClock(demoShiftStart, 60, () => wall);
    wall = 1_000;
    slow.slowDown();
    wall = 2_000;
    expect(slow.now() - demoShiftStart).toBe(61_000);
  });

  test('it ends at once when the program stops', async () => {
    const stopping = new AbortController();
    const clock = demoClock(demoShiftStart, 1);
    const said: string[] = [];
    const onLine = ({ line }: { line: string }) => {
      said.push(line);
      stopping.abort();
    };
    await playShift({
      host: { handle: async () => undefined },
      clock,
      shift: demoShift,
      onLine,
      signal: stopping.signal,
    });
    expect(said).toEqual([demoShift[0]?.line]);
  });
});
