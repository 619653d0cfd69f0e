// Thirty parts from one pot, with names as long as people make them: what the message shows and offers at each stage
// stays within what Slack takes, and one tap says for all what they all wait for.

import { afterEach, describe, expect, test } from 'vitest';
import { openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
afterEach(() => shop.close());

const names = Array.from({ length: 30 }, (_, i) => `bracket-for-the-left-${100 + i}`);
const some = 'bracket-for-the-left-117';

async function coatedTogether(): Promise<void> {
  shop = await openWorkshop();
  await shop.types('mix 2.4kg 24C 48%');
  await shop.types('weigh 1 1201g 1198g');
  await shop.passes(102);
  await shop.types('filter 1');
  await shop.types(`coat new ${names.join(' ')} 1 flow`);
}
const labels = () => JSON.stringify(shop.batch().blocks);
const allInPhase = (phase: string) => names.every((name) => shop.batch().text.includes(`${name}: ${phase}`));

describe('thirty parts coated together', () => {
  test('are one tap each stage, and each can still be picked by its name', async () => {
    await coatedTogether();
    expect(allInPhase('flash-off')).toBe(true);
    expect(labels()).toContain('static_select');

    await shop.passes(15);
    await shop.taps(shop.batch(), 'Dry (30)');
    expect(allInPhase('dry')).toBe(true);

    await shop.taps(shop.batch(), 'Into the oven (30)');
    expect(allInPhase('in cure')).toBe(true);

    await shop.taps(shop.batch(), `${names[0]}: Part reads…`);
    await shop.fills({ 'part-temperature': '90' });
    expect(shop.batch().text).toContain('part at 90 °C');

    await shop.types(`temp ${some} 90C`);
    await shop.types(`already out ${names.join(' ')}`);
    expect(allInPhase('out of cure')).toBe(true);
    expect(labels()).toContain('Pot empty');
    // Whatever Slack would have refused on the way is a complaint of its stand-in, and so of this test's end.
  });

  test('leave what is not in the list to be typed, and the text says how many taps it does not name', async () => {
    await coatedTogether();
    expect(shop.batch().text.split('\n').at(-1)).toMatch(/^\[Dry \(30\)\] .*\[\+\d+\]$/);
    expect(JSON.stringify(shop.batch().blocks).length).toBeLessThan(13_000);
  });

  test('and picked from the list again after an objection, the list takes the same choice once more', async () => {
    await coatedTogether();
    await shop.passes(15);
    await shop.types(`dry ${names.join(' ')}`);
    const before = rowId();
    await shop.types('set sheet demo-clear');
    const [first = ''] = names;
    await shop.types(`cure ${first} oven 90C`);
    await shop.taps(shop.batch(), `${first}: Out`);
    expect(shop.fake.inThread(shop.batch().ts).at(-1)?.text).toContain('Not yet');
    expect(rowId()).not.toBe(before);
    const afterOne = rowId();
    await shop.taps(shop.batch(), `${first}: Out`);
    expect(rowId()).not.toBe(afterOne);
  });
});

const rowId = () => shop.batch().blocks.find(({ type }) => type === 'actions')?.block_id;

describe('the standing message', () => {
  test('shows no figure that grows: an act elsewhere costs it no change', async () => {
    shop = await openWorkshop();
    await shop.types('mix 2.4kg 24C 48%');
    await shop.types('weigh 1 1201g 1198g');
    await shop.passes(102);
    await shop.types('filter 1');
    await shop.types('coat new impeller-7 flow');
    await shop.passes(20);
    await shop.types('dry impeller-7');
    await shop.types('cure impeller-7 oven 90C');
    await shop.types('temp impeller-7 90C');
    await shop.passes(30);
    const { edits, text } = shop.batch();
    expect(text).toContain('Cure time given at:');
    expect(text).not.toContain('Cure time given:');
    await shop.types('used acetone 500ml gun-cleaning');
    expect(shop.batch().edits).toBe(edits);
  });

  test('has in its title where the one part that waits is', async () => {
    shop = await openWorkshop();
    await shop.types('mix 2.4kg 24C 48%');
    await shop.types('weigh 1 1201g 1198g');
    await shop.passes(102);
    await shop.types('filter 1');
    await shop.types('coat new impeller-7 flow');
    await shop.passes(20);
    await shop.types('dry impeller-7');
    await shop.types('cure impeller-7 oven 90C');
    expect(shop.batch().text.split('\n')[0]).toBe('Batch 1 Demo Clear: in use · impeller-7: in cure');
  });
});

describe('what rings for thirty parts in one breath', () => {
  const touchIt = 'flash-off, least time over';
  const bells = () => shop.fake.messages.filter(({ text }) => text.includes(touchIt));
  const rang = async () =>
    (await shop.store.eventsAfter('crew', 0)).flatMap(({ body }) =>
      body.type === 'Rang' && body.key.endsWith('flash-least') ? [body.key] : [],
    );

  test('is one message with one mention, and each is recorded as having rung', async () => {
    await coatedTogether();
    await shop.passes(11);
    expect(bells()).toHaveLength(1);
    const [bell] = bells();
    const lines = bell?.text.split('\n') ?? [];
    expect(lines[0]).toBe(`${names[0]}, ${names[1]} +28: ${touchIt} <@UKARI>`);
    expect(lines[1]).toBe('Touch it. If it is dry, say dry.');
    expect(names.every((name) => bell?.text.includes(name))).toBe(true);
    expect(lines.at(-1)).toBe('[Dry (30)] [Heard]');
    expect((await rang()).sort()).toEqual(names.map((name) => `part/${name}/flash-least`).sort());
  });

  test('is heard for all of them with one tap, and said dry for all with another', async () => {
    await coatedTogether();
    await shop.passes(11);
    const [bell] = bells();
    if (bell === undefined) throw new Error('no bell rang');
    await shop.taps(bell, 'Heard');
    const heard = (await shop.store.eventsAfter('crew', 0)).filter(({ body }) => body.type === 'RingAnswered');
    expect(heard).toHaveLength(30);
    expect(bell.text).toContain('kari: Heard');
  });

  test('is tried again whole where Slack turns it away, and rings once', async () => {
    await coatedTogether();
    shop.fake.fail('chat.postMessage', { is: 'limited', seconds: 1 });
    await shop.passes(11);
    expect(bells()).toHaveLength(1);
    expect(await rang()).toHaveLength(30);
  });

  test('names them as a reader counts, whichever of them rings for all', async () => {
    shop = await openWorkshop();
    for (const line of ['mix 2.4kg 24C 48%', 'weigh 1 1201g 1198g']) await shop.types(line);
    await shop.passes(102);
    for (const line of ['filter 1', 'coat new plate-29 plate-3 plate-30 plate-22 1 flow']) await shop.types(line);
    await shop.passes(11);
    const lines = bells()[0]?.text.split('\n') ?? [];
    expect(lines[0]).toContain('plate-3, plate-22 +2');
    expect(lines).toContain('plate-3, plate-22, plate-29, plate-30');
  });

  test('is apart from a part that was coated later', async () => {
    await coatedTogether();
    await shop.types('coat new late-one 1 flow');
    await shop.passes(2);
    await shop.types('coat new shaft-9 1 flow');
    await shop.passes(12);
    expect(bells().map(({ text }) => text.split(':')[0])).toEqual([`${names[0]}, ${names[1]} +29`, 'shaft-9']);
  });
});
