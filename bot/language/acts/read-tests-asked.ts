// What a job asks of tests on the coated part, `pull-off 7MPa`, `gloss 70 90GU`, `hardness 2H`, `no holidays at 500V`, `looks`, `wet 60 80um`:
// each by the word of its act.

import { isFailed } from '../../../core/failed.ts';
import { pencils, type TestAsked } from '../../../core/film-tests.ts';
import { known } from '../../../core/known.ts';
import { type Micrometres, megapascals, volts } from '../../../core/units.ts';
import { choices } from '../../../core/verbs/slot.ts';
import type { BaseUnit } from '../../../core/verbs/slot-row.ts';
import type { Fault } from '../reading.ts';
import type { Slot } from '../slots.ts';
import { rareFigureFrom } from '../typed/rare-figures.ts';
import type { Token } from '../typed/token.ts';
import type { VerbAt } from '../verbs-typed.ts';
import { choiceAt, choicesOf } from './choices-on-line.ts';
import { outside } from './figure-of-slot.ts';
import { filmsFrom } from './read-films.ts';

export interface TestAskedAt {
  readonly asked: TestAsked;
  /** Index of the token after it. */
  readonly to: number;
}

const ofPencil = choicesOf([['pencil', choices('pencil', pencils, {})]]);

/** `undefined`: the verb there is of another thing. */
export function testAskedAt(tokens: readonly Token[], verb: VerbAt, line: string): TestAskedAt | Fault | undefined {
  const { to } = verb;
  switch (verb.row.name) {
    case 'wet':
      return wetAsked(tokens, to, line);
    case 'pull-off': {
      const figure = figureAt(tokens, to, 'pull-off', 'MPa');
      if (figure === undefined) return lacking(tokens[to], 'pull-off');
      if (isFailed(figure)) return figure;
      return { asked: { of: 'pull-off', leastMegapascals: megapascals(figure.value) }, to: figure.to };
    }
    case 'gloss': {
      const first = figureAt(tokens, to, 'gloss', 'GU');
      if (first === undefined) return lacking(tokens[to], 'gloss');
      if (isFailed(first)) return first;
      const second = figureAt(tokens, first.to, 'gloss', 'GU');
      if (second === undefined) return { asked: { of: 'gloss', leastUnits: first.value }, to: first.to };
      if (isFailed(second)) return second;
      const [leastUnits = 0, mostUnits] = [first.value, second.value].toSorted((one, other) => one - other);
      return { asked: { of: 'gloss', leastUnits, ...known({ mostUnits }) }, to: second.to };
    }
    case 'hardness': {
      const chosen = choiceAt(tokens, to, ofPencil);
      const least = pencils.find((each) => each === chosen?.value);
      return chosen === undefined || least === undefined
        ? lacking(tokens[to], 'pencil')
        : { asked: { of: 'hardness', least }, to: chosen.to };
    }
    case 'holidays': {
      const figure = figureAt(tokens, to, 'volts', 'V');
      if (figure === undefined) return { asked: { of: 'holidays' }, to };
      return isFailed(figure) ? figure : { asked: { of: 'holidays', volts: volts(figure.value) }, to: figure.to };
    }
    case 'visual':
      return { asked: { of: 'visual' }, to };
    default:
      return undefined;
  }
}

function wetAsked(tokens: readonly Token[], from: number, line: string): TestAskedAt | Fault {
  const gauge: Token[] = [];
  let to = from;
  for (let token = tokens[to]; token?.kind === 'number' || token?.kind === 'quantity'; token = tokens[to]) {
    gauge.push(token);
    to++;
    if (gauge.length === 2) break;
  }
  const films: readonly Micrometres[] | Fault = filmsFrom(gauge, line, 'wet-film');
  if (isFailed(films)) return films;
  const [leastMicrometres, mostMicrometres] = films.toSorted((one, other) => one - other);
  return leastMicrometres === undefined || mostMicrometres === undefined
    ? lacking(tokens[from], 'wet-film')
    : { asked: { of: 'wet', leastMicrometres, mostMicrometres }, to };
}

/** `at 500V`: the figure behind a word that rounds off. */
function figureAt(tokens: readonly Token[], at: number, slot: Slot, unit: BaseUnit) {
  const token = tokens[at];
  if (token === undefined) return undefined;
  // Whatever small word stands between.
  const figure =
    rareFigureFrom(tokens, at, unit) ?? (token.kind === 'word' ? rareFigureFrom(tokens, at + 1, unit) : undefined);
  return figure && (outside(slot, token, figure.value) ?? figure);
}

const lacking = (token: Token | undefined, slot: Slot): Fault => ({
  ...{ failed: token === undefined ? 'incomplete' : 'left-over', needs: [slot] },
  ...(token !== undefined && { token }),
});
