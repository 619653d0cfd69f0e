// What every store must do, whatever it is made of: the record only grows and lands whole, the bells' rows follow the
// plan, and no bell is held by two.

import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Store } from '../../../core/ports.ts';
import { firstHash } from '../../../core/seal-sums.ts';
import { epochMs } from '../../../core/units.ts';
import { at, bell, changeOf, ofTheBot, planOf, sealed } from './sealed.ts';

export interface StoreUnderTest {
  readonly store: Store;
  /** Another process's handle on the same data, while the first is open. */
  readonly beside: () => Store;
  /** As after the end of the process. */
  readonly reopened: () => Store;
  readonly remove: () => void;
}

const start = { seq: 0, hash: firstHash };
const leaseOf = (time: string) => epochMs(at(time) + 30_000);

export function storeContract(name: string, open: () => StoreUnderTest): void {
  describe(name, () => contract(open));
}

function contract(open: () => StoreUnderTest): void {
  let tested: StoreUnderTest;
  let store: Store;

  beforeEach(() => {
    tested = open();
    store = tested.store;
  });
  afterEach(() => tested.remove());

  const claimAt = (time: string, from = store) => from.claim(at(time), leaseOf(time), 'crew');
  const plan = async (...bells: readonly ReturnType<typeof bell>[]) =>
    store.commit(changeOf(await store.head('crew'), { plan: planOf(...bells) }));

  describe('the record', () => {
    test('given no event, the record ends at nothing and knows nothing', async () => {
      expect(await store.head('crew')).toEqual(start);
      expect(await store.eventsAfter('crew', 0)).toEqual([]);
      expect(await store.newest('crew')).toEqual({ number: 0, actedAt: undefined, pouredFromCans: [] });
      expect(await store.nextDueAt('crew')).toBeUndefined();
      expect(await claimAt('08:00')).toBeUndefined();
    });

    test('events come back as they were sealed, in order, also to another process and after its end', async () => {
      const events = sealed(start, [{ streams: ['place/room'] }, { streams: ['batch/1', 'place/room'], version: 1 }]);
      expect(await store.commit(changeOf(start, { envelopes: events }))).toBe('committed');
      expect(await store.eventsAfter('crew', 0)).toEqual(events);
      expect(await store.eventsAfter('crew', 1)).toEqual(events.slice(1));
      expect(await store.head('crew')).toEqual({ seq: 2, hash: events[1]?.hash });
      expect(await tested.beside().eventsAfter('crew', 0)).toEqual(events);
      expect(await tested.reopened().eventsAfter('crew', 0)).toEqual(events);
    });

    test('the record ends where it does, wherever it was seen to end', async () => {
      const events = sealed(start, [{ streams: ['place/room'] }, { streams: ['batch/1'] }, { streams: ['batch/2'] }]);
      await tested.beside().commit(changeOf(start, { envelopes: events }));
      const end = { seq: 3, hash: events[2]?.hash };
      for (const seenAt of [0, 1, 2, 3, 4]) expect(await store.head('crew', seenAt)).toEqual(end);
      expect(await store.head('another', 3)).toEqual(start);
    });

    test('an event is found under its home and under every stream that it concerns', async () => {
      const events = sealed(start, [
        { streams: ['batch/1'] },
        { streams: ['part/impeller-7', 'batch/1'], version: 1 },
        { streams: ['part/flange-2'], version: 1 },
      ]);
      await store.commit(changeOf(start, { envelopes: events }));
      expect((await store.eventsUnder('crew', 'batch/1')).map(({ seq }) => seq)).toEqual([1, 2]);
      expect((await store.eventsUnder('crew', 'part/impeller-7')).map(({ seq }) => seq)).toEqual([2]);
      expect(await store.eventsUnder('crew', 'part/plate-3')).toEqual([]);
    });

    test('when the record has moved on meanwhile, nothing of a change lands', async () => {
      await store.commit(changeOf(start, { envelopes: sealed(start, [{ streams: ['place/room'] }]) }));
      const late = changeOf(start, {
        envelopes: sealed(start, [{ streams: ['batch/1'] }]),
        plan: planOf(bell('batch/1/stir-done', at('09:42'))),
        live: new Map([['batch/1', true]]),
        answers: [{ request: 'd1', text: 'Batch 1' }],
      });
      expect(await store.commit(late)).toBe('conflict');
      expect((await store.head('crew')).seq).toBe(1);
      expect(await store.liveStreams('crew')).toEqual([]);
      expect((await store.answersTo('crew', ['d1'])).get('d1')).toBeUndefined();
      expect(await store.nextDueAt('crew')).toBeUndefined();
    });

    test('a change that fails at its last row leaves none of its first', async () => {
      await store.commit(changeOf(start, { answers: [{ request: 'd1', text: 'first' }] }));
      const doubled = changeOf(start, {
        envelopes: sealed(start, [{ streams: ['batch/1'] }]),
        plan: planOf(bell('batch/1/stir-done', at('09:42'))),
        answers: [{ request: 'd1', text: 'second' }],
      });
      await expect(store.commit(doubled)).rejects.toThrow();
      expect(await store.head('crew')).toEqual(start);
      expect(await store.nextDueAt('crew')).toBeUndefined();
      expect((await store.answersTo('crew', ['d1'])).get('d1')).toBe('first');
    });

    test('the last answer to a person is that of their last request, and nobody else’s', async () => {
      expect(await store.lastAnswerTo('crew', 'kari')).toBeUndefined();
      await store.commit(
        changeOf(start, {
          answers: [
            { request: 'd1', by: 'kari', text: 'first' },
            { request: 'd2', by: 'kari', text: 'second' },
            { request: 'd3', by: 'ola', text: 'his' },
            { request: 'd4', text: 'nobody’s' },
          ],
        }),
      );
      expect(await store.lastAnswerTo('crew', 'kari')).toBe('second');
      expect(await store.lastAnswerTo('crew', 'ola')).toBe('his');
      expect(await store.lastAnswerTo('crew', '')).toBeUndefined();
    });

    test('of several requests those that were answered have their answers', async () => {
      const answers = ['d1', 'd2', 'd,"3'].map((request) => ({ request, text: `to ${request}` }));
      await store.commit(changeOf(start, { answers }));
      const asked = ['d,"3', 'd4', 'd1', 'd1'];
      expect(await store.answersTo('crew', asked)).toEqual(
        new Map([
          ['d1', 'to d1'],
          ['d,"3', 'to d,"3'],
        ]),
      );
      expect(await store.answersTo('crew', [])).toEqual(new Map());
    });

    test('streams are live from when somebody waits for them until nobody does', async () => {
      await store.commit(changeOf(start, { live: new Map([['batch/2', true] as const, ['batch/1', true] as const]) }));
      await store.commit(changeOf(start, { live: new Map([['batch/1', true] as const]) }));
      expect(await store.liveStreams('crew')).toEqual(['batch/1', 'batch/2']);
      await store.commit(changeOf(start, { live: new Map([['batch/1', false] as const]) }));
      expect(await store.liveStreams('crew')).toEqual(['batch/2']);
    });

    test('a day holds what happened in it, from its first instant to before its last', async () => {
      const happening = (stream: `batch/${string}`, time: string) => ({
        ...{ streams: [stream] as const, version: 1, happenedAt: at(time), recordedAt: at('20:00') },
      });
      const events = sealed(start, [happening('batch/1', '08:00'), happening('batch/2', '12:00')]);
      await store.commit(changeOf(start, { envelopes: events }));
      expect(await store.streamsBetween('crew', at('08:00'), at('12:00'))).toEqual(['batch/1']);
      expect(await store.streamsBetween('crew', at('08:01'), at('12:01'))).toEqual(['batch/2']);
    });

    test("a person's last acts come newest first, without what rang for them", async () => {
      const events = sealed(start, [
        { streams: ['batch/1'], version: 1 },
        { streams: ['part/impeller-7'], version: 1 },
        { streams: ['batch/2'], version: 1, by: 'ada' },
        ...Object.values(ofTheBot).map((body, i) => ({ streams: ['batch/1'] as const, version: 2 + i, body })),
      ]);
      await store.commit(changeOf(start, { envelopes: events }));
      expect(await store.streamsLastTouched('crew', 'kari')).toEqual(['part/impeller-7', 'batch/1']);
    });

    test('the last act is the last that somebody did, whatever the bot recorded of its own', async () => {
      const events = sealed(start, [
        { streams: ['place/room'], version: 1, recordedAt: at('08:00') },
        ...Object.values(ofTheBot).map((body, i) => ({
          streams: ['batch/1'] as const,
          version: 1 + i,
          recordedAt: at('09:42'),
          body,
        })),
      ]);
      await store.commit(changeOf(start, { envelopes: events }));
      expect((await store.newest('crew')).actedAt).toBe(at('08:00'));
    });

    test('nothing crosses crews', async () => {
      const other = sealed(start, [{ streams: ['batch/1'], crew: 'other' }]);
      const plan = planOf(bell('batch/1/stir-done', at('09:42')));
      const live = new Map([['batch/1', true] as const]);
      const answers = [{ request: 'd1', text: 'theirs' }];
      await store.commit(changeOf(start, { crew: 'other', envelopes: other, plan, live, answers }));
      expect(await store.head('crew')).toEqual(start);
      expect(await store.eventsUnder('crew', 'batch/1')).toEqual([]);
      expect(await store.liveStreams('crew')).toEqual([]);
      expect((await store.answersTo('crew', ['d1'])).get('d1')).toBeUndefined();
      expect(await claimAt('10:00')).toBeUndefined();
      expect((await store.claim(at('10:00'), leaseOf('10:00'), 'other'))?.crew).toBe('other');
    });
  });

  describe("the bells' rows", () => {
    test('the earliest due rings first, by due time, then key; what is not due stays', async () => {
      const due = [bell('batch/1/b', at('09:00')), bell('batch/1/a', at('09:00')), bell('batch/1/c', at('08:30'))];
      await plan(...due, bell('batch/1/d', at('11:00')));
      const keys = [await claimAt('10:00'), await claimAt('10:00'), await claimAt('10:00'), await claimAt('10:00')];
      expect(keys.map((claimed) => claimed?.key)).toEqual(['batch/1/c', 'batch/1/a', 'batch/1/b', undefined]);
    });

    test('two who claim at once never hold the same bell', async () => {
      const keys = Array.from({ length: 40 }, (_, i) => `batch/1/${String(i).padStart(2, '0')}`);
      await plan(...keys.map((key) => bell(key, at('09:00'))));
      const beside = tested.beside();
      const claims = await Promise.all(keys.map((_, i) => claimAt('10:00', i % 2 === 0 ? store : beside)));
      expect(new Set(claims.map((claimed) => claimed?.key)).size).toBe(40);
      expect(await claimAt('10:00')).toBeUndefined();
    });

    test('a claimed bell is held for its lease, then handed out again as one that somebody may have heard', async () => {
      await plan(bell('batch/1/stir-done', at('09:42')));
      expect((await claimAt('09:42'))?.unsure).toBe(false);
      expect(await claimAt('09:42:29')).toBeUndefined();
      expect(await store.nextDueAt('crew')).toBe(leaseOf('09:42'));
      expect((await claimAt('09:42:30'))?.unsure).toBe(true);
    });

    test('a bell turned away waits as long as it is told, counts its tries, and was heard by nobody', async () => {
      await plan(bell('batch/1/stir-done', at('09:42')));
      const claimed = await claimAt('09:42');
      if (claimed === undefined) throw new Error('nothing was due');
      await store.reject(claimed, at('09:42:02'));
      expect(await claimAt('09:42:01')).toBeUndefined();
      expect(await store.nextDueAt('crew')).toBe(at('09:42:02'));
      expect(await claimAt('09:42:02')).toMatchObject({ unsure: false, rejections: 1 });
    });

    test('leases of a process that is gone are free at the next start; that it may have been heard stays', async () => {
      await plan(bell('batch/1/stir-done', at('09:42')));
      await claimAt('09:42');
      expect((await claimAt('09:42:01', tested.reopened()))?.unsure).toBe(true);
    });

    test('when the clock is set back an hour, a lease from before does not hold the bell for that hour', async () => {
      await plan(bell('batch/1/stir-done', at('08:00')));
      await claimAt('09:42');
      expect((await claimAt('08:43'))?.key).toBe('batch/1/stir-done');
    });

    test('rows follow the plan: new ones come, others go, of the planned streams only', async () => {
      await plan(bell('batch/1/stir-done', at('09:42')), bell('batch/1/pot-half', at('09:50')));
      await plan(bell('batch/1/pot-half', at('09:50')), bell('batch/1/pot-end', at('09:55')));
      await store.commit(changeOf(start, { plan: new Map([['batch/2', []]]) }));
      const keys = [await claimAt('10:00'), await claimAt('10:00'), await claimAt('10:00')];
      expect(keys.map((claimed) => claimed?.key)).toEqual(['batch/1/pot-half', 'batch/1/pot-end', undefined]);
    });

    test('a row that the plan leaves as it is keeps its lease, its tries and the time it was planned', async () => {
      await plan(bell('batch/1/stir-done', at('09:42')));
      const claimed = await claimAt('09:42');
      if (claimed === undefined) throw new Error('nothing was due');
      await store.reject(claimed, at('09:43'));
      const again = planOf(bell('batch/1/stir-done', at('09:42')));
      await store.commit(changeOf(start, { plan: again, now: at('09:42:30') }));
      expect(await claimAt('09:42:40')).toBeUndefined();
      expect(await claimAt('09:43')).toMatchObject({ rejections: 1, plannedAt: at('08:00') });
    });

    test('a due time that differs in its last binary digit has not moved: planned when it was planned', async () => {
      await plan(bell('batch/1/stir-done', at('09:42')));
      const shifted = planOf(bell('batch/1/stir-done', epochMs(at('09:42') + 1)));
      await store.commit(changeOf(start, { plan: shifted, now: at('09:50') }));
      expect(await claimAt('09:51')).toMatchObject({ plannedAt: at('08:00'), dueAt: at('09:42') + 1 });
    });

    test('a bell moved later begins anew: what may have been heard was for another time', async () => {
      await plan(bell('batch/1/stir-done', at('09:42')));
      await claimAt('09:42');
      const later = planOf(bell('batch/1/stir-done', at('09:54')));
      await store.commit(changeOf(start, { plan: later, now: at('09:42:10') }));
      expect(await claimAt('09:42:40')).toBeUndefined();
      expect(await claimAt('09:54')).toMatchObject({ unsure: false, rejections: 0, plannedAt: at('09:42:10') });
    });

    test('a bell moved earlier is still one that somebody may have heard', async () => {
      await plan(bell('batch/1/stir-done', at('09:42')));
      await claimAt('09:42');
      await store.commit(
        changeOf(start, { plan: planOf(bell('batch/1/stir-done', at('09:30'))), now: at('09:42:10') }),
      );
      expect(await claimAt('09:42:40')).toMatchObject({ unsure: true, dueAt: at('09:30') });
    });

    test('other people for the same time: the row says whom, and was planned when it was planned', async () => {
      await plan(bell('batch/1/stir-done', at('09:42')));
      const toAda = planOf(bell('batch/1/stir-done', at('09:42'), 'ada'));
      await store.commit(changeOf(start, { plan: toAda, now: at('09:50') }));
      expect(await claimAt('09:51')).toMatchObject({ to: ['ada'], plannedAt: at('08:00') });
    });
  });
}
