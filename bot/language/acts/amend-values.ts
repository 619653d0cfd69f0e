// The corrected values on an amend's line, taken one by one until the words of the why begin.

import { isFailed } from '../../../core/failed.ts';
import type { AmendTarget } from '../../../core/verbs/correction-verbs.ts';
import { looksLikePart, placeNamed } from '../names-typed.ts';
import type { Fault } from '../reading.ts';
import { saidTimeFrom } from '../times/said-time.ts';
import { batchMarks, fillers } from '../tongues/english/line-words.ts';
import { rareFigureFrom } from '../typed/rare-figures.ts';
import { type NumberToken, type Token, wordIn } from '../typed/token.ts';
import { type ActLine, leftOver } from './act-line.ts';
import type { Amendable } from './amend-target.ts';
import { choiceAt } from './choices-on-line.ts';
import { withChosen } from './fields-apart.ts';
import { countFrom, doubtful, figureFor, impossible, outside, unitless } from './figure-of-slot.ts';
import { labelledAt } from './labelled-fields.ts';

type Mutable<T> = { -readonly [Field in keyof T]: T[Field] };

/** What the walk over the values has found so far. */
export interface Found {
  readonly of: Mutable<AmendTarget>;
  /** By the name that a correction gives them. */
  readonly change: Map<string, unknown>;
  /** Readings that only make sense together: two weights, a row of films. */
  readonly list: Token[];
}

/** Takes values as long as they come and answers where the why begins. */
export function walkValues(act: ActLine, row: Amendable, from: number, found: Found): number | Fault {
  let whyFrom = from;
  for (let i = from; i < act.tokens.length; i++) {
    const token = act.tokens[i];
    if (token === undefined || token.kind === 'quoted') break;
    const labelled = labelledAt(found.of.verb, act, i, 'amend');
    const chosen = choiceAt(act.tokens, i, row.choices);
    const time = saidTimeFrom(act.tokens, i, act.context);
    const rare = row.rare && rareFigureFrom(act.tokens, i, row.rare.slot.unit);
    if (rare !== undefined && row.rare !== undefined) {
      const { name, slot } = row.rare;
      const stray = found.change.has(name) ? leftOver(token) : outside(slot.name, token, rare.value);
      if (stray !== undefined) return stray;
      found.change.set(name, rare.value);
      i = rare.to - 1;
    } else if (labelled !== undefined) {
      if (isFailed(labelled)) return labelled;
      if (found.change.has(labelled.name)) return leftOver(token);
      found.change.set(labelled.name, labelled.value);
      i = labelled.to - 1;
    } else if (chosen !== undefined) {
      const value = withChosen(found.change.get(chosen.name), chosen, row.choices);
      if (value === undefined) break;
      found.change.set(chosen.name, value);
      i = chosen.to - 1;
    } else if (time !== undefined) {
      if (isFailed(time)) return time;
      if (found.change.has('at')) return leftOver(token);
      found.change.set('at', time.at);
      i = time.to - 1;
    } else {
      const took = takeValue(act, row, i, token, found);
      if (typeof took === 'object') return took;
      if (took === 'no') break;
      // `to 1201g`: the filler counts only if a value follows it.
      if (took === 'filler') continue;
    }
    whyFrom = i + 1;
  }
  return whyFrom;
}

function takeValue(
  act: ActLine,
  row: Amendable,
  index: number,
  token: Token,
  found: Found,
): 'yes' | 'no' | 'filler' | Fault {
  switch (token.kind) {
    case 'word':
      return takeWord(act, row, index, token.word, found);
    case 'number':
      return takeNumber(act, row, index, token, found);
    case 'quantity': {
      const value = row.values.get(token.quantity.is);
      if (value === undefined) return leftOver(token);
      if (isListed(row)) {
        found.list.push(token);
        return 'yes';
      }
      const { name, slot } = value;
      const figure = figureFor(slot.name, token, act.line);
      if (isFailed(figure)) return figure;
      if (found.change.has(name)) return leftOver(token);
      found.change.set(name, figure);
      return 'yes';
    }
    case 'doubt':
      return doubtful(token, act.line, row.values.get(token.is)?.slot.name);
    case 'impossible': {
      const value = row.values.get(token.is);
      return value === undefined ? leftOver(token) : impossible(value.slot.name, token);
    }
    case 'quoted':
      return 'no';
    default: {
      const never: never = token;
      return never;
    }
  }
}

function takeWord(act: ActLine, row: Amendable, index: number, word: string, found: Found): 'yes' | 'no' | 'filler' {
  const next = act.tokens[index + 1];
  const { of, change } = found;
  const isWeight = isOfParts(row) && (next?.kind === 'number' || next?.kind === 'quantity');
  if ((word === 'a' || word === 'b') && isWeight) {
    const letter = act.tokens[index];
    if (letter !== undefined) found.list.push(letter);
    return 'yes';
  }
  const isFirst = change.size === 0 && found.list.length === 0;
  if (isFirst && row.on === 'place' && of.place === undefined) {
    const before = act.tokens[index - 1];
    const introduced = ['in', 'at', 'the'].includes(wordIn(before));
    const place = introduced || act.context.places.includes(word) ? placeNamed(word, act.context.hearing) : undefined;
    if (place !== undefined) {
      of.place = place;
      return 'yes';
    }
  }
  if (
    isFirst &&
    row.on === 'part' &&
    of.part === undefined &&
    (act.context.parts.includes(word) || looksLikePart(word))
  ) {
    of.part = word;
    return 'yes';
  }
  return fillers.has(word) || batchMarks.has(word) ? 'filler' : 'no';
}

function takeNumber(
  act: ActLine,
  row: Amendable,
  index: number,
  token: NumberToken,
  found: Found,
): 'yes' | 'no' | Fault {
  if (isListed(row)) {
    if (isFollowedByQuantity(act, index, row)) {
      found.list.push(token);
      return 'yes';
    }
    if (found.list.length > 0) return 'no';
  }
  const isFirst = found.change.size === 0 && found.list.length === 0;
  if (row.on === 'can' && found.of.can === undefined && isFirst) {
    const can = countFrom(token);
    if (typeof can !== 'number') return can;
    found.of.can = can;
    return 'yes';
  }
  if (row.on === 'session' && found.of.session === undefined && isFirst) {
    const session = countFrom(token);
    if (typeof session !== 'number') return session;
    found.of.session = session;
    return 'yes';
  }
  if (row.takesNumber && row.on !== 'can' && row.on !== 'session' && found.of.batch === undefined && isFirst) {
    const batch = countFrom(token);
    if (typeof batch !== 'number') return batch;
    found.of.batch = batch;
    return 'yes';
  }
  const wanted = [...new Set([...row.values.values()].map(({ slot }) => slot.name))];
  if (wanted.length === 0 || !isFirst) return 'no';
  return unitless(token, wanted, act.line);
}

/** The bare numbers before a value of the right kind are covered by its unit. */
function isFollowedByQuantity(act: ActLine, index: number, row: Amendable): boolean {
  for (const token of act.tokens.slice(index + 1)) {
    if (token.kind === 'quantity') return row.values.has(token.quantity.is);
    const isLetter = ['a', 'b'].includes(wordIn(token));
    if (token.kind !== 'number' && !isLetter) return false;
  }
  return false;
}

function isListed(row: Amendable): boolean {
  return isOfParts(row) || isOfGauge(row);
}

/** Several readings, of which the last unit covers all. */
export function isOfGauge(row: Amendable): boolean {
  return row.values.get('film')?.name === 'filmMicrometres';
}

/** Of A and of B: two of a kind. */
function isOfParts(row: Amendable): boolean {
  return row.values.get('mass')?.slot.name === 'part-a';
}
