// Holds what is live in memory, and brings it up to date from the store before every decision: the record is the truth,
// this is its reading. Acts that are about to land stand in it already, until they have landed or could not.

import type { CrewFile } from './crew/crew.ts';
import type { Envelope } from './history.ts';
import { type CrewId, crewStream, type StreamId } from './ids.ts';
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
  /** Loads these besides. Whether others have written since is not asked again: what rests on it will not land then. */
  readonly openMore: (named: readonly StreamId[]) => Promise<Shop>;
  /** The shop as it would be with these events; nothing is kept. */
  readonly preview: (envelopes: readonly Envelope[]) => Shop;
  /** These events are about to land: what is decided next is decided behind them. */
  readonly stage: (envelopes: readonly Envelope[]) => void;
  /** What is staged has landed. */
  readonly land: () => void;
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

/** What is remembered of one crew. */
interface Kept {
  readonly store: Store;
  readonly crew: CrewId;
  readonly fixed: Fixed;
  landed: Memory;
  /** With what is staged. */
  ahead: Memory;
  staged: readonly Envelope[];
  /** The last preview, which is mostly what is staged next. */
  previewed: { readonly from: Memory; readonly envelopes: readonly Envelope[]; readonly memory: Memory } | undefined;
  isRead: boolean;
  /** A chat platform's crew grows as people are met, without an event. */
  people: CrewFile['people'];
}

export function createShopKeeper(store: Store, crew: CrewId, file: CrewFile, shelf: SheetShelf): ShopKeeper {
  const fixed: Fixed = { file, shelf };
  const nothing = {
    head: { seq: 0, hash: firstHash },
    streams: new Map(),
    newest: { number: 0, actedAt: undefined, pouredFromCans: [] },
  };
  const empty = memoryOf(fixed, nothing);
  const begun = { landed: empty, ahead: empty, staged: [], previewed: undefined, isRead: false, people: file.people };
  const kept: Kept = { store, crew, fixed, ...begun };
  return {
    open: (named) => open(kept, named),
    openMore: (named) => openMore(kept, named),
    preview: (envelopes) => previewOf(kept, envelopes).shop,
    stage: (envelopes) => {
      kept.ahead = previewOf(kept, envelopes);
      kept.staged = [...kept.staged, ...envelopes];
    },
    land: () => {
      kept.landed = kept.ahead;
      kept.staged = [];
    },
    drop: () => {
      kept.ahead = kept.landed;
      kept.staged = [];
    },
    head: () => {
      if (!kept.isRead) throw new Error('the record has not been read yet');
      return kept.ahead.head;
    },
    landedHead: () => kept.landed.head,
    versionOf: (stream) => {
      const { envelopes = [], unread = [] } = kept.ahead.streams.get(stream) ?? {};
      const isOfIt = (event: Pick<Envelope, 'stream'>) => event.stream === stream;
      return Math.max(envelopes.findLast(isOfIt)?.version ?? 0, unread.findLast(isOfIt)?.version ?? 0);
    },
    keepsItsBells: (stream) => keepsItsBells(kept.ahead.shop, stream),
    isLive: (stream) => isLive(kept.ahead, stream),
    shop: () => kept.landed.shop,
  };
}

async function open(kept: Kept, named: readonly StreamId[]): Promise<Shop> {
  await catchUp(kept);
  const shop = await openMore(kept, named);
  // What is staged may have ended a stream that the store does not yet name for an undo.
  if (kept.staged.length > 0) return shop;
  remember(kept, forgetting(kept.fixed, kept.ahead, new Set([...named, crewStream])));
  return kept.ahead.shop;
}

async function openMore(kept: Kept, named: readonly StreamId[]): Promise<Shop> {
  const missing = named.filter((stream) => !kept.ahead.streams.has(stream));
  if (missing.length > 0) await loadMissing(kept, missing);
  // What is referred to may refer on.
  const referred = missingReferences(kept.ahead);
  return referred.length === 0 ? kept.ahead.shop : openMore(kept, referred);
}

/** As the record says. What is staged goes on standing behind it. */
function remember(kept: Kept, memory: Memory): void {
  if (kept.staged.length === 0) kept.landed = memory;
  kept.ahead = memory;
}

async function catchUp(kept: Kept): Promise<void> {
  const { store, crew, fixed } = kept;
  if (kept.isRead) {
    if (fixed.file.people !== kept.people && kept.staged.length === 0) {
      kept.people = fixed.file.people;
      remember(kept, withCrewAnew(fixed, kept.ahead));
    }
    // Others may have written, but not between what is staged: whoever loses against them decides again.
    if (kept.staged.length > 0) return;
    const head = await store.head(crew, kept.landed.head.seq);
    if (head.hash === kept.landed.head.hash) return;
    const others = await store.readAfter(crew, kept.landed.head.seq);
    if (others.unread.length === 0) {
      remember(kept, withEvents(fixed, { ...kept.landed, head }, others.envelopes));
      return;
    }
  }
  const head = await store.head(crew);
  const streams = new Map<StreamId, Loaded>();
  for (const stream of [...(await store.liveStreams(crew)), crewStream]) streams.set(stream, await load(kept, stream));
  remember(kept, memoryOf(fixed, { head, streams, newest: await store.newest(crew) }));
  kept.isRead = true;
}

async function load({ store, crew, fixed, staged }: Kept, stream: StreamId): Promise<Loaded> {
  const behind = staged.filter((envelope) => [envelope.stream, ...envelope.alsoUnder].includes(stream));
  const { envelopes, unread } = await store.readUnder(crew, stream);
  return grown(fixed, stream, undefined, [...envelopes, ...behind], unread);
}

async function loadMissing(kept: Kept, missing: readonly StreamId[]): Promise<void> {
  const streams = new Map(kept.ahead.streams);
  for (const stream of new Set(missing)) streams.set(stream, await load(kept, stream));
  remember(kept, memoryOf(kept.fixed, { ...kept.ahead, streams }));
}

function previewOf(kept: Kept, envelopes: readonly Envelope[]): Memory {
  const { ahead, previewed } = kept;
  if (previewed?.from === ahead && previewed.envelopes === envelopes) return previewed.memory;
  const memory = withEvents(kept.fixed, ahead, envelopes);
  kept.previewed = { from: ahead, envelopes, memory };
  return memory;
}
