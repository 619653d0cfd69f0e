// A long line of which no reading makes one whole: `stirrer is off, I filtered it into a clean jar, looks clear`. Each clause is read by
// itself, and what tells an act is one tap together, which says what it leaves out. Nothing of it is taken without that tap.

import { isOfOther } from './denied-apart.ts';
import { actsJoint, linesApart } from './lines-apart.ts';
import type { LineContext } from './reading.ts';
import { isDone, isDoneByItself } from './sayings/time-apart.ts';
import { piecesOf } from './slots-heard/pieces.ts';
import { onlyAsks, onlyAsksOrDenies } from './slots-heard/slots-heard.ts';
import { isSaidAct } from './tongues/said-words.ts';
import { withoutAccents } from './typed/without-accents.ts';
import type { Strictly, Understood } from './understood.ts';
import { verbNamed } from './verbs-typed.ts';

/** Whoever says more tells a story. */
const mostClauses = 6;

/** Acts of one breath; more on one button nobody looks through. */
const mostActs = 4;

/** `reads`: what one clause tells of an act. `found`: what was made of the line as a whole. */
export function clauseByClause(line: string, found: Understood | undefined, readers: Readers): Understood | undefined {
  const { context } = readers;
  const left = found?.is === 'likely' ? (found.untaken ?? []).join(', ') : line;
  const clauses = clausesOf(line, context);
  if (left === '' || clauses.length < 2 || clauses.length > mostClauses) return found;
  const told = inHalves(line, readers) ?? toldIn(clauses, readers);
  const acts = [...new Set(told.flatMap(({ lines }) => (typeof lines === 'string' ? [] : lines)))];
  if (told.some(({ lines }) => lines === 'asking') || !isToldApart(told, acts, context)) return found;
  const untaken = told.flatMap(({ clause, lines }) => (lines === 'idle' || lines.length === 0 ? [clause] : []));
  const isLess = acts.length === 0 || acts.length > mostActs || untaken.join(', ').length >= left.length;
  return isLess ? found : { is: 'likely', lines: [acts.join(actsJoint)], ...(untaken.length > 0 && { untaken }) };
}

const toldIn = (clauses: readonly string[], readers: Readers): readonly ToldClause[] =>
  clauses.map((clause, at) => ({
    clause,
    lines: saysHow(clause, readers.context) ? [] : actsNamed(clause, clauses.slice(0, at), readers),
  }));

/** `the room is at 23, and I opened a can of A, lot 7744, 5 kg`: what goes on with a joint may be a list of its own. */
function inHalves(line: string, readers: Readers): readonly ToldClause[] | undefined {
  const { joints } = readers.context.hearing.said;
  for (const { 0: mark, 1: joint = '', index } of line.matchAll(/[,;.]+\s+(\p{L}+)\s+/gu)) {
    const behind = line.slice(index + mark.length);
    if (!joints.has(joint.toLowerCase()) || isToCome(joint, behind, readers.context)) continue;
    const told = toldIn([line.slice(0, index), behind], readers);
    if (told.every(({ lines }) => typeof lines !== 'string' && lines.length > 0)) return told;
  }
  return undefined;
}

type ReadsClause = (clause: string) => Understood | undefined;

interface Readers {
  readonly context: LineContext;
  readonly strictly: Strictly;
  readonly reads: ReadsClause;
  /** The same of a can's label: `good until` in it puts nothing off. */
  readonly readsLabel: ReadsClause;
}

/** `luego lavo la brocha` is still to come. */
const isToCome = (joint: string, behind: string, context: LineContext): boolean =>
  context.hearing.done.thereupon.some(([word]) => word === withoutAccents(joint.toLowerCase())) &&
  !isDone(behind, context);

/** At the marks of a sentence, and without the joint that leads in what follows; figures have none behind theirs. */
const clausesOf = (line: string, context: LineContext): readonly string[] => {
  const { said } = context.hearing;
  return line
    .split(/[,:.!]+\s+|\s+[–-]\s+/u)
    .map((clause) => {
      const [first = '', ...words] = clause
        .replace(/[.!]+$/, '')
        .trim()
        .split(' ');
      const behind = words.join(' ');
      return said.joints.has(first.toLowerCase()) && !isToCome(first, behind, context)
        ? behind
        : `${first} ${behind}`.trim();
    })
    .filter((clause) => clause !== '');
};

/** `looks clear and thin`: how it came out, whatever it is. */
function saysHow(clause: string, { hearing: { said } }: LineContext): boolean {
  const words = withoutAccents(clause.toLowerCase()).split(' ');
  return words.slice(0, 2).some((word) => said.looks.has(word));
}

/** So clearly it tells an act, of what stands before it. */
const leastOfPronoun = 0.5;

/** `nobody ships 9: I am putting it on hold`: what names nothing is of the one thing that stands before it. */
function actsNamed(clause: string, before: readonly string[], readers: Readers): ToldClause['lines'] {
  const { context } = readers;
  const alone = actsIn(clause, readers);
  if (typeof alone === 'string' || alone.length > 0 || thingsIn(clause, context).length > 0) return alone;
  const [most] = context.hearing.weighed.weigh(clause);
  if (most === undefined || !isSaidAct(most.meaning) || most.share < leastOfPronoun) return alone;
  const [named, other] = new Set(before.flatMap((each) => thingsIn(each, context)));
  return named === undefined || other !== undefined ? alone : actsIn(`${named} ${clause}`, readers);
}

function thingsIn(clause: string, context: LineContext): readonly string[] {
  return (piecesOf(clause, context) ?? []).flatMap((piece) => {
    if (piece.is === 'parts') return piece.names.join(' ');
    return ['batch', 'can', 'one-of', 'number'].includes(piece.is) ? piece.typed : [];
  });
}

interface ToldClause {
  readonly clause: string;
  readonly lines: readonly string[] | 'idle' | 'asking';
}

/**
 * `nobody ships 9 for now: I am putting it on hold`, `stopped 2, not filtered yet`: what is denied or put off is another act than what
 * is told. What stands behind a denial tells something by itself; of a list, `I did not filter it, pour it`, it does not.
 */
function isToldApart(told: readonly ToldClause[], acts: readonly string[], context: LineContext): boolean {
  const first = told.findIndex(({ lines }) => lines === 'idle');
  const isTold = ({ lines }: ToldClause): boolean => lines !== 'idle' && lines.length > 0;
  const behind = first < 0 ? [] : told.slice(first).filter(isTold);
  const verbs = new Set(acts.flatMap(linesApart).map((act) => verbIn(act, context)));
  return (
    told.every(
      ({ clause, lines }, at) =>
        lines !== 'idle' || isOfOther(clause, verbs, at === first && behind.length > 0, context),
    ) && behind.every(({ clause }) => isDoneByItself(clause, context) || isSaidByOneself(clause, context))
  );
}

const verbIn = (act: string, { hearing }: LineContext): string => {
  const [word = ''] = act.split(' ');
  return verbNamed(word.toLowerCase(), hearing)?.row.name ?? word;
};

/** `I am putting it on hold`. */
const isSaidByOneself = (clause: string, { hearing: { said } }: LineContext): boolean =>
  said.tellers.has(clause.split(' ', 1)[0]?.toLowerCase() ?? '');

/** None where it tells no act, or may be several; `idle` where it denies, doubts or puts off. */
function actsIn(clause: string, { context, strictly, reads, readsLabel }: Readers): ToldClause['lines'] {
  if (onlyAsks(clause, context)) return 'asking';
  const label = readsLabel(clause);
  if (label?.is === 'sure') return [label.line];
  if (onlyAsksOrDenies(clause, context)) return 'idle';
  const strict = strictly(clause);
  if (strict.kind === 'command') return [clause];
  if (strict.kind === 'question') return 'asking';
  const understood = reads(clause);
  if (understood === undefined) return [];
  const lines = understood.is === 'several' ? understood.lines : understood.is === 'sure' ? [understood.line] : [];
  const likely =
    understood.is === 'likely' && understood.lines.length === 1 ? understood.lines.flatMap(linesApart) : [];
  const acts = [...lines, ...likely];
  return acts.every((each) => strictly(each).kind === 'command') ? acts : [];
}
