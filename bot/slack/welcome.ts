// The first words in a channel, and those to somebody who belongs to no crew here.

import { makeCard } from '../cards/card.ts';
import { wordsIn } from '../language/tongues/languages.ts';
import type { Look } from '../messages/look.ts';
import type { Voice } from '../talk/overview.ts';

export function welcomeLook({ words, language }: Voice): Look {
  const card = makeCard(words.replies.greeting, 'plain', { lines: [...words.chat.joined, words.replies.caution] });
  return { card, language, showing: 'joined' };
}

/** In the first language there is: nothing is known of them. */
export function noCrewLook(channel: string | undefined, showing: string): Look {
  const language = 'en';
  const words = wordsIn(language);
  const known = channel !== undefined && !channel.startsWith('D');
  const lines = [known ? words.chat.noCrewHere(channel) : words.chat.noCrewOfYours, words.replies.nothingRecorded];
  return { card: makeCard(words.replies.notNow, 'warn', { lines }), language, showing };
}
