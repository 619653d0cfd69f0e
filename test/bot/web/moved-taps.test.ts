// A tap on the page says where it stood and what its button said: what runs is drawn anew under the thumb, and a card in
// the conversation is an older one once more was recorded.

import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openShop, type ShopPage } from './shop-page.ts';
import { visitor } from './visitor.ts';

let shop: ShopPage;
let kari: ReturnType<typeof visitor>;
let boardBreaks: boolean;

beforeEach(async () => {
  boardBreaks = false;
  shop = await openShop({ boardBreaks: () => boardBreaks });
  kari = visitor(shop.address);
  await kari.enter('Kari');
});
afterEach(() => shop.stop());

/** Ready to be said dry. */
async function flashedOff(): Promise<void> {
  for (const line of ['mix 2.4kg 24C 48%', 'weigh 1 1201g 1198g']) await shop.say('Kari', line);
  await shop.wait(103);
  for (const line of ['filter 1', 'coat new impeller-7 flow']) await shop.say('Kari', line);
  await shop.wait(12);
}

/** The form of a tap as it stands in the page: what the browser would send. */
async function tapOn(html: string, label: string): Promise<Readonly<Record<string, string>>> {
  const forms = [...html.matchAll(/<form class="tap"[^>]*>(.*?)<\/form>/gs)].map(([, inner = '']) => inner);
  const found = forms.find((inner) => inner.includes(`name="label" value="${label}"`));
  if (found === undefined) throw new Error(`no tap "${label}"`);
  return Object.fromEntries(
    [...found.matchAll(/name="([^"]+)" value="([^"]*)"/g)].map(([, name = '', value = '']) => [name, value]),
  );
}
const strip = async () =>
  /<section class="strip".*?<\/section>/s.exec(await (await kari.request('/')).text())?.[0] ?? '';
const press = (fields: Readonly<Record<string, string>>, more: Readonly<Record<string, string>> = {}) => {
  const { line = '', place = '', label = '', lastAct } = fields;
  return kari.say('Kari', line, { place, label, ...(lastAct === undefined ? {} : { lastAct }), ...more });
};
const newest = () => shop.conversation().newest(1, 'Kari')[0]?.answer;

describe('a tap in what runs', () => {
  test('that stands there still is recorded at once', async () => {
    await flashedOff();
    await press(await tapOn(await strip(), 'Dry'));
    await press(await tapOn(await strip(), 'Into the oven'));
    expect(newest()).toMatchObject({ kind: 'reply', recorded: true });
    expect(newest()?.card.title).toContain('in cure');
  });

  test('where something else stood until a moment ago is asked about', async () => {
    await flashedOff();
    const { label, line } = await tapOn(await strip(), 'Dry').then((fields) => ({ label: 'Dry', line: fields.line }));
    await press(await tapOn(await strip(), 'Dry'));
    const answer = await press(await tapOn(await strip(), 'Into the oven'), { was: JSON.stringify({ label, line }) });
    expect(newest()).toMatchObject({ kind: 'misread', code: 'card-moved', recorded: false });
    expect(newest()?.card.lines).toEqual([
      'The card changed under the thumb: "Into the oven" was pressed, and until a moment ago "Dry" stood there. Which is meant?',
      'Into the oven: cure impeller-7 oven 90C',
      'Nothing is recorded.',
    ]);
    // The question is a card like any other: one tap says it all the same.
    await press(await tapOn(answer.body.html ?? '', 'Into the oven'));
    expect(newest()?.card.title).toContain('in cure');
  });

  test('of a page that shows an older card is asked about where another thing stands by now', async () => {
    await flashedOff();
    const old = await tapOn(await strip(), 'Dry');
    await shop.say('Ola', 'dry impeller-7');
    await press(old);
    expect(newest()?.card.lines).toEqual([
      '"Dry" was pressed on an older card; now "Into the oven" stands there. Which is meant?',
      'Dry: dry impeller-7',
      'Into the oven: cure impeller-7 oven 90C',
      'Nothing is recorded.',
    ]);
    expect(newest()?.card.actions.map(({ line }) => line)).toEqual(['dry impeller-7', 'cure impeller-7 oven 90C']);
  });

  test('that cries for help is never asked about, whatever stood there', async () => {
    const page = await (await kari.request('/')).text();
    await press(await tapOn(page, 'Fire'), { was: JSON.stringify({ label: 'Dry', line: 'dry impeller-7' }) });
    expect(newest()).toMatchObject({ recorded: true });
    expect(newest()?.card.title).toBe('Fire');
  });
});

describe('a tap while the board cannot be drawn', () => {
  const tapsFor = async (label: string) => tapOn(await (await kari.request('/')).text(), label);
  const send = (fields: Readonly<Record<string, string>>) => kari.post('/say', fields, { accept: 'application/json' });

  test('that cries for help calls all the same', async () => {
    const fire = await tapsFor('Fire');
    boardBreaks = true;
    expect((await send(fire)).status).toBe(200);
    expect(newest()).toMatchObject({ recorded: true });
    expect(newest()?.card.title).toBe('Fire');
  });

  test('that says what happened is recorded', async () => {
    await flashedOff();
    const dry = await tapsFor('Dry');
    boardBreaks = true;
    await send(dry);
    expect(newest()).toMatchObject({ recorded: true });
  });
});

describe('a tap on a card of the conversation', () => {
  async function outOfTheOven(): Promise<void> {
    await flashedOff();
    for (const line of ['dry impeller-7', 'cure impeller-7 oven 90C', 'temp impeller-7 91C'])
      await shop.say('Kari', line);
    await shop.wait(70);
    await shop.say('Kari', 'temp impeller-7 91C');
    await shop.say('Kari', 'out impeller-7');
  }
  const posts = async () => /<ol class="posts".*/s.exec(await (await kari.request('/')).text())?.[0] ?? '';

  test('that releases asks where more was recorded of its part since', async () => {
    await outOfTheOven();
    const release = await tapOn(await posts(), 'Release');
    await shop.say('Ola', 'film impeller-7 24um');
    await press(release);
    expect(newest()).toMatchObject({ code: 'card-moved', recorded: false });
    expect(newest()?.card.lines[0]).toContain('something has been recorded since');
  });

  test('that releases does so at once where only other parts moved', async () => {
    await outOfTheOven();
    const release = await tapOn(await posts(), 'Release');
    await shop.say('Ola', 'part valve-9');
    await press(release);
    expect(newest()?.code).not.toBe('card-moved');
  });

  test('that only says what happened goes through, and the rules object as usual', async () => {
    await flashedOff();
    await shop.say('Kari', 'now');
    const dry = await tapOn(await posts(), 'Dry');
    await shop.say('Ola', 'temp room 23C');
    await press(dry);
    expect(newest()).toMatchObject({ recorded: true });
  });
});

describe('a form that lifts a hold', () => {
  const why = { 'field:why': 'thin film accepted' };
  const strips = async (who: ReturnType<typeof visitor>) =>
    /<section class="strip".*?<\/section>/s.exec(await (await who.request('/')).text())?.[0] ?? '';
  const posts = async (who: ReturnType<typeof visitor>) =>
    /<ol class="posts".*/s.exec(await (await who.request('/')).text())?.[0] ?? '';
  let ola: ReturnType<typeof visitor>;

  async function heldForFilm(): Promise<void> {
    await flashedOff();
    ola = visitor(shop.address);
    await ola.enter('Ola');
    for (const line of ['dry impeller-7', 'cure impeller-7 oven 90C', 'temp impeller-7 91C'])
      await shop.say('Ola', line);
    await shop.wait(70);
    for (const line of ['temp impeller-7 91C', 'out impeller-7', 'film impeller-7 4 4 4um'])
      await shop.say('Ola', line);
  }
  /** As the page sends it: all that the form holds, and what was filled in. */
  async function fill(html: string, label: string, more: Readonly<Record<string, string>>) {
    const forms = [...html.matchAll(/<form[^>]*>(.*?)<\/form>/gs)].map(([, inner = '']) => inner);
    const found = forms.findLast((inner) => inner.includes(`name="label" value="${label}"`));
    if (found === undefined) throw new Error(`no form "${label}"`);
    const {
      line = '',
      place = '',
      lastAct,
    } = Object.fromEntries(
      [...found.matchAll(/name="([^"]+)" value="([^"]*)"/g)].map(([, name = '', value = '']) => [name, value]),
    );
    return ola.say('Ola', line, { place, label, ...(lastAct === undefined ? {} : { lastAct }), ...more });
  }
  const said = () => shop.conversation().newest(1, 'Ola')[0]?.answer;

  test.each([
    ['tile', strips],
    ['card of the conversation', posts],
  ])('on a %s that stands as it was lifts it at once', async (_, shown) => {
    await heldForFilm();
    await fill(await shown(ola), 'Lift the hold', why);
    expect(said()?.card.title).toContain('released');
  });

  test.each([
    ['tile', strips],
    ['card of the conversation', posts],
  ])('on a %s asks where another reading holds the part since it was drawn', async (_, shown) => {
    await heldForFilm();
    const drawn = await shown(ola);
    await shop.say('Kari', 'adhesion impeller-7 0B');
    await fill(drawn, 'Lift the hold', why);
    expect(said()).toMatchObject({ code: 'card-moved', recorded: false });
    expect(said()?.card.lines[1]).toMatch(/^impeller-7: out of cure\. On hold: .*0B/);
    expect(said()?.card.actions.map(({ line }) => line)).toEqual(['release impeller-7 permit hold thin film accepted']);
    // The question, too, is over once more was recorded than it tells.
    const question = await posts(ola);
    await shop.say('Kari', 'rub impeller-7 40 through');
    await fill(question, 'Lift the hold', {});
    expect(said()).toMatchObject({ code: 'card-moved', recorded: false });
    await fill(await posts(ola), 'Lift the hold', {});
    expect(said()?.card.title).toContain('released');
  });

  test('a form that says what happened was meant, whatever was recorded meanwhile', async () => {
    await heldForFilm();
    const drawn = await strips(ola);
    await shop.say('Kari', 'adhesion impeller-7 0B');
    await fill(drawn, 'Dry film', { 'field:dry-films': '12 13 12' });
    expect(said()).toMatchObject({ recorded: true });
  });
});
