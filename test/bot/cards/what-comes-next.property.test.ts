// What a crew at random is offered and shown. Every act that a noun says comes next, pressed at that moment by somebody who
// may, is recorded or asks for a value more; what is shown though it would be objected to is objected to just so. And a
// clock has one end, on one minute, wherever it stands. What was reached is counted; a zero fails.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { batchFacts } from '../../../bot/cards/batch-cards.ts';
import { makeBoard } from '../../../bot/cards/board.ts';
import { canFacts } from '../../../bot/cards/can-cards.ts';
import type { CardFact } from '../../../bot/cards/card.ts';
import type { Telling } from '../../../bot/cards/card-context.ts';
import { nextTaps } from '../../../bot/cards/next-taps.ts';
import { nowCard } from '../../../bot/cards/now-card.ts';
import { partFacts } from '../../../bot/cards/part-cards.ts';
import { standingOf } from '../../../bot/cards/standing-card.ts';
import { figuresFor } from '../../../bot/language/figures.ts';
import { fillLine } from '../../../bot/language/line-fields.ts';
import { readLine } from '../../../bot/language/read-line.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { splitMass } from '../../../core/calc/mixing.ts';
import { decide } from '../../../core/decide.ts';
import type { Decision } from '../../../core/decision.ts';
import { isFailed } from '../../../core/failed.ts';
import { batchStream, canStream, partStream, sessionStream } from '../../../core/ids.ts';
import type { NextAct } from '../../../core/next-acts.ts';
import { mixRatio } from '../../../core/products/sheet.ts';
import { exposedIn, unacknowledged } from '../../../core/session/session.ts';
import { liveBatches, liveCans, liveParts, openSessions, type Shop } from '../../../core/shop.ts';
import { type ClockId, type NextActId, statusOf } from '../../../core/status.ts';
import type { EpochMs } from '../../../core/units.ts';
import { type Draw, type Focus, oneOf } from '../../core/walk-acts.ts';
import { lineContext, type WalkedShift, walkedShift } from '../../core/walk-shift.ts';

interface Offered {
  readonly act: NextAct<NextActId>;
  readonly values: ReadonlyMap<string, string>;
}

/** Typed in by whoever presses, of their own: not what the status thought of as an example. */
function typed(more: Readonly<Record<string, string>> = {}): ReadonlyMap<string, string> {
  return new Map(
    Object.entries({
      'customer-person': 'vega',
      ...{
        caught: '310',
        why: 'seen by eye',
        document: 'qa-118',
        'concession-date': '2026-03-01',
        'surface-temperature': '21',
        grade: 'sa2.5',
        'wet-films': '61 66',
      },
      ...{
        'part-temperature': '96',
        minutes: '4',
        'dry-films': '31 32',
        'face-velocity': '0.6',
        'flush-volume': '310',
      },
      ...{ part: 'new probe-9', people: 'kari', ...more },
    }),
  );
}

function offeredIn(shop: Shop, now: EpochMs): readonly Offered[] {
  const moment = { shop, now };
  const all = (next: readonly NextAct<NextActId>[], more?: Readonly<Record<string, string>>) =>
    next.map((act) => ({ act, values: typed(more) }));
  return [
    ...[...shop.batches.values()].flatMap((batch) => {
      const split = splitMass(batch.plannedGrams, mixRatio(batch.sheet.ratio));
      const [a, b] = isFailed(split) ? [1, 1] : [split.partAGrams, split.partBGrams];
      const next = statusOf.batch(moment, batch).next();
      return batch.sheet.methods.flatMap((method) =>
        all(next, { 'part-a': a.toFixed(1), 'part-b': b.toFixed(1), method }),
      );
    }),
    ...[...shop.cans.values()].flatMap((can) => all(statusOf.can(moment, can).next())),
    ...statusOf.parts(moment, [...shop.parts.values()]).flatMap((part) => all(part.next())),
    ...[...shop.sessions.values()].flatMap((session) => {
      const people = [...unacknowledged(session), ...session.sprayers][0] ?? 'kari';
      return all(statusOf.session(moment, session).next(), { people });
    }),
  ];
}

const crew = ['rosa', 'omar', 'kari'];

/** By whoever gets furthest: a leave is a supervisor's, a brief is read by whom it exposes. */
function pressed(telling: Telling, { act, values }: Offered): readonly Decision[] {
  const [tap] = nextTaps(telling, [act]);
  const line = fillLine(tap?.line ?? '', values);
  const { shop, now } = telling;
  const reading = readLine(line, lineContext(shop, now));
  if (reading.kind !== 'command') throw new Error(`"${line}" of ${act.id} reads as ${JSON.stringify(reading)}`);
  const { command, stance } = reading;
  const exposed = [...shop.sessions.values()].flatMap(exposedIn);
  return [...new Set([...crew, ...exposed])].map((by) => decide(shop, { command, stance, by, now, at: now }));
}

const reached = new Map<string, number>();
const count = (what: string) => reached.set(what, (reached.get(what) ?? 0) + 1);

const asksForMore = ['which-can', 'which-sheet', 'new-part'];
const isTaken = (decision: Decision) =>
  decision.kind === 'accepted' || (decision.kind === 'unclear' && asksForMore.includes(decision.unclear.code));

function whatIsOffered(telling: Telling): void {
  const offered = offeredIn(telling.shop, telling.now);
  // A coat asks by which method: one of them will do.
  for (const { act } of offered) {
    const what = `${act.id} ${act.of}`;
    const decisions = offered.flatMap((one) => (one.act === act ? pressed(telling, one) : []));
    if (act.against.length === 0) {
      count(`taken ${act.id}`);
      expect(decisions.some(isTaken), `${what}: ${JSON.stringify(decisions)}`).toBe(true);
    } else {
      count(`told why not ${act.id}`);
      expect(decisions.some(isTaken), what).toBe(false);
      const codes = act.against.map(({ code }) => code);
      expect(decisions, what).toContainEqual(
        expect.objectContaining({ objections: codes.map((code) => expect.objectContaining({ code })) }),
      );
    }
  }
}

const acts = {
  ...{
    weigh: 0,
    'weigh-a': 0,
    'weigh-b': 0,
    filter: 0,
    stop: 0,
    stir: 0,
    coat: 0,
    'coat-part': 0,
    catch: 0,
    cover: 0,
    thick: 0,
  },
  ...{
    hot: 0,
    empty: 0,
    check: 0,
    blanket: 0,
    prestir: 0,
    'prestir-gas': 0,
    lid: 0,
    discard: 0,
    surface: 0,
    prep: 0,
    dry: 0,
  },
  ...{ 'touch-up': 0, wet: 0, 'cure-oven': 0, 'cure-room': 0, temp: 0, door: 0, out: 0, release: 0, lift: 0, film: 0 },
  ...{ rework: 0, concession: 0, scrap: 0, return: 0, strip: 0, abrade: 0 },
  ...{ hold: 0, brief: 0, ack: 0, 'ack-for': 0, 'fan-on': 0, 'fan-unmeasured': 0, 'fan-off': 0, 'supplied-yes': 0 },
  ...{
    'supplied-no': 0,
    'moved-out': 0,
    'flush-step': 0,
    flush: 0,
    vessels: 0,
    'gear-cleaned': 0,
    rags: 0,
    'spray-on': 0,
    'spray-off': 0,
  },
  close: 0,
} satisfies Record<NextActId, 0>;

/** Fact, clock on the board and bell of the same end. */
const shownAs: Partial<Record<ClockId, { readonly fact: string; readonly ring?: string }>> = {
  stir: { fact: 'stir-done-at', ring: 'stir-done' },
  induction: { fact: 'stir-done-at', ring: 'induction-done' },
  pot: { fact: 'pot-life-ends', ring: 'pot-end' },
  flash: { fact: 'flash-least-at', ring: 'flash-least' },
  'flash-most': { fact: 'flash-most-at', ring: 'flash-most' },
  'recoat-opens': { fact: 'recoat-opens-at', ring: 'recoat-opens' },
  'recoat-closes': { fact: 'recoat-closes-at' },
  surface: { fact: 'surface-ends-at' },
  cure: { fact: 'cure-done-at', ring: 'cure-done' },
  warm: { fact: 'temp-due-at', ring: 'temp-due' },
  'lid-off': { fact: 'blanket-by' },
};

const toReach = [
  ...Object.keys(acts).map((id) => `taken ${id}`),
  ...['coat', 'cure-oven', 'cure-room', 'out', 'spray-on'].map((id) => `told why not ${id}`),
  ...Object.keys(shownAs).map((id) => `shown ${id}`),
];

function whatIsShown(telling: Telling): void {
  const board = makeBoard(telling);
  const now = nowCard(telling, 'omar').lines;
  const shown = (stream: string, clocks: readonly { id: ClockId }[], facts: readonly CardFact[]) => {
    for (const { id } of clocks) {
      const { fact, ring } = shownAs[id] ?? {};
      const rings = ring === undefined ? [] : board.rings.filter(({ key }) => key === `${stream}/${ring}`);
      const texts = [
        ...facts.flatMap((each) => (each.id === fact ? [each.shown] : [])),
        ...board.items
          .flatMap((item) => (item.id === stream ? item.clocks : []))
          .flatMap((each) => (each.id === id ? [each.at] : [])),
        ...rings.map(({ at }) => at),
        ...rings.flatMap(({ label }) =>
          now.filter((line) => line.endsWith(` ${label}`)).map((line) => line.slice(0, -label.length - 1)),
        ),
      ];
      if (texts.length > 1) count(`shown ${id}`);
      expect(new Set(texts).size, `${stream} ${id}: ${texts.join(' | ')}`).toBeLessThan(2);
    }
  };
  for (const batch of liveBatches(telling.shop)) {
    const status = statusOf.batch(telling, batch);
    const { facts } = standingOf(telling, batch.number, batch).card;
    shown(batchStream(batch.number), status.clocks, [...facts, ...batchFacts(telling, status)]);
  }
  for (const can of liveCans(telling.shop)) {
    const status = statusOf.can(telling, can);
    shown(canStream(can.number), status.clocks, canFacts(telling, status));
  }
  for (const part of liveParts(telling.shop)) {
    const status = statusOf.part(telling, part);
    shown(partStream(part.name), status.clocks, partFacts(telling, status));
  }
  for (const session of openSessions(telling.shop))
    shown(sessionStream(session.number), statusOf.session(telling, session).clocks, []);
}

function tellingOf(shop: Shop, now: EpochMs): Telling {
  return {
    words: shipped.wordsIn('en'),
    figures: figuresFor({ profile: shipped.profileOf('en', 'metric'), units: 'metric', zone: shop.crew.zone, now }),
    languages: shipped.languages,
    hearing: shipped.every,
    shop,
    now,
  };
}

/** Mostly the likeliest next act of something that waits: else it would never come to the end of anything. */
async function pressOne(shift: WalkedShift, draw: Draw, focus: Focus): Promise<void> {
  const shop = await shift.shop();
  const offered = offeredIn(shop, shift.now()).filter(({ act }) => act.against.length === 0);
  const first = offered.filter(({ act }, i) => offered.findIndex((other) => other.act.of === act.of) === i);
  const isSprayed = focus === 'spray' && draw(3) > 0;
  // The sessions stand last.
  const among = isSprayed ? first.slice(-2) : draw(3) > 0 ? first : offered;
  const act = among[draw(Math.max(1, among.length))]?.act;
  if (act === undefined || act.stance.is !== 'asked') return;
  const { command } = act;
  const part = oneOf(draw, ['impeller-7', 'rail-2', 'valve-4']);
  const said = command.verb === 'coat' && act.id === 'coat' ? { ...command, parts: [part] } : command;
  for (const by of crew) if ((await shift.say(said, by)).kind !== 'unclear') return;
}

const stirred = ['air 24C 48%', 'mix 2.4kg demo-clear', 'weigh 1 1200g 1200g', '103m'];
const coated = [...stirred, 'filter 1', 'coat new a1 1 flow'];
const ready = [
  ...coated,
  '@omar: set booth room 4m2',
  'brief 1 in room spray kari',
  'ack 2',
  'fan 2 on 0.6mps',
  'supplied 2 yes',
];
const inOven = ['part a1 cast-iron 12mm', ...coated, '3m', 'dry a1', '12m', 'cure a1 oven 90C'];

const built = ['air 22C 50%', 'mix 6450g demo-build', 'weigh 1 5400g 1050g'];

/** From where a crew goes on at random, and what it is mostly about. */
const begun: readonly (readonly [Focus, readonly string[]])[] = [
  ['any', stirred],
  ['parts', [...coated, '12m']],
  ['spray', ready],
  ['spray', [...ready, 'fan 2 off', 'supplied 2 no']],
  ['spray', [...ready, 'spray on 2', '5m', 'spray off 2']],
  ['parts', inOven],
  ['parts', [...inOven, 'temp a1 91C', '60m']],
  [
    'material',
    [
      'open A lot 7731 5kg gas demo-clear',
      'open B lot 8802 5kg demo-clear',
      'air 24C 48%',
      'mix 2.4kg demo-clear',
      'weigh 3 b 1200g already',
    ],
  ],
  [
    'material',
    [
      'open A lot 7731 5kg gas demo-clear',
      'prestir 1',
      '20m',
      'air 24C 48%',
      'mix 2.4kg demo-clear',
      'weigh 2 a 1200g already',
    ],
  ],
  ['any', [...coated, 'uncover 1', 'catch 1 300g']],
  ['any', [...coated, 'part b2 steel 3mm']],
  ['parts', ['prep new rail-2 sa2.5', ...built]],
  ['any', [...stirred, 'gel 1']],
  ['any', [...stirred, 'filter 1', 'air 24C 90%']],
  ['parts', [...built, '24m', 'coat new rail-2 1 brush already', '1000m', 'air 22C 50%']],
];

const stepDraws = 24;

it('given a crew at random, then what is offered is taken at that moment, and each clock ends on one minute', async () => {
  let walks = 0;
  const drawn = fc.array(fc.array(fc.nat(9_999), { minLength: stepDraws, maxLength: stepDraws }), {
    minLength: 20,
    maxLength: 20,
  });
  await fc.assert(
    fc.asyncProperty(fc.noBias(drawn), async (steps) => {
      const shift = walkedShift();
      const [focus, lines] = begun[walks % begun.length] ?? ['any', []];
      walks += 1;
      try {
        for (const line of lines) await shift.sayLine(line);
        for (const numbers of steps) {
          let taken = 0;
          const draw: Draw = (n) => (numbers[taken++ % stepDraws] ?? 0) % n;
          const telling = tellingOf(await shift.shop(), shift.now());
          whatIsOffered(telling);
          whatIsShown(telling);
          await shift.wait(draw);
          if (draw(3) > 0) await pressOne(shift, draw, focus);
          else await shift.sayAnything(draw, focus);
        }
      } finally {
        shift.close();
      }
    }),
    { seed: 20260302, numRuns: 45, endOnFailure: true },
  );
  const table = Object.fromEntries(toReach.map((what) => [what, reached.get(what) ?? 0]));
  console.table(table);
  expect(toReach.filter((what) => table[what] === 0)).toEqual([]);
});
