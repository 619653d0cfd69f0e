// A crew at random over a real record in memory, for what only looks on: no bells ring, and nothing is checked on the way.

import { readLine } from '../../bot/language/read-line.ts';
import { shipped } from '../../bot/language/tongues/tongues.ts';
import { createExecutor, type Outcome } from '../../core/execute.ts';
import type { StreamId } from '../../core/ids.ts';
import { sheetNames } from '../../core/products/shelf.ts';
import { liveBatches, liveParts, type Shop } from '../../core/shop.ts';
import { createShopKeeper } from '../../core/shop-keeper.ts';
import { openSqliteStore } from '../../core/store/sqlite-store.ts';
import { type EpochMs, epochMs } from '../../core/units.ts';
import { demoCrew } from './given.ts';
import { type Draw, edgesIn, type Focus, nextAct, oneOf } from './walk-acts.ts';
import { walkShelf } from './walk-shelf.ts';

const minute = 60_000;

/** What the reader knows of the shop. */
export const lineContext = (shop: Shop, now: EpochMs) => ({
  now,
  zone: shop.crew.zone,
  hearing: shipped.hearingIn('en'),
  country: shipped.profileOf('en', 'metric'),
  ...sheetNames(shop.shelf),
  batches: liveBatches(shop).map(({ number }) => number),
  parts: liveParts(shop).map(({ name }) => name),
  places: [...shop.places.keys()],
  people: shop.crew.people.map(({ name }) => name),
});

export interface WalkedShift {
  readonly now: () => EpochMs;
  /** Everything ever recorded, loaded. */
  readonly shop: () => Promise<Shop>;
  /** Lets some time pass, mostly to just before or after something turns. */
  readonly wait: (draw: Draw) => Promise<void>;
  readonly say: (command: ReturnType<typeof nextAct>, by: string, stance?: 'asked' | 'happened') => Promise<Outcome>;
  /** `30m` lets so much time pass; anything else is a line, said by kari where it names nobody (`@omar: stir 1`), told as what has happened where need be. */
  readonly sayLine: (line: string) => Promise<void>;
  readonly sayAnything: (draw: Draw, focus: Focus) => Promise<Outcome>;
  readonly close: () => void;
}

export function walkedShift(): WalkedShift {
  const store = openSqliteStore(':memory:');
  const crew = 'walk';
  const executor = createExecutor({ store, keeper: createShopKeeper(store, crew, demoCrew, walkShelf), crew });
  const streams = new Set<StreamId>();
  let now: number = Date.UTC(2026, 2, 2, 8);
  let said = 0;
  const shop = () => executor.look([...streams]);

  const say: WalkedShift['say'] = async (command, by, stance = 'asked') => {
    said += 1;
    const at = epochMs(now);
    const outcomes: Outcome[] = [];
    const request = { id: `said-${said}`, by, now: at, at, command, stance: { is: stance } };
    await executor.execute(
      request,
      () => request,
      (_, outcome) => {
        outcomes.push(outcome);
        return '';
      },
    );
    const [outcome] = outcomes;
    if (outcome === undefined) throw new Error(`no outcome of ${command.verb}`);
    if (outcome.kind === 'recorded') {
      for (const { stream, alsoUnder } of outcome.envelopes)
        for (const each of [stream, ...alsoUnder]) streams.add(each);
    }
    return outcome;
  };

  return {
    now: () => epochMs(now),
    shop,
    wait: async (draw) => {
      const edges = edgesIn(await shop()).filter((at) => at > now);
      const edge = edges.sort((a, b) => a - b)[draw(3)] ?? now;
      now = oneOf(draw, [now, now + (1 + draw(9)) * minute, edge - 1, edge, edge + 1, edge + draw(9) * minute]);
    },
    say,
    sayLine: async (text) => {
      const [, by = 'kari', line = ''] = /^(?:@(\w+): )?(.*)$/.exec(text) ?? [];
      const [, wait] = /^(\d+)m$/.exec(line) ?? [];
      if (wait !== undefined) {
        now += Number(wait) * minute;
        return;
      }
      const reading = readLine(line, lineContext(await shop(), epochMs(now)));
      if (reading.kind !== 'command') throw new Error(`"${line}" is no act`);
      const outcome = await say(reading.command, by, reading.stance.is === 'happened' ? 'happened' : 'asked');
      if (outcome.kind !== 'recorded') throw new Error(`"${line}": ${JSON.stringify({ ...outcome, shop: '' })}`);
    },
    sayAnything: async (draw, focus) =>
      say(
        nextAct(await shop(), epochMs(now), draw, focus),
        oneOf(draw, ['kari', 'omar', 'rosa']),
        oneOf(draw, ['asked', 'asked', 'happened'] as const),
      ),
    close: () => store.close(),
  };
}
