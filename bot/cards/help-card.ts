// What can be said, from the same tables that the reader and the rules use.

import { allowed } from '../../core/allowed.ts';
import type { Question } from '../../core/commands.ts';
import { roles } from '../../core/crew/crew-commands.ts';
import { type Deed, deeds, leastRole } from '../../core/crew/who-may.ts';
import { guideFor } from '../../core/guide/guide.ts';
import type { PersonName } from '../../core/ids.ts';
import { isOwnKey } from '../../core/own-key.ts';
import { sprayLaws } from '../../core/session/figure-sources.ts';
import { byName, liveBatches, liveCans, liveParts, openSessions } from '../../core/shop.ts';
import { type NextActId, statusOf } from '../../core/status.ts';
import { helpGroups, namesIn } from '../language/help-groups.ts';
import { englishVerbs } from '../language/tongues/english/verbs.ts';
import { type VocabularyName, type VocabularyRow, vocabulary } from '../language/vocabulary.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { exampleHere } from './example-here.ts';
import { stepOf } from './guide-card.ts';

type HelpAsked = Extract<Question, { ask: 'help' }>;

export function helpCard(telling: Telling, { verb, group, rules }: HelpAsked, name: PersonName): Card {
  const rows: readonly VocabularyRow[] = Object.values(vocabulary);
  const row = rows.find(
    (each) => each.name === verb || (verb !== undefined && englishVerbs[each.name].words.includes(verb)),
  );
  if (row !== undefined) return rules === true ? rulesCard(telling, row.name) : verbCard(telling, row);
  return group === undefined ? momentCard(telling, name) : groupCard(telling, group);
}

/** Few enough for a phone, and of what is in hand. */
function momentCard(telling: Telling, name: PersonName): Card {
  const { replies, typed, session } = telling.words;
  return makeCard(replies.help, 'plain', {
    lines: [
      replies.helpNow(stepOf(telling, guideFor(telling, name))),
      ...inHand(telling).map((each) => exampleHere(telling, each)),
      replies.helpAsk(asked.map((each) => asSaid(exampleHere(telling, each)))),
      replies.helpMore(helpGroups.map((group) => typed.helpAll(group))),
      replies.helpHow,
      replies.caution,
    ],
    actions: [
      { ...tap(telling, 'ring-everybody', 'emergency'), label: session.callForHelp('emergency') },
      ...helpGroups.map((group) => ({
        id: `help-${group}`,
        label: typed.helpGroup(group),
        line: typed.helpAll(group),
      })),
      tap(telling, 'practice', 'practice'),
    ],
  });
}

/** `how-long impeller-7`, as a person says it. */
const asSaid = (line: string): string => line.replace(/^(\p{L}+)-(\p{L}+)/u, '$1 $2');

const asked = ['what-now', 'how-long', 'can-i'] as const;

/** What comes next of all that runs, and where little does what a day begins with: each once. */
function inHand(telling: Telling): readonly VocabularyName[] {
  const { shop } = telling;
  const next = [
    ...liveBatches(shop).map((batch) => statusOf.batch(telling, batch)),
    ...openSessions(shop).map((session) => statusOf.session(telling, session)),
    ...statusOf.parts(telling, byName(liveParts(shop)).slice(0, partsLookedAt)),
    ...liveCans(shop).map((can) => statusOf.can(telling, can)),
  ].map((status): readonly VocabularyName[] =>
    status.next().flatMap(({ id, command }) => (seldom.has(id) ? [] : [command.verb])),
  );
  const likely = next.flatMap((verbs) => verbs.slice(0, 1));
  return [...new Set([...likely, ...next.flat(), ...beginning])].slice(0, mostInHand);
}

/** They are offered so that they are at hand, and are not what hands do next. */
const seldom: ReadonlySet<NextActId> = new Set(['stop', 'thick', 'hot', 'cover', 'door', 'hold']);

const beginning = ['air', 'mix', 'open', 'part', 'plan'] as const satisfies readonly VocabularyName[];
const mostInHand = 5;
/** Enough to find one of each step. */
const partsLookedAt = 12;

function groupCard(telling: Telling, group: string): Card {
  const { replies } = telling.words;
  const names = helpGroups.filter((each) => each === group || group === 'all').flatMap(namesIn);
  return makeCard(replies.help, 'plain', {
    lines: [...names.map((each) => exampleHere(telling, each)), replies.helpHow, replies.caution],
    actions: [
      { ...tap(telling, 'ring-everybody', 'emergency'), label: telling.words.session.callForHelp('emergency') },
    ],
  });
}

function verbCard(telling: Telling, row: VocabularyRow): Card {
  const { replies, typed, slots } = telling.words;
  const rules = rulesOf(row.name).length;
  const also = [...new Set(row.may.map((slot) => slots[slot]))];
  return makeCard(typed.words(row.name).join(', '), 'plain', {
    lines: [
      exampleHere(telling, row.name),
      ...(also.length === 0 ? [] : [replies.helpMay(also)]),
      replies.helpHow,
      ...whose(telling, row.name),
      ...(rules === 0 ? [] : [replies.helpObjects(rules)]),
    ],
    actions: rules === 0 ? [] : [tap(telling, 'rules', `help ${row.name} rules`)],
  });
}

/** Apart: of a coat they would fill three screens. */
function rulesCard(telling: Telling, verb: VocabularyName): Card {
  const { replies, typed } = telling.words;
  const law = sprayLaws[telling.shop.crew.spray.law.frame];
  return makeCard(replies.helpRules(typed.words(verb)[0] ?? verb), 'plain', {
    lines: liftedBy.flatMap((by) => {
      const rules = rulesOf(verb).filter((rule) => rule.liftedBy === by);
      return rules.length === 0
        ? []
        : [replies.helpLifted[by], ...rules.map((rule) => replies.helpRule(rule.code, rule.source, law))];
    }),
  });
}

const rulesOf = (verb: VocabularyName) => (isOwnKey(allowed, verb) ? (allowed[verb] ?? []) : []);
const liftedBy = ['lead', 'supervisor', 'nobody'] as const;

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
