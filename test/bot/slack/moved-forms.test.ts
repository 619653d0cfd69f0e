// A form and the home tab stand apart from the card that opened them: what was recorded meanwhile is shown before anything
// is lifted or pressed.

import { afterEach, describe, expect, test } from 'vitest';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import type { Desk } from '../../../bot/slack/crew-desk.ts';
import { createHomes } from '../../../bot/slack/homes.ts';
import type { Call } from '../../../bot/slack/slack-client.ts';
import type { FakeMessage } from './fake/fake-slack.ts';
import { openWorkshop, type Workshop } from './fake/workshop.ts';
import { flashOff, linesOf, recordedOf, stillShown } from './flashed-off.ts';

let shop: Workshop;
afterEach(() => shop.close());

async function flashedOff(): Promise<FakeMessage> {
  shop = await openWorkshop();
  return flashOff(shop);
}
const recorded = () => recordedOf(shop);
const asked = () => shop.fake.whispers.at(-1);

describe('a form that lifts a hold', () => {
  /** Out of the oven, and held for a dry film too thin. */
  async function heldForFilm(): Promise<FakeMessage> {
    const batch = await flashedOff();
    for (const line of ['dry impeller-7', 'cure impeller-7 oven 90C', 'temp impeller-7 91C']) await shop.types(line);
    await shop.passes(70);
    for (const line of ['temp impeller-7 91C', 'out impeller-7', 'film impeller-7 4 4 4um']) await shop.types(line);
    return batch;
  }
  const form = () => JSON.stringify([...shop.fake.views.values()].at(-1));
  const lift = 'Lift the hold…';
  const why = { why: 'thin film accepted' };

  test('shows what it would lift, and does so where nothing else was recorded', async () => {
    const batch = await heldForFilm();
    await shop.taps(batch, lift);
    expect(form()).toMatch(/impeller-7: On hold: [^"]*4/);
    await shop.fills(why);
    expect(await recorded()).toContain('PartReleased');
  });

  test('asks where another reading holds the part since it opened: the reading, and the tap to lift it all the same', async () => {
    const batch = await heldForFilm();
    await shop.taps(batch, lift);
    await shop.types('adhesion impeller-7 0B', 'UJO');
    const { body } = await shop.fills(why);
    expect(body).toBe('');
    expect(await recorded()).not.toContain('PartReleased');
    const [title, sentence, stands, tap] = linesOf(asked()?.text);
    expect([title, sentence]).toEqual([
      'Not clear',
      '"Lift the hold" was pressed on an older card: something has been recorded since. Read how it stands, then press it once more.',
    ]);
    expect(stands).toMatch(/^impeller-7: out of cure\. On hold: .*0B/);
    expect(tap).toBe('Lift the hold: release impeller-7 permit hold thin film accepted');
    expect(asked()?.to).toBe('UKARI');
    await shop.tapsWhisper('Lift the hold');
    expect(await recorded()).toContain('PartReleased');
  });

  test('asks where it was recorded while Slack still shows the old card', async () => {
    const batch = await heldForFilm();
    await shop.taps(batch, lift);
    shop.fake.fail('chat.update', ...Array.from({ length: 5 }, () => ({ is: 'broken', status: 500 }) as const));
    await shop.types('adhesion impeller-7 0B', 'UJO');
    await shop.fills(why);
    expect(await recorded()).not.toContain('PartReleased');
  });

  test('asks where its button was pressed on a card that shows less', async () => {
    const batch = await heldForFilm();
    const old = stillShown(batch);
    await shop.types('adhesion impeller-7 0B', 'UJO');
    await shop.taps(old, lift, 'UKARI', { lookedMs: 60_000 });
    expect(form()).toMatch(/impeller-7: On hold: [^"]*0B/);
    await shop.fills(why);
    expect(await recorded()).not.toContain('PartReleased');
    expect(linesOf(asked()?.text)[2]).toContain('0B');
  });

  test('opened from the home tab is judged the same', async () => {
    await heldForFilm();
    await shop.opensHome();
    await shop.tapsHome(lift);
    await shop.types('adhesion impeller-7 0B', 'UJO');
    await shop.fills(why);
    expect(await recorded()).not.toContain('PartReleased');
  });

  test('a form that says what happened was meant, whatever was recorded meanwhile', async () => {
    const batch = await heldForFilm();
    await shop.taps(batch, 'Dry film…');
    await shop.types('adhesion impeller-7 0B', 'UJO');
    const before = (await recorded()).filter((type) => type === 'FilmRead').length;
    await shop.fills({ 'dry-films': '12 13 12' });
    expect((await recorded()).filter((type) => type === 'FilmRead')).toHaveLength(before + 1);
  });
});

describe('the home tab', () => {
  test('has one change on its way at a time, and the newest comes last', async () => {
    shop = await openWorkshop();
    const [wired] = shop.wired.values();
    const sent: { readonly view: string; readonly end: () => void }[] = [];
    const call: Call = (_, { view }) =>
      new Promise((resolve) => {
        const end = () => resolve({ kind: 'done', result: { view: { hash: String(sent.length) } } });
        sent.push({ view: JSON.stringify(view), end });
      });
    const homes = createHomes(
      call,
      shop.postbox,
      shop.clock.now,
      { info: () => undefined, error: () => undefined },
      shipped,
    );
    const roster = { personOf: async () => 'kari' };
    const desk = { crew: 'crew', overview: wired?.overview, channel: () => 'C1', roster } as unknown as Desk;
    const where = { team: 'T1', user: 'UKARI', channel: undefined, thread: undefined, responseUrl: undefined };
    const opened = homes.show(desk, { ...where, via: 'home' });
    await expect.poll(() => sent.length).toBe(1);
    await shop.types('air 24C 48%');
    const refreshed = homes.refresh(desk);
    // Time enough for a second one to leave, if it would.
    await shop.types('now');
    expect(sent).toHaveLength(1);
    sent[0]?.end();
    await expect.poll(() => sent.length).toBe(2);
    sent[1]?.end();
    await Promise.all([opened, refreshed]);
    expect(sent[1]?.view).toContain('48');
  });

  const onHome = () => JSON.stringify(shop.fake.homes.get('UKARI')?.blocks);

  test('asks where its button changed under the thumb, and says so to whoever pressed', async () => {
    await flashedOff();
    await shop.opensHome();
    await shop.tapsHome('Dry');
    expect(onHome()).toContain('Into the oven');
    await shop.tapsHome('Into the oven', 'UKARI', { lookedMs: 700 });
    expect(await recorded()).not.toContain('CureStarted');
    const question = shop.fake.inChannel('DUKARI').at(-1);
    expect(question?.text).toContain('"Into the oven" was pressed, and until a moment ago "Dry" stood there');
    if (question === undefined) return;
    await shop.taps(question, 'Into the oven');
    expect(await recorded()).toContain('CureStarted');
  });

  test('does at once what has been read', async () => {
    await flashedOff();
    await shop.opensHome();
    await shop.tapsHome('Dry');
    await shop.tapsHome('Into the oven');
    expect(await recorded()).toContain('CureStarted');
  });
});
