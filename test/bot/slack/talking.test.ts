// How the crew talks to it: by command, by mention in a thread, directly; what phones do to a typed line; and where each
// answer goes.

import { afterEach, describe, expect, test } from 'vitest';
import { dropsPicture } from './fake/deliveries.ts';
import { openWorkshop, type Workshop } from './fake/workshop.ts';

let shop: Workshop;
afterEach(() => shop.close());

const started = async (): Promise<Workshop> => {
  shop = await openWorkshop();
  await shop.types('mix 2.4kg 24C 48%');
  await shop.types('weigh 1 1201g 1198g');
  return shop;
};
const lastInThread = () => shop.fake.inThread(shop.batch().ts).at(-1)?.text ?? '';
const lastWhisper = () => shop.fake.whispers.at(-1)?.text ?? '';

describe('a command in the channel', () => {
  test('opens a batch as one message, and tells whoever typed that it was heard', async () => {
    shop = await openWorkshop();
    await shop.types('mix 2.4kg 24C 48%');
    expect(shop.batch().text).toContain('Batch 1 Demo Clear: to be weighed');
    expect(lastWhisper()).toContain('Batch 1: Demo Clear');
    expect(shop.fake.messages).toHaveLength(1);
  });

  test('with nothing after it helps, to whoever typed alone', async () => {
    shop = await openWorkshop();
    await shop.types('');
    expect(lastWhisper()).toContain('mix 2.4kg');
    expect(shop.fake.messages).toHaveLength(0);
  });

  test('that cannot be read is answered to whoever typed alone, and one tap says what was meant', async () => {
    shop = await openWorkshop();
    await shop.types('airr 24C 48%');
    expect(shop.fake.messages).toHaveLength(0);
    expect(lastWhisper()).toContain('Is this it?');
    await shop.tapsWhisper('Air 24 °C 48 %');
    expect(shop.fake.inChannel('C1').at(-1)?.text).toContain('Air: 24 °C');
  });

  test('about the air is said once for all, with who said it, and moves the clocks of the batch', async () => {
    await started();
    const before = shop.batch().text;
    shop.clock.moveTo((shop.clock.now() + 60_000) as never);
    await shop.types('air 17C 60%', 'UJO');
    expect(shop.fake.inChannel('C1').at(-1)?.text).toContain('Said by jo');
    expect(shop.batch().text).not.toBe(before);
  });

  test('understands curly quotes, long dashes, odd spaces and a decimal comma from a phone', async () => {
    shop = await openWorkshop();
    await shop.types('mix\u00a02,4kg 24C 48%');
    await shop.types('weigh 1 1201g 1198g');
    await shop.types('hold impeller—7 “orange peel”');
    expect(shop.batch().text).toContain('A 1201 g');
    expect(lastWhisper()).toContain('impeller-7');
  });
});

describe('a person mentioned in a line', () => {
  test('is known by the name that the crew knows', async () => {
    await started();
    await shop.types('handover <@UJO|johanna>');
    expect(shop.fake.inChannel('C1').at(-1)?.text).toContain('jo');
    const events = await shop.store.eventsAfter('crew', 0);
    expect(JSON.stringify(events.at(-1)?.body)).toContain('"jo"');
    await shop.mentions('handover <@UINES>', undefined);
    const after = await shop.store.eventsAfter('crew', events.length);
    expect(JSON.stringify(after.at(-1)?.body)).toContain('"ines"');
  });
});

describe('in the thread of a batch', () => {
  test('a mention need not name the batch, even where two run', async () => {
    await started();
    await shop.types('mix 1kg');
    const [, second] = shop.fake.inChannel('C1').filter(({ key }) => key?.includes('standing/'));
    await shop.mentions('weigh 500g 500g', second?.ts);
    expect(second?.text).toContain('Batch 2 Demo Clear: mixing time runs');
    await shop.mentions('stop', second?.ts);
    expect(second?.text).toContain('Batch 2 Demo Clear: stirrer off');
  });

  test('a mention need not name the only part that waits', async () => {
    await started();
    await shop.passes(102);
    await shop.mentions('filter', shop.batch().ts);
    await shop.mentions('coat new impeller-7 flow', shop.batch().ts);
    await shop.passes(15);
    await shop.mentions('dry', shop.batch().ts);
    expect(shop.batch().text).toContain('impeller-7: dry');
  });

  test('an empty mention helps, to whoever typed alone', async () => {
    await started();
    await shop.mentions('', shop.batch().ts);
    expect(lastWhisper()).toContain('mix 2.4kg');
  });
});

describe('directly', () => {
  test('a line without any prefix is recorded, shown in the thread, and answered where it was typed', async () => {
    await started();
    await shop.writes('stop 1', 'UJO');
    expect(lastInThread()).toContain('Said by jo');
    expect(shop.fake.inChannel('DUJO').at(-1)?.text).toContain('Batch 1: stirrer off');
  });

  test('a question is answered there and nowhere else', async () => {
    await started();
    const before = shop.fake.messages.length;
    await shop.writes('now', 'UJO');
    expect(shop.fake.messages.length).toBe(before + 1);
    expect(shop.fake.inChannel('DUJO').at(-1)?.text).toContain('Demo Clear');
  });
});

describe('an objection', () => {
  test('stands in the thread, mentions whoever typed, and is lifted by the tap that it already happened, by anyone', async () => {
    await started();
    await shop.types('filter 1');
    const objection = shop.fake.inThread(shop.batch().ts).at(-1);
    expect(objection?.text).toContain('Not yet <@UKARI>');
    expect(objection?.text).toContain('Nothing is recorded.');
    if (objection === undefined) return;
    await shop.taps(objection, 'It already happened', 'UJO');
    expect(shop.batch().text).toContain('jo: filtered');
    expect(objection.text).toContain('jo: It already happened, 08:00');
    expect(objection.blocks.some(({ type }) => type === 'actions')).toBe(false);
  });

  test('that has no batch yet stands in the channel', async () => {
    shop = await openWorkshop();
    await shop.types('mix 2.4kg');
    expect(shop.fake.inChannel('C1').at(-1)?.text).toContain('Not yet');
  });

  test('pressed again later is asked again, and not answered from before', async () => {
    await started();
    await shop.passes(102);
    await shop.types('filter 1');
    await shop.types('coat new impeller-7 flow');
    const batch = shop.batch();
    await shop.taps(batch, 'Dry');
    await shop.taps(batch, 'Into the oven');
    const notYet = () => shop.fake.inThread(batch.ts).filter(({ text }) => text.startsWith('Not yet')).length;
    expect(notYet()).toBe(1);
    await shop.passes(14);
    await shop.taps(batch, 'Into the oven');
    expect(notYet()).toBe(1);
    expect(batch.text).toContain('impeller-7: in cure');
  });
});

describe('a used button', () => {
  test('gives way to what came of it and who pressed it', async () => {
    await started();
    await shop.passes(102);
    const bell = shop.fake.inThread(shop.batch().ts).find(({ text }) => text.startsWith('Batch 1: stirring done'));
    if (bell === undefined) throw new Error('no bell rang');
    await shop.taps(bell, 'Filtered, 1 µm glass fibre, second vessel', 'UJO');
    expect(bell.text).toContain('jo: Filtered, 1 µm glass fibre, second vessel, 09:42');
    expect(bell.text).not.toContain('[Filtered]');
    expect(bell.blocks.some(({ type }) => type === 'actions')).toBe(false);
  });

  test('pressed twice within a breath by a gloved thumb is one act', async () => {
    await started();
    const batch = shop.batch();
    const stopped = structuredClone(batch);
    await shop.taps(batch, 'Stirrer off');
    await shop.taps(stopped, 'Stirrer off');
    expect(batch.text.match(/kari: stirrer off$/gm)).toHaveLength(1);
  });

  test('leaves only what the batch allows now', async () => {
    await started();
    await shop.taps(shop.batch(), 'Stirrer off');
    expect(shop.batch().text).toContain('[Stirrer on]');
    expect(shop.batch().text).not.toContain('[Stirrer off]');
  });
});

describe('words that somebody typed', () => {
  test('ping nobody and hide no link', async () => {
    await started();
    await shop.passes(102);
    await shop.types('filter 1');
    await shop.types('coat new impeller-7 flow');
    await shop.types('hold impeller-7 <!channel> & <https://example.com|the sheet> <@UINES>');
    const said = shop.fake.inThread(shop.batch().ts).at(-1);
    expect(said?.text).toContain('&lt;!channel&gt; &amp;');
    expect(said?.text).not.toContain('<!channel>');
    expect(JSON.stringify(said?.blocks)).not.toContain('mrkdwn');
  });
});

describe('a picture', () => {
  test('dropped in the thread is filed with its batch, or with the part that its words name', async () => {
    await started();
    await shop.passes(102);
    await shop.types('filter 1');
    await shop.types('coat new impeller-7 flow');
    const drop = (text: string, id: string) =>
      shop.deliver(
        dropsPicture({ thread_ts: shop.batch().ts, text, files: [{ id, name: 'film.jpg', mimetype: 'image/jpeg' }] }),
      );
    await drop('', 'F1');
    await drop('impeller-7 a run at the edge', 'F2');
    expect(shop.batch().text).toContain('kari: picture filed');
    const filed = await shop.store.eventsUnder('crew', 'part/impeller-7');
    expect(filed.at(-1)?.body).toEqual({
      type: 'PhotoFiled',
      reference: 'slack:F2',
      caption: 'impeller-7 a run at the edge',
    });
    const onBatch = await shop.store.eventsUnder('crew', 'batch/1');
    expect(onBatch.some(({ body }) => body.type === 'PhotoFiled' && body.reference === 'slack:F1')).toBe(true);
  });

  test('anywhere else, and anything that is no picture, is none of its business', async () => {
    await started();
    const before = shop.fake.calls.length;
    await shop.deliver(dropsPicture({ thread_ts: '1.1' }));
    const files = [{ id: 'F3', name: 'order.pdf', mimetype: 'application/pdf' }];
    await shop.deliver(dropsPicture({ thread_ts: shop.batch().ts, files }));
    expect(shop.fake.calls.length).toBe(before);
  });
});
