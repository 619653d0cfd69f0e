// Questions about the past: `week`, `trace impeller-7`, `find customer harbour`, `export month csv`, `verify 3f9a12`.

import { isFailed } from '../../../core/failed.ts';
import { known } from '../../../core/known.ts';
import type {
  ExportForm,
  FindKey,
  RecordQuestion,
  SpanAsked,
  TraceAsked,
} from '../../../core/records/record-questions.ts';
import type { Hearing } from '../hearing.ts';
import { partNamed } from '../names-typed.ts';
import { personTyped } from '../people-typed.ts';
import type { Fault, LineContext } from '../reading.ts';
import { withDates } from '../times/date-typed.ts';
import { batchMarks, canMarks, fillers } from '../tongues/english/line-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { isIgnoredOn } from '../verbs-typed.ts';
import { type ActLine, leftOver } from './act-line.ts';
import { figureFor } from './figure-of-slot.ts';
import { sheetFrom } from './read-names.ts';
import { dateOf, spanFrom, weekNumbered, whichOf } from './read-span.ts';

/** What is asked of the record is told by spans, keys and names of its own: each has its reader. */
export const recordReaders: { readonly [Ask in RecordQuestion['ask']]: (act: ActLine) => RecordQuestion | Fault } = {
  week: (act) => readStretch('week', act),
  month: (act) => readStretch('month', act),
  from: (act) => readSpan('from', act, { failed: 'incomplete', needs: ['span'] }),
  trace: (act) => readTraced('trace', act),
  card: (act) => readTraced('card', act),
  find: readFind,
  traveller: readTraveller,
  export: readExport,
  voc: (act) => readSpan('voc', act, { kind: 'month', which: 'this' }),
  exposures: readExposures,
  verify: readVerify,
  backup: (act) => {
    const file = restOf(act, 0);
    return file === '' ? { failed: 'incomplete', needs: ['file'] } : { ask: 'backup', file };
  },
  keep: alone({ ask: 'keep' }),
  papers: readPapers,
};

/** A question that nothing is told with. */
export function alone<Asked>(question: Asked): (act: ActLine) => Asked | Fault {
  return ({ tokens, verb, context }) => {
    const isSaid = (token: Token) => token.kind === 'word' && isIgnoredOn(verb.row.name, token.word, context.hearing);
    const stray = tokens.find((token) => !isSaid(token));
    return stray === undefined ? question : leftOver(stray);
  };
}

/** `otherwise`: where the line says no span. */
function readSpan(ask: 'from' | 'voc', act: ActLine, otherwise: SpanAsked | Fault): RecordQuestion | Fault {
  const span = spanFrom(act.tokens, act) ?? otherwise;
  return isFailed(span) ? span : { ask, span };
}

/** `exposures`, `exposures kari`, `exposures kari last week`: today where nothing else is said. */
function readExposures(act: ActLine): RecordQuestion | Fault {
  const { hearing } = act.context;
  const said = act.tokens.filter(
    (token) => token.kind !== 'word' || !(fillers.has(token.word) || isIgnoredOn('exposures', token.word, hearing)),
  );
  const today: SpanAsked = { kind: 'day', day: 'today' };
  const whole = spanFrom(said, act);
  if (!isFailed(whole)) return { ask: 'exposures', span: whole ?? today };
  const [first, ...rest] = said;
  const person = personTyped(first, hearing);
  const span = person === undefined ? whole : spanFrom(rest, act);
  return isFailed(span) ? span : { ask: 'exposures', span: span ?? today, ...known({ person }) };
}

function readTraced(ask: 'trace' | 'card', act: ActLine): RecordQuestion | Fault {
  const of = tracedFrom(act);
  return isFailed(of) ? of : { ask, of };
}

function readStretch(ask: 'week' | 'month', act: ActLine): RecordQuestion | Fault {
  const [first, second] = act.tokens;
  if (second !== undefined) return leftOver(second);
  const numbered = first === undefined || ask !== 'week' ? undefined : weekNumbered(first, act);
  if (numbered !== undefined) return { ask, span: numbered };
  const which = first === undefined ? 'this' : whichOf(wordIn(first));
  if (which === undefined) return first === undefined ? { failed: 'incomplete', needs: ['which'] } : leftOver(first);
  return { ask, span: { kind: ask, which } };
}

function tracedFrom({ tokens, context }: ActLine): TraceAsked | Fault {
  const [first, second, third] = tokens;
  if (first === undefined) return { failed: 'incomplete', needs: ['traced'] };
  const word = wordIn(first);
  if (word === 'lot' || batchMarks.has(word) || canMarks.has(word) || word === 'part') {
    if (second === undefined)
      return {
        failed: 'incomplete',
        needs: [word === 'lot' || word === 'part' ? word : canMarks.has(word) ? 'can' : 'batch'],
      };
    if (third !== undefined) return leftOver(third);
    if (word === 'lot') return { lot: textOf(second) };
    if (word === 'part') return partFrom(second, context);
    const of = batchFrom(second);
    return 'batch' in of && canMarks.has(word) ? { can: of.batch } : of;
  }
  if (second !== undefined) return leftOver(second);
  return first.kind === 'number' ? batchFrom(first) : partFrom(first, context);
}

function batchFrom(token: Token): { readonly batch: number } | Fault {
  return /^\d{1,7}$/.test(token.text) && Number(token.text) > 0 ? { batch: Number(token.text) } : leftOver(token);
}

function partFrom(token: Token, context: LineContext): { readonly part: string } | Fault {
  const part = partNamed(token.text.toLowerCase(), context);
  return part === undefined ? leftOver(token) : { part };
}

const textOf = (token: Token): string => (token.kind === 'quoted' ? token.words : token.text);

/** From token `from` to the end, as typed. */
function restOf({ tokens, line }: ActLine, from: number): string {
  const first = tokens[from];
  const last = tokens.at(-1);
  if (first === undefined || last === undefined) return '';
  return first.kind === 'quoted' && first === last ? first.words : line.slice(first.start, last.end);
}

const keysNamed: readonly Exclude<FindKey, 'any'>[] = ['serial', 'job', 'customer', 'lot', 'date'];

function readFind(act: ActLine): RecordQuestion | Fault {
  const [first] = act.tokens;
  if (first === undefined) return { failed: 'incomplete', needs: ['sought'] };
  const isDate = wordIn(first) === 'date';
  const tokens = isDate ? withDates(act.tokens, act) : act.tokens;
  if (isFailed(tokens)) return tokens;
  const [, second] = tokens;
  const word = wordIn(first);
  const key = keysNamed.find((each) => each === word);
  if (key === undefined) {
    const date = dateOf(first);
    if (typeof date === 'string' && second === undefined) return { ask: 'find', key: 'date', value: date };
    return { ask: 'find', key: 'any', value: restOf(act, 0) };
  }
  if (second === undefined) return { failed: 'incomplete', needs: ['sought'] };
  if (key !== 'date') return { ask: 'find', key, value: restOf(act, 1) };
  const date = dateOf(second);
  return typeof date === 'string' ? { ask: 'find', key, value: date } : date;
}

/** `hoja de ruta impulsor-7`: what only completes the verb. */
const completesVerb = (token: Token, hearing: Hearing): boolean =>
  token.kind === 'word' && (fillers.has(token.word) || isIgnoredOn('traveller', token.word, hearing));

function readTraveller({ tokens, context }: ActLine): RecordQuestion | Fault {
  const [first, second, third] = tokens.filter((token) => !completesVerb(token, context.hearing));
  if (first === undefined) return { failed: 'incomplete', needs: ['traced'] };
  const word = wordIn(first);
  if (third !== undefined) return leftOver(third);
  if (word === 'job') {
    return second === undefined
      ? { failed: 'incomplete', needs: ['job'] }
      : { ask: 'traveller', of: { job: textOf(second) } };
  }
  const named = word === 'part' && second !== undefined ? second : first;
  if (second !== undefined && named !== second) return leftOver(second);
  const of = partFrom(named, context);
  return isFailed(of) ? of : { ask: 'traveller', of };
}

/** `papers`, `papers demo-clear`, `papers demo-clear 2`. */
function readPapers(act: ActLine): RecordQuestion | Fault {
  const { hearing } = act.context;
  const said = act.tokens.filter(
    (token) => token.kind !== 'word' || !(fillers.has(token.word) || isIgnoredOn('papers', token.word, hearing)),
  );
  const words = said.filter((token) => token.kind === 'word' || token.kind === 'quoted');
  const [number, stray] = said.filter((token) => token.kind !== 'word' && token.kind !== 'quoted');
  const sheet = sheetFrom(act, words);
  if (isFailed(sheet)) return sheet;
  if (stray !== undefined) return leftOver(stray);
  const paper = number === undefined ? undefined : figureFor('paper', number, act.line);
  return isFailed(paper) ? paper : { ask: 'papers', ...known({ sheet, paper }) };
}

const formsByWord: ReadonlyMap<string, ExportForm> = new Map([
  ['csv', 'csv'],
  ['jsonl', 'jsonl'],
  ['json', 'jsonl'],
]);

function readExport(act: ActLine): RecordQuestion | Fault {
  const { tokens } = act;
  const forms = tokens.flatMap((token) => formsByWord.get(wordIn(token)) ?? []);
  const others = tokens.filter((token) => !formsByWord.has(wordIn(token)));
  const span = spanFrom(others, act) ?? { kind: 'day', day: 'today' };
  return isFailed(span) ? span : { ask: 'export', span, form: forms[0] ?? 'csv' };
}

/** Shorter beginnings fit too many rows to prove anything. */
const hashShape = /^[0-9a-f]{6,64}$/;

function readVerify(act: ActLine): RecordQuestion | Fault {
  const [first] = act.tokens;
  if (first === undefined) return { ask: 'verify' };
  const hash = restOf(act, 0)
    .replaceAll(/\s|…|\.{2,}/g, '')
    .toLowerCase();
  return hashShape.test(hash) ? { ask: 'verify', hash } : { failed: 'left-over', token: first, needs: ['hash'] };
}
