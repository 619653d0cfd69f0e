// The answer to `what is`: what a word of the trade means, in our own words, what the bot does with it, where a sheet gives it and
// which standard has it.

import { isOwnKey } from '../../core/own-key.ts';
import { glossaryRows, type TermId, type TermRow } from '../language/tongues/glossary.ts';
import { type Card, makeCard } from './card.ts';
import type { Telling } from './card-context.ts';

const isTerm = (term: string): term is TermId => isOwnKey(glossaryRows, term);

export function glossaryCard({ words }: Telling, term: string): Card {
  if (!isTerm(term)) return makeCard(words.replies.notRead, 'warn', { lines: [words.why.unknownTerm(term)] });
  const { means, bot } = words.glossary[term];
  const { field, standard }: TermRow = glossaryRows[term];
  const [title = term] = words.termNames[term].split(', ');
  return makeCard(
    title.replace(/^\p{L}/u, (first) => first.toUpperCase()),
    'plain',
    {
      lines: [
        means,
        words.why.botDoes(bot),
        ...(field === undefined ? [] : [words.why.inSheet(field)]),
        ...(standard === undefined ? [] : [words.why.standard(standard)]),
      ],
    },
  );
}
