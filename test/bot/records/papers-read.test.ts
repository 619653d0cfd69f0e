// Who has read the maker's papers, and in which revision, stands in the day, in the trace of pot and part, and on paper; of
// those who had a hand in the pot and said nothing too.

import { join } from 'node:path';
import { afterEach, expect, it } from 'vitest';
import { readPdf } from './read-pdf.ts';
import { openRecordsShop, type RecordsShop } from './records-shop.ts';

let shop: RecordsShop | undefined;
afterEach(() => shop?.close());

async function shopAfter(...lines: readonly string[]): Promise<RecordsShop> {
  shop = openRecordsShop();
  for (const line of lines) await shop.say(line);
  return shop;
}

const pot = ['07:50 air 24C 48%', '08:00 mix 1kg', '08:01 weigh 1 500g 500g', '09:50 filter 1'];
const coated = '10:00 @kari: coat new impeller-7 1 brush';

it('given one has read them and another had a hand in it too, then both stand in day, traces and traveller', async () => {
  const { say, folder } = await shopAfter('07:55 confirm papers yes', ...pot, coated);
  const told = 'Papers of Demo Clear (revision 1): read by omar 07:55; not said: kari';
  for (const line of ['10:01 day', '10:01 trace 1', '10:01 trace impeller-7']) {
    expect((await say(line)).card.lines, line).toContain(told);
  }
  await say('10:02 @kari: confirm papers yes');
  expect((await say('10:03 trace 1')).text).toContain('read by omar 07:55, kari 10:02');
  const { card } = await say('10:04 traveller impeller-7');
  expect((await readPdf(join(folder, card.paper ?? ''))).text).toContain(
    'Papers of Demo Clear (revision 1): read by omar 2026-03-02 07:55, kari 2026-03-02 10:02',
  );
});

it('given nobody has said it, or it is taken back, then that is said; of a sheet that does not ask, nothing', async () => {
  const { say } = await shopAfter(...pot, '09:51 confirm 1 papers yes', '09:52 undo');
  expect((await say('09:53 trace 1')).text).toContain(
    'Papers of Demo Clear (revision 1): nobody has said that they have read them',
  );
  for (const line of ['10:00 mix 6.45kg demo-build', '10:01 weigh 2 5400g 1050g']) await say(line);
  expect((await say('10:02 trace 2')).text).not.toContain('Papers');
});

it('given a Spanish speaker, then in Spanish', async () => {
  const { say } = await shopAfter('07:54 set language es', '07:55 confirm papers yes', ...pot);
  expect((await say('10:01 trace 1')).text).toContain('Documentos de Demo Clear (revisión 1): leídos por omar 7:55');
});
