// A crew at random, but by phase and with aimed times, over the real record. After each thing said: the bells' rows are
// the plan, a fresh reading of the record gives the same shop, the hashes chain, the same delivery again changes nothing,
// and no coat that a second reckoning finds wrong stands unmarked, and none that it finds right is marked. What was reached is counted; a zero fails.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import Database from 'better-sqlite3';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { ringUntil } from '../../bot/terminal/script.ts';
import { virtualClock } from '../../bot/time/clocks.ts';
import { isCanLive } from '../../core/can/can.ts';
import type { Command, Stance } from '../../core/commands.ts';
import { createExecutor, type Outcome, type Request } from '../../core/execute.ts';
import type { Entry, Envelope } from '../../core/history.ts';
import { type BatchNumber, nameIn, type PartName, partStream, type StreamId } from '../../core/ids.ts';
import type { Messenger } from '../../core/ports.ts';
import { type Deviation, deviationsIn } from '../../core/records/deviations.ts';
import { planReminders } from '../../core/reminders/plan.ts';
import { createRinger } from '../../core/reminders/run.ts';
import { firstHash, hashOf } from '../../core/seal-sums.ts';
import { standing } from '../../core/settled.ts';
import type { Shop } from '../../core/shop.ts';
import { createShopKeeper } from '../../core/shop-keeper.ts';
import { openSqliteStore } from '../../core/store/sqlite-store.ts';
import { type EpochMs, epochMs, grams, micrometres } from '../../core/units.ts';
import { demoCrew } from './given.ts';
import { type Draw, edgesIn, type Focus, nextAct, oneOf, whoseActIsRestedOn } from './walk-acts.ts';
import { delivery, namedAfterwards, openedOf } from './walk-cans.ts';
import { checkedBadly } from './walk-instruments.ts';
import { coatFaults, judged } from './walk-oracle.ts';
import { count, neverObjected, reachTable } from './walk-reach.ts';
import { breathedBadly, lastRead } from './walk-session.ts';
import { walkShelf as shelf } from './walk-shelf.ts';

const crew = 'walk';
const monday = epochMs(Date.UTC(2026, 2, 2, 8));

function startWalk(file: string) {
  const store = openSqliteStore(file);
  const rows = new Database(file, { readonly: true });
  const keeper = createShopKeeper(store, crew, demoCrew, shelf);
  const executor = createExecutor({ store, keeper, crew });
  const clock = virtualClock(monday);
  const messenger: Messenger = {
    post: async ({ reminder }) => {
      count(`rang ${reminder.kind}`);
      // As the day by itself does.
      if (reminder.kind === 'digest') await executor.giveHash('digest', clock.now());
      return 'posted';
    },
    wasPosted: async () => 'no',
    tellLeads: async () => 'posted',
  };
  const log = { info: () => undefined, error: (event: string) => expect.fail(event) };
  const ringer = createRinger({ store, executor, keeper, messenger, clock, log, crew });
  const readRows = rows.prepare(
    'select numbered_key, ring, kind, stream, due_at, people from reminder order by numbered_key',
  );
  const readEvents = rows.prepare('select * from event where seq > ? order by seq');
  const envelopes: Envelope[] = [];
  const streams = new Set<StreamId>();

  async function takeNew(): Promise<readonly Envelope[]> {
    const added = await store.eventsAfter(crew, envelopes.length);
    for (const envelope of added) {
      const last = envelopes.at(-1);
      expect(envelope.seq).toBe((last?.seq ?? 0) + 1);
      expect(envelope.previousHash).toBe(last?.hash ?? firstHash);
      expect(envelope.hash, `hash of event ${envelope.seq}, ${envelope.body.type}`).toBe(hashOf(envelope));
      count(`event ${envelope.body.type}`);
      envelopes.push(envelope);
      for (const stream of [envelope.stream, ...envelope.alsoUnder]) streams.add(stream);
    }
    return added;
  }

  function rowsAreThePlan(shop: Shop): void {
    const planned = [...planReminders(shop).values()].flat().map((planned) => ({
      ...{ numbered_key: planned.numberedKey, ring: planned.ring, kind: planned.kind, stream: planned.stream },
      ...{ due_at: planned.dueAt, people: JSON.stringify(planned.to) },
    }));
    expect(readRows.all()).toEqual(planned.sort((a, b) => (a.numbered_key < b.numbered_key ? -1 : 1)));
  }

  async function replayIsTheSame(everything: Shop): Promise<void> {
    const fresh = await createShopKeeper(store, crew, demoCrew, shelf).open([...streams]);
    if (!isDeepStrictEqual(fresh, everything)) expect(plain(fresh)).toEqual(plain(everything));
  }

  function coatsAreMarked(shop: Shop, deviations: readonly Deviation[]): void {
    for (const { seq, codes, onTheEdge } of coatFaults(envelopes, standing(shop.crew, 'air-limit').minutes)) {
      const marked = deviations.filter(({ entry }) => entry.seq === seq).map(({ objection }) => objection.code);
      for (const code of judged) {
        if (code.startsWith('past-pot-life') && onTheEdge) continue;
        expect(marked.includes(code), `coat ${seq} ${code}`).toBe(codes.has(code));
      }
    }
  }

  /** A coat is filed under its part and its batch, and so is every correction of it. */
  function filedAlike(shop: Shop): void {
    const nouns = [...shop.batches.values(), ...shop.parts.values()];
    const bySeq = new Map<number, Entry>();
    for (const entry of nouns.flatMap(({ entries }) => entries)) {
      if (!isDeepStrictEqual(bySeq.get(entry.seq) ?? entry, entry)) expect(entry).toEqual(bySeq.get(entry.seq));
      bySeq.set(entry.seq, entry);
    }
    for (const batch of shop.batches.values()) {
      // Each pass of a coat is one; the part has them as one coat.
      const ofParts = [...shop.parts.values()].flatMap(({ entries }) =>
        entries.filter(({ fact }) => fact.type === 'CoatApplied' && fact.batch === batch.number),
      );
      expect(batch.coats).toHaveLength(ofParts.length);
    }
  }

  /** Of the last act, where it released a part. */
  function latestRelease(): PartName | undefined {
    const last = envelopes.at(-1);
    return last?.body.type === 'PartReleased' ? nameIn(last.stream) : undefined;
  }

  async function say(request: Request): Promise<void> {
    let outcome: Outcome | undefined;
    const answer = await executor.execute(
      request,
      () => request,
      (_, found) => {
        outcome = found;
        return `${request.id}: ${found.kind}`;
      },
    );
    const added = await takeNew();
    expect(outcome, 'an answer to a new request').toBeDefined();
    if (outcome?.kind === 'objected') for (const { code } of outcome.objections) count(`objected ${code}`);
    if (outcome?.kind === 'unclear') count(`unclear ${outcome.unclear.code}`);
    expect(added.length > 0).toBe(outcome?.kind === 'recorded');

    const again = await executor.execute(
      request,
      () => request,
      (_, found) => `${request.id}: ${found.kind}`,
    );
    expect(again).toBe(answer);
    expect(await store.head(crew)).toMatchObject({ seq: envelopes.length });

    const everything = await executor.look([...streams]);
    const deviations = deviationsIn(everything);
    for (const { entry, objection } of deviations) {
      const fresh = added.find(({ seq }) => seq === entry.seq);
      if (fresh === undefined) continue;
      count(`deviation ${objection.code}`);
      // What was told or permitted despite a rule is marked by that rule; what was asked and taken, by none.
      if (!neverObjected.includes(objection.code)) expect(fresh.saidWith.despite).toContain(objection.code);
    }
    coatsAreMarked(everything, deviations);
    filedAlike(everything);
    await replayIsTheSame(everything);
    rowsAreThePlan(await executor.look());
  }

  /** Awake, every bell rings at its own time; asleep, all of them late. */
  async function moveTo(at: number, awake: boolean): Promise<void> {
    if (awake) await ringUntil(epochMs(Math.max(at, clock.now())), ringer, clock);
    else clock.moveTo(epochMs(at));
    await ringer.ringDue();
    await takeNew();
  }

  /** A picture comes from a front end, never from a typed line. */
  async function photograph(id: string, by: string, now: EpochMs): Promise<void> {
    const part = [...(await executor.look([...streams])).parts.keys()][0];
    if (part === undefined) return;
    const photo = { id, by, now, at: now, stream: partStream(part), reference: `invented-${id}`, caption: undefined };
    await executor.filePhoto(photo, () => id);
    await takeNew();
  }

  return {
    say,
    photograph,
    moveTo,
    latestRelease,
    now: clock.now,
    shop: () => executor.look([...streams]),
    rawEventsAfter: (seq: number) => readEvents.all(seq).map((row) => JSON.stringify(row)),
    close: () => {
      rows.close();
      store.close();
    },
  };
}

/** Maps as lists, and no key without a value: a row has none either. */
function plain(shop: Shop): unknown {
  const { shelf: _, ...rest } = shop;
  return JSON.parse(JSON.stringify(rest, (_key, value) => (value instanceof Map ? [...value].sort(byKey) : value)));
}

function byKey([a]: readonly [unknown, ...unknown[]], [b]: readonly [unknown, ...unknown[]]): number {
  return String(a) < String(b) ? -1 : 1;
}

const minute = 60_000;

function nextTime(shop: Shop, now: number, draw: Draw): number {
  const edges = edgesIn(shop)
    .filter((at) => at > now)
    .sort((a, b) => a - b);
  // Mostly one of the next; at times the far end of a window.
  const edge = draw(5) === 0 ? edges[draw(Math.max(1, edges.length))] : edges[draw(3)];
  switch (draw(10)) {
    case 0:
    case 1:
      return now;
    case 2:
    case 3:
    case 4:
      return now + (1 + draw(9)) * minute;
    case 5:
      return now + oneOf(draw, [2, 4, 9, 24, 80]) * 60 * minute;
    default:
      return Math.max(now, (edge ?? now + 12 * minute) + oneOf(draw, [0, 0, -1, 1, 1, -1_000, 1_000]));
  }
}

/** When it was, and how it is meant: mostly asked now; else told late, near an edge at times, or with leave. */
function manner(shop: Shop, now: number, draw: Draw): { readonly at: number; readonly stance: Stance } {
  const edges = edgesIn(shop).filter((at) => at <= now);
  switch (draw(10)) {
    case 0:
      return { at: now - draw(90) * minute, stance: { is: 'happened' } };
    case 1:
      return { at: (edges[draw(Math.max(1, edges.length))] ?? now) - draw(2), stance: { is: 'happened' } };
    case 2:
      return { at: now, stance: { is: 'happened' } };
    case 3:
    case 4:
      return { at: now, stance: { is: 'permitted', why: 'agreed with the customer' } };
    case 5:
      return { at: draw(8) === 0 ? now + 1 : now, stance: { is: 'asked' } };
    default:
      return { at: now, stance: { is: 'asked' } };
  }
}

/** What a walk is mostly about: left to chance, the rarer trades would hardly come up. */
function focusOf(walk: number): Focus {
  if (walk > 50) return 'spray';
  if (walk % 3 === 0) return 'material';
  return walk % 3 === 1 && walk > 20 ? 'parts' : 'any';
}

const stepDraws = 24;
const stepsOfWalk = 55;

/** Told last: what was drawn before is drawn as ever. */
const mixOfLittle: Command = { verb: 'mix', amount: { kind: 'mass', grams: grams(2400) }, sheet: 'own-clear' };
const onCoarseScale: readonly { readonly command: Command; readonly is: 'asked' | 'happened' }[] = [
  { command: { verb: 'set', setting: { name: 'scale', scale: 'floor', stepGrams: grams(100) } }, is: 'asked' },
  { command: mixOfLittle, is: 'asked' },
  { command: mixOfLittle, is: 'happened' },
];
/** What becomes of the part that left; and one whose cross-cut failed and was cut again. */
const disposing: readonly (readonly [by: string, Request['command']])[] = [
  ['kari', { verb: 'part', part: 'hub-3', details: {} }],
  ['kari', { verb: 'see-to', parts: ['hub-3'], owner: 'omar' }],
  ['kari', { verb: 'see-to', parts: ['hub-2'], owner: 'omar', toDo: 'fetch it back' }],
  ['kari', { verb: 'adhesion', part: 'hub-3', rating: '0B' }],
  ['omar', { verb: 'adhesion', part: 'hub-3', rating: '5B', retest: 'a new blade' }],
  ['omar', { verb: 'scrap', parts: ['hub-2'] }],
  ['omar', { verb: 'scrap', parts: ['hub-2'], why: 'cracked' }],
];

/** A film that is told by half: it is asked for, its spot is told twice, and what may be done all the same is. */
const halfMeasured = (batch: BatchNumber): readonly Pick<Request, 'by' | 'command' | 'stance'>[] => {
  const spots = [{ spot: 1, micrometres: [micrometres(12)] }];
  const asked = { by: 'kari', stance: { is: 'asked' as const } };
  return [
    { ...asked, command: { verb: 'part', part: 'hub-4', details: {} } },
    {
      ...{ by: 'omar', stance: { is: 'happened' } },
      command: { verb: 'coat', parts: ['hub-4'], batch, method: 'brush' },
    },
    { ...asked, command: { verb: 'film', part: 'hub-4' } },
    { ...asked, command: { verb: 'film', part: 'hub-4', spots } },
    { ...asked, command: { verb: 'film', part: 'hub-4', spots } },
    { ...asked, by: 'omar', command: { verb: 'release', parts: ['hub-4'] } },
    {
      by: 'rosa',
      stance: {
        ...{ is: 'permitted', why: 'the customer waits' },
        lifts: (['hold', 'cure', 'film'] as const).map((of) => ({ of, why: `the customer waits, ${of}` })),
      },
      command: { verb: 'release', parts: ['hub-4'] },
    },
  ];
};

/** A job that asks more than is given: who coated it releases it not, and who may does so with a reason. Another one leaves with no release at all. */
const leaving = (batch: BatchNumber): readonly Pick<Request, 'by' | 'command' | 'stance'>[] => [
  {
    by: 'rosa',
    stance: { is: 'asked' },
    command: { verb: 'set', setting: { name: 'job', job: '91', film: true, secondEyes: true } },
  },
  { by: 'kari', stance: { is: 'asked' }, command: { verb: 'part', part: 'hub-1', details: { job: '91' } } },
  { by: 'omar', stance: { is: 'happened' }, command: { verb: 'coat', parts: ['hub-1'], batch, method: 'brush' } },
  { by: 'omar', stance: { is: 'asked' }, command: { verb: 'release', parts: ['hub-1'] } },
  {
    by: 'rosa',
    stance: {
      is: 'permitted',
      why: 'the customer waits',
      lifts: (['hold', 'cure', 'film'] as const).map((of) => ({ of, why: `the customer waits, ${of}` })),
    },
    command: { verb: 'release', parts: ['hub-1'] },
  },
  // Once is enough, and a release is moved by nobody.
  { by: 'rosa', stance: { is: 'asked' }, command: { verb: 'release', parts: ['hub-1'] } },
  {
    ...{ by: 'omar', stance: { is: 'asked' } },
    command: {
      ...{ verb: 'amend', of: { verb: 'release', part: 'hub-1' } },
      ...{ change: { at: epochMs(1) }, why: 'told late' },
    },
  },
  ...(['recall', 'recall-over', 'recall-over'] as const).map((verb) => ({
    ...{ by: 'rosa', stance: { is: 'asked' as const } },
    command: { verb, lot: 'called-back', why: 'gels in the can' },
  })),
  { by: 'rosa', stance: { is: 'asked' }, command: { verb: 'recall', lot: 'nobody-knows', why: 'gels in the can' } },
  ...(['asked', 'happened'] as const).map((is) => ({
    ...{ by: 'kari', stance: { is } },
    command: { ...openedOf('nobody-knows'), grams: grams(5_000) },
  })),
  {
    ...{ by: 'rosa', stance: { is: 'asked' } },
    command: { verb: 'amend', of: { verb: 'mix', batch }, change: { ofSheet: 'demo-build' }, why: 'told late' },
  },
  { by: 'kari', stance: { is: 'asked' }, command: { verb: 'part', part: 'hub-2', details: {} } },
  { by: 'kari', stance: { is: 'asked' }, command: { verb: 'shipped', parts: ['hub-2'] } },
  ...disposing.map(([by, command]) => ({ by, command, stance: { is: 'asked' as const } })),
  ...(['asked', 'happened'] as const).map((is) => ({
    ...{ by: 'kari', stance: { is } },
    command: { verb: 'coat' as const, parts: ['hub-2'], batch, method: 'brush' as const },
  })),
  ...halfMeasured(batch),
  ...checkedBadly(batch),
  { by: 'kari', stance: { is: 'asked' }, command: { verb: 'first-shift' } },
  { by: 'omar', stance: { is: 'asked' }, command: { verb: 'first-shift-done', person: 'kari' } },
];
const steps = fc.noBias(
  fc.array(fc.array(fc.nat(9_999), { minLength: stepDraws, maxLength: stepDraws }), {
    minLength: stepsOfWalk,
    maxLength: stepsOfWalk,
  }),
);

it('given a crew at random, then after each thing said the record, its reading and its bells agree, and no bad coat is unmarked', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'batchbell-walk-'));
  let walks = 0;
  try {
    await fc.assert(
      fc.asyncProperty(steps, async (drawn) => {
        walks += 1;
        const walk = startWalk(join(folder, `${walks}.sqlite`));
        const seen: string[] = [];
        let shop = await walk.shop();
        try {
          for (const [i, numbers] of drawn.entries()) {
            let taken = 0;
            const draw: Draw = (n) => (numbers[taken++ % stepDraws] ?? 0) % n;
            await walk.moveTo(nextTime(shop, walk.now(), draw), draw(4) > 0);
            shop = await walk.shop();
            const now = walk.now();
            const { at, stance } = manner(shop, now, draw);
            const by = oneOf(draw, ['kari', 'omar', 'rosa']);
            const command = nextAct(shop, now, draw, focusOf(walks));
            await walk.say({ id: `said-${i}`, by, now, command, at: epochMs(at), stance });
            const released = walk.latestRelease();
            if (released !== undefined) {
              // A release is moved by nobody.
              const of = { verb: 'release', part: released } as const;
              const moved = { verb: 'amend', of, change: { at: epochMs(1) }, why: 'told late' } as const;
              await walk.say({ id: `moved-${i}`, by: 'omar', now, command: moved, at: now, stance: { is: 'asked' } });
            }
            if (i % 20 === 19) await walk.photograph(`photo-${i}`, by, now);
            const batch = [...shop.batches.keys()].at(-1);
            if (i % 20 === 13 && batch !== undefined) {
              const judge = { command: { verb: 'judge', batch }, at: now, stance: { is: 'asked' } } as const;
              await walk.say({ id: `judge-${i}`, by: i === 13 ? 'kari' : 'omar', now, ...judge });
            }
            if (i % 6 === 5) {
              // Alarms hold all new work: without an end of them a walk would come to little else.
              const over = { command: { verb: 'alarm-over', which: 'all' }, at: now, stance: { is: 'asked' } } as const;
              await walk.say({ id: `over-${i}`, by: 'rosa', now, ...over });
            }
            if (i === 50) {
              const said = { command: delivery, at: now, stance: { is: 'asked' } } as const;
              await walk.say({ id: `received-${i}`, by: 'rosa', now, ...said });
            }
            if (i === 51 || i === 52) {
              const opening = {
                command: openedOf(i === 51 ? delivery.lot : 'nobody-knows'),
                at: now,
                stance: { is: 'asked' },
              } as const;
              await walk.say({ id: `opened-${i}`, by: 'rosa', now, ...opening });
            }
            for (const [k, told] of (i === 53 && walks % 4 === 0 ? lastRead : []).entries()) {
              await walk.say({ id: `last-read-${k}`, by: 'rosa', now, at: now, ...told });
            }
            const pot = [...(await walk.shop()).batches.keys()].at(-1);
            for (const [k, told] of (i === 54 && walks % 4 === 1 && pot !== undefined ? leaving(pot) : []).entries()) {
              await walk.say({ id: `job-${k}`, now, at: now, ...told });
            }
            const can = i > 52 ? [...(await walk.shop()).cans.values()].findLast(isCanLive)?.number : undefined;
            if (can !== undefined) {
              // The one that was opened last heats; nobody closes it, and whoever has is told.
              const hot = { verb: 'hot', can, heats: 'can', seen: 'bulging' } as const;
              const gas = { verb: 'blanket', can } as const;
              const asked = { at: now, stance: { is: 'asked' } } as const;
              await walk.say({ id: `hot-${i}`, by: 'kari', now, command: hot, ...asked });
              await walk.say({ id: `gas-${i}`, by: 'kari', now, command: gas, ...asked });
              await walk.say({ id: `gassed-${i}`, by: 'kari', now, command: gas, at: now, stance: { is: 'happened' } });
            }
            const drawn = i % 10 === 7 ? namedAfterwards(await walk.shop()) : undefined;
            if (drawn !== undefined) {
              const naming = { command: drawn, at: now, stance: { is: 'asked' } } as const;
              await walk.say({ id: `drawn-${i}`, by: 'kari', now, ...naming });
              if (i === 17) await walk.say({ id: `drawn-again-${i}`, by: 'omar', now, ...naming });
            }
            const undoer = i % 5 === 4 ? whoseActIsRestedOn(await walk.shop()) : undefined;
            if (undoer !== undefined) {
              const undo = { command: { verb: 'undo' }, at: now, stance: { is: 'asked' } } as const;
              await walk.say({ id: `undo-${i}`, by: undoer, now, ...undo });
            }
            if (i === stepsOfWalk - 1 && walks <= 6) {
              const brief = { verb: 'brief', place: 'hall', sprayers: ['kari'] } as const;
              const asked = { at: now, stance: { is: 'asked' } } as const;
              await walk.say({ id: 'breathed-brief', by: 'rosa', now, command: brief, ...asked });
              const session = Math.max(0, ...(await walk.shop()).sessions.keys());
              for (const [j, told] of breathedBadly(session).entries())
                await walk.say({ id: `breathed-${j}`, by: 'rosa', now, at: now, ...told });
            }
            if (i === stepsOfWalk - 1 && walks <= 3) {
              for (const [j, { command, is }] of onCoarseScale.entries())
                await walk.say({ id: `coarse-${j}`, by: 'rosa', now, command, at: now, stance: { is } });
            }
            seen.push(...walk.rawEventsAfter(seen.length));
          }
          expect(walk.rawEventsAfter(0)).toEqual(seen);
        } finally {
          walk.close();
        }
      }),
      { seed: 20260302, numRuns: 100, endOnFailure: true },
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  const reached = reachTable();
  console.table(reached);
  expect(Object.keys(reached).filter((what) => reached[what] === 0)).toEqual([]);
});
