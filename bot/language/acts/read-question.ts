// Questions only read: `day`, `day yesterday`, `day 2026-03-02`, `now`, `stock`, `plan 6x0.8m2 spray`, `help mix`.

import type { Question } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { askedWhether, asksWhatRang, thingsOfWhy } from '../asked/why-asked.ts';
import type { Hearing } from '../hearing.ts';
import type { Fault } from '../reading.ts';
import { nearestVerbs } from '../suggestions.ts';
import { termNamed, termsNear } from '../terms-asked.ts';
import { withDates } from '../times/date-typed.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import { isIgnoredOn, verbAt, verbNamed } from '../verbs-typed.ts';
import { type ActLine, leftOver } from './act-line.ts';
import { askedReaders } from './read-asked.ts';
import { readCartridge } from './read-cartridge.ts';
import { readMask } from './read-mask.ts';
import { readPlan } from './read-plan.ts';
import { readPurge } from './read-purge.ts';
import { alone, recordReaders } from './read-record-question.ts';
import { dateOf } from './read-span.ts';
import { readHazards, readVent } from './read-vent.ts';

/** What is told with a question is no figure or name of an act: each has its reader. */
const readers: { readonly [Ask in Question['ask']]: (act: ActLine) => Question | Fault } = {
  day: readDay,
  now: alone({ ask: 'now' }),
  'what-now': alone({ ask: 'what-now' }),
  practice: alone({ ask: 'practice' }),
  'practice-off': alone({ ask: 'practice-off' }),
  stock: alone({ ask: 'stock' }),
  instruments: alone({ ask: 'instruments' }),
  plan: readPlan,
  vent: readVent,
  purge: readPurge,
  hazards: readHazards,
  mask: readMask,
  why: readWhy,
  cartridge: readCartridge,
  'what-is': readWhatIs,
  help: readHelp,
  ...recordReaders,
  ...askedReaders,
};

export const readQuestion = (ask: Question['ask'], act: ActLine): Question | Fault => readers[ask](act);

function readDay(act: ActLine): Question | Fault {
  const tokens = withDates(act.tokens, act);
  if (isFailed(tokens)) return tokens;
  const [first, second] = tokens.filter((token) => token.kind !== 'word' || token.word !== 'of');
  if (second !== undefined) return leftOver(second);
  const word = first?.kind === 'word' ? first.word : '';
  if (first === undefined || word === 'today') return { ask: 'day', day: { kind: 'today' } };
  if (word === 'yesterday') return { ask: 'day', day: { kind: 'yesterday' } };
  const date = dateOf(first, 'day');
  return typeof date === 'string' ? { ask: 'day', day: { kind: 'date', date } } : date;
}

/** `ayuda con la mezcla`. */
const beforeTopic: ReadonlySet<string> = new Set(['with', 'for', 'by', 'of', 'on', 'the', 'to']);

/** `help all cans`; `help all` is every line. */
function readGroup([, second, third]: readonly Token[], { helpGroups }: Hearing): Question | Fault {
  if (second === undefined) return { ask: 'help', group: 'all' };
  const group = helpGroups.get(withoutAccents(second.text.toLowerCase()));
  const stray = group === undefined ? second : third;
  return stray === undefined && group !== undefined ? { ask: 'help', group } : leftOver(stray ?? second);
}

function readHelp({ tokens: typed, context: { hearing } }: ActLine): Question | Fault {
  const topic = typed.findIndex(
    (token, i) => verbAt(typed, i, hearing) !== undefined || token.kind !== 'word' || !beforeTopic.has(token.word),
  );
  const tokens = topic === -1 ? typed : typed.slice(topic);
  const [first] = tokens;
  if (first === undefined) return { ask: 'help' };
  if (wordIn(first) === 'all') return readGroup(tokens, hearing);
  const verb = verbAt(tokens, 0, hearing);
  const asksRules = verb !== undefined && wordIn(tokens[verb.to]) === 'rules';
  const stray = tokens[(verb?.to ?? 1) + (asksRules ? 1 : 0)];
  const word = first.kind === 'word' ? first.text.toLowerCase() : '';
  // `help gas leak`: what only stands for a topic and goes on may be a cry.
  if (stray !== undefined)
    return verb === undefined || verbNamed(word, hearing) !== undefined || verb.to > 1
      ? leftOver(stray)
      : { failed: 'unknown-verb', token: first, needs: ['verb'] };
  if (verb !== undefined) return { ask: 'help', verb: verb.row.name, ...(asksRules && { rules: true }) };
  const tries = nearestVerbs(word, hearing).map(({ printed }) => `help ${printed}`);
  return { failed: 'unknown-verb', token: first, needs: ['verb'], tries };
}

/** What is asked about, without what stands round it. */
function askedOf({ tokens, line, verb, context: { hearing } }: ActLine): string {
  const rounds = (token: Token): boolean =>
    token.kind === 'word' &&
    (isIgnoredOn(verb.row.name, token.word, hearing) || isIgnoredOn(verb.row.name, token.text.toLowerCase(), hearing));
  const first = tokens.find((token) => !rounds(token));
  const last = tokens.findLast((token) => !rounds(token));
  return first === undefined || last === undefined ? '' : line.slice(first.start, last.end).replace(/[?!.\s]+$/, '');
}

/** `what is flash-off`; of what is no word of the trade others may know more. */
function readWhatIs(act: ActLine): Question | Fault {
  const { hearing } = act.context;
  const said = askedOf(act);
  const whole = act.line.slice(act.from).replace(/[?!.\s]+$/, '');
  // `part a` ends as an article does.
  const term = termNamed(whole, hearing) ?? termNamed(said, hearing);
  // `what's the humidity` asks how much it is, `what is humidity` what the word means.
  const isFigure = wordIn(act.tokens[0]) === 'the' && (term === 'humidity' || term === 'dew-point');
  if (isFigure) return { ask: 'how-hot', of: [] };
  if (term !== undefined) return { ask: 'what-is', term };
  const [token] = act.tokens;
  const tries = termsNear(said, hearing).map((name) => `${act.verb.printed} ${name}`);
  return { failed: 'unknown-verb', ...(token !== undefined && { token }), needs: ['sought'], tries };
}

/** `why is 09:42`, `where does 9:42 come from`: what stands round it asks nothing. */
function readWhy(act: ActLine): Question | Fault {
  const about = askedOf(act);
  if (about === '') return { ask: 'why' };
  // What stands against an act is asked of the rules.
  const [token] = act.tokens;
  if (asksWhatRang(act.line, act.context.hearing)) return { ask: 'how-stands', topic: 'last-ring', of: [] };
  if (token !== undefined && askedWhether(act.line.slice(token.start), act.context.hearing) !== undefined)
    return leftOver(token);
  const of = thingsOfWhy(act.line.slice(act.from), act.context);
  return { ask: 'why', about, ...(of.length > 0 && { of }) };
}
