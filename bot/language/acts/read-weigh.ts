// `weigh 1 1201g 1198g`: both parts; `weigh 1 a 1201g`: one, named by its letter. `add 1 b 14g`: more of one. `can 3 4`: which
// cans it came from. No fields are read off such a line: two figures of one kind go by their letters or their order.

import { type CommandOf, verbRows } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import type { CanNumber } from '../../../core/ids.ts';
import { known } from '../../../core/known.ts';
import { handlings } from '../../../core/verbs/said.ts';
import type { Fault } from '../reading.ts';
import { batchMarks, canMarks, fillers } from '../tongues/english/line-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { type ActLine, leftOver, lineWith } from './act-line.ts';
import { choiceAt, choicesOf } from './choices-on-line.ts';
import { countFrom } from './figure-of-slot.ts';
import { withLabelsApart, withLeadingOnes } from './leading-ones.ts';
import { type Weights, weightsFrom } from './weights.ts';

export function readWeigh(typed: ActLine): CommandOf<'weigh' | 'drawn'> | Fault {
  // `weighed 3 A from can 2`: no figure, but a can.
  const isFigure = ({ kind }: Token) => kind !== 'word' && kind !== 'number';
  if (typed.tokens.some(isLetter) && !typed.tokens.some(isFigure)) {
    const drawn = readDrawn(typed);
    if (!isFailed(drawn)) return drawn;
  }
  const read = pouredFrom(typed);
  if (isFailed(read)) return read;
  const { weights, hasLetter, manner } = read;
  const { partAGrams, partBGrams } = weights;
  if (partAGrams !== undefined && partBGrams !== undefined) return { verb: 'weigh', ...manner, partAGrams, partBGrams };
  if (!hasLetter)
    return partAGrams === undefined ? incomplete() : { ...incomplete(), needs: ['part-b'], tries: lettered(read) };
  if (partAGrams !== undefined) return { verb: 'weigh', ...manner, partAGrams };
  return partBGrams === undefined ? incomplete() : { verb: 'weigh', ...manner, partBGrams };
}

export function readAdd(typed: ActLine): CommandOf<'add'> | Fault {
  const read = pouredFrom(typed);
  if (isFailed(read)) return read;
  const { weights, hasLetter, manner } = read;
  const { partAGrams, partBGrams } = weights;
  const grams = partAGrams ?? partBGrams;
  if (grams === undefined) return { failed: 'incomplete', needs: ['component', 'added'] };
  if (!hasLetter || (partAGrams !== undefined && partBGrams !== undefined)) {
    return { failed: 'incomplete', needs: ['component'], tries: lettered(read) };
  }
  return { verb: 'add', ...manner, component: partAGrams === undefined ? 'part-b' : 'part-a', grams };
}

/** `drawn 3 A can 2`: from which can a part came that has been weighed. */
export function readDrawn({ tokens }: ActLine): CommandOf<'drawn'> | Fault {
  const apart = cansApart(tokens);
  if (isFailed(apart)) return apart;
  const [letter, ...letters] = apart.rest.filter(isLetter);
  const [number, ...numbers] = apart.rest.filter((token) => token.kind === 'number');
  const rounding = (token: Token) => isLetter(token) || token.kind === 'number' || roundsOff.has(wordIn(token));
  const stray = apart.rest.find((token) => !rounding(token)) ?? letters[0] ?? numbers[0];
  if (stray !== undefined) return leftOver(stray);
  const batch = number === undefined ? undefined : countFrom(number);
  if (batch !== undefined && typeof batch !== 'number') return batch;
  if (letter === undefined) return { failed: 'incomplete', needs: ['component'] };
  if (apart.cans === undefined) return { failed: 'incomplete', needs: ['can'] };
  const component = wordIn(letter) === 'a' ? 'part-a' : 'part-b';
  return { verb: 'drawn', ...known({ batch }), component, cans: apart.cans };
}

const roundsOff: ReadonlySet<string> = new Set([...fillers, ...batchMarks, 'part']);

interface PouredRead {
  readonly act: ActLine;
  readonly weights: Weights;
  readonly hasLetter: boolean;
  readonly manner: Pick<CommandOf<'weigh'>, 'batch' | 'cans' | 'handling'>;
}

function pouredFrom(typed: ActLine): PouredRead | Fault {
  const apart = cansApart(typed.tokens);
  if (isFailed(apart)) return apart;
  const opened = handlingApart(apart.rest);
  const act = withLabelsApart(withLeadingOnes({ ...typed, tokens: opened.rest }));
  const weights = weightsFrom(act.tokens, act.line, act.context);
  if (isFailed(weights)) return weights;
  const manner = known({ batch: weights.batch, cans: apart.cans, handling: opened.handling });
  return { act, weights, hasLetter: act.tokens.some(isLetter), manner };
}

function isLetter(token: Token): boolean {
  return ['a', 'b'].includes(wordIn(token));
}

function incomplete(): Fault {
  return { failed: 'incomplete', needs: ['part-a', 'part-b'] };
}

/** One weight without a letter: of A or of B? */
function lettered({ act }: PouredRead): readonly string[] {
  const weight = act.tokens.find((token) => token.kind === 'quantity');
  return weight === undefined ? [] : ['a', 'b'].map((letter) => lineWith(act.line, weight, `${letter} ${weight.text}`));
}

const openings = choicesOf(Object.entries(verbRows.weigh.fields).filter(([name]) => name === 'handling'));

/** What was at hand when a can was opened for it: `gas`, `whole`. */
function handlingApart(tokens: readonly Token[]) {
  const from = tokens.findIndex((_, i) => choiceAt(tokens, i, openings) !== undefined);
  const found = choiceAt(tokens, from, openings);
  const handling = handlings.find((each) => each === found?.value);
  if (found === undefined || handling === undefined) return { handling: undefined, rest: tokens };
  const after = tokens.slice(found.to);
  // `gas at hand`.
  const goesOn = after.findIndex((token) => !['at', 'hand'].includes(wordIn(token)));
  return { handling, rest: [...tokens.slice(0, from), ...(goesOn === -1 ? [] : after.slice(goesOn))] };
}

export interface CansApart {
  /** `undefined` where none is named. */
  readonly cans: readonly CanNumber[] | undefined;
  readonly rest: readonly Token[];
}

/** Taken off before the weights are read. */
export function cansApart(tokens: readonly Token[]): CansApart | Fault {
  const mark = tokens.findIndex((token) => canMarks.has(wordIn(token)));
  if (mark === -1) return { cans: undefined, rest: tokens };
  const cans: CanNumber[] = [];
  let next = mark + 1;
  for (; next < tokens.length; next++) {
    const token = tokens[next];
    if (['and', '&'].includes(wordIn(token))) continue;
    if (token?.kind !== 'number') break;
    const can = countFrom(token);
    if (typeof can !== 'number') return { ...can, needs: ['can'] };
    if (!cans.includes(can)) cans.push(can);
  }
  const [token] = tokens.slice(mark);
  if (cans.length === 0) return { failed: 'incomplete', needs: ['can'], ...known({ token }) };
  return { cans, rest: [...tokens.slice(0, mark), ...tokens.slice(next)] };
}
