// Whatever is recorded in whatever order, and whatever a platform or the power does in between: what is shown comes to be
// what is wished for, nothing is posted twice as far as anyone can know, and only who was called is called.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cardText, makeCard } from '../../../bot/cards/card.ts';
import { makeAnswer } from '../../../bot/talk/answer.ts';
import { batchStream, type StreamId } from '../../../core/ids.ts';
import { openSqlitePostbox } from '../../../core/store/sqlite-postbox.ts';
import { beginLife, entry, type Fault, type Life, standingOf, type World } from './faulty-life.ts';
import { plainText } from './plain-text-platform.ts';

type Step =
  | { readonly is: 'act' | 'end' | 'ring'; readonly batch: number }
  | { readonly is: 'together'; readonly batches: readonly number[] };

const batch = fc.integer({ min: 1, max: 3 });
const step = fc.oneof(
  { weight: 5, arbitrary: fc.record({ is: fc.constant('act' as const), batch }) },
  { weight: 1, arbitrary: fc.record({ is: fc.constant('end' as const), batch }) },
  { weight: 2, arbitrary: fc.record({ is: fc.constant('ring' as const), batch }) },
  {
    weight: 1,
    arbitrary: fc.record({ is: fc.constant('together' as const), batches: fc.array(batch, { maxLength: 3 }) }),
  },
);
const fault = fc.oneof(
  { weight: 2, arbitrary: fc.constant<Fault>('none') },
  {
    weight: 3,
    arbitrary: fc.constantFrom<Fault>('limited', 'unsent', 'lost', 'broken', 'deleted', 'ends-before', 'ends-after'),
  },
);

/** What has been asked for, and what is still to be done by the next life. */
interface Asked {
  readonly entries: { readonly key: string; readonly subject: StreamId; readonly taken: boolean }[];
  readonly rings: Set<string>;
}

test('given any acts, faults and ends, then what is shown comes to be what is wished for', async () => {
  const reached = { lives: 0, blind: 0 };
  await fc.assert(
    fc.asyncProperty(
      fc.array(step, { minLength: 1, maxLength: 14 }),
      fc.array(fault, { maxLength: 60 }),
      async (steps, faults) => {
        const world: World = {
          ...{ plain: plainText(), postbox: openSqlitePostbox(':memory:'), truth: new Map(), faults: [...faults] },
          ...{ blind: 0, now: 0 },
        };
        const asked: Asked = { entries: [], rings: new Set() };
        let life = beginLife(world);
        /** Until it is done, in as many lives as that takes. */
        async function lived(work: (life: Life, again: boolean) => Promise<unknown>): Promise<void> {
          for (let again = false; ; again = true) {
            world.now += 1_000;
            const how = await Promise.race([work(life, again), life.ended]);
            if (how !== 'ended') return;
            reached.lives += 1;
            life = beginLife(world);
          }
        }
        for (const [i, one] of steps.entries()) await play(world, asked, lived, one, i);
        // No fault any more; each batch that goes on moves once more.
        world.faults.length = 0;
        for (const truth of world.truth.values()) if (truth.live) truth.acts += 1;
        life = beginLife(world);
        await lived(({ desk }) => desk.messages.refresh());
        check(world, asked);
        reached.blind += world.blind;
        world.postbox.close();
      },
    ),
    { numRuns: 60, seed: 13 },
  );
  console.log(reached);
  expect(reached.lives).toBeGreaterThan(20);
  expect(reached.blind).toBeGreaterThan(5);
});

type Lived = (work: (life: Life, again: boolean) => Promise<unknown>) => Promise<void>;

async function play(world: World, asked: Asked, lived: Lived, one: Step, i: number): Promise<void> {
  switch (one.is) {
    case 'act':
    case 'end': {
      const subject = batchStream(one.batch);
      const { acts = 0 } = world.truth.get(subject) ?? {};
      world.truth.set(subject, { acts: acts + 1, live: one.is === 'act' });
      return said(asked, lived, subject, `line-${i}-`);
    }
    case 'ring':
      return rung(world, asked, lived, batchStream(one.batch), `batch/${one.batch}/stir/${i}`);
    case 'together': {
      for (const number of one.batches) world.truth.set(batchStream(number), { acts: 100 + i, live: true });
      await lived(({ desk }) =>
        Promise.all([desk.messages.refresh(), ...one.batches.map((n) => desk.messages.messageOf(batchStream(n)))]),
      );
    }
  }
}

/** An act: what was said before gives way, its entry stands in the thread, and the message moves on. */
const said = (asked: Asked, lived: Lived, subject: StreamId, key: string) =>
  lived(async ({ desk, resumed }, again) => {
    if (again) resumed(key);
    await desk.messages.settle([subject]);
    const place = await desk.messages.messageOf(subject);
    if (place !== undefined) {
      const to = { channel: place.post.channel, thread: place.post.ts };
      const posted = await desk.messages.say(to, entry(`${key} of ${subject}`), key, subject);
      asked.entries.push({ key, subject, taken: posted.kind === 'posted' });
    }
    await desk.messages.refresh([subject]);
  });

/** As the ringer does: asked for before it is rung again, until it is told. */
const rung = (world: World, asked: Asked, lived: Lived, subject: StreamId, key: string) => {
  asked.rings.add(key);
  let tried = false;
  return lived(async ({ rings }) => {
    for (;;) {
      world.now += 5_000;
      if (tried && (await rings.wasTold(key)) === 'yes') return;
      tried = true;
      const card = makeCard(`Bell ${key}`, 'plain');
      const head = { at: key, kind: 'reminder', in: null, as: null, to: ['kari'], key, code: null } as const;
      if ((await rings.tell(makeAnswer({ ...head, recorded: true, about: [subject], card }))) === 'posted') return;
    }
  });
};

function check({ plain, truth, postbox, blind, ...world }: World, asked: Asked): void {
  const { messages } = plain;
  const whole = { ...world, plain, truth, postbox, blind };
  for (const [subject, { live }] of truth) {
    if (!live) continue;
    const post = postbox.standingOf('crew', subject);
    const shown = messages.find(({ ts }) => ts === post?.ts);
    expect(shown?.text).toBe(cardText(standingOf(whole, subject).card));
  }
  const times = new Map<string, number>();
  for (const { key } of messages) times.set(key, (times.get(key) ?? 0) + 1);
  const twice = [...times.values()].reduce((sum, count) => sum + count - 1, 0);
  // Each search that said nothing may have cost one.
  expect(twice).toBeLessThanOrEqual(blind);
  for (const { key, taken } of asked.entries) if (taken) expect(times.get(key)).toBeGreaterThanOrEqual(1);
  // What was said before the last act of its batch offers nothing any more, unless it could not be known of.
  const older = asked.entries.filter(({ subject, key }, i) =>
    asked.entries.slice(i + 1).some((later) => later.subject === subject && later.key !== key),
  );
  const offering = messages.filter(
    ({ key, text }) => older.some((one) => one.key === key && one.taken) && text.includes('  > '),
  );
  expect(offering.length).toBeLessThanOrEqual(twice);
  const pushed = messages.filter(({ mention }) => mention.length > 0);
  expect(new Set(pushed.map(({ key }) => key))).toEqual(new Set([...asked.rings].map((key) => `crew/${key}`)));
  expect(pushed.length - asked.rings.size).toBeLessThanOrEqual(blind);
}
