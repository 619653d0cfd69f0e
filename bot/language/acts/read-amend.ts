// `amend 1 weigh 1201g 1189g wrong scale`: what is corrected, what it should be, why. A time between the act and the
// why is the corrected time; when the amending itself was done is said before the verb or after a quoted why.

import { isFailed } from '../../../core/failed.ts';
import type { Amendment } from '../../../core/verbs/correction-verbs.ts';
import type { Fault } from '../reading.ts';
import { trailingTime } from '../time-and-permission.ts';
import type { Token } from '../typed/token.ts';
import type { Quantity } from '../typed/units-typed.ts';
import { amendExample } from '../write-amend.ts';
import { type ActLine, type ActRead, leftOver, lineWith } from './act-line.ts';
import { type Amendable, type TargetRead, targetFrom } from './amend-target.ts';
import { type Found, isOfGauge, walkValues } from './amend-values.ts';
import { freeTextFrom } from './free-text.ts';
import { withLabelsApart, withLeadingOnes } from './leading-ones.ts';
import { filmsFrom } from './read-films.ts';
import { weightsFrom } from './weights.ts';

export function readAmend(typed: ActLine): ActRead | Fault {
  const target = targetFrom(typed);
  if (isFailed(target)) return target;
  const read = readChange(typed, target);
  return isFailed(read) ? { ...read, example: amendExample(target.of) } : read;
}

function readChange(typed: ActLine, target: TargetRead): ActRead | Fault {
  const act = target.of.verb === 'weigh' ? withLabelsApart(withLeadingOnes(typed)) : typed;
  const found: Found = { of: { ...target.of }, change: new Map(), list: [] };
  const whyFrom = walkValues(act, target.row, target.next, found);
  if (typeof whyFrom !== 'number') return whyFrom;
  const listed = takeList(act, target.row, found);
  if (listed !== undefined) return listed;
  const why = freeTextFrom(act, whyFrom);
  if (isFailed(why)) return why;
  // A hold is its words: they are what it should have said.
  if (found.change.size === 0 && target.of.verb === 'hold' && why.words !== '') {
    return { command: { verb: 'amend', of: found.of, change: { holdWhy: why.words }, why: '' }, ...why.how };
  }
  const { batch, ...others } = found.of;
  // `amend impeller-7 coat 2`: a number behind the act is the pot that it really came from.
  if (found.change.size === 0 && others.verb === 'coat' && batch !== undefined && target.of.batch === undefined) {
    return { command: { verb: 'amend', of: others, change: { ofBatch: batch }, why: why.words }, ...why.how };
  }
  if (found.change.size === 0) return { failed: 'incomplete', needs: ['change'] };
  const doubt = why.quoted ? undefined : valueAmongWords(act, target.row, found, whyFrom);
  if (doubt !== undefined) return doubt;
  const change = Object.fromEntries(found.change);
  if (!isAmendment(change)) return { failed: 'incomplete', needs: ['change'] };
  return { command: { verb: 'amend', of: found.of, change, why: why.words }, ...why.how };
}

function takeList(act: ActLine, row: Amendable, found: Found): Fault | undefined {
  const { list, of, change } = found;
  const [first] = list;
  if (first === undefined) return undefined;
  if (isOfGauge(row)) {
    const films = filmsFrom(list, act.line, of.verb === 'wet' ? 'wet-film' : 'dry-film');
    if (isFailed(films)) return films;
    change.set('filmMicrometres', films);
    return undefined;
  }
  const weights = weightsFrom(list, act.line, act.context, of.batch);
  if (isFailed(weights)) return weights;
  const { partAGrams, partBGrams, batch } = weights;
  if (list.length < 3 && (partAGrams === undefined) !== (partBGrams === undefined) && list.every(isNoLetter)) {
    const tries = ['a', 'b'].map((letter) => lineWith(act.line, first, `${letter} ${first.text}`));
    return { failed: 'ambiguous-number', token: first, needs: ['part-a', 'part-b'], couldBe: ['A', 'B'], tries };
  }
  if (batch !== undefined) of.batch = batch;
  if (partAGrams !== undefined) change.set('partAGrams', partAGrams);
  if (partBGrams !== undefined) change.set('partBGrams', partBGrams);
  return undefined;
}

function isNoLetter(token: Token): boolean {
  return token.kind !== 'word';
}

/** A value or a time among the words of the why may have been meant as the correction: ask. */
function valueAmongWords(act: ActLine, row: Amendable, { change }: Found, whyFrom: number): Fault | undefined {
  const first = act.tokens[whyFrom];
  const last = act.tokens.at(-1);
  if (first === undefined || last === undefined) return undefined;
  const why = act.line.slice(first.start, last.end);
  const quoted = act.line.slice(0, first.start) + JSON.stringify(why);
  const timeFrom = trailingTime(act.tokens, whyFrom, act.context);
  const time = timeFrom === undefined ? undefined : act.tokens[timeFrom];
  if (time !== undefined) {
    const timeText = act.line.slice(time.start);
    const moved =
      `${act.line.slice(0, first.start)}${timeText} ${act.line.slice(first.start, time.start).trim()}`.trim();
    const token = { text: timeText, start: time.start, end: act.line.length };
    return { failed: 'ambiguous-time', token, couldBe: [timeText, JSON.stringify(why)], tries: [moved, quoted] };
  }
  const stray = act.tokens
    .slice(whyFrom)
    .find(
      (token) => token.kind === 'quantity' && row.values.has(token.quantity.is) && !isSet(change, row, token.quantity),
    );
  return stray === undefined ? undefined : leftOver(stray, [quoted]);
}

function isSet(change: Found['change'], { values }: Amendable, { is }: Quantity): boolean {
  const value = values.get(is);
  return value !== undefined && (change.has(value.name) || (value.slot.name === 'part-a' && change.has('partBGrams')));
}

/** Whether it holds something, and only what a correction can name. */
function isAmendment(change: object): change is Amendment {
  return Object.keys(change).length > 0;
}
