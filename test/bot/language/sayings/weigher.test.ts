// What words speak for, by sayings (invented lines).

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Sayings, sayingsIn } from '../../../../bot/language/sayings/sayings.ts';
import { signsCounted } from '../../../../bot/language/sayings/signs-counted.ts';
import { type Weighed, weigherOf } from '../../../../bot/language/sayings/weigher.ts';
import { type AskedMeaning, askedMeanings, saidMeanings } from '../../../../bot/language/tongues/sayings-typed.ts';
import { shipped } from '../../../../bot/language/tongues/tongues.ts';

const passedOver = { light: new Set(['the', 'is']), names: new Set(['flange', 'flanges']) };
type Kind = 'dry' | 'mix' | 'gel';
const counted = (...all: readonly Sayings<Kind>[]) => signsCounted(all, ['dry', 'mix', 'gel'], passedOver);
const eachKind = (kind: Kind) => kind;
const ofMixAndDry = counted(
  { dry: 'touched the 8, no mark / 7 leaves no mark on the glove', mix: 'make me 900 g\n2 kilos, please make it up' },
  { dry: 'the flange is no longer sticky', mix: 'we need 900 g of it' },
);
const { weigh, speaksFor } = weigherOf([ofMixAndDry], eachKind, passedOver);
const first = (weighed: readonly Weighed<string>[]) => weighed[0]?.meaning;

describe('what words speak for', () => {
  it('given a line that nobody has said, then it means what the lines with most of its words mean', () => {
    expect(first(weigh('touching 4 leaves no marks'))).toBe('dry');
    expect(first(weigh('making up 1200 g'))).toBe('mix');
  });

  it('given words that are of no saying, or a thing’s name, then they speak for nothing', () => {
    expect(speaksFor('moon', 'dry')).toBe(0);
    expect(speaksFor('flan', 'dry')).toBe(0);
  });

  it('given two words that only a word that says nothing parts, then they speak together', () => {
    const apart = weigherOf([counted({ dry: 'the dust is off', mix: 'mark the pot' })], eachKind, passedOver);
    expect(apart.speaksFor('dust off', 'dry')).toBeGreaterThan(0);
  });

  it('given a tongue with far more sayings of one meaning, then the words of another say as much for it as before', () => {
    const english = counted({ dry: 'no mark on it', mix: 'make some up' });
    const few = counted({ dry: 'ya no pega', mix: 'hazme un kilo' });
    const many = counted({ dry: 'ya no pega', mix: Array.from({ length: 50 }, () => 'hazme un kilo').join('\n') });
    const ofMake = (spanish: typeof few) =>
      weigherOf([english, spanish], eachKind, passedOver).speaksFor('make', 'mix');
    expect(ofMake(many)).toBe(ofMake(few));
  });

  it('given a meaning without a saying, then it is never weighed', () => {
    expect(weigh('gel').map(({ meaning }) => meaning)).toEqual(['dry', 'mix']);
  });

  it('given two that weigh by the same sayings, then each tells its own meanings apart, and knows no other words', () => {
    const onlyDry = weigherOf([ofMixAndDry], (kind) => (kind === 'dry' ? 'no longer wet' : undefined), passedOver);
    expect(onlyDry.weigh('make me 900 g')).toEqual([{ meaning: 'no longer wet', share: 1 }]);
    expect([onlyDry.knows('make'), onlyDry.knows('mark')]).toEqual([false, true]);
  });

  it('given any line, then what is weighed adds up to one, the likeliest first', () => {
    const { weigh: weighShipped } = shipped.hearingIn('en').weighed;
    let weighed = 0;
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (line) => {
        const all = weighShipped(line);
        weighed += 1;
        expect(all.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1);
        expect(all.map(({ share }) => share)).toEqual(all.map(({ share }) => share).toSorted((a, b) => b - a));
      }),
    );
    expect(weighed).toBeGreaterThanOrEqual(100);
  });
});

describe('the sayings of the tongues', () => {
  it.each(
    shipped
      .hearingIn('en')
      .every.tongues.map(({ sayings, askings, terms }) => [terms.batch.one, sayings, askings] as const),
  )(
    'given the tongue that says %s, then each act and question that people have their own words for has sayings, and no act one twice',
    (_, sayings, askings) => {
      const all = (meaning: (typeof saidMeanings)[number]) => sayings.flatMap((each) => sayingsIn(each[meaning] ?? ''));
      const few = ['cure', 'prep', 'flush', 'fan no', 'asking'];
      expect(saidMeanings.filter((meaning) => !few.includes(meaning) && all(meaning).length < 25)).toEqual([]);
      const asked = (meaning: AskedMeaning) => askings.flatMap((each) => sayingsIn(each[meaning] ?? ''));
      expect(askedMeanings.filter((meaning) => asked(meaning).length < 25)).toEqual([]);
      const each = saidMeanings.flatMap((meaning) =>
        all(meaning).map((saying) => `${meaning}: ${saying.toLowerCase()}`),
      );
      expect(each.filter((saying, i) => each.indexOf(saying) !== i)).toEqual([]);
    },
  );
});
