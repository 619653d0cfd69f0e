// The first words in a channel, and those to somebody who belongs to no crew here.

import { makeCard } from '../cards/card.ts';
import { type Words, wordsIn } from '../language/tongues/languages.ts';
import { type CardMessage, cardMessage } from './card-blocks.ts';

export function welcomeMessage(words: Words): CardMessage {
  const card = makeCard(words.replies.greeting, 'plain', { lines: [...words.chat.joined, words.replies.caution] });
  return cardMessage(card, { words, showing: 'joined' });
}

/** In the first language there is: nothing is known of them. */
export function noCrewMessage(channel: string | undefined, showing: string): CardMessage {
  const words = wordsIn('en');
  const known = channel !== undefined && !channel.startsWith('D');
  const lines = [known ? words.chat.noCrewHere(channel) : words.chat.noCrewOfYours, words.replies.nothingRecorded];
  return cardMessage(makeCard(words.replies.notNow, 'warn', { lines }), { words, showing });
}
