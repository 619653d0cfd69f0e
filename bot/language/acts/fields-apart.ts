// What of a line looks like nothing else: words that say a choice, days, figures in units that few acts take, the readings of
// a gauge. It is taken off before the rest is sorted.

import { ofEachVerb, verbRows } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { isOwnKey } from '../../../core/own-key.ts';
import type { FieldRow } from '../../../core/verbs/slot.ts';
import type { Fault } from '../reading.ts';
import { lastDayOf } from '../times/expiry-typed.ts';
import { rareFigureFrom } from '../typed/rare-figures.ts';
import type { Token } from '../typed/token.ts';
import type { VerbNamed } from '../verbs-of-tongues.ts';
import { type ActLine, leftOver, type Said } from './act-line.ts';
import { type Choices, choiceAt, choicesOf } from './choices-on-line.ts';
import type { NamedField } from './fields-named.ts';
import { outside } from './figure-of-slot.ts';
import type { ValueTaken } from './labelled-fields.ts';
import { partOfTwoPieces } from './sort-pieces.ts';

export interface Plan {
  readonly fields: readonly NamedField[];
  readonly required: readonly string[];
  readonly choices: Choices;
  /** Then `l201g` may be one: no figure is read into it. */
  readonly takesNames: boolean;
  /** Taken wherever on the line they stand, since nothing else looks like them. */
  readonly apart: readonly NamedField[];
  /** Several readings, the last unit of which covers all. */
  readonly readings: NamedField | undefined;
}

export const plans = ofEachVerb((verb): Plan => {
  const fields = Object.entries(verbRows[verb].fields);
  return {
    fields,
    required: fields.flatMap(([name, { options }]) => (options?.required === true ? [name] : [])),
    choices: choicesOf(fields),
    takesNames: fields.some(
      ([, { told, slots }]) =>
        told !== 'sheet' &&
        told !== 'choice' &&
        told !== 'choices' &&
        slots.some(({ kinds }) => kinds.includes('word')),
    ),
    apart: fields.filter(
      ([
        ,
        {
          told,
          slots: [slot],
          options,
        },
      ]) => options?.behind === undefined && (told === 'day' || (told === 'figure' && slot?.kinds[0] === 'word')),
    ),
    readings: fields.find(([, { told }]) => told === 'figures'),
  };
});

/** The line without its choices and what else looks like nothing else. */
export function apartFrom(
  act: ActLine,
  { fields, choices, apart, readings }: Plan,
  said: Said,
): { readonly act: ActLine; readonly gauge: readonly Token[] } | Fault {
  for (const [name, field] of fields) {
    const value = saidByVerb(act.verb, name, field);
    if (value !== undefined) said[name] = value;
  }
  const { tokens } = act;
  // Most acts have nothing of the kind.
  if (choices.meant.size === 0 && apart.length === 0 && readings === undefined) return { act, gauge: [] };
  const rest: Token[] = [];
  const gauge: Token[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i];
    if (token === undefined) continue;
    const taken = choiceAt(tokens, i, choices) ?? apartAt(act, i, apart);
    if (taken !== undefined) {
      if (isFailed(taken)) return taken;
      const value = withChosen(said[taken.name], taken, choices);
      if (value === undefined) return leftOver(token);
      said[taken.name] = value;
      i = taken.to - 1;
    } else if (readings === undefined || token.kind === 'word' || token.kind === 'quoted') rest.push(token);
    else {
      const joined = token.kind === 'number' ? partOfTwoPieces(act, i, token) : undefined;
      if (joined !== undefined) return joined;
      gauge.push(token);
    }
  }
  return { act: { ...act, tokens: rest }, gauge };
}

/** Beside what was chosen before, where several can be; `undefined` where they cannot. */
export function withChosen(before: unknown, { name, value }: Omit<ValueTaken, 'to'>, { several }: Choices): unknown {
  if (several.has(name)) return [...new Set([...(Array.isArray(before) ? before : []), value])];
  return before === undefined || before === value ? value : undefined;
}

/** `al horno x`, `pincel x`, `sin extracción`: the verb itself says it. */
function saidByVerb(verb: VerbNamed, name: string, { words }: FieldRow): unknown {
  if (words.has(false)) return verb.says === undefined ? undefined : verb.says === 'yes';
  return words.size > 0 && isOwnKey(verb, name) ? verb[name] : undefined;
}

function apartAt(act: ActLine, index: number, apart: Plan['apart']): ValueTaken | Fault | undefined {
  const token = act.tokens[index];
  for (const [
    name,
    {
      told,
      slots: [slot],
    },
  ] of apart) {
    if (token === undefined || token.kind === 'quoted' || slot === undefined) continue;
    if (told === 'day') {
      const day = lastDayOf(act.tokens, index, act);
      if (day !== undefined)
        return isFailed(day) ? { ...day, needs: [slot.name] } : { name, value: day.date, to: day.to };
    } else {
      const figure = rareFigureFrom(act.tokens, index, slot.unit);
      if (figure !== undefined) return outside(slot.name, token, figure.value) ?? { name, ...figure };
    }
  }
  return undefined;
}
