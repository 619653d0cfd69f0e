// Holds what is live in memory, and brings it up to date from the store before every decision: the record is the truth,
// this is its reading. Acts that are about to land stand in it already, until they have landed or could not.

import type { CrewFile } from './crew/crew.ts';
import type { Envelope } from './history.ts';
import { type CrewId, crewStream, nounOf, type StreamId } from './ids.ts';
import type { Head, Store } from './ports.ts';
import type { SheetShelf } from './products/sheet.ts';
import { firstHash } from './seal-sums.ts';
import type { Shop } from './shop.ts';
import {
  type Fixed,
  forgetting,
  grown,
  isLive,
  type Loaded,
  type Memory,
  memoryOf,
  missingReferences,
  withCrewAnew,
  withEvents,
} from './shop-memory.ts';
import { keepsItsBells } from './unread.ts';

export interface ShopKeeper {
  /** Loads what is live and what is named, up to the record's end and what is staged behind it. */
  readonly open: (named: readonly StreamId[]) => Promise<Shop>;
  /** The shop as it would be with these events; nothing is kept. */
  readonly preview: (envelopes: readonly Envelope[]) => Shop;
  /** These events are about to land: what is decided next is decided behind them. */
  readonly stage: (envelopes: readonly Envelope[]) => void;
  /** What is staged has landed. */
  readonly settle: () => void;
  /** What is staged could not land. */
  readonly drop: () => void;
  /** Where the next event goes: behind what is staged. */
  readonly head: () => Head;
  readonly landedHead: () => Head;
  readonly versionOf: (stream: StreamId) => number;
  readonly isLive: (stream: StreamId) => boolean;
  /** Its bells cannot be planned anew, since some of it does not read: they stay as they are. */
  readonly keepsItsBells: (stream: StreamId) => boolean;
  /** The shop as it was last recorded. */
  readonly shop: () => Shop;
}

/** One kind after the other: what a part refers to may refer on. */
const referred = ['session', 'batch', 'can'] as const;

export function createShopKeeper(store: Store, crew: CrewId, file: CrewFile, shelf: SheetShelf): ShopKeeper {
  const fixed: Fixed = { file, shelf };
  const nothing = { head: { seq: 0, hash: firstHash }, streams: new Map(), newest: { number: 0, actedAt: undefined } };
  let landed = memoryOf(fixed, nothing);
  let ahead = landed;
  let staged: readonly Envelope[] = [];
  /** The last preview, which is mostly what is staged next. */
  let previewed = { from: ahead, envelopes: staged, memory: ahead };
  let isRead = false;
  /** A chat platform's crew grows as people are met, without an event. */
  let people = file.people;

  /** As the record says. What is staged goes on standing behind it. */
  function remember(memory: Memory): void {
    if (staged.length === 0) landed = memory;
    ahead = memory;
  }

  async function catchUp(): Promise<void> {
    if (isRead) {
      if (file.people !== people && staged.length === 0) {
        people = file.people;
        remember(withCrewAnew(fixed, ahead));
      }
      // Others may have written, but not between what is staged: whoever loses against them decides again.
      if (staged.length > 0) return;
      const head = await store.head(crew);
      if (head.hash === landed.head.hash) return;
      const others = await store.readAfter(crew, landed.head.seq);
      if (others.unread.length === 0) {
        remember(withEvents(fixed, { ...landed, head }, others.envelopes));
        return;
      }
    }
    const head = await store.head(crew);
    const streams = new Map<StreamId, Loaded>();
    for (const stream of [...(await store.liveStreams(crew)), crewStream]) streams.set(stream, await load(stream));
    remember(memoryOf(fixed, { head, streams, newest: await store.newest(crew) }));
    isRead = true;
  }

  async function load(stream: StreamId): Promise<Loaded> {
    const behind = staged.filter((envelope) => [envelope.stream, ...envelope.alsoUnder].includes(stream));
    const { envelopes, unread } = await store.readUnder(crew, stream);
    return grown(fixed, stream, undefined, [...envelopes, ...behind], unread);
  }

  async function loadMissing(wanted: readonly StreamId[]): Promise<void> {
    const missing = new Set(wanted.filter((stream) => !ahead.streams.has(stream)));
    if (missing.size === 0) return;
    const streams = new Map(ahead.streams);
    for (const stream of missing) streams.set(stream, await load(stream));
    remember(memoryOf(fixed, { ...ahead, streams }));
  }

  async function open(named: readonly StreamId[]): Promise<Shop> {
    await catchUp();
    await loadMissing(named);
    for (const kind of referred) {
      const missing = missingReferences(ahead);
      await loadMissing(missing.filter((stream) => nounOf(stream) === kind));
    }
    // What is staged may have ended a stream that the store does not yet name for an undo.
    if (staged.length === 0) remember(forgetting(fixed, ahead, new Set([...named, crewStream])));
    return ahead.shop;
  }

  function previewOf(envelopes: readonly Envelope[]): Memory {
    if (previewed.from !== ahead || previewed.envelopes !== envelopes) {
      previewed = { from: ahead, envelopes, memory: withEvents(fixed, ahead, envelopes) };
    }
    return previewed.memory;
  }

  return {
    open,
    preview: (envelopes) => previewOf(envelopes).shop,
    stage: (envelopes) => {
      ahead = previewOf(envelopes);
      staged = [...staged, ...envelopes];
    },
    settle: () => {
      landed = ahead;
      staged = [];
    },
    drop: () => {
      ahead = landed;
      staged = [];
    },
    head: () => {
      if (!isRead) throw new Error('the record has not been read yet');
      return ahead.head;
    },
    landedHead: () => landed.head,
    versionOf: (stream) => {
      const { envelopes = [], unread = [] } = ahead.streams.get(stream) ?? {};
      const last = [envelopes, unread].flatMap((events) => events.findLast((event) => event.stream === stream) ?? []);
      return Math.max(0, ...last.map(({ version }) => version));
    },
    keepsItsBells: (stream) => keepsItsBells(ahead.shop, stream),
    isLive: (stream) => isLive(stream, ahead.streams.get(stream)),
    shop: () => landed.shop,
  };
}
