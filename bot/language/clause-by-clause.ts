// A long line of which no reading makes one whole: `stirrer is off, I filtered it into a clean jar, looks clear`. Each clause is read by
// itself, and what tells an act is one tap together, which says what it leaves out. Nothing of it is taken without that tap.

import { actsJoint, linesApart } from './lines-apart.ts';
import type { LineContext } from './reading.ts';
import { onlyAsksOrDenies } from './slots-heard/slots-heard.ts';
import { withoutAccents } from './typed/without-accents.ts';
import type { Strictly, Understood } from './understood.ts';

/** Whoever says more tells a story. */
const mostClauses = 6;

/** Acts of one breath; more on one button nobody looks through. */
const mostActs = 4;

/** `reads`: what one clause tells of an act. `found`: what was made of the line as a whole. */
export function clauseByClause(
  line: string,
  found: Understood | undefined,
  { context, strictly, reads }: Readers,
): Understood | undefined {
  const left = found?.is === 'likely' ? (found.untaken ?? []).join(', ') : line;
  const clauses = clausesOf(line, context);
  if (left === '' || clauses.length < 2 || clauses.length > mostClauses) return found;
  const told = clauses.map((clause) => ({
    clause,
    lines: saysHow(clause, context) ? [] : actsIn(clause, context, strictly, reads),
  }));
  if (told.some(({ lines }) => lines === 'idle')) return found;
  const acts = [...new Set(told.flatMap(({ lines }) => lines))];
  const untaken = told.flatMap(({ clause, lines }) => (lines.length === 0 ? [clause] : []));
  const isLess = acts.length === 0 || acts.length > mostActs || untaken.join(', ').length >= left.length;
  return isLess ? found : { is: 'likely', lines: [acts.join(actsJoint)], ...(untaken.length > 0 && { untaken }) };
}

type ReadsClause = (clause: string) => Understood | undefined;

interface Readers {
  readonly context: LineContext;
  readonly strictly: Strictly;
  readonly reads: ReadsClause;
}

/** At the marks of a sentence, and without the joint that leads in what follows; figures have none behind theirs. */
const clausesOf = (line: string, { hearing: { said } }: LineContext): readonly string[] =>
  line
    .split(/[,:.!]+\s+|\s+[–-]\s+/u)
    .map((clause) => {
      const [first = '', ...words] = clause
        .replace(/[.!]+$/, '')
        .trim()
        .split(' ');
      return said.joints.has(first.toLowerCase()) ? words.join(' ') : [first, ...words].join(' ');
    })
    .filter((clause) => clause !== '');

/** `looks clear and thin`: how it came out, whatever it is. */
function saysHow(clause: string, { hearing: { said } }: LineContext): boolean {
  const words = withoutAccents(clause.toLowerCase()).split(' ');
  return words.slice(0, 2).some((word) => said.looks.has(word));
}

/** None where it tells no act, or may be several; `idle` where it asks, denies or doubts. */
function actsIn(
  clause: string,
  context: LineContext,
  strictly: Strictly,
  reads: ReadsClause,
): readonly string[] | 'idle' {
  if (onlyAsksOrDenies(clause, context)) return 'idle';
  const strict = strictly(clause);
  if (strict.kind === 'command') return [clause];
  if (strict.kind === 'question') return 'idle';
  const understood = reads(clause);
  if (understood === undefined) return [];
  const lines = understood.is === 'several' ? understood.lines : understood.is === 'sure' ? [understood.line] : [];
  const likely =
    understood.is === 'likely' && understood.lines.length === 1 ? understood.lines.flatMap(linesApart) : [];
  const acts = [...lines, ...likely];
  return acts.every((each) => strictly(each).kind === 'command') ? acts : [];
}
