import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { newJoinCode, opens } from '../../../bot/web/join-code.ts';
import { rateLimit } from '../../../bot/web/rate-limit.ts';

describe('how often', () => {
  test('however somebody asks, in any stretch of time no more gets through than its allowance', () => {
    let refused = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 8 }),
        fc.integer({ min: 1, max: 10 }),
        fc.array(fc.integer({ min: 0, max: 2000 }), { minLength: 10, maxLength: 60 }),
        (atOnce, secondsEach, waits) => {
          let now = 0;
          const limit = rateLimit({ atOnce, secondsEach, now: () => now });
          const through: number[] = [];
          for (const wait of waits) {
            now += wait;
            const held = limit.take('kari');
            if (held === 0) through.push(now);
            else refused += 1;
          }
          for (const [i, from] of through.entries()) {
            for (const [j, to] of through.entries()) {
              if (j < i) continue;
              expect(j - i + 1).toBeLessThanOrEqual(atOnce + Math.floor((to - from) / (secondsEach * 1000)));
            }
          }
        },
      ),
    );
    expect(refused).toBeGreaterThan(100);
  });

  test('after the wait that it names it lets through again, and another’s wait is not mine', () => {
    let now = 0;
    const limit = rateLimit({ atOnce: 2, secondsEach: 12, now: () => now });
    expect([limit.take('a'), limit.take('a')]).toEqual([0, 0]);
    const wait = limit.take('a');
    expect(wait).toBe(12);
    expect(limit.take('b')).toBe(0);
    now += wait * 1000;
    expect(limit.take('a')).toBe(0);
  });
});

describe('the join code', () => {
  test('opens with itself in any writing, and with no other', () => {
    let different = 0;
    fc.assert(
      fc.property(fc.constantFrom(' ', '-', '', ' - '), fc.boolean(), (between, small) => {
        const code = newJoinCode();
        expect(code).toMatch(/^[ACDEFGHJKMNPQRTUVWXY34679]{4}-[ACDEFGHJKMNPQRTUVWXY34679]{4}$/);
        const typed = code.replace('-', between);
        expect(opens(small ? typed.toLowerCase() : typed, code)).toBe(true);
        const other = newJoinCode();
        if (other !== code) different += 1;
        expect(opens(other, code)).toBe(other === code);
        expect(opens('', code)).toBe(false);
      }),
    );
    expect(different).toBeGreaterThan(90);
  });
});
