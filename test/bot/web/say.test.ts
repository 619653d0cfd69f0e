import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { openShop, type ShopPage } from './shop-page.ts';
import { visitor } from './visitor.ts';

let shop: ShopPage;
let kari: ReturnType<typeof visitor>;

beforeEach(async () => {
  shop = await openShop();
  kari = visitor(shop.address);
  await kari.enter('Kari');
});
afterEach(() => {
  vi.useRealTimers();
  return shop.stop();
});

/** The titles of all that the page has told, oldest first. */
const told = () =>
  shop
    .conversation()
    .newest(100, 'Kari')
    .map(({ answer }) => answer.card.title);

describe('a line from the page', () => {
  test('without script: the form is posted and the page comes back at its answer', async () => {
    const token = await kari.token();
    const answer = await kari.post('/say', { token, form: 'c-0', as: 'Kari', line: 'air 24C 48%' });
    expect(answer.status).toBe(303);
    expect(answer.headers.get('location')).toBe('/#post-1');
    expect(await (await kari.request('/')).text()).toContain('id="post-1"');
  });

  test('delivered twice under one id it is one event and the same answer', async () => {
    await kari.say('Kari', 'air 24C 48%');
    const first = await kari.say('Kari', 'mix 2.4kg', { form: 'one' });
    const again = await kari.say('Kari', 'mix 2.4kg', { form: 'one' });
    expect(again.body.n).toBe(first.body.n);
    expect(again.body.html).toBe(first.body.html);
    expect(told().filter((title) => title.startsWith('Batch'))).toEqual(['Batch 1: Demo Clear']);
    // And the record holds one batch, not two.
    expect((await kari.say('Kari', 'mix 1kg')).body.html).toContain('Batch 2');
  });

  test('delivered twice at the same moment it is one event', async () => {
    await kari.say('Kari', 'air 24C 48%');
    const [one, other] = await Promise.all([
      kari.say('Kari', 'mix 2.4kg', { form: 'both' }),
      kari.say('Kari', 'mix 2.4kg', { form: 'both' }),
    ]);
    expect(one.body.n).toBe(other.body.n);
    expect(told().filter((title) => title.startsWith('Batch'))).toHaveLength(1);
  });

  test('a question is told once, too', async () => {
    const first = await kari.say('Kari', 'now', { form: 'q' });
    const again = await kari.say('Kari', 'now', { form: 'q' });
    expect(again.body.n).toBe(first.body.n);
  });

  test('other words in the same form, or the same form of somebody else, are another delivery', async () => {
    const first = await kari.say('Kari', 'air 24C 48%', { form: 'one' });
    const other = await kari.say('Kari', 'air 25C 48%', { form: 'one' });
    const ola = visitor(shop.address);
    await ola.enter('Ola');
    const olas = await ola.say('Ola', 'air 24C 48%', { form: 'one' });
    expect(new Set([first.body.n, other.body.n, olas.body.n]).size).toBe(3);
  });

  test('the fields of a tap are filled in, with a unit of their own where one is typed', async () => {
    await kari.say('Kari', 'air 24C 48%');
    await kari.say('Kari', 'mix 2.4kg');
    const line = 'weigh 1 {part-a}g {part-b}g';
    const { body } = await kari.say('Kari', line, { 'field:part-a': '1201', 'field:part-b': '1.198kg' });
    expect(body.html).toContain('weigh 1 1201g 1.198kg');
    expect(body.html).toContain('1198\u00a0g');
  });

  test('an empty field is asked for, not guessed', async () => {
    await kari.say('Kari', 'air 24C 48%');
    await kari.say('Kari', 'mix 2.4kg');
    const { body } = await kari.say('Kari', 'weigh 1 {part-a}g {part-b}g', {
      'field:part-a': '1201',
      'field:part-b': '',
    });
    expect(body.html).toContain('Not understood');
  });

  test('kept on the phone for 20 minutes it counts from when it was typed, and is marked late', async () => {
    await kari.say('Kari', 'air 24C 48%');
    await kari.say('Kari', 'mix 2.4kg');
    await shop.wait(30);
    const { body } = await kari.say('Kari', 'weigh 1 1201g 1198g', { age: String(20 * 60_000) });
    expect(body.html).toContain('Happened at 08:10');
    expect(body.html).toContain('Counts since 08:10');
  });

  test('what was typed on another person’s page is not recorded under this one’s name', async () => {
    const { status, body } = await kari.say('Ola', 'air 24C 48%');
    expect(status).toBe(409);
    expect(body.why).toContain('typed by Ola');
    expect(shop.conversation().latest()).toBe(0);
  });

  test('too long for a line, or too big for a form, is turned away', async () => {
    expect((await kari.say('Kari', 'x'.repeat(501))).status).toBe(400);
    expect((await kari.say('Kari', 'now', { 'field:x': 'y'.repeat(200_000) })).status).toBe(413);
  });

  test('more lines than hands can type are held up, and say for how long', async () => {
    const token = await kari.token();
    const statuses: number[] = [];
    // Typed at once, however long the machine takes for it.
    vi.useFakeTimers({ toFake: ['performance'] });
    for (let i = 0; i < 40 && !statuses.includes(429); i += 1) {
      const answer = await kari.post('/say', { token, form: `f${i}`, as: 'Kari', line: '#' });
      statuses.push(answer.status);
      if (answer.status === 429) expect(Number(answer.headers.get('retry-after'))).toBeGreaterThan(0);
    }
    expect(statuses.slice(0, 30)).toEqual(Array(30).fill(303));
    expect(statuses).toContain(429);
  });

  test('markup in what is typed stays text', async () => {
    const { body } = await kari.say('Kari', '<img src=x onerror=alert(1)>');
    expect(body.html).toContain('&lt;img');
    expect(body.html).not.toContain('<img');
  });
});

describe('who sees what', () => {
  test('what is recorded is the crew’s, a misread or a question is the speaker’s own', async () => {
    await kari.say('Kari', 'air 24C 48%');
    await kari.say('Kari', 'mixx about two');
    await kari.say('Kari', 'help');
    const seen = shop.conversation().newest(10, 'Ola');
    expect(seen.map(({ said }) => said)).toEqual(['air 24C 48%']);
  });
});

describe('words that every object has', () => {
  test.each(['set __proto__', 'set constructor', 'set booth -0 __proto__ 4m2', 'part __proto__ steel', 'constructor'])(
    '%s is answered like any other line, and the next one is recorded',
    async (line) => {
      expect((await kari.say('Kari', line)).status).toBe(200);
      expect((await kari.say('Kari', 'air 24C 48%')).body.html).toContain('Air, room');
      expect((await kari.request('/')).status).toBe(200);
    },
  );
});

describe('many parts from the page', () => {
  const table = 'Pieza;Serie;Área (m²)\nRiel 01;4411;0,2\nRiel 02;4412;0,2\n';

  test('a list that was pasted is shown, and one tap books it', async () => {
    const asked = await kari.say('Kari', 'rail-1\nrail-2, rail-3', { list: 'parts' });
    expect(asked.body.html).toContain('3 parts to book in');
    // What was pasted is not shown whole.
    expect(asked.body.html).toContain('parts in and 2 more');
    const line = /name="line" value="(part rail[^"]*)"/.exec(asked.body.html ?? '')?.[1] ?? '';
    expect((await kari.say('Kari', line)).body.html).toContain('3 parts: noted');
  });

  test.each([
    ['UTF-8', new TextEncoder().encode(table)],
    ['Windows-1252', Buffer.from(table, 'latin1')],
    ['UTF-16', Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(table, 'utf16le')])],
  ])('without script: a file that was chosen is read, written in %s', async (_, bytes) => {
    const form = new FormData();
    const fields = { token: await kari.token(), form: 'p-0', as: 'Kari', list: 'parts', line: '' };
    for (const [name, value] of Object.entries(fields)) form.set(name, value);
    form.set('file', new Blob([new Uint8Array(bytes)], { type: 'text/csv' }), 'parts.csv');
    const answer = await kari.request('/say', { method: 'POST', body: form });
    expect(answer.status).toBe(303);
    const page = await (await kari.request('/')).text();
    expect(page).toContain('riel-01: serial 4411, 0.2 m²');
  });

  test('a list of two hundred with all that is known of each goes through, and so does its tap', async () => {
    const rows = Array.from(
      { length: 200 },
      (_, i) => `bracket-${i + 1},SERIAL-${9000 - i * 7},Job 88,Stainless steel,6,0.2,120`,
    );
    const list = ['name,serial,job,material,thickness,area,max', ...rows].join('\n');
    const asked = await kari.say('Kari', list, { list: 'parts' });
    expect(asked.body.html).toContain('200 parts to book in');
    const line =
      /name="line" value="(as-asked [^"]*)"/.exec(asked.body.html ?? '')?.[1]?.replaceAll('&quot;', '"') ?? '';
    expect((await kari.say('Kari', line)).body.html).toContain('200 parts: noted');
  });
});
