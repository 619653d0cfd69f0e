// The home tab: what runs, what rings next and for whom, the air and its age, one tap to start, and the settings. The
// first opening welcomes and sets up.

import type { HomeView, KnownBlock } from '@slack/types';
import type { CrewId } from '../../core/ids.ts';
import type { Board } from '../cards/board.ts';
import type { BoardItem } from '../cards/board-item.ts';
import type { Card } from '../cards/card.ts';
import type { SetUp } from '../cards/set-up.ts';
import type { Words } from '../language/tongues/tongues.ts';
import { actionBlocks } from './action-blocks.ts';
import { markedFor } from './crew-mark.ts';
import { limits } from './limits.ts';
import { setUpButtons } from './set-up-view.ts';
import { plain } from './slack-text.ts';

export interface HomeDeps {
  readonly crew: CrewId;
  readonly board: Board;
  readonly settings: Card;
  readonly cans: Card | undefined;
  readonly setUp: SetUp;
  /** Where batches go; `undefined`: none yet. */
  readonly channel: string | undefined;
  readonly words: Words;
  readonly firstTime: boolean;
}

/** Made of blocks that we know. */
export type OwnView = HomeView & { readonly blocks: KnownBlock[] };

/** Beyond these nobody scrolls on a phone; `now` lists all. */
const itemsShown = 12;
const ringsShown = 8;

export function homeView({ crew, board, settings, cans, setUp, channel, words, firstTime }: HomeDeps): OwnView {
  const { chat, page } = words;
  const id = (name: string) => markedFor(crew, name);
  const { items } = board;
  const rings = board.rings
    .slice(0, ringsShown)
    .map(({ at, label, left, to }) => chat.ring(at, `${label}, ${left}`, to));
  const air = board.air.map(({ place, figures, lines }) => [place, ...figures, ...lines].join(' · '));
  const blocks: KnownBlock[] = [
    ...(firstTime
      ? [header(chat.welcomeTitle), section(chat.welcome.join('\n\n')), setUpButtons(setUp, words, id('welcome'))]
      : []),
    // Without a lead or a channel bells go astray: said first, and for as long as it is so.
    ...(setUp.nobodyLeads ? [section(chat.setUp.nobodyLeads)] : []),
    ...(channel === undefined ? [section(chat.setUp.noChannel)] : []),
    ...(!firstTime && (setUp.nobodyLeads || channel === undefined) ? [setUpButtons(setUp, words, id('missing'))] : []),
    header(`${chat.homeTitle} ${board.clock}`),
    ...(items.length === 0
      ? [section(page.nothingRuns)]
      : items.slice(0, itemsShown).flatMap((item) => itemBlocks(item, id(item.id)))),
    ...(items.length > itemsShown ? [section(chat.more(items.length - itemsShown))] : []),
    header(chat.ringsTitle),
    section(rings.length === 0 ? page.noRings : rings.join('\n')),
    ...(cans === undefined ? [] : cardSection(cans, id('cans'))),
    header(chat.airTitle),
    section(air.length === 0 ? page.airNever : air.join('\n')),
    header(chat.startTitle),
    ...actionBlocks(board.quick, id('start')),
    ...actionBlocks(board.alarms, id('alarms')),
    ...cardSection(settings, id('settings')),
    ...(channel === undefined ? [] : [channelLine(chat.setUp.channel, channel)]),
    setUpButtons(setUp, words, id('set-up')),
    section(words.replies.caution),
  ];
  return { type: 'home', blocks: blocks.slice(0, limits.view.blocks) };
}

function itemBlocks(item: BoardItem, id: string): KnownBlock[] {
  const clocks = item.clocks.map(({ label, left, at }) => `${label}: ${left}${at === undefined ? '' : `, ${at}`}`);
  return [section([`${item.name}  ${item.what}: ${item.phase}`, ...clocks].join('\n')), ...actionBlocks(item.taps, id)];
}

const cardSection = (card: Card, id: string): readonly KnownBlock[] => [
  header(card.title),
  section(card.lines.join('\n')),
  ...actionBlocks(card.actions, id),
];

const channelLine = (label: string, channel: string): KnownBlock => ({
  type: 'rich_text',
  elements: [
    {
      type: 'rich_text_section',
      elements: [
        { type: 'text', text: `${label}: ` },
        { type: 'channel', channel_id: channel },
      ],
    },
  ],
});

/** In the first language there is: nothing is known of them. */
export function noCrewView({ chat, replies }: Words): HomeView {
  return { type: 'home', blocks: [header(chat.welcomeTitle), section(chat.noCrewOfYours), section(replies.caution)] };
}

const header = (text: string): KnownBlock => ({ type: 'header', text: plain(text, limits.header) });
const section = (text: string): KnownBlock => ({ type: 'section', text: plain(text, limits.section.text) });
