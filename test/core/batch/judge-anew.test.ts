// A batch of before a rule, judged anew by it: marked from then on, and nothing else moves.

import { describe, expect, it } from 'vitest';
import type { Envelope } from '../../../core/history.ts';
import { traceBatch, tracePart } from '../../../core/records/trace.ts';
import { editionOfToday } from '../../../core/rule-editions.ts';
import { firstHash, hashOf } from '../../../core/seal-sums.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs } from '../../../core/units.ts';
import { given, type Shift } from '../given.ts';

/** The demo sheet mixes 10 kg at most (invented); what was added to a pot has counted only since the second edition. */
const addedTooMuch = [
  '08:00 air 24C 48%',
  '08:00 mix 9.9kg',
  '08:00 weigh 1 5000g 4900g already',
  '08:05 add 1 b 110g already',
  '10:30 filter 1 already',
  '10:35 coat new rail-1 1 flow already',
];
const tooMuch = 'PartAdded 08:05 adding-passes-most';

/** The same record as the rules of the first edition judged it. */
async function ofFirstEdition(lines: readonly string[]): Promise<Shift> {
  const store = openSqliteStore(':memory:');
  let previousHash = firstHash;
  const envelopes = (await (await given(lines)).events()).map((envelope): Envelope => {
    const unsealed = { ...envelope, edition: 1 as const, previousHash };
    previousHash = hashOf(unsealed);
    return { ...unsealed, hash: previousHash };
  });
  await store.commit({
    crew: 'crew',
    after: { seq: 0, hash: firstHash },
    envelopes,
    plan: new Map(),
    live: new Map(envelopes.map(({ stream }) => [stream, true])),
    answers: [],
    now: epochMs(0),
  });
  return given([], { store });
}

describe('a batch of the first edition of the rules', () => {
  it('given a rule of the second, then it is not asked by it, until a lead has the batch judged anew', async () => {
    const shift = await ofFirstEdition(addedTooMuch);
    expect(await shift.deviations()).not.toContain(tooMuch);
    expect(tracePart(await shift.shop(), 'rail-1')?.editions).toEqual([1]);

    expect(await shift.when('12:00 @omar: judge anew batch 1')).toEqual({ recorded: ['JudgedAnew'] });

    expect(await shift.deviations()).toContain(tooMuch);
    expect(tracePart(await shift.shop(), 'rail-1')?.editions).toEqual([editionOfToday]);
    expect(traceBatch(await shift.shop(), 1)?.editions).toEqual([editionOfToday]);
  });

  it('given it is judged anew, then no bell moves, and the part stands as it stood', async () => {
    const shift = await ofFirstEdition(addedTooMuch);
    await shift.when('11:59 empty 1 100g');
    const [bells, part] = [await shift.plan(), (await shift.shop()).parts.get('rail-1')];

    await shift.when('12:00 @omar: judge 1');

    expect(await shift.plan()).toEqual(bells);
    expect((await shift.shop()).parts.get('rail-1')).toEqual(part);
  });

  it('given what judged it anew is taken back, then it is judged by the rules of its day again', async () => {
    const shift = await ofFirstEdition(addedTooMuch);
    await shift.when('12:00 @omar: judge 1');
    expect(await shift.when('12:01 @omar: undo')).toEqual({ recorded: ['Amended'] });
    expect(await shift.deviations()).not.toContain(tooMuch);
  });

  it('given crew asks for it, then that is for a lead, whatever is said to have happened', async () => {
    const shift = await ofFirstEdition(addedTooMuch);
    for (const line of ['judge anew 1', 'judge 1 already']) {
      expect(await shift.when(`12:00 ${line}`)).toEqual({ unclear: 'may-not-judge' });
    }
  });
});
