// A tap carries the showing on which it was pressed. Cards change in place, under a thumb that is on its way: what was
// aimed at another button is asked about, and nothing is recorded on a guess.

import { afterEach, describe, expect, test } from 'vitest';
import { thumbMs } from '../../../bot/talk/pressed.ts';
import { openSqlitePostbox } from '../../../core/store/sqlite-postbox.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs } from '../../../core/units.ts';
import { type FakeMessage, startFakeSlack } from './fake/fake-slack.ts';
import { openWorkshop, type Workshop, type WorkshopOptions } from './fake/workshop.ts';
import { flashOff, linesOf, recordedOf, stillShown } from './flashed-off.ts';

let shop: Workshop;
afterEach(() => shop.close());

async function flashedOff(options: WorkshopOptions = {}): Promise<FakeMessage> {
  shop = await openWorkshop(options);
  return flashOff(shop);
}
const recorded = () => recordedOf(shop);
const asked = () => shop.fake.whispers.at(-1);
const firstLabel = ({ text }: FakeMessage) => /\[([^\]]+)\]/.exec(linesOf(text).at(-1) ?? '')?.[1];

describe('a button that changed under the thumb', () => {
  test('pressed 0.7 s after "Dry" had turned into "Into the oven", is asked about and not recorded', async () => {
    const batch = await flashedOff();
    expect(firstLabel(batch)).toBe('Dry');
    await shop.taps(batch, 'Dry');
    expect(firstLabel(batch)).toBe('Into the oven');
    await shop.taps(batch, 'Into the oven', 'UKARI', { lookedMs: 700 });
    expect(await recorded()).not.toContain('CureStarted');
    expect(linesOf(asked()?.text)).toEqual([
      'Not clear',
      'The card changed under the thumb: "Into the oven" was pressed, and until a moment ago "Dry" stood there. Which is meant?',
      'Into the oven: cure impeller-7 oven 90C',
      'Nothing is recorded.',
      '[Into the oven]',
    ]);
    // Meant after all: one tap on the question.
    await shop.tapsWhisper('Into the oven');
    expect(await recorded()).toContain('CureStarted');
  });

  test('whoever pressed it: another’s act moves the card as well', async () => {
    const batch = await flashedOff();
    await shop.taps(batch, 'Dry', 'UJO');
    await shop.taps(batch, 'Into the oven', 'UKARI', { lookedMs: 700 });
    expect(await recorded()).not.toContain('CureStarted');
    expect(asked()?.to).toBe('UKARI');
  });

  test('pressed once it has been read, is recorded at once', async () => {
    const batch = await flashedOff();
    await shop.taps(batch, 'Dry');
    await shop.taps(batch, 'Into the oven', 'UKARI', { lookedMs: thumbMs });
    expect(await recorded()).toContain('CureStarted');
    expect(shop.fake.whispers.filter(({ text }) => text.startsWith('Not clear'))).toEqual([]);
  });

  test('that says the same as before, beside one that changed, is recorded at once', async () => {
    const batch = await flashedOff();
    await shop.types('coat new impeller-8 flow');
    await shop.passes(12);
    const labels = () => linesOf(batch.text).at(-1);
    const before = labels();
    await shop.types('temp room 23C');
    expect(before).toContain('impeller-8: Dry');
    await shop.taps(batch, 'impeller-8: Dry', 'UKARI', { lookedMs: 0 });
    expect(batch.text).toContain('impeller-8 dry to the touch');
  });

  test('pressed twice by a wet thumb, the second time on the old showing, has one answer and no question', async () => {
    const batch = await flashedOff();
    const old = stillShown(batch);
    await shop.taps(batch, 'Dry');
    await shop.taps(old, 'Dry', 'UKARI', { lookedMs: 700 });
    expect((await recorded()).filter((type) => type === 'FilmDry')).toHaveLength(1);
    expect(shop.fake.whispers.filter(({ text }) => text.startsWith('Not clear'))).toEqual([]);
  });

  test('in Spanish is asked about in Spanish', async () => {
    const batch = await flashedOff();
    await shop.types('set language es');
    await shop.taps(batch, 'Dry');
    await shop.taps(batch, 'Into the oven', 'UKARI', { lookedMs: 700 });
    expect(linesOf(asked()?.text)[1]).toBe(
      'La tarjeta cambió bajo el pulgar: se pulsó «Into the oven», y hasta hace un momento ahí ponía «Dry». ¿Cuál se quería?',
    );
  });
});

describe('a button of an older card', () => {
  test('where another thing stands by now, is asked about: what it said, what stands there, what each does', async () => {
    const batch = await flashedOff();
    const old = stillShown(batch);
    await shop.taps(batch, 'Dry', 'UJO');
    await shop.taps(old, 'Dry', 'UKARI', { lookedMs: 60_000 });
    expect(linesOf(asked()?.text)).toEqual([
      'Not clear',
      '"Dry" was pressed on an older card; now "Into the oven" stands there. Which is meant?',
      'Dry: dry impeller-7',
      'Into the oven: cure impeller-7 oven 90C',
      'Nothing is recorded.',
      '[Dry] [Into the oven]',
    ]);
    const before = await recorded();
    await shop.tapsWhisper('Into the oven');
    expect(await recorded()).toEqual([...before, 'CureStarted']);
  });

  test('goes by how it stands where the program has started anew since', async () => {
    const [store, postbox] = [openSqliteStore(':memory:'), openSqlitePostbox(':memory:')];
    const fake = await startFakeSlack(() => shop.clock.now());
    const batch = await flashedOff({ store, postbox, fake });
    const old = stillShown(batch);
    await shop.taps(batch, 'Dry', 'UJO');
    const at = new Date(shop.clock.now() + 60_000).toISOString();
    await shop.close();
    shop = await openWorkshop({ store, postbox, fake, at });
    await shop.taps(old, 'Dry');
    expect(linesOf(asked()?.text)[1]).toContain('now "Into the oven" stands there');
    await shop.close();
    await fake.close();
    postbox.close();
    store.close();
  });

  test('that releases asks, though the same stands there: it was decided on what the card said', async () => {
    const batch = await flashedOff();
    for (const line of ['dry impeller-7', 'cure impeller-7 oven 90C', 'temp impeller-7 91C']) await shop.types(line);
    await shop.passes(70);
    await shop.types('temp impeller-7 91C');
    await shop.types('out impeller-7');
    const old = stillShown(batch);
    expect(old.text).toContain('[Release]');
    await shop.types('film impeller-7 13 13 13um', 'UJO');
    shop.clock.moveTo(epochMs(shop.clock.now() + 60_000));
    await shop.taps(old, 'Release');
    expect(await recorded()).not.toContain('PartReleased');
    expect(linesOf(asked()?.text).slice(0, 4)).toEqual([
      'Not clear',
      '"Release" was pressed on an older card: something has been recorded since. Read how it stands, then press it once more.',
      'impeller-7: out of cure',
      'Release: release impeller-7',
    ]);
    await shop.taps(batch, 'Release');
    expect(await recorded()).toContain('PartReleased');
  });
});

describe('a question that one reader sees', () => {
  /** Out of the oven, and to be released; kari has pressed on a card that jo's reading made an older one. */
  async function askedToRelease(options: Parameters<typeof openWorkshop>[0] = {}): Promise<void> {
    const batch = await flashedOff(options);
    for (const line of ['dry impeller-7', 'cure impeller-7 oven 90C', 'temp impeller-7 91C']) await shop.types(line);
    await shop.passes(70);
    await shop.types('temp impeller-7 91C');
    await shop.types('out impeller-7');
    const old = stillShown(batch);
    await shop.types('film impeller-7 13 13 13um', 'UJO');
    await shop.taps(old, 'Release', 'UKARI', { lookedMs: 60_000 });
    expect(linesOf(asked()?.text)[0]).toBe('Not clear');
  }

  test('is asked once more where another reading came since, in the words of how it stands now', async () => {
    await askedToRelease();
    await shop.types('film impeller-7 14 14 14um', 'UJO');
    const before = shop.fake.whispers.filter(({ text }) => text.startsWith('Not clear')).length;
    const question = shop.fake.whispers.findLast(({ text }) => text.startsWith('Not clear'));
    if (question !== undefined) shop.fake.whispers.push(question);
    await shop.tapsWhisper('Release');
    expect(await recorded()).not.toContain('PartReleased');
    expect(shop.fake.whispers.filter(({ text }) => text.startsWith('Not clear'))).toHaveLength(before + 2);
    await shop.tapsWhisper('Release');
    expect(await recorded()).toContain('PartReleased');
  });

  test('is asked once more where another reading was recorded on another front end', async () => {
    await askedToRelease();
    const [wired] = shop.wired.values();
    const answer = await wired?.host.handle({ text: 'film impeller-7 14 14 14um', as: 'jo', in: '1', id: undefined });
    await shop.slack.refresh(answer);
    await shop.tapsWhisper('Release');
    expect(await recorded()).not.toContain('PartReleased');
  });

  test('is asked once more where the program has started anew since', async () => {
    const [store, postbox] = [openSqliteStore(':memory:'), openSqlitePostbox(':memory:')];
    const fake = await startFakeSlack(() => shop.clock.now());
    await askedToRelease({ store, postbox, fake });
    const at = new Date(shop.clock.now() + 60_000).toISOString();
    await shop.close();
    shop = await openWorkshop({ store, postbox, fake, at });
    await shop.tapsWhisper('Release');
    expect(await recorded()).not.toContain('PartReleased');
    await shop.tapsWhisper('Release');
    expect(await recorded()).toContain('PartReleased');
    await shop.close();
    await fake.close();
    postbox.close();
    store.close();
  });

  test('directly loses its tap with the next reading, and a thumb that was on its way is asked once more', async () => {
    const batch = await flashedOff();
    for (const line of ['dry impeller-7', 'cure impeller-7 oven 90C', 'temp impeller-7 91C']) await shop.types(line);
    await shop.passes(70);
    await shop.types('temp impeller-7 91C');
    await shop.types('out impeller-7');
    expect(batch.text).toContain('[Release]');
    await shop.opensHome();
    // Its home tab shows another air, just now.
    await shop.types('air 25C 47%', 'UJO');
    await shop.tapsHome('Release', 'UKARI', { lookedMs: 700 });
    const question = shop.fake.inChannel('DUKARI').at(-1);
    if (question === undefined) throw new Error('nothing was asked');
    const old = stillShown(question);
    await shop.types('film impeller-7 14 14 14um', 'UJO');
    expect(question.blocks.some(({ type }) => type === 'actions')).toBe(false);
    await shop.taps(old, 'Release');
    expect(await recorded()).not.toContain('PartReleased');
  });
});
