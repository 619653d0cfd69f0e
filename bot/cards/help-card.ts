// What can be said, from the same tables that the reader and the rules use.

import { allowed } from '../../core/allowed.ts';
import { roles } from '../../core/crew/crew-commands.ts';
import { type Deed, deeds, leastRole } from '../../core/crew/who-may.ts';
import { isOwnKey } from '../../core/own-key.ts';
import { sprayLaws } from '../../core/session/figure-sources.ts';
import { englishVerbs } from '../language/tongues/english/verbs.ts';
import { type VocabularyName, type VocabularyRow, vocabulary } from '../language/vocabulary.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { exampleHere } from './example-here.ts';

export function helpCard(telling: Telling, verb: string | undefined): Card {
  const { replies, typed, slots, session } = telling.words;
  const rows: readonly VocabularyRow[] = Object.values(vocabulary);
  const row = rows.find(({ name }) => name === verb || (verb !== undefined && englishVerbs[name].words.includes(verb)));
  if (row === undefined) {
    return makeCard(replies.help, 'plain', {
      lines: [...rows.map(({ name }) => exampleHere(telling, name)), replies.helpHow, replies.caution],
      actions: [{ ...tap(telling, 'ring-everybody', 'emergency'), label: session.callForHelp('emergency') }],
    });
  }
  const rules = isOwnKey(allowed, row.name) ? (allowed[row.name] ?? []) : [];
  const also = [...new Set(row.may.map((slot) => slots[slot]))];
  const law = sprayLaws[telling.shop.crew.spray.law.frame];
  const told = rules.map((rule) => replies.helpRule(rule.code, rule.source, law, rule.liftedBy));
  return makeCard(typed.words(row.name).join(', '), 'plain', {
    lines: [
      exampleHere(telling, row.name),
      ...(also.length === 0 ? [] : [replies.helpMay(also)]),
      replies.helpHow,
      ...whose(telling, row.name),
      ...(told.length === 0 ? [] : [replies.helpRules, ...told]),
    ],
  });
}

/** Whose it is to say; of `set`, each of its settings, and of a date, that date. What is anybody's needs no word. */
function whose({ words: { replies, settings, session } }: Telling, say: VocabularyName): readonly string[] {
  const { on, off } = session.settings;
  const nameOf = (deed: Deed): readonly string[] => {
    if ('say' in deed) return [];
    const { label } = settings.names[deed.set];
    return [deed.off === undefined ? label : `${label}: ${deed.off ? off : on}`];
  };
  if (say === 'set') {
    return roles.flatMap((role) => {
      const theirs = deeds.filter((deed) => leastRole(deed) === role).flatMap(nameOf);
      return theirs.length === 0 ? [] : [replies.helpSettled[role](theirs)];
    });
  }
  const role = leastRole({ say });
  if (isOwnKey(session.qualifications, say)) return [replies.helpSettled[role]([session.qualifications[say]])];
  return role === 'crew' ? [] : [replies.helpSaid[role]];
}
