// Fields that stand behind a word of their own, `dust 2`, `lot 7731`: taken by that word, or by what a tongue labels the
// slot, and before the rest of the line, since a lot may look like a time or a weight.

import { ofEachVerb, type SlotName, type Verb, verbRows } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { amendsOf } from '../../../core/verbs/amends.ts';
import type { FieldRow } from '../../../core/verbs/slot.ts';
import { partNamed } from '../names-typed.ts';
import { personTyped } from '../people-typed.ts';
import type { Fault } from '../reading.ts';
import { isPermitWord } from '../time-and-permission.ts';
import { lastDayOf, lastDayShort } from '../times/expiry-typed.ts';
import { fillers } from '../tongues/english/line-words.ts';
import { rareFigureFrom } from '../typed/rare-figures.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { type ActLine, leftOver, type Said } from './act-line.ts';
import { choiceAt, choicesOf } from './choices-on-line.ts';
import { countFrom, figureFor, outside } from './figure-of-slot.ts';
import { sheetFrom } from './read-names.ts';

interface Labelled {
  readonly name: string;
  readonly label: string;
  readonly field: FieldRow<SlotName>;
}

const labelled = ofEachVerb((verb): readonly Labelled[] =>
  Object.entries(verbRows[verb].fields).flatMap(([name, field]) => {
    const label = field.options?.behind;
    const isRead = ['number', 'figure', 'text', 'day', 'person'].includes(field.told);
    return label === undefined || !isRead ? [] : [{ name, label, field }];
  }),
);

/** Those that a correction may put right, by the names that it gives them. */
const amended = ofEachVerb((verb): readonly Labelled[] =>
  (amendsOf(verb) ?? []).flatMap(({ name, slot, told, options }) => {
    const label = options?.behind;
    return label === undefined ? [] : [{ name, label, field: { told, slots: [slot], options, words: new Map() } }];
  }),
);

const choicesOfVerb = ofEachVerb((verb) => choicesOf(Object.entries(verbRows[verb].fields)));

export interface ValueTaken {
  readonly name: string;
  readonly value: unknown;
  /** Index of the token after it. */
  readonly to: number;
}

/** What stands behind the label at `index`, if one stands there; `only`: if a correction may put it right. */
export function labelledAt(verb: Verb, act: ActLine, index: number, only?: 'amend'): ValueTaken | Fault | undefined {
  const { tokens, context } = act;
  const token = tokens[index];
  if (token?.kind !== 'word') return undefined;
  const { word } = token;
  const slotLabelled = context.hearing.labels.get(word);
  const all = (only === 'amend' ? amended : labelled)[verb].filter(
    ({
      label,
      field: {
        slots: [slot],
      },
    }) => label === word || (slot !== undefined && slot.name === slotLabelled),
  );
  // `salts 12mg/m2`, `salts 12uS/cm`: of several behind one word the unit says which.
  const ofUnit = ({ field }: Labelled): boolean =>
    field.slots.some(({ unit }) => rareFigureFrom(tokens, index + 1, unit) !== undefined);
  const found = all.length > 1 ? (all.find(ofUnit) ?? all[0]) : all[0];
  if (found === undefined) return undefined;
  const { name, field } = found;
  // `by hand`: only a name is one.
  if (field.told === 'person') {
    const person = personTyped(tokens[index + 1], context.hearing);
    return person === undefined ? undefined : { name, value: person, to: index + 2 };
  }
  // `dust off` says that it is gone, `dust 1` how much is left.
  const choiceTo = (from: number) => choiceAt(tokens, from, choicesOfVerb[verb])?.to ?? 0;
  const isOfFigure = tokens[index + 1]?.kind === 'number';
  if ((choiceTo(index) > index && !isOfFigure) || choiceTo(index - 1) > index) return undefined;
  // `in 5l`: anything else behind such a word is said of something else.
  const next = tokens[index + 1];
  const isFigure = next?.kind === 'quantity' && field.slots.some(({ kinds }) => kinds.includes(next.quantity.is));
  if (fillers.has(word) && !isFigure && !namesInstrument(field, next, context.instruments)) return undefined;
  const taken = valueFrom(field, act, token, index + 1);
  return isFailed(taken) ? taken : { ...taken, name };
}

/** `with gauge-2`: one that the shop keeps. */
function namesInstrument(
  { told }: FieldRow<SlotName>,
  token: Token | undefined,
  instruments: ActLine['context']['instruments'] = [],
): boolean {
  const name = token?.kind === 'quoted' ? token.words : token?.text;
  return told === 'text' && name !== undefined && instruments.some((each) => each.name === name.toLowerCase());
}

function valueFrom(
  { told, slots: [slot] }: FieldRow<SlotName>,
  act: ActLine,
  label: Token,
  index: number,
): Omit<ValueTaken, 'name'> | Fault {
  const token = act.tokens[index];
  const needs = slot === undefined ? [] : [slot.name];
  const to = index + 1;
  if (token === undefined) return { failed: 'incomplete', token: label, needs };
  if (told === 'text') return { value: token.kind === 'quoted' ? token.words : token.text, to };
  if (told === 'day') {
    const day = lastDayOf(act.tokens, index, act) ?? lastDayShort(act.tokens, index, act);
    if (day === undefined) return { failed: 'incomplete', token, needs };
    return isFailed(day) ? { ...day, needs } : { value: day.date, to: day.to };
  }
  if (told === 'part') {
    const part = token.kind === 'word' ? partNamed(token.word, act.context) : undefined;
    return part === undefined ? { failed: 'incomplete', token: label, needs } : { value: part, to };
  }
  if (told === 'sheet') {
    const sheet = token.kind === 'word' ? sheetFrom(act, [token]) : undefined;
    if (sheet === undefined) return { failed: 'incomplete', token: label, needs };
    return isFailed(sheet) ? sheet : { value: sheet, to };
  }
  if (slot === undefined) {
    const count = token.kind === 'number' ? countFrom(token) : leftOver(token);
    return isFailed(count) ? leftOver(token) : { value: count, to };
  }
  const rare = rareFigureFrom(act.tokens, index, slot.unit);
  if (rare !== undefined) return outside(slot.name, token, rare.value) ?? rare;
  if (token.kind === 'word' || token.kind === 'quoted') return { failed: 'incomplete', token: label, needs };
  const figure = figureFor(slot.name, token, act.line);
  return isFailed(figure) ? figure : { value: figure, to };
}

/** All such fields of a line up to a leave, and the line without them. */
export function labelledApart(
  verb: Verb,
  act: ActLine,
): { readonly act: ActLine; readonly said: Readonly<Said> } | Fault {
  const said: Said = {};
  if (labelled[verb].length === 0) return { act, said };
  const tokens: Token[] = [];
  const inOrder = { ...act, tokens: choicesFirst(verb, act.tokens) };
  for (let i = 0; i < inOrder.tokens.length; i++) {
    const token = inOrder.tokens[i];
    if (token === undefined) continue;
    if (isPermitWord(token)) {
      tokens.push(...inOrder.tokens.slice(i));
      break;
    }
    const taken = labelledAt(verb, inOrder, i);
    if (taken === undefined) {
      tokens.push(token);
      continue;
    }
    if (isFailed(taken)) return taken;
    if (said[taken.name] !== undefined) return leftOver(inOrder.tokens[i + 1] ?? token);
    said[taken.name] = taken.value;
    i = taken.to - 1;
  }
  return { act: { ...act, tokens }, said };
}

/** `in stainless 5l`: a choice of the same act between a filler and its figure stands before both. */
function choicesFirst(verb: Verb, tokens: readonly Token[]): readonly Token[] {
  const choices = choicesOfVerb[verb];
  const at = tokens.findIndex(
    (token, i) => fillers.has(wordIn(token)) && choiceAt(tokens, i + 1, choices) !== undefined,
  );
  const choice = at < 0 ? undefined : choiceAt(tokens, at + 1, choices);
  if (choice === undefined || isFailed(choice)) return tokens;
  return [
    ...tokens.slice(0, at),
    ...tokens.slice(at + 1, choice.to),
    ...tokens.slice(at, at + 1),
    ...tokens.slice(choice.to),
  ];
}
