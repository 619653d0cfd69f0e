// `open A lot 7731 5kg exp 2026-12 gas`: which part, its lot, how much; by which sheet, until when it lasts, how big the
// can is (without a weight: how much is in it), and what is at hand. What follows `lot` and `exp` is taken first: a lot may look like a time or a weight.

import type { CommandOf } from '../../../core/commands.ts';
import type { Component } from '../../../core/components.ts';
import { isFailed } from '../../../core/failed.ts';
import type { Grams, Litres } from '../../../core/units.ts';
import type { Handling } from '../../../core/verbs/said.ts';
import type { Fault } from '../reading.ts';
import { isOutside, type Slot, slots } from '../slots.ts';
import { mannerOf } from '../time-and-permission.ts';
import { lastDayOf } from '../times/expiry-typed.ts';
import { fillers, gases, roundsOffCan } from '../tongues/english/line-words.ts';
import type { Token } from '../typed/token.ts';
import { type ActLine, type ActRead, leftOver, lineWith } from './act-line.ts';
import { sheetFrom } from './read-names.ts';
import { baseValue, doubtful, impossibleUnit, type NameToken } from './sort-pieces.ts';
import { withUnitText } from './unit-missing.ts';

const lotWords: ReadonlySet<string> = new Set(['lot']);
const expiryWords: ReadonlySet<string> = new Set(['exp']);

type Filling = {
  component?: Component;
  grams?: Grams;
  litres?: Litres;
  handling?: Handling;
  readonly words: NameToken[];
};

export function readOpen(act: ActLine): ActRead | Fault {
  const labelled = labelsApart(act);
  if (isFailed(labelled)) return labelled;
  const manner = mannerOf(labelled.rest, act.line, act.context);
  if (isFailed(manner)) return manner;
  const filled: Filling = { words: [] };
  for (const token of manner.tokens) {
    const fault = fill(act, filled, token);
    if (fault !== undefined) return fault;
  }
  const command = commandOf(act, filled, labelled);
  if (isFailed(command)) return command;
  const { said, stance } = manner;
  return { command, ...(said !== undefined && { at: said.at }), ...(stance !== undefined && { stance }) };
}

function commandOf(act: ActLine, filled: Filling, { lot, expires }: Labelled): CommandOf<'open'> | Fault {
  const { component, grams, litres, handling } = filled;
  if (component === undefined) {
    return { failed: 'incomplete', needs: ['component'], tries: ['A', 'B'].map((letter) => withLetter(act, letter)) };
  }
  if (lot === undefined) return { failed: 'incomplete', needs: ['lot'] };
  const held = heldIn(grams, litres);
  if (held === undefined) return { failed: 'incomplete', needs: ['can-mass'] };
  const sheet = sheetFrom(act, filled.words);
  if (typeof sheet === 'object') return sheet;
  return {
    verb: 'open',
    component,
    lot,
    ...held,
    ...(expires !== undefined && { expires }),
    ...(sheet !== undefined && { sheet }),
    ...(handling !== undefined && { handling }),
  };
}

/** A can sold by the gallon may say no weight. */
function heldIn(grams: Grams | undefined, litres: Litres | undefined) {
  if (grams === undefined) return litres === undefined ? undefined : { litres };
  return { grams, ...(litres !== undefined && { litres }) };
}

function withLetter(act: ActLine, letter: string): string {
  const start = act.tokens[0]?.start ?? act.line.length;
  return `${act.line.slice(0, start)}${start === act.line.length ? ' ' : ''}${letter} ${act.line.slice(start)}`.trim();
}

interface Labelled {
  readonly lot: string | undefined;
  readonly expires: string | undefined;
  readonly rest: readonly Token[];
}

function labelsApart(act: ActLine): Labelled | Fault {
  const { tokens } = act;
  let lot: string | undefined;
  let expires: string | undefined;
  const rest: Token[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i];
    if (token === undefined) continue;
    const label = token.kind === 'word' ? token.word : '';
    const value = tokens[i + 1];
    if (lotWords.has(label) && lot === undefined) {
      if (value === undefined) return { failed: 'incomplete', token, needs: ['lot'] };
      lot = value.kind === 'quoted' ? value.words : value.text;
      i += 1;
    } else if (expiryWords.has(label) && expires === undefined) {
      const day = lastDayOf(tokens, i + 1, act);
      if (day === undefined) return { failed: 'incomplete', token: value ?? token, needs: ['expiry'] };
      if (isFailed(day)) return { ...day, needs: ['expiry'] };
      expires = day.date;
      i = day.to - 1;
    } else rest.push(token);
  }
  return { lot, expires, rest };
}

function fill(act: ActLine, filled: Filling, token: Token): Fault | undefined {
  switch (token.kind) {
    case 'word':
      return fillWord(filled, token);
    case 'quoted':
      filled.words.push(token);
      return undefined;
    case 'number': {
      if (filled.grams !== undefined) return leftOver(token);
      const tries = slots['can-mass'].units.map((unit) => lineWith(act.line, token, withUnitText(token, unit)));
      return { failed: 'unit-missing', token, needs: ['can-mass'], tries };
    }
    case 'quantity':
      return fillQuantity(filled, token);
    case 'doubt':
      return doubtful(token, act.line, slotFor(token.is));
    case 'impossible': {
      const slot = slotFor(token.is);
      return slot === undefined ? leftOver(token) : impossibleUnit(token, slot);
    }
    default: {
      const never: never = token;
      return never;
    }
  }
}

function fillWord(filled: Filling, token: Extract<Token, { kind: 'word' }>): Fault | undefined {
  const { word } = token;
  const component = word === 'a' ? 'part-a' : word === 'b' ? 'part-b' : undefined;
  const handling = gases.has(word) ? 'gas' : word === 'whole' ? 'whole' : undefined;
  if (component !== undefined) {
    if (filled.component !== undefined) return leftOver(token);
    filled.component = component;
  } else if (handling !== undefined) {
    if (filled.handling !== undefined && filled.handling !== handling) return leftOver(token);
    filled.handling = handling;
  } else if (!fillers.has(word) && !roundsOffCan.has(word)) filled.words.push(token);
  return undefined;
}

function fillQuantity(filled: Filling, token: Extract<Token, { kind: 'quantity' }>): Fault | undefined {
  const { quantity } = token;
  const slot = slotFor(quantity.is);
  const limits = slot === undefined ? undefined : slots[slot].limits;
  if (slot !== undefined && limits !== undefined && isOutside(limits, baseValue(quantity))) {
    return { failed: 'impossible', token, needs: [slot], limits };
  }
  if (quantity.is === 'mass' && filled.grams === undefined) filled.grams = quantity.grams;
  else if (quantity.is === 'volume' && filled.litres === undefined) filled.litres = quantity.litres;
  else return leftOver(token);
  return undefined;
}

function slotFor(is: string): Extract<Slot, 'can-mass' | 'can-volume'> | undefined {
  return is === 'mass' ? 'can-mass' : is === 'volume' ? 'can-volume' : undefined;
}
