// Which act is corrected: `1 weigh`, `impeller-7 coat`, `air`, with the values that each kind of act can have wrong.

import { isVerb, ofEachVerb, verbRows } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import type { BatchNumber, Noun } from '../../../core/ids.ts';
import { type Amends, actsOn, amendsOf, isAmendable } from '../../../core/verbs/amends.ts';
import type { AmendableVerb, AmendTarget } from '../../../core/verbs/correction-verbs.ts';
import type { Kind } from '../../../core/verbs/slot-row.ts';
import { partNamed, placeNamed } from '../names-typed.ts';
import type { Fault } from '../reading.ts';
import { batchMarks, canMarks, fillers } from '../tongues/english/line-words.ts';
import { methodsByWord } from '../trade-words.ts';
import { type Token, type Word, wordIn } from '../typed/token.ts';
import { verbOfWord } from '../verbs-typed.ts';
import { type ActLine, leftOver, lineWith } from './act-line.ts';
import { type Choices, choicesOf } from './choices-on-line.ts';
import { countFrom } from './figure-of-slot.ts';

export interface Amendable {
  readonly on: Noun | undefined;
  /** A coat is named by its part, by its batch or by both. */
  readonly takesNumber: boolean;
  /** What may be wrong besides the time, by kind of quantity. */
  readonly values: ReadonlyMap<Kind, Amends>;
  /** In a unit that few acts take. */
  readonly rare: Amends | undefined;
  /** And what is said of it in words. */
  readonly choices: Choices;
}

function amendable(verb: AmendableVerb): Amendable {
  const on = actsOn(verb);
  const values = new Map<Kind, Amends>();
  const figures = (amendsOf(verb) ?? []).filter(
    ({ told, options }) => told !== 'own-words' && options?.behind === undefined,
  );
  for (const one of figures) {
    for (const kind of one.slot.kinds) values.set(kind, values.get(kind) ?? one);
  }
  const rare = (amendsOf(verb) ?? []).find(
    ({ slot, options }) => slot.kinds.includes('word') && slot.unit !== undefined && options?.behind === undefined,
  );
  const film = values.get('film');
  // A millimetre is a film's unit too where the film is thick.
  if (film !== undefined) values.set('length', film);
  return {
    on,
    takesNumber: on === 'batch' || on === 'can' || on === 'session' || verbRows[verb].fields.batch !== undefined,
    values,
    rare,
    choices: choicesThatAmend[verb],
  };
}

const choicesThatAmend = ofEachVerb((verb) =>
  choicesOf(
    Object.entries(verbRows[verb].fields).filter(
      ([, { told, options }]) => (told === 'choice' || told === 'choices') && options?.amend === true,
    ),
  ),
);

export interface TargetRead {
  readonly of: AmendTarget;
  readonly row: Amendable;
  /** Index of the token after the verb. */
  readonly next: number;
}

/** The target up to its verb; a batch or a name may also follow it. */
export function targetFrom(act: ActLine): TargetRead | Fault {
  let batch: { readonly number: BatchNumber; readonly token: Token } | undefined;
  let name: Word | undefined;
  for (const [i, token] of act.tokens.entries()) {
    if (token.kind === 'number' && batch === undefined) {
      const number = countFrom(token);
      if (typeof number !== 'number') return number;
      batch = { number, token };
    } else if (token.kind === 'word') {
      const verb = methodsByWord.has(token.word) ? undefined : verbOfWord(token, act.context.hearing);
      const named = verb?.row.name;
      if (named !== undefined && isVerb(named) && isAmendable(named)) return targetOf(act, named, i + 1, batch, name);
      if (batchMarks.has(token.word) || canMarks.has(token.word) || fillers.has(token.word)) continue;
      const isMethod = methodsByWord.has(token.word);
      if (isMethod || verb !== undefined || name !== undefined) {
        const tries = isMethod ? [lineWith(act.line, token, `coat ${token.text}`)] : [];
        return { failed: 'left-over', token, needs: ['act'], tries };
      }
      name = token;
    } else return leftOver(token);
  }
  return { failed: 'incomplete', needs: ['act', 'change'] };
}

/** A surface is a part's where the name is one. */
function rowFor(verb: AmendableVerb, name: Word | undefined, act: ActLine): Amendable {
  const row = amendable(verb);
  const isPart = verb === 'surface' && name !== undefined && act.context.parts.includes(name.word);
  return isPart ? { ...row, on: 'part' } : row;
}

const numbered = (on: Noun | undefined, number: number): Pick<AmendTarget, 'can' | 'session' | 'batch'> =>
  on === 'can' ? { can: number } : on === 'session' ? { session: number } : { batch: number };

function targetOf(
  act: ActLine,
  verb: AmendableVerb,
  next: number,
  batch: { readonly number: BatchNumber; readonly token: Token } | undefined,
  name: Word | undefined,
): TargetRead | Fault {
  const row = rowFor(verb, name, act);
  const { hearing } = act.context;
  if (batch !== undefined && !row.takesNumber) return leftOver(batch.token);
  if (name !== undefined && (row.on === 'batch' || row.on === 'can' || row.on === 'session')) {
    return leftOver(name);
  }
  const number = batch === undefined ? {} : numbered(row.on, batch.number);
  if (name === undefined) return { of: { verb, ...number }, row, next };
  if (row.on === 'place') {
    const place = placeNamed(name.word, hearing);
    return place === undefined ? leftOver(name) : { of: { verb, place }, row, next };
  }
  const part = partNamed(name.word, act.context);
  if (part === undefined) return leftOver(name);
  // `amend hub-1 film spot 2 95 100 105um`
  const spot = verb === 'film' && wordIn(act.tokens[next]) === 'spot' ? act.tokens[next + 1] : undefined;
  if (spot === undefined) return { of: { verb, part, ...number }, row, next };
  const count = spot.kind === 'number' ? countFrom(spot) : leftOver(spot);
  return isFailed(count) ? count : { of: { verb, part, spot: count }, row, next: next + 2 };
}
