// Whatever a crew at random has done, whoever asks what now is told one step, how long, and one thing not to do; and each tap
// of it is one of the acts that come next. What was told is counted.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { withFirstShift } from '../../../bot/cards/first-shift-card.ts';
import { guideCard } from '../../../bot/cards/guide-card.ts';
import { figuresFor } from '../../../bot/language/figures.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { guideFor } from '../../../core/guide/guide.ts';
import type { Focus } from '../../core/walk-acts.ts';
import { walkedShift } from '../../core/walk-shift.ts';

const told = new Map<string, number>();
const count = (what: string) => told.set(what, (told.get(what) ?? 0) + 1);

it('given a crew at random, then what now is one step, one duration, one must-not', async () => {
  const shifts = fc.array(fc.array(fc.nat(9_999), { minLength: 24, maxLength: 24 }), { minLength: 25, maxLength: 25 });
  let walks = 0;
  await fc.assert(
    fc.asyncProperty(fc.noBias(shifts), async (steps) => {
      const shift = walkedShift();
      const focus: Focus = (['any', 'parts', 'material', 'spray'] as const)[walks++ % 4] ?? 'any';
      try {
        for (const line of ['air 24C 48%', 'mix 2.4kg demo-clear', 'weigh 1 1200g 1200g', '103m'])
          await shift.sayLine(line);
        for (const numbers of steps) {
          let taken = 0;
          const draw = (n: number) => (numbers[taken++ % 24] ?? 0) % n;
          const [shop, now] = [await shift.shop(), shift.now()];
          const figures = figuresFor({ profile: shipped.profileOf('en', 'metric'), units: 'metric', zone: 'UTC', now });
          const telling = {
            words: shipped.wordsIn('en'),
            figures,
            languages: shipped.languages,
            hearing: shipped.every,
            shop,
            now,
          };
          for (const name of ['kari', 'omar', 'rosa']) {
            const guidance = guideFor(telling, name);
            const card = guideCard(telling, name);
            const whole = withFirstShift(telling, card, name, { asks: false, before: [], calls: false });
            count(guidance.doing.is);
            count(`not ${guidance.never.is}`);
            const { lines, leads, leadsOn = [] } = whole;
            expect([...lines, leads ?? '', ...leadsOn].join(' ')).not.toMatch(/undefined|NaN|Invalid/);
            if (whole !== card) {
              // Whoever is led on their first shift reads it under the answer, and in full.
              count('led');
              expect([leads, lines]).toEqual([expect.stringMatching(/\w/), []]);
              expect(leadsOn.join(' ')).toMatch(/do not/i);
              continue;
            }
            expect(
              lines.slice(0, 3).every((line) => line.endsWith('.')),
              lines.join(' / '),
            ).toBe(true);
            expect(lines[2]).toMatch(/do not/i);
          }
          await shift.wait(draw);
          await shift.sayAnything(draw, focus);
        }
      } finally {
        shift.close();
      }
    }),
    { seed: 20260302, numRuns: 16, endOnFailure: true },
  );
  for (const what of ['act', 'led', 'read-air', 'not use-dead-pot', 'not coat-too-late'])
    expect(told.get(what) ?? 0, what).toBeGreaterThan(0);
});
