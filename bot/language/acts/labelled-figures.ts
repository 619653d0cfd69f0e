// Figures behind a word of their own, `dust 2`: taken by that word, or by what a tongue labels the slot, and not by their
// unit alone.

import { ofEachVerb, type SlotName, type Verb, verbRows } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import type { NamedSlot, Options } from '../../../core/verbs/slot.ts';
import type { Fault } from '../reading.ts';
import { isOutside } from '../slots.ts';
import { fillers } from '../tongues/english/line-words.ts';
import type { Token } from '../typed/token.ts';
import { type ActLine, leftOver, lineWith } from './act-line.ts';
import { baseValue, doubtful, figureOf, impossibleUnit, limitsFor } from './sort-pieces.ts';
import { withUnitText } from './unit-missing.ts';

interface Labelled {
  readonly name: string;
  readonly options: Options | undefined;
  readonly slot: NamedSlot<SlotName>;
}

const labelled = ofEachVerb((verb): readonly Labelled[] =>
  Object.entries(verbRows[verb].fields).flatMap(
    ([
      name,
      {
        told,
        options,
        slots: [slot],
      },
    ]) => {
      const isFigure = (told === 'figure' || told === 'number') && slot?.kinds.includes('word') === false;
      const { behind = '' } = options ?? {};
      return slot === undefined || behind === '' || fillers.has(behind) || !isFigure ? [] : [{ name, slot, options }];
    },
  ),
);

export interface FigureTaken extends Labelled {
  readonly value: number;
}

/** The figure behind the label at `index`, if one stands there; `only`: if a correction may put it right. */
export function labelledAt(verb: Verb, act: ActLine, index: number, only?: 'amend'): FigureTaken | Fault | undefined {
  const label = act.tokens[index];
  const field = label?.kind === 'word' ? fieldOf(verb, label.word, act) : undefined;
  if (label === undefined || field === undefined || (only === 'amend' && field.options?.amend !== true))
    return undefined;
  const value = figureFrom(field.slot, act, label, act.tokens[index + 1]);
  return typeof value === 'number' ? { ...field, value } : value;
}

function fieldOf(verb: Verb, word: string, { context }: ActLine): Labelled | undefined {
  return labelled[verb].find(
    ({ slot, options }) => options?.behind === word || slot.name === context.hearing.labels.get(word),
  );
}

function figureFrom(slot: NamedSlot<SlotName>, act: ActLine, label: Token, token: Token | undefined): number | Fault {
  const needs = [slot.name];
  const isCount = slot.units.length === 0;
  switch (token?.kind) {
    case 'number': {
      if (!isCount) {
        const tries = slot.units.map((unit) => lineWith(act.line, token, withUnitText(token, unit)));
        return { failed: 'unit-missing', token, needs, tries };
      }
      const { value, whole } = token.number;
      const { limits } = slot;
      const isSlip = !whole || (limits !== undefined && isOutside(limits, value));
      return isSlip ? { failed: 'impossible', token, needs, ...(limits !== undefined && { limits }) } : value;
    }
    case 'quantity': {
      if (!slot.kinds.includes(token.quantity.is)) return leftOver(token);
      const limits = limitsFor(slot.name, token.quantity);
      const isSlip = limits !== undefined && isOutside(limits, baseValue(token.quantity));
      return isSlip ? { failed: 'impossible', token, needs, limits } : figureOf(token.quantity);
    }
    case 'doubt':
      return doubtful(token, act.line, slot.name);
    case 'impossible':
      return impossibleUnit(token, slot.name);
    case 'word':
    case 'quoted':
    case undefined:
      return { failed: 'incomplete', token: label, needs };
    default: {
      const never: never = token;
      return never;
    }
  }
}

/** All such figures of a line, and the line without them. */
export function labelledApart(
  verb: Verb,
  act: ActLine,
): { readonly act: ActLine; readonly said: ReadonlyMap<string, number> } | Fault {
  const said = new Map<string, number>();
  if (labelled[verb].length === 0) return { act, said };
  const tokens: Token[] = [];
  for (let i = 0; i < act.tokens.length; i++) {
    const taken = labelledAt(verb, act, i);
    const token = act.tokens[i];
    if (taken !== undefined && isFailed(taken)) return taken;
    if (taken === undefined) {
      if (token !== undefined) tokens.push(token);
      continue;
    }
    if (said.has(taken.name) && token !== undefined) return leftOver(act.tokens[i + 1] ?? token);
    said.set(taken.name, taken.value);
    i += 1;
  }
  return { act: { ...act, tokens }, said };
}
