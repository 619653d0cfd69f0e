// `film impeller-7 12 14 13um`, `wet impeller-7 60um`: gauge readings; the last unit covers all before it.

import type { Command } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import { type Micrometres, micrometres } from '../../../core/units.ts';
import type { Fault } from '../reading.ts';
import { isOutside, type Slot, slots } from '../slots.ts';
import { withUnit } from '../typed/numeric-chunk.ts';
import type { NumberToken, Token } from '../typed/token.ts';
import type { Quantity, Unit } from '../typed/units-typed.ts';
import { type ActLine, leftOver, lineWith } from './act-line.ts';
import { onePartFrom } from './read-names.ts';
import { doubtful, impossibleUnit, partOfTwoPieces, sortPieces } from './sort-pieces.ts';
import { withUnitText } from './unit-missing.ts';

export type FilmSlot = Extract<Slot, 'wet-film' | 'dry-film'>;

export function filmReader(verb: 'wet' | 'film'): (act: ActLine) => Command | Fault {
  const slot = verb === 'wet' ? 'wet-film' : 'dry-film';
  return (act) => {
    const apart = numbersApart(act);
    if (isFailed(apart)) return apart;
    const gathered = sortPieces({ ...act, tokens: apart.others });
    if (isFailed(gathered)) return gathered;
    const part = onePartFrom(gathered.words);
    if (typeof part === 'object') return part;
    const films = filmsFrom(apart.numbers, act.line, slot);
    if (isFailed(films)) return films;
    if (part === undefined) return { failed: 'incomplete', needs: ['part'] };
    if (films.length === 0) return { failed: 'incomplete', needs: [slot] };
    return verb === 'wet' ? { verb, part, wetFilmMicrometres: films } : { verb, part, dryFilmMicrometres: films };
  };
}

interface Apart {
  readonly numbers: readonly Token[];
  readonly others: readonly Token[];
}

function numbersApart(act: ActLine): Apart | Fault {
  const numbers: Token[] = [];
  const others: Token[] = [];
  for (const [i, token] of act.tokens.entries()) {
    if (token.kind === 'word' || token.kind === 'quoted') others.push(token);
    else {
      const joined = token.kind === 'number' ? partOfTwoPieces(act, i, token) : undefined;
      if (joined !== undefined) return joined;
      numbers.push(token);
    }
  }
  return { numbers, others };
}

/** Readings in um. A millimetre is a film's unit too where the film is thick. */
export function filmsFrom(tokens: readonly Token[], line: string, slot: FilmSlot): readonly Micrometres[] | Fault {
  const films: Micrometres[] = [];
  let unit: Unit | undefined;
  for (const typed of [...tokens].reverse()) {
    if (typed.kind === 'number' && unit === undefined) return withoutUnit(typed, line, slot);
    const token = typed.kind === 'number' && unit !== undefined ? withUnit(typed, typed.number, unit) : typed;
    if (token.kind === 'doubt') return doubtful(token, line, slot);
    if (token.kind === 'impossible') return impossibleUnit(token, slot);
    const film = token.kind === 'quantity' ? filmOf(token.quantity) : undefined;
    if (film === undefined || token.kind !== 'quantity') return leftOver(token);
    const limits = slots[slot].limits;
    if (limits !== undefined && isOutside(limits, film)) return { failed: 'impossible', token, needs: [slot], limits };
    unit = token.unit;
    films.unshift(film);
  }
  return films;
}

function filmOf(quantity: Quantity): Micrometres | undefined {
  if (quantity.is === 'film') return quantity.micrometres;
  return quantity.is === 'length' ? micrometres(quantity.millimetres * 1000) : undefined;
}

function withoutUnit(token: NumberToken, line: string, slot: FilmSlot): Fault {
  const tries = slots[slot].units.map((unit) => lineWith(line, token, withUnitText(token, unit)));
  return { failed: 'unit-missing', token, needs: [slot], tries };
}
