// What can be said, from the same tables that the reader and the rules use.

import { allowed } from '../../core/allowed.ts';
import { isOwnKey } from '../../core/own-key.ts';
import { type VocabularyRow, vocabulary } from '../language/vocabulary.ts';
import { type Card, makeCard } from './card.ts';
import type { Telling } from './telling.ts';

export function helpCard(t: Telling, verb: string | undefined): Card {
  const { replies, typed } = t.words;
  const rows: readonly VocabularyRow[] = Object.values(vocabulary);
  const row = rows.find(({ name, words }) => name === verb || (verb !== undefined && words.includes(verb)));
  if (row === undefined) {
    return makeCard(replies.help, 'plain', {
      lines: [...rows.map(({ name }) => typed.example(name)), replies.helpHow, replies.caution],
    });
  }
  const rules = isOwnKey(allowed, row.name) ? allowed[row.name] : [];
  const told = rules.map((rule) =>
    replies.helpRule(t.words.names.rule(rule.code), t.words.ruleSources[rule.source], replies.liftedBy[rule.liftedBy]),
  );
  return makeCard(typed.words(row.name).join(', '), 'plain', {
    lines: [typed.example(row.name), replies.helpHow, ...(told.length === 0 ? [] : [replies.helpRules, ...told])],
  });
}
