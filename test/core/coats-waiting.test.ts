// Which coats a pot in use offers with one tap. Common practice, no source: a crew mostly goes on as it did.

import { describe, expect, it } from 'vitest';
import { statusOf } from '../../core/status.ts';
import { epochMs } from '../../core/units.ts';
import { given, type Shift } from './given.ts';

const inUse = ['08:00 air 24C 48%', '08:00 mix 1kg', '08:01 weigh 1 500g 500g', '10:00 filter 1'];
const now = epochMs(Date.UTC(2026, 2, 2, 12, 30));

/** `plate-1 flow`: what the pot offers. */
async function offeredBy(shift: Shift, number = 1): Promise<readonly string[]> {
  const shop = await shift.shop();
  const batch = shop.batches.get(number);
  const next = batch === undefined ? [] : statusOf.batch({ shop, now }, batch).next();
  return next.flatMap(({ id, command }) =>
    id === 'coat-part' && command.verb === 'coat' ? [`${command.parts.join()} ${command.method}`] : [],
  );
}

describe('a pot in use', () => {
  it('given it went on a part already, then it offers the bare parts, the last spoken of first, by the same method', async () => {
    const shift = await given([...inUse, '10:01 part rail-1', '10:02 part rail-2', '10:03 coat new plate-1 1 dip']);
    expect(await offeredBy(shift)).toEqual(['rail-2 dip', 'rail-1 dip']);
  });

  it('given no coat yet, then the method is that of the pot before it of the same product', async () => {
    const shift = await given([...inUse, '10:01 coat new plate-1 1 brush', '10:02 mix 1kg', '10:03 weigh 2 500g 500g']);
    await shift.when('12:20 filter 2');
    await shift.when('12:21 part rail-1');
    expect(await offeredBy(shift, 2)).toEqual(['rail-1 brush']);
  });

  it('given no method was ever said, then nothing is guessed', async () => {
    expect(await offeredBy(await given([...inUse, '10:01 part rail-1']))).toEqual([]);
  });

  it('given it is not filtered, or a part is held or coated, then it is not offered', async () => {
    const shift = await given([
      ...inUse,
      '10:01 coat new plate-1 1 dip',
      '10:02 part rail-1',
      '10:03 hold rail-1 rust',
    ]);
    expect(await offeredBy(shift)).toEqual([]);
    for (const line of ['10:04 part rail-2', '10:05 mix 1kg', '10:06 weigh 2 500g 500g']) await shift.when(line);
    expect(await offeredBy(shift, 2)).toEqual([]);
  });

  it('given a bare part, then its own card offers the coat too', async () => {
    const shift = await given([...inUse, '10:01 coat new plate-1 1 dip', '10:02 part rail-1']);
    const shop = await shift.shop();
    const part = shop.parts.get('rail-1');
    const ids =
      part &&
      statusOf
        .part({ shop, now }, part)
        .next()
        .map(({ id }) => id);
    expect(ids).toEqual(['surface', 'prep', 'coat-part']);
  });
});
