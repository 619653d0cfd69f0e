// By which rule a job asks for its dry film, `film pa2 level 3 60 100um 5 spots`, `film iso19840 60um`, `film base 12um`: what stands
// behind the word of the film, in any order, as far as it is of the film.

import type { JobFilmRule, ReleaseLimits } from '../../../core/crew/job-limits.ts';
import { isFailed } from '../../../core/failed.ts';
import { known } from '../../../core/known.ts';
import { micrometres } from '../../../core/units.ts';
import type { Fault } from '../reading.ts';
import { fillers } from '../tongues/english/line-words.ts';
import { type NumberToken, type Token, wordIn } from '../typed/token.ts';
import { figureFor } from './figure-of-slot.ts';
import { filmsFrom } from './read-films.ts';

export interface ReleaseLimitAt {
  readonly limit: ReleaseLimits;
  /** Index of the token after it. */
  readonly to: number;
}

type Mutable<T> = { -readonly [Field in keyof T]: T[Field] };

interface Found {
  rule: Mutable<JobFilmRule>;
  base?: number;
  readonly gauge: Token[];
}

/** SSPC-PA 2 and ISO 19840 ask no fewer of any area. */
const fewestSpots = { lowest: 5, highest: 1_000, unit: '' };
const levels = [1, 2, 3, 4, 5] as const;

export function filmAsked(tokens: readonly Token[], from: number, line: string): ReleaseLimitAt | Fault {
  const found: Found = { rule: {}, gauge: [] };
  let to = from;
  while (to < tokens.length) {
    const next = pieceAt(tokens, to, line, found);
    if (isFailed(next)) return next;
    if (next === to) break;
    to = next;
  }
  const films = filmsFrom(found.gauge, line, 'dry-film');
  if (isFailed(films)) return films;
  const [least, most] = films.toSorted((one, other) => one - other);
  const isRange = films.length === 0 || films.length === 2 || (films.length === 1 && found.rule.rule === 'iso-19840');
  if (!isRange) return { failed: 'incomplete', needs: ['dry-film'], ...known({ token: found.gauge[0] }) };
  const filmRule = { ...found.rule, ...known({ leastMicrometres: least, mostMicrometres: most }) };
  const limit: ReleaseLimits = {
    film: true,
    ...(Object.keys(filmRule).length === 0 ? {} : { filmRule }),
    ...known({ filmBaseMicrometres: found.base === undefined ? undefined : micrometres(found.base) }),
  };
  return { limit, to };
}

/** Takes what stands there and says what comes after it; the same again where it is no piece of a film. */
function pieceAt(tokens: readonly Token[], at: number, line: string, found: Found): number | Fault {
  const token = tokens[at];
  const next = tokens[at + 1];
  if (token === undefined) return at;
  const named = ruleAt(tokens, at);
  if (named !== undefined) {
    found.rule.rule = named.rule;
    return named.to;
  }
  if (wordIn(token) === 'film-level') {
    const level = levels.find((each) => next?.kind === 'number' && next.number.value === each);
    if (level === undefined) return outOf(next ?? token, { lowest: 1, highest: 5, unit: '' });
    found.rule.level = level;
    return at + 2;
  }
  if (wordIn(token) === 'base') {
    if (next?.kind !== 'quantity') return { failed: 'left-over', needs: ['base-metal'], token: next ?? token };
    const base = figureFor('base-metal', next, line);
    if (isFailed(base)) return base;
    found.base = base;
    return at + 2;
  }
  if (token.kind === 'number' && wordIn(next) === 'spot') return spotsAt(token, at, found);
  const isFilm = token.kind === 'quantity' && (token.quantity.is === 'film' || token.quantity.is === 'length');
  // `60 100um`: the last unit covers both.
  const isBefore = token.kind === 'number' && next?.kind === 'quantity' && next.quantity.is === 'film';
  if (isFilm || isBefore) {
    found.gauge.push(token);
    return at + 1;
  }
  const goesOn =
    fillers.has(wordIn(token)) && next !== undefined && !isFailed(pieceAt(tokens, at + 1, line, copy(found)));
  return goesOn && pieceAt(tokens, at + 1, line, copy(found)) !== at + 1 ? at + 1 : at;
}

const copy = ({ rule, gauge }: Found): Found => ({ rule: { ...rule }, gauge: [...gauge] });

function spotsAt(token: NumberToken, at: number, found: Found): number | Fault {
  const { value, whole } = token.number;
  const lowest = found.rule.rule === undefined ? 1 : fewestSpots.lowest;
  if (!whole || value < lowest || value > fewestSpots.highest) return outOf(token, { ...fewestSpots, lowest });
  found.rule.spots = value;
  return at + 2;
}

const outOf = (token: Token, limits: typeof fewestSpots): Fault => ({ failed: 'impossible', token, limits });

/** `pa2`, `SSPC-PA 2`; `iso19840`, `ISO 19840`. */
function ruleAt(
  tokens: readonly Token[],
  at: number,
): { readonly rule: 'pa-2' | 'iso-19840'; readonly to: number } | undefined {
  const word = wordIn(tokens[at]).replaceAll('-', '');
  const next = tokens[at + 1];
  const number = next?.kind === 'number' ? next.number.value : undefined;
  if (word === 'pa2' || word === 'sspcpa2') return { rule: 'pa-2', to: at + 1 };
  if ((word === 'pa' || word === 'sspcpa') && number === 2) return { rule: 'pa-2', to: at + 2 };
  if (word === 'iso19840') return { rule: 'iso-19840', to: at + 1 };
  return word === 'iso' && number === 19_840 ? { rule: 'iso-19840', to: at + 2 } : undefined;
}
