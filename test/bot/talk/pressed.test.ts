// How a card stood when somebody pressed on it, whatever shows it.

import { describe, expect, test } from 'vitest';
import { howItMoved, type Place, type Press, type Showing, thumbMs, withShowing } from '../../../bot/talk/pressed.ts';

const button = (label: string, at: number, row = 'a', rowAt = 0): Place => ({
  ...{ row, label, line: label.toLowerCase() },
  at: { row: rowAt, button: at },
});
const entry = (label: string): Place => ({ row: 'a', label, line: label.toLowerCase(), at: undefined });
const shown = (since: number, ...places: readonly Place[]): Showing => ({ since, places });
const press = (line: string, at: number, of: Partial<Press> = {}): Press => ({
  ...{ row: 'a', button: 0, line, at, isOlder: false },
  ...of,
});

const dry = shown(0, button('Dry', 0), button('Hold', 1));
const oven = shown(10_000, button('Oven', 0), button('Hold', 1));
const cards = [dry, oven];

describe('a press', () => {
  test('is aimed at what stood there until less than a second and a half before', () => {
    const [soon, late] = [10_000 + thumbMs - 1, 10_000 + thumbMs].map((at) => howItMoved(cards, press('oven', at)));
    expect(soon).toEqual({ is: 'under-the-thumb', before: { label: 'Dry', line: 'dry' }, offered: false });
    expect(late).toEqual({ is: 'not' });
  });

  test('by a clock behind ours, as if before the change, counts as in that moment', () => {
    expect(howItMoved(cards, press('oven', 9_000)).is).toBe('under-the-thumb');
  });

  test('on what says the same before and after is no other button; the card is an older one for that moment', () => {
    expect(howItMoved(cards, press('hold', 10_700, { button: 1 }))).toEqual({ is: 'older', now: undefined });
    expect(howItMoved(cards, press('hold', 12_000, { button: 1 }))).toEqual({ is: 'not' });
  });

  test('on an older showing tells what stands there now', () => {
    const moved = howItMoved(cards, press('dry', 60_000, { isOlder: true }));
    expect(moved).toMatchObject({ is: 'older', now: { label: 'Oven', line: 'oven' } });
  });

  test('on a button that is only further along is told that it is still to be had', () => {
    const shifted = [shown(0, button('P1 dry', 0), button('P2 dry', 1)), shown(10_000, button('P2 dry', 0))];
    expect(howItMoved(shifted, press('p2 dry', 10_500))).toEqual({
      ...{ is: 'under-the-thumb', before: { label: 'P1 dry', line: 'p1 dry' }, offered: false },
    });
    const swapped = [shown(0, button('A', 0), button('B', 1)), shown(10_000, button('B', 0), button('A', 1))];
    expect(howItMoved(swapped, press('b', 10_500))).toMatchObject({ offered: true });
  });

  test('in a row that came up into the place of another is aimed at that one', () => {
    const two = shown(0, button('Dry', 0, 'p1', 0), button('Out', 0, 'p2', 1));
    const one = shown(10_000, button('Out', 0, 'p2', 0));
    expect(howItMoved([two, one], press('out', 10_500, { row: 'p2' }))).toMatchObject({ before: { label: 'Dry' } });
  });

  test('from a menu has no place: it is in doubt only where it is no longer on it', () => {
    const menus = [shown(0, entry('Dry'), entry('Out')), shown(10_000, entry('Out'))];
    const chosen = (line: string) => howItMoved(menus, press(line, 60_000, { button: undefined }));
    expect(chosen('out')).toEqual({ is: 'not' });
    expect(chosen('dry')).toEqual({ is: 'older', now: undefined });
  });

  test('is held against each showing of the last moments, and those before them are forgotten', () => {
    const all = [dry, shown(10_000, button('Oven', 0)), shown(10_800, button('Out', 0))];
    expect(howItMoved(all, press('out', 11_000))).toMatchObject({ before: { label: 'Oven' } });
    const kept = withShowing(withShowing([dry], oven), shown(20_000, button('Out', 0)));
    expect(kept.map(({ since }) => since)).toEqual([10_000, 20_000]);
  });

  test('on a card of which nothing is known goes by what it says itself', () => {
    expect(howItMoved([], press('dry', 0))).toEqual({ is: 'not' });
    expect(howItMoved([], press('dry', 0, { isOlder: true }))).toEqual({ is: 'older', now: undefined });
  });
});
