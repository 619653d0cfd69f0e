// What the maker's paper asks, and what of it was done, as the traveller tells it a year later: surface, papers, gas, the stir
// of Part A in its can, filter, method. Read back from the PDF.

import { join } from 'node:path';
import { afterEach, expect, it } from 'vitest';
import { readPdf } from './read-pdf.ts';
import { openRecordsShop, type RecordsShop } from './records-shop.ts';

let shop: RecordsShop | undefined;
afterEach(() => shop?.close());

async function travellerAfter(...lines: readonly string[]): Promise<string> {
  shop = openRecordsShop();
  for (const line of lines) {
    const { recorded, text } = await shop.say(line);
    if (!recorded) throw new Error(`"${line}" was not recorded: ${text}`);
  }
  const { card } = await shop.say('12:00 traveller impeller-7');
  return (await readPdf(join(shop.folder, card.paper ?? 'no paper'))).text;
}

const weighed = ['08:00 mix 2.4kg', '08:00 weigh 3 1200g 1200g'];
const cans = [
  ...['07:50 air 24C 48%', '07:52 open A lot 7731 5kg gas', '07:53 open B lot 8802 5kg', '07:54 prestir 1'],
  ...weighed,
];

it('given all was said, then it tells surface, papers, stir in the can, gas, stir, filter into the second vessel, method', async () => {
  const text = await travellerAfter(
    ...['07:40 part impeller-7 serial 4411 job 88', '07:41 prep impeller-7 sa2.5 55um degreased acetone'],
    ...['07:42 prep impeller-7 salts 12uS/cm', '07:43 confirm papers yes', ...cans, '08:01 blanket 1'],
    ...['08:02 stir 3 300rpm', '09:50 stop 3', '09:50 filter 3 1um glass fibre second vessel'],
    '10:00 coat impeller-7 3 brush',
  );
  for (const wanted of [
    'Surface: Sa 2½, oil, grease off, with acetone; not given: dust left',
    'prepared salts 14.4 mg/m², conductivity 12 µS/cm',
    'Papers of Demo Clear (revision 1): read by omar 2026-03-02 07:43',
    'Part A: lot 7731, can 1, 1200 g, stirred in the can 6 min of 2 min, gas over it at 08:01, 9 min after the lid came off',
    'stirrer on, speed of the stirrer 300 rpm',
    'filtered, 1 µm glass fibre, second vessel',
    'brush',
    'None by the record.',
  ]) {
    expect(text, wanted).toContain(wanted.normalize('NFKC'));
  }
});

it('given nothing was said of surface, papers or filter, then it says so, and of the filter no more than that it was filtered', async () => {
  const text = await travellerAfter(
    ...['07:50 air 24C 48%', '08:00 mix 1kg', '08:01 weigh 1 500g 500g', '09:50 filter 1'],
    '10:00 coat new impeller-7 1 flow',
  );
  for (const wanted of [
    'Surface: not given: oil, grease, dust, rust, the old coat, grade, profile, salts, dust left',
    'Papers of Demo Clear (revision 1): nobody has said that they have read them',
    'Lots not known: nobody told of a can.',
    'flow',
  ]) {
    expect(text, wanted).toContain(wanted.normalize('NFKC'));
  }
  expect(text).not.toContain('second vessel');
  expect(text).not.toContain('glass fibre');
});

it('given another filter than the sheet’s, into the same vessel, then the paper has it as a deviation', async () => {
  const text = await travellerAfter(
    ...[
      '07:50 air 24C 48%',
      '08:00 mix 1kg',
      '08:01 weigh 1 500g 500g',
      '09:50 filter 1 10um nylon same vessel already',
    ],
    '10:00 coat new impeller-7 1 brush already',
  );
  expect(text).toContain('Filtering told: 10 µm nylon, same vessel.'.normalize('NFKC'));
});

it('given a spray without extraction or supplied air that went on all the same, then the paper says who, where and with what', async () => {
  const text = await travellerAfter(
    ...['07:50 air 24C 48%', '08:00 mix 2.4kg', '08:01 weigh 1 1200g 1200g', '09:50 filter 1'],
    ...['09:51 brief 1 spray kari', '09:52 @kari: ack', '09:53 fan no', '09:53 supplied no'],
    ...['09:55 spray on already', '10:00 @kari: coat new impeller-7 1 spray already'],
  );
  expect(text).toMatch(/There is no extraction, and there is no supplied air/);
  expect(text).toMatch(/09:55 omar spraying starts, room/);
  expect(text).toContain('brief read by kari');
});
