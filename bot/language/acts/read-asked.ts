// Questions about how things stand, as a line says them: `can-i coat impeller-7 1`, `how-long impeller-7 dry`, `how-much
// batch 1`. What is named is a thing that may not be there: it is looked up where it is answered.

import { isVerb, type Question, type StateQuestion, type ThingAsked, type Verb } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { known } from '../../../core/known.ts';
import type { Method } from '../../../core/methods.ts';
import { grams } from '../../../core/units.ts';
import { type Topic, topics } from '../../../core/verbs/topics.ts';
import type { Fault } from '../reading.ts';
import { batchMarks, canMarks, fillers, sessionMarks } from '../tongues/english/line-words.ts';
import { methodsByWord } from '../trade-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { meantOn, verbAt } from '../verbs-typed.ts';
import { type ActLine, leftOver } from './act-line.ts';
import { readPlan } from './read-plan.ts';
import { readAct } from './readers.ts';

type Asked = Fault | StateQuestion;

/** What is asked with is no figure or name of an act: each has its reader. */
export const askedReaders: { readonly [Ask in StateQuestion['ask']]: (act: ActLine) => Asked } = {
  'can-i': readCanI,
  'how-long': (act) => ofAct('how-long', act),
  'who-did': (act) => ofAct('who-did', act),
  'where-is': (act) => ({ ask: 'where-is', of: thingsIn(act).of }),
  'how-hot': (act) => ({ ask: 'how-hot', of: thingsIn(act).of }),
  'to-do': (act) => ({ ask: 'to-do', of: thingsIn(act).of }),
  'how-much': readHowMuch,
  'what-late': () => ({ ask: 'what-late' }),
  'went-wrong': () => ({ ask: 'went-wrong' }),
  'at-risk': () => ({ ask: 'at-risk' }),
  'how-stands': readHowStands,
};

function ofAct(ask: 'how-long' | 'who-did', act: ActLine): Asked {
  const { acts, of } = thingsIn(act);
  return { ask, of, ...known({ act: acts[0] }) };
}

/** As much of the act as was said; the whole of it where that reads. */
function readCanI(line: ActLine): Asked {
  const { tokens, context } = line;
  const verb = verbAt(tokens, 0, context.hearing);
  const [first] = tokens;
  if (verb === undefined) return first === undefined ? { failed: 'incomplete', needs: ['asked-act'] } : leftOver(first);
  const { name } = verb.row;
  if (!isVerb(name)) return first === undefined ? { failed: 'incomplete', needs: ['asked-act'] } : leftOver(first);
  const after = tokens.slice(verb.to);
  const from = tokens[verb.to - 1]?.end ?? 0;
  const read = readAct(name, { ...line, verb, tokens: meantOn(name, after, context.hearing), from });
  const { of, method } = thingsIn({ ...line, tokens: after });
  return {
    ...{ ask: 'can-i', act: name, of },
    ...known({ said: isFailed(read) ? undefined : read.command, method: verb.method ?? method }),
  };
}

const isTopic = (word: string): word is Topic => topics.some((topic) => topic === word);

/** `how-stands expiry can 3`, `how-stands ratio a 700g`. */
function readHowStands(act: ActLine): Asked {
  const [first, ...after] = act.tokens;
  const topic = first?.text.toLowerCase() ?? '';
  if (first === undefined) return { failed: 'incomplete', needs: ['asked-topic'] };
  if (!isTopic(topic)) return leftOver(first);
  const mass = after.flatMap((token) =>
    token.kind === 'quantity' && token.quantity.is === 'mass' ? [grams(token.quantity.value)] : [],
  )[0];
  return { ask: 'how-stands', topic, of: thingsIn({ ...act, tokens: after }).of, ...known({ mass }) };
}

function readHowMuch(act: ActLine): Asked {
  if (
    !act.tokens.some((token) => (token.kind === 'quantity' && token.quantity.is === 'area') || /\dx\d/.test(token.text))
  ) {
    return { ask: 'how-much', of: thingsIn(act).of };
  }
  const asked = planOf(act);
  if (isFailed(asked)) return asked;
  const { method: _, ...plan } = asked;
  return { ask: 'how-much', of: [], plan };
}

/** By whichever method: one stands in so that the plan reads. */
function planOf(act: ActLine): Fault | Extract<Question, { ask: 'plan' }> {
  const brush: Token = { kind: 'word', word: 'brush', text: 'brush', start: act.line.length, end: act.line.length };
  const read = readPlan({ ...act, tokens: [...act.tokens.filter(({ text }) => !methodsByWord.has(text)), brush] });
  return isFailed(read) || read.ask === 'plan' ? read : { failed: 'incomplete', needs: ['area'] };
}

interface Things {
  readonly of: readonly ThingAsked[];
  readonly acts: readonly Verb[];
  readonly method: Method | undefined;
}

const numberMarks = [
  { noun: 'batch', marks: batchMarks },
  { noun: 'can', marks: canMarks },
  { noun: 'session', marks: sessionMarks },
] as const;

/** Numbers with what they number, names, acts, a method; the rest rounds the question off. */
function thingsIn({ tokens, context: { hearing } }: ActLine): Things {
  const of: ThingAsked[] = [];
  const acts: Verb[] = [];
  let method: Method | undefined;
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i];
    const word = wordIn(token);
    const number = numberOf(tokens[i + 1]);
    const marked = number === undefined ? undefined : numberMarks.find(({ marks }) => marks.has(word));
    if (marked !== undefined && number !== undefined) {
      of.push({ is: 'number', number, noun: marked.noun });
      i += 1;
      continue;
    }
    const alone = numberOf(token);
    if (alone !== undefined) of.push({ is: 'number', number: alone });
    if (token?.kind === 'quoted') of.push({ is: 'name', name: token.words });
    if (token?.kind !== 'word') continue;
    const verb = verbAt(tokens, i, hearing);
    if (verb !== undefined && isVerb(verb.row.name)) {
      acts.push(verb.row.name);
      i = verb.to - 1;
      continue;
    }
    method ??= methodsByWord.get(word);
    if (!fillers.has(word) && !methodsByWord.has(word)) of.push({ is: 'name', name: word });
  }
  return { of, acts, method };
}

const numberOf = (token: Token | undefined): number | undefined =>
  token?.kind === 'number' && token.number.whole && token.number.value > 0 ? token.number.value : undefined;
