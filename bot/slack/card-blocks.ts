// A neutral card as blocks of a message, a modal or the home tab. All words are plain text to Slack: nothing that
// somebody typed is parsed. What is too long is cut, and the cut says what is missing; the message's text holds it all.

import type { KnownBlock, RichTextElement } from '@slack/types';
import { type Card, leadLines, linkLines, type Tone } from '../cards/card.ts';
import type { Words } from '../language/tongues/tongues.ts';
import { actionBlocks } from './action-blocks.ts';
import { limits, tapsNamed } from './limits.ts';
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
  /** Whoever is called reads first what to do; the figures follow. */
  readonly actFirst?: boolean;
  /** Under the card: who said it, what became of its taps. */
  readonly under?: readonly string[];
}

/** A title that is longer tells a pushing phone nothing; nor do taps and hazards without the rest. */
const longest = { title: 500, taps: 1_000, hazards: 2_700 } as const;

/** Words first: the mark only repeats what the title says. */
const marks: Readonly<Record<Tone, string>> = { plain: '', good: '✓ ', warn: '⚠ ', stop: '✋ ' };

export function cardMessage(card: Card, rendering: CardRendering): CardMessage {
  return { text: messageText(card, rendering), blocks: cardBlocks(card, rendering) };
}

/** Hazards, and what comes next: never lost from a long card. */
const hazardsOf = (card: Card) => [
  ...card.hazards.map((hazard) => `! ${hazard.text} (${hazard.source})`),
  ...leadLines(card),
];

/** What is too long loses lines from its middle: hazards, who said it and the taps stay at its end. */
function messageText(card: Card, { words, mention = [], actFirst, under = [] }: CardRendering): string {
  const ids = mention.map((id) => `<@${id}>`).join(' ');
  const facts = card.facts.map((fact) => `${fact.label}: ${fact.shown}`);
  const called = actFirst === true || ids !== '';
  const said = [...(called ? [...card.lines, ...facts] : [...facts, ...card.lines]), ...linkLines(card)].map(escaped);
  // The title opens the push on a locked phone; who is meant follows at once.
  const title = cutEscaped(escaped(card.title), longest.title) + (ids === '' ? '' : ` ${ids}`);
  const shorten = { shorten: cutEscaped };
  const end = [
    ...cutLines(hazardsOf(card).map(escaped), longest.hazards, words.chat.more, shorten),
    ...under.map((line) => cutEscaped(escaped(line), longest.title)),
    ...tapsLine(card),
  ];
  const room = limits.message.text - end.reduce((sum, line) => sum + line.length + 1, 0);
  return [...cutLines([title, ...said], room, words.chat.more, shorten), ...end].join('\n');
}

/** The first taps by their names, and how many there are beside them. */
function tapsLine({ actions }: Card): readonly string[] {
  if (actions.length === 0) return [];
  const named = actions.slice(0, tapsNamed).map(({ label }) => `[${escaped(cut(label, limits.button.text))}]`);
  const others = actions.length - named.length;
  return [cutEscaped([...named, ...(others === 0 ? [] : [`[+${others}]`])].join(' '), longest.taps)];
}

export function cardBlocks(card: Card, rendering: CardRendering): KnownBlock[] {
  const { words, mention = [], actFirst, under = [] } = rendering;
  const actions = actionBlocks(card.actions, rendering.showing, words.chat.moreTaps);
  const below = under
    .slice(0, limits.context.elements)
    .map((line): KnownBlock => ({ type: 'context', elements: [plain(line, limits.context.text)] }));
  const taken = JSON.stringify([actions, below]).length + card.title.length + 1_000;
  const body = bodyBlock(card, words, limits.message.blockCharacters - taken, actFirst === true || mention.length > 0);
  return [
    { type: 'header', text: plain(`${marks[card.tone]}${card.title}`, limits.header) },
    ...(mention.length === 0 ? [] : [mentionBlock(mention)]),
    ...body,
    ...below,
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

function bodyBlock(card: Card, words: Words, most: number, actFirst: boolean): KnownBlock[] {
  const facts = card.facts.map(({ label, shown }): RichTextElement[] => [
    { type: 'text', text: `${label}: ` },
    { type: 'text', text: shown === '' ? ' ' : shown, style: { bold: true } },
  ]);
  const room = Math.max(most - JSON.stringify(facts).length, 500);
  const kept = (lines: readonly string[], characters: number) =>
    cutLines(lines, characters, words.chat.more, { each: wrapping });
  const hazards = kept(hazardsOf(card), room / 2);
  const lines = kept(card.lines, room - hazards.reduce((sum, line) => sum + line.length + wrapping, 0));
  const inWords = (line: string): RichTextElement[] => [{ type: 'text', text: line === '' ? ' ' : line }];
  const said = lines.map(inWords);
  const links = (card.links ?? []).map(({ label, address }): RichTextElement[] => [
    { type: 'link', url: address, text: label },
  ]);
  const pieces = [...(actFirst ? [...said, ...facts] : [...facts, ...said]), ...links, ...hazards.map(inWords)];
  if (pieces.length === 0) return [];
  const elements = pieces.flatMap((piece, i): RichTextElement[] =>
    i === 0 ? piece : [{ type: 'text', text: '\n' }, ...piece],
  );
  return [{ type: 'rich_text', elements: [{ type: 'rich_text_section', elements }] }];
}
