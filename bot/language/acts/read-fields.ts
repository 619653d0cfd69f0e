// An act read off its row: figures by their units, choices by their words, names by what is left. What is missing is told
// in the order of the row.

import { type Command, type SlotName, type Verb, verbRows } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { known } from '../../../core/known.ts';
import { isOwnKey } from '../../../core/own-key.ts';
import type { FieldRow, ToldAs } from '../../../core/verbs/slot.ts';
import type { Fault } from '../reading.ts';
import type { Token } from '../typed/token.ts';
import { type ActLine, leftOver, lineWith, type Reader, type Said } from './act-line.ts';
import { apartFrom, type Plan, plans } from './fields-apart.ts';
import { takeNames } from './fields-named.ts';
import { amountFrom } from './figure-of-slot.ts';
import { withLeadingOnes } from './leading-ones.ts';
import { filmsFrom } from './read-films.ts';
import { type SortedPieces, sortPieces } from './sort-pieces.ts';

/** What is told in another way wants a reader of the verb's own. */
const readable: ReadonlySet<ToldAs> = new Set([
  ...(['number', 'figure', 'figures', 'air', 'amount', 'choice', 'choices', 'kind', 'new', 'text', 'day'] as const),
  ...(['part', 'parts', 'place', 'person', 'people', 'sheet', 'ring', 'rings'] as const),
]);

/** `apart`: a field that its own reader has taken off the line. */
export function fieldsReader(verb: Verb, apart?: string): Reader {
  const plan = plans[verb];
  const { fields } = plan;
  const [odd] = fields.filter(([name, { told, options }]) => {
    if (name === apart) return false;
    const isBehind = options?.behind !== undefined;
    // Somebody's own words behind a word of their own are off the line by now.
    return told === 'own-words' ? !isBehind : !readable.has(told) || (told === 'text' && !isBehind);
  });
  const isUnasked = fields.every(([, { slots }]) => slots.length === 0);
  if (odd !== undefined) throw new Error(`"${odd[0]}" of "${verb}" wants a reader of its own`);
  return (typed, labelled) => {
    const said: Said = { ...labelled };
    // What only a tap says stands alone.
    const [other] = isUnasked && Object.keys(labelled).length > 0 ? typed.tokens : [];
    if (other !== undefined) return leftOver(other);
    const piecesApart = apartFrom(plan.takesNames ? typed : withLeadingOnes(typed), plan, said);
    if (isFailed(piecesApart)) return piecesApart;
    const { act, gauge } = piecesApart;
    const pieces = sortPieces(act);
    if (isFailed(pieces)) return pieces;
    const stray =
      takeFigures(act, fields, pieces, said) ??
      figureOfNoBottle(act, verb, said) ??
      takeNames(act, fields, pieces, said) ??
      takeReadings(act, plan, gauge, said);
    const lacking = lackingIn(typed, verb, plan, said);
    if (stray !== undefined) return strayOrLacking(stray, lacking, pieces);
    return lacking ?? commandOf(verb, said);
  };
}

/** `mix two kg`: what fits no sheet was rather meant as the amount. */
function strayOrLacking(stray: Fault, lacking: Fault | undefined, { words }: SortedPieces): Fault {
  const isSheet = stray.failed === 'unknown-sheet' || stray.failed === 'ambiguous-name';
  if (!isSheet || lacking === undefined) return stray;
  const token = words.find(({ text }) => /^\d/.test(text)) ?? words[0];
  const isAmount = lacking.needs?.[0] === 'amount';
  return isAmount && token !== undefined ? { ...leftOver(token), needs: ['amount'] } : lacking;
}

function takeReadings({ line }: ActLine, { readings }: Plan, gauge: readonly Token[], said: Said): Fault | undefined {
  const [
    name,
    {
      slots: [slot],
    },
  ] = readings ?? ['', { slots: [] }];
  const films = slot === undefined ? [] : filmsFrom(gauge, line, slot.name);
  if (isFailed(films)) return films;
  if (films.length > 0) said[name] = films;
  return undefined;
}

function takeFigures(act: ActLine, fields: Plan['fields'], pieces: SortedPieces, said: Said): Fault | undefined {
  for (const [name, field] of fields) {
    const chosen = said[name];
    const isOther = field.figure !== undefined && chosen !== undefined && chosen !== field.figure.of;
    const stray = isOther ? act.tokens.find(({ kind }) => kind === 'quantity') : undefined;
    if (stray !== undefined) return leftOver(stray);
    const value = valueIn(field, pieces, chosen);
    if (value !== undefined) said[name] = value;
  }
  return undefined;
}

/** How strong it is is said of a bottle alone: of any other step a figure is no yes. */
function figureOfNoBottle({ tokens, verb: { step = 'alcohol' } }: ActLine, verb: Verb, said: Said): Fault | undefined {
  const figure = tokens.find(({ kind }) => kind === 'quantity');
  const isOther = verb === 'confirm' && (said.step ?? step) !== 'alcohol' && said.purityPercent !== undefined;
  return isOther && figure !== undefined ? leftOver(figure) : undefined;
}

/** With its figures in place; `chosen`: what was said of it in words. */
function valueIn({ told, slots, figure, options }: FieldRow<SlotName>, pieces: SortedPieces, chosen: unknown): unknown {
  const { batch, figures } = pieces;
  const first = slots[0] && figures.get(slots[0].name);
  const second = slots[1] && figures.get(slots[1].name);
  switch (told) {
    case 'number':
      return options?.behind === undefined ? batch : undefined;
    case 'figure':
      return first?.value;
    case 'amount':
      return first && amountFrom(first);
    case 'air':
      return (first ?? second) && known({ celsius: first?.value, relativeHumidityPercent: second?.value });
    case 'kind':
      return chosen && { kind: chosen, ...(figure !== undefined && second && { [figure.as]: second.value }) };
    default:
      return undefined;
  }
}

/** The first field that the line lacks, in the order of the row. */
function lackingIn(act: ActLine, verb: Verb, { fields }: Plan, said: Said): Fault | undefined {
  for (const [name, field] of fields) {
    if (field.options === undefined) continue;
    const { usual, shownBy, required } = field.options;
    const isShown = shownBy !== undefined && said[shownBy] !== undefined;
    if (said[name] === undefined && (usual !== undefined || isShown)) said[name] = usual ?? true;
    const isLacking = required === true && said[name] === undefined;
    if (isLacking || (isShown && said[name] === false)) return missing(act, field, fields[0]?.[1] === field);
  }
  // `new ipa` says nothing of the bottle but that it is another.
  if (act.verb.step === 'alcohol' && said.kept === undefined && said.purityPercent === undefined) {
    return { failed: 'incomplete', needs: ['purity'], tries: [`${act.line} 99%`] };
  }
  const { oneOf } = verbRows[verb].options ?? {};
  const [first] = oneOf?.some((name) => said[name] !== undefined) === false ? oneOf : [];
  const field = first === undefined ? undefined : verbRows[verb].fields[first];
  return field && missing(act, field);
}

/** `isFirst`: what is offered then stands in front of the rest. */
function missing({ line, from }: ActLine, { told, slots, options, words }: FieldRow<SlotName>, isFirst = false): Fault {
  const needs = (told === 'air' ? slots : slots.slice(0, 1)).map(({ name }) => name);
  const offered = options?.offered ?? (told === 'choice' || told === 'kind' ? [...words.values()] : undefined);
  const withOffered = (each: string) =>
    isFirst ? lineWith(line, { start: from, end: from }, ` ${each}`) : `${line} ${each}`;
  return { failed: 'incomplete', needs, ...known({ tries: offered?.map(withOffered) }) };
}

/** With all that its row requires. */
export function commandOf(verb: Verb, said: Readonly<Said>): Command {
  const command = { ...said, verb };
  if (!isWhole(command)) throw new Error(`a line of "${verb}" read without what it needs`);
  return command;
}

function isWhole(command: { readonly verb: Verb }): command is Command {
  return plans[command.verb].required.every((name) => isOwnKey(command, name));
}
