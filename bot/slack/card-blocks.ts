// A neutral card as blocks of a message, a modal or the home tab. All words are plain text to Slack: nothing that
// somebody typed is parsed. What is too long is cut, and the cut says what is missing; the message's text holds it all.

import type { KnownBlock, RichTextElement } from '@slack/types';
import type { Card, Tone } from '../cards/card.ts';
import type { Words } from '../language/words/languages.ts';
import { actionBlocks } from './action-blocks.ts';
import { limits } from './limits.ts';
import { cut, cutEscaped, cutLines, escaped, plain } from './slack-text.ts';

export interface CardMessage {
  /** The whole message: read aloud, and shown by the push. */
  readonly text: string;
  readonly blocks: KnownBlock[];
}

export interface CardRendering {
  readonly words: Words;
  /** New at each showing, so that a tap names the showing that it was made on. */
  readonly showing: string;
  /** Slack ids of who is mentioned. */
  readonly mention?: readonly string[];
  /** Under the card: who said it, what became of its taps. */
  readonly under?: readonly string[];
  readonly withTaps?: boolean;
}

/** A title that is longer tells a pushing phone nothing. */
const longestTitle = 500;

/** Words first: the mark only repeats what the title says. */
const marks: Readonly<Record<Tone, string>> = { plain: '', good: '✓ ', warn: '⚠ ', stop: '✋ ' };

export function cardMessage(card: Card, rendering: CardRendering): CardMessage {
  const mention = (rendering.mention ?? []).map((id) => `<@${id}>`).join(' ');
  return { text: messageText(card, rendering, mention), blocks: cardBlocks(card, rendering) };
}

function messageText(card: Card, { words, under = [], withTaps = true }: CardRendering, mention: string): string {
  const taps = withTaps ? card.actions.map((action) => action.label) : [];
  const facts = card.facts.map((fact) => `${fact.label}: ${fact.shown}`);
  const lines = [
    // Whoever is called reads first what to do.
    ...(mention === '' ? [...facts, ...card.lines] : [...card.lines, ...facts]),
    ...card.hazards.map((hazard) => `! ${hazard.text} (${hazard.source})`),
    ...under,
    ...(taps.length === 0 ? [] : [taps.map((label) => `[${label}]`).join(' ')]),
  ].map(escaped);
  // The title opens the push on a locked phone; who is meant follows at once.
  const title = escaped(cut(card.title, longestTitle)) + (mention === '' ? '' : ` ${mention}`);
  return cutLines([title, ...lines], limits.message.text, words.chat.more, { shorten: cutEscaped }).join('\n');
}

export function cardBlocks(card: Card, rendering: CardRendering): KnownBlock[] {
  const { words, mention = [], under = [], withTaps = true } = rendering;
  const actions = withTaps ? actionBlocks(card.actions, rendering.showing) : [];
  const taken = JSON.stringify(actions).length + card.title.length + 1_500;
  const body = bodyBlock(card, words, limits.message.blockCharacters - taken);
  return [
    { type: 'header', text: plain(`${marks[card.tone]}${card.title}`, limits.header) },
    ...(mention.length === 0 ? [] : [mentionBlock(mention)]),
    ...body,
    ...under
      .slice(0, limits.context.elements)
      .map((line): KnownBlock => ({ type: 'context', elements: [plain(line, limits.context.text)] })),
    ...actions,
  ];
}

function mentionBlock(ids: readonly string[]): KnownBlock {
  const elements = ids.flatMap((user_id, i): RichTextElement[] => [
    ...(i === 0 ? [] : [{ type: 'text', text: ' ' } as const]),
    { type: 'user', user_id },
  ]);
  return { type: 'rich_text', elements: [{ type: 'rich_text_section', elements }] };
}

/** JSON around each piece of text counts too. */
const wrapping = 60;

function bodyBlock(card: Card, words: Words, most: number): KnownBlock[] {
  const facts = card.facts.map((fact) => [`${fact.label}: `, fact.shown] as const);
  const rest = [...card.lines, ...card.hazards.map((hazard) => `! ${hazard.text} (${hazard.source})`)];
  const room = most - facts.reduce((sum, [label, shown]) => sum + label.length + shown.length + 2 * wrapping, 0);
  const kept = cutLines(rest, Math.max(room, 500), words.chat.more, { each: wrapping });
  const pieces: RichTextElement[][] = [
    ...facts.map(([label, shown]): RichTextElement[] => [
      { type: 'text', text: label },
      { type: 'text', text: shown === '' ? ' ' : shown, style: { bold: true } },
    ]),
    ...kept.map((line): RichTextElement[] => [{ type: 'text', text: line === '' ? ' ' : line }]),
  ];
  if (pieces.length === 0) return [];
  const elements = pieces.flatMap((piece, i): RichTextElement[] =>
    i === 0 ? piece : [{ type: 'text', text: '\n' }, ...piece],
  );
  return [{ type: 'rich_text', elements: [{ type: 'rich_text_section', elements }] }];
}
