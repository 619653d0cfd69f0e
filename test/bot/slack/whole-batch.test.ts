// A whole batch on a phone, from the sealed can to the cured part: what the channel and the thread show, what a locked
// phone shows, and how many taps and typed characters it takes.

import { readFileSync, writeFileSync } from 'node:fs';
import { afterEach, describe, expect, test } from 'vitest';
import { figuresFor } from '../../../bot/language/figures.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import type { FilterTold } from '../../../core/filters.ts';
import { epochMs, micrometres } from '../../../core/units.ts';
import { bayTwo, openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
afterEach(() => shop.close());

interface Step {
  readonly what: string;
  readonly taps: number;
  readonly typed: string;
}

/** Of a name alone it matters to nobody whose they are. */
const figures = figuresFor({
  profile: shipped.profileOf('en', 'metric'),
  units: 'metric',
  zone: 'UTC',
  now: epochMs(0),
});

/** What the demo sheet names: common practice, no source. */
const asSheet: FilterTold = {
  filterMicrometres: micrometres(1),
  filterOf: 'glass-fibre',
  filteredInto: 'second-vessel',
};

/** Of a form: the button that opens it, a field tapped into beyond the first, a choice (open, pick), the button that sends. */
const formTaps = (fieldsAfterFirst: number, choices = 0): number => 1 + fieldsAfterFirst + 2 * choices + 1;

async function wholeBatch(
  workshop: Workshop,
  stage: (name: string) => void,
  { buttons, parts, steps: stepWords } = shipped.wordsIn('en'),
): Promise<readonly Step[]> {
  const steps: Step[] = [];
  const did = (what: string, taps: number, typed = ''): void => {
    steps.push({ what, taps, typed });
  };
  await workshop.types('mix 2.4kg 24C 48%');
  did('open the batch, with the air', 0, '/bell mix 2.4kg 24C 48%');
  stage('opened');

  await workshop.taps(workshop.batch(), buttons.weigh);
  await workshop.fills({ 'part-a': '1201', 'part-b': '1198' });
  did('weigh', formTaps(1), '12011198');
  stage('weighed');

  await workshop.passes(102);
  await workshop.taps(workshop.batch(), `${buttons.filter}, ${stepWords.filterTold(asSheet, figures)}`);
  did('filter, which ends the stirring', 1);
  stage('filtered');

  await workshop.passes(5);
  await workshop.taps(workshop.batch(), buttons.coat);
  await workshop.fills({ part: 'impeller-7', method: 'flow' });
  did('coat', formTaps(0, 1), 'impeller-7');
  // Nobody booked it in.
  await workshop.tapsWhisper(parts.meant.asNew.coat({ shown: ['impeller-7'], more: 0 }, figures));
  did('it is a new part', 1);
  stage('coated');

  await workshop.passes(20);
  await workshop.taps(workshop.batch(), buttons.dry);
  did('dry to the touch', 1);
  await workshop.taps(workshop.batch(), buttons['cure-oven']);
  did('into the oven', 1);
  stage('in cure');

  await workshop.passes(20);
  await workshop.taps(workshop.batch(), buttons.temp);
  await workshop.fills({ 'part-temperature': '90' });
  // Readings are not counted: they are meant to be taken.
  stage('at temperature');

  await workshop.passes(60);
  await workshop.taps(workshop.batch(), buttons.temp);
  await workshop.fills({ 'part-temperature': '91' });
  await workshop.taps(workshop.batch(), buttons.out);
  did('out, cure time given', 1);
  return steps;
}

describe('a whole batch in Slack', () => {
  test('takes at most 12 taps and 60 typed characters from the sealed can to the cured part', async () => {
    shop = await openWorkshop();
    const steps = await wholeBatch(shop, () => undefined);
    const taps = steps.reduce((sum, step) => sum + step.taps, 0);
    const typed = steps.reduce((sum, step) => sum + step.typed.length, 0);
    console.table([
      ...steps.map(({ what, taps: tapped, typed: text }) => ({ step: what, taps: tapped, typed: text.length, text })),
      { step: 'in all', taps, typed, text: '' },
    ]);
    expect(taps).toBeLessThanOrEqual(12);
    expect(typed).toBeLessThanOrEqual(60);
    expect(shop.batch().text).toContain('impeller-7: out of cure');
  });

  test('is one message, changed in place, with every event in its thread', async () => {
    shop = await openWorkshop();
    await wholeBatch(shop, () => undefined);
    const batch = shop.batch();
    expect(shop.fake.inChannel('C1')).toEqual([batch]);
    expect(batch.edits).toBeGreaterThan(5);
    const titles = shop.fake.inThread(batch.ts).map(({ text }) => text.split('\n')[0]);
    expect(titles).toContain('Batch 1: A and B together, clocks run');
    expect(titles).toContain('Batch 1: stirring done <@UKARI>');
    expect(titles).toContain('impeller-7: flash-off, least time over <@UKARI>');
    expect(titles).toContain('impeller-7: cure time over by the clock, not proved <@UKARI>');
  });

  test.each(['en', 'es'])(
    'in %s shows each stage as it was read and agreed, and on a locked phone what to do',
    async (language) => {
      const words = shipped.wordsIn(language);
      const people = bayTwo.people.map((person) => ({ ...person, language }));
      shop = await openWorkshop({ crews: [{ crew: 'crew', file: { ...bayTwo, people } }] });
      const shown: string[] = [];
      const show = (name: string) => {
        shown.push(`## ${name}\n\n${shop.batch().text}`);
      };
      await wholeBatch(shop, show, words);
      await shop.types('empty 1');
      await shop.taps(shop.batch(), words.buttons.release);
      show('finished');
      // A push shows the first 150 characters or so of the text (from memory, no source).
      const pushes = shop.fake
        .inThread(shop.batch().ts)
        .filter(({ text }) => text.includes('<@'))
        .map(({ text }) => `- ${text.replaceAll('\n', ' ').slice(0, 150)}`);
      const golden = [...shown, `## what a locked phone shows\n\n${pushes.join('\n')}`].join('\n\n').concat('\n');
      expect(golden).toBe(goldenText(language, golden));
    },
  );
});

/** Read in review; rewritten where `GOLDEN=write` is set. */
function goldenText(language: string, now: string): string {
  const file = new URL(`whole-batch.${language}.golden.md`, import.meta.url);
  if (process.env.GOLDEN === 'write') writeFileSync(file, now);
  return readFileSync(file, 'utf8');
}
