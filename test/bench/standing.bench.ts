// The card that a chat platform keeps of a batch, with sixty parts coated from it: made anew at each act and each bell.

import { bench, describe } from 'vitest';
import { standingOf } from '../../bot/cards/standing-card.ts';
import { shipped } from '../../bot/language/tongues/tongues.ts';
import { tellingOf } from '../../bot/talk/telling.ts';
import { given } from '../core/given.ts';

const names = Array.from({ length: 60 }, (_, i) => `bracket-${100 + i}`).join(' ');
const shift = await given([
  'Mon 08:00 air 24C 48%',
  '08:00 mix 2.4kg',
  '08:00 weigh 1 1201g 1198g',
  '09:50 filter 1',
  `09:51 coat new ${names} 1 flow`,
]);

async function standing(since: string): Promise<() => void> {
  const shop = await shift.shop();
  const telling = tellingOf({ tongues: shipped, now: shift.time(since) }, shop, undefined);
  return () => void standingOf(telling, 1, shop.batches.get(1));
}

const flashing = await standing('Mon 09:52');
await shift.when(`10:06 dry ${names}`);
const dry = await standing('Mon 10:07');
await shift.when(`10:08 cure ${names} oven 90C`);
const curing = await standing('Mon 10:09');
await shift.when('10:30 temp 90C');
await shift.when(`13:00 happened out ${names}`);
const cured = await standing('Mon 13:01');

describe('the message of a batch with sixty parts', () => {
  bench('in flash-off', flashing);
  bench('dry', dry);
  bench('in cure', curing);
  bench('out of cure', cured);
});
