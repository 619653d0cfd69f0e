// The speaker's latest act with its figures, of other parts: `same for 2 and 3`, `lo mismo con la 3`, `8 too`, `the rest as well`.

import { type Command, withParts } from '../../../core/commands.ts';
import type { PartName } from '../../../core/ids.ts';
import { inNaturalOrder } from '../../../core/natural-order.ts';
import { ownValue } from '../../../core/own-key.ts';
import { actsJoint } from '../lines-apart.ts';
import { manyMeant } from '../parts-said/many-said.ts';
import { longestAt } from '../parts-said/numbers-listed.ts';
import type { LineContext } from '../reading.ts';
import { actRows } from '../slots-heard/act-rows.ts';
import { type ManyIn, manyIn } from '../slots-heard/many-in.ts';
import { claimed } from '../slots-heard/phrases.ts';
import { type Piece, wordOf } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { partsNumbered } from '../slots-heard/things.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { Understands } from '../understood.ts';
import { writeLine } from '../write-line.ts';
import type { SaidAct } from './last.ts';
import { mayBeBare } from './may-be-bare.ts';

/** More is a sentence of its own. */
const longest = 80;

export const sameFor: Understands = (line, context, strictly) => {
  if (line.length > longest || line.endsWith('?') || context.mayCallOff === true) return undefined;
  const others = maySay(line, context) ? othersIn(line, context) : undefined;
  const act = others === undefined ? undefined : context.last?.().said();
  if (others === undefined || act?.line === undefined) return undefined;
  const read = strictly(act.line);
  if (read.kind !== 'command') return undefined;
  const ways = otherParts(others, read.command, context);
  const lines = ways.flatMap((parts) => {
    const made = withParts(read.command, parts).map((command) => writeLine({ command, stance: read.stance }, context));
    return made.length > 0 && made.every((each) => strictly(each).kind === 'command') ? [made] : [];
  });
  const [first] = lines;
  if (first === undefined) return undefined;
  // What was said last was objected to: it may be the same as that.
  const isSure =
    others.areNamed && act.isFresh && !act.isBeforeLast && lines.length === 1 && mayBeBare(read, false) && isOfNow(act);
  if (!isSure) return { is: 'likely', lines: lines.map((each) => each.join(actsJoint)) };
  const [only = '', ...more] = first;
  return more.length === 0 ? { is: 'sure', line: only } : { is: 'several', lines: first };
};

/** What was told of an hour that is past may have been of that hour for the others, too. */
const isOfNow = ({ line = '' }: SaidAct): boolean => !/ at \d{4}-\d\d-\d\dT/.test(line);

/** Most lines hold no word of it where it would stand. */
function maySay(line: string, { hearing: { said } }: LineContext): boolean {
  const words = withoutAccents(line.toLowerCase()).split(/[ ,.!]+/);
  const [first = '', second = ''] = words;
  const last = words.findLast((word) => word !== '') ?? '';
  const { begins, ends } = said.lists.sameFor;
  const isJoined = said.joints.has(first) && (begins.has(second) || words.length <= mostJoined);
  return begins.has(first) || isJoined || ends.has(last);
}

/** `and the 3 then`: more tells something of its own. */
const mostJoined = 4;

interface Others {
  /** Those that are named, each by what it may be. */
  readonly named: readonly (readonly PartName[])[];
  readonly many: ManyIn | undefined;
  /** Those that are booked under the same. */
  readonly among: readonly PartName[] | undefined;
  /** In full, and that it is the same. */
  readonly areNamed: boolean;
}

/** The parts that stand behind `same for`, or before `too`; nothing else may be said. */
function othersIn(line: string, context: LineContext): Others | undefined {
  const { said } = context.hearing;
  const pieces = piecesOf(line, context);
  if (pieces === undefined) return undefined;
  const same = withoutSame(pieces, context);
  // `and bracket-3`: it goes on, and says no more.
  const left = same ?? (said.joints.has(pieces[0]?.typed ?? '') ? pieces.slice(1) : undefined);
  if (left === undefined) return undefined;
  const { claims } = claimed(left, said);
  const many = manyIn({ pieces: left, claims }, said.lists);
  const live = context.live?.();
  const named: (readonly PartName[])[] = [];
  let areNamed = many === undefined && same !== undefined;
  for (const [i, piece] of left.entries()) {
    const claim = claims[i];
    if (piece.is === 'parts') {
      named.push(...piece.names.map((name) => [name]));
      areNamed &&= piece.isSlip !== true || piece.isOfFamily === true;
    } else if (piece.is === 'number' && piece !== many?.piece) {
      const numbered = live === undefined ? [] : partsNumbered(piece, live);
      if (numbered.length === 0) return undefined;
      named.push(numbered);
    } else if (piece.is === 'one-of') areNamed = false;
    else if (many !== undefined && said.lists.ones.has(wordOf(piece) ?? '')) continue;
    else if (piece !== many?.piece && claim?.is !== 'light' && claim?.is !== 'filler' && claim?.is !== 'many')
      return undefined;
  }
  const among = left.flatMap((piece) => (piece.is === 'one-of' ? [piece.names] : []))[0];
  return named.length === 0 && many === undefined && among === undefined ? undefined : { named, many, among, areNamed };
}

/** `undefined` where the line does not say that it is the same. */
function withoutSame(said: readonly Piece[], { hearing }: LineContext): readonly Piece[] | undefined {
  const { before, behind, samePot } = hearing.said.lists.sameFor;
  const words = said.map((piece) => ({ text: 'word' in piece ? piece.word : '' }));
  const endOf = (phrases: typeof behind, upTo: number): number | undefined => {
    const from = words.findIndex((_, at) => at < upTo && longestAt(words.slice(at, upTo), 0, phrases) === upTo - at);
    return from > 0 ? from : undefined;
  };
  // `the others too, same pot`
  const ofPot = endOf(samePot, said.length);
  const pieces = ofPot === undefined ? said : said.slice(0, ofPot);
  const start = hearing.said.joints.has(words[0]?.text ?? '') ? 1 : 0;
  const opened = longestAt(words, start, before);
  const from = start + (opened ?? 0);
  const closed = endOf(behind, pieces.length);
  if (closed !== undefined && closed > from) return pieces.slice(from, closed);
  return opened === undefined && ofPot === undefined ? undefined : pieces.slice(from);
}

/** Those that the act was not about; by one word for many, those to which it can be done now. */
function otherParts(
  { named, many, among }: Others,
  command: Command,
  context: LineContext,
): readonly (readonly PartName[])[] {
  const of = partsIn(command);
  const row = ownValue(actRows, command.verb);
  const live = context.live?.().parts ?? [];
  const fits = (name: PartName): boolean =>
    row?.parts === undefined || live.some((part) => part.name === name && row.parts?.includes(part.phase) === true);
  if (named.length > 0) {
    const each = named.map((names) => alikeOf(names, of));
    return each.every(({ length }) => length === 1) ? [[...new Set(each.flat())]] : [];
  }
  const all = (among ?? live.map(({ name }) => name))
    .filter((name) => fits(name) && !of.includes(name))
    .toSorted(inNaturalOrder);
  const families = new Set(of.map(familyOf));
  const alike = all.filter((name) => families.has(familyOf(name)));
  // Of all, or of those that are called as those of the act are: where these are not the same, either may be meant.
  const ways = [alike, all].flatMap((fitting) => manyMeant(many ?? { many: 'rest' }, fitting, of));
  return ways.filter((way, i) => ways.findIndex((each) => each.join() === way.join()) === i);
}

/** Of those that have a number the one of the act's own family. */
function alikeOf(names: readonly PartName[], of: readonly PartName[]): readonly PartName[] {
  if (names.length === 1) return names;
  const families = new Set(of.map(familyOf));
  return names.filter((name) => families.has(familyOf(name)));
}

/** What it is called without its number. */
export const familyOf = (name: PartName): string => name.replace(/\d+$/, '');

const partsIn = (command: Command): readonly PartName[] =>
  'parts' in command ? command.parts : 'part' in command && command.part !== undefined ? [command.part] : [];
