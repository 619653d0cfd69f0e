// Which act is corrected: `1 weigh`, `impeller-7 coat`, `air`, with the values that each kind of act can have wrong.

import type { AmendTarget, Verb } from '../../../core/commands.ts';
import type { BatchNumber } from '../../../core/ids.ts';
import { isOwnKey } from '../../../core/own-key.ts';
import { partNamed, placeNamed } from '../names-typed.ts';
import type { Fault } from '../reading.ts';
import type { Kind, Slot } from '../slots.ts';
import { batchMarks, fillers, methodsByWord } from '../trade-words.ts';
import type { Token, Word } from '../typed/tokens.ts';
import { verbOfWord } from '../verbs-typed.ts';
import { type ActLine, leftOver, lineWith } from './act-line.ts';
import { canMarks } from './cans-named.ts';
import { batchFrom } from './sort-pieces.ts';

export interface Amendable {
  readonly on: 'batch' | 'can' | 'part' | 'part-or-batch' | 'place';
  /** What may be wrong besides the time, by kind of quantity. */
  readonly values: Partial<Readonly<Record<Kind, Slot>>>;
}

const onBatch: Amendable = { on: 'batch', values: {} };
const onCan: Amendable = { on: 'can', values: {} };
const onPart: Amendable = { on: 'part', values: {} };

/** A verb that is not here: nothing in such an act can be put right by an amendment. */
export const amendable: Readonly<Partial<Record<Verb, Amendable>>> = {
  mix: onBatch,
  weigh: { on: 'batch', values: { mass: 'part-a' } },
  add: { on: 'batch', values: { mass: 'added' } },
  open: { on: 'can', values: { mass: 'can-mass' } },
  lid: onCan,
  blanket: onCan,
  check: onCan,
  prestir: onCan,
  discard: onCan,
  stir: onBatch,
  stop: onBatch,
  cover: onBatch,
  uncover: onBatch,
  filter: onBatch,
  catch: { on: 'batch', values: { mass: 'caught' } },
  thick: onBatch,
  gel: onBatch,
  empty: { on: 'batch', values: { mass: 'left' } },
  prep: onPart,
  coat: { on: 'part-or-batch', values: {} },
  dry: onPart,
  cure: { on: 'part', values: { temperature: 'oven-temperature' } },
  temp: { on: 'part', values: { temperature: 'part-temperature' } },
  door: onPart,
  out: onPart,
  wet: { on: 'part', values: { film: 'wet-film', length: 'wet-film' } },
  film: { on: 'part', values: { film: 'dry-film', length: 'dry-film' } },
  release: onPart,
  hold: onPart,
  air: { on: 'place', values: { temperature: 'air-temperature', percent: 'humidity' } },
  surface: { on: 'place', values: { temperature: 'surface-temperature' } },
  night: { on: 'place', values: { temperature: 'lowest-temperature' } },
};

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
      const number = batchFrom(token);
      if (typeof number !== 'number') return number;
      batch = { number, token };
    } else if (token.kind === 'word') {
      const verb = methodsByWord.has(token.word) ? undefined : verbOfWord(token);
      const row = isVerb(verb?.row.name) ? amendable[verb.row.name] : undefined;
      if (row !== undefined && isVerb(verb?.row.name)) {
        return targetOf(verb.row.name, rowFor(verb.row.name, row, name, act), i + 1, batch, name);
      }
      if (batchMarks.has(token.word) || canMarks.has(token.word) || fillers.has(token.word)) continue;
      const isMethod = methodsByWord.has(token.word);
      if (isMethod || verb !== undefined || name !== undefined) {
        const tries = isMethod ? [lineWith(act.line, token, `coat ${token.text}`)] : [];
        return { code: 'left-over', token, needs: ['act'], tries };
      }
      name = token;
    } else return leftOver(token);
  }
  return { code: 'incomplete', needs: ['act', 'change'] };
}

/** A surface is a part's where the name is one. */
function rowFor(verb: Verb, row: Amendable, name: Word | undefined, act: ActLine): Amendable {
  const isPart = verb === 'surface' && name !== undefined && act.context.parts.includes(name.word);
  return isPart ? { ...row, on: 'part' } : row;
}

function isVerb(name: string | undefined): name is Verb {
  return name !== undefined && isOwnKey(amendable, name);
}

function targetOf(
  verb: Verb,
  row: Amendable,
  next: number,
  batch: { readonly number: BatchNumber; readonly token: Token } | undefined,
  name: Word | undefined,
): TargetRead | Fault {
  const takesNumber = row.on === 'batch' || row.on === 'part-or-batch' || row.on === 'can';
  if (batch !== undefined && !takesNumber) return leftOver(batch.token);
  if (name !== undefined && (row.on === 'batch' || row.on === 'can')) return leftOver(name);
  const number = batch === undefined ? {} : row.on === 'can' ? { can: batch.number } : { batch: batch.number };
  if (name === undefined) return { of: { verb, ...number }, row, next };
  if (row.on === 'place') {
    const place = placeNamed(name.word);
    return place === undefined ? leftOver(name) : { of: { verb, place }, row, next };
  }
  const part = partNamed(name.word);
  return part === undefined ? leftOver(name) : { of: { verb, part, ...number }, row, next };
}
