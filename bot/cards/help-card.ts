// What can be said, from the same tables that the reader and the rules use.

import { allowed } from '../../core/allowed.ts';
import { roles } from '../../core/crew/crew-commands.ts';
import { leastRole, type SettlingRow, settlingRows } from '../../core/crew/who-may-set.ts';
import { isOwnKey } from '../../core/own-key.ts';
import { qualifications } from '../../core/session/session-commands.ts';
import { englishVerbs } from '../language/tongues/english/verbs.ts';
import { type VocabularyRow, vocabulary } from '../language/vocabulary.ts';
import { type Card, makeCard } from './card.ts';
import type { Telling } from './card-context.ts';

export function helpCard(t: Telling, verb: string | undefined): Card {
  const { replies, typed } = t.words;
  const rows: readonly VocabularyRow[] = Object.values(vocabulary);
  const row = rows.find(({ name }) => name === verb || (verb !== undefined && englishVerbs[name].words.includes(verb)));
  if (row === undefined) {
    return makeCard(replies.help, 'plain', {
      lines: [...rows.map(({ name }) => typed.example(name)), replies.helpHow, replies.caution],
    });
  }
  const rules = isOwnKey(allowed, row.name) ? (allowed[row.name] ?? []) : [];
  const told = rules.map((rule) =>
    replies.helpRule(t.words.names.rule(rule.code), t.words.ruleSources[rule.source], replies.liftedBy[rule.liftedBy]),
  );
  return makeCard(typed.words(row.name).join(', '), 'plain', {
    lines: [
      typed.example(row.name),
      replies.helpHow,
      ...settledBy(t, row.name),
      ...(told.length === 0 ? [] : [replies.helpRules, ...told]),
    ],
  });
}

/** Who may settle it: of `set` each of its settings, of a date that date. */
function settledBy(t: Telling, verb: string): readonly string[] {
  const dates: readonly string[] = qualifications;
  const isAsked = (row: SettlingRow) => (verb === 'set' ? !dates.includes(row) : dates.includes(row) && row === verb);
  const asked = settlingRows.filter(isAsked);
  return roles.flatMap((role) => {
    const theirs = asked.filter((row) => leastRole(row) === role).map((row) => settlingName(t, row));
    return theirs.length === 0 ? [] : [t.words.replies.helpSettled[role](theirs.join(', '))];
  });
}

function settlingName({ words: { settings, session } }: Telling, row: SettlingRow): string {
  switch (row) {
    case 'brief on':
      return `${settings.names.brief.label}: ${session.settings.on}`;
    case 'brief off':
      return `${settings.names.brief.label}: ${session.settings.off}`;
    case 'fit':
    case 'medical':
    case 'training':
      return session.qualifications[row];
    default:
      return settings.names[row].label;
  }
}
