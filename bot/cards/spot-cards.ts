// A dry film told spot by spot: the card that asks for the next spot, and what a spot came to.

import { filmLimits } from '../../core/calc/film-spots.ts';
import type { Command } from '../../core/commands.ts';
import type { Request } from '../../core/execute.ts';
import { isFailed } from '../../core/failed.ts';
import type { Unclear } from '../../core/objections.ts';
import { filmSheet } from '../../core/part/film-rule.ts';
import { setsJudged } from '../../core/part/film-set-failed.ts';
import type { SetJudged, SpotJudged } from '../../core/part/film-set-judge.ts';
import type { Part, SpotTold } from '../../core/part/part.ts';
import { type Card, type CardAction, type CardField, makeCard } from './card.ts';
import { inUnitsOf, lineOf, type Telling } from './card-context.ts';

type Asked = Extract<Unclear, { code: 'film-asked' }>;

/** Nothing was told: the field takes the readings bare. */
export function filmAskedCard(telling: Telling, { command }: Request, { part: name, set }: Asked): Card {
  const { spots: words } = telling.words.parts;
  const part = telling.shop.parts.get(name);
  if (set === undefined || part === undefined) {
    const line = inUnitsOf(`film ${name} {dry-films}um`, telling.figures.units);
    return makeCard(words.asksFilm(name), 'plain', {
      lines: [words.asksReadings],
      asksFor: line,
      fields: fields(telling),
    });
  }
  const [wanted] = command.verb === 'film' ? (command.spots ?? []) : [];
  const spot = lackingFrom(set, wanted?.spot ?? 1);
  const action = spotTap(telling, name, set, spot, besides(telling, command, name));
  const told = set.spots.map((each) => words.spot(each, set.off, telling.figures));
  const passed = lackingIn(set).filter((each) => each < spot);
  return makeCard(words.asksOf(name, spot, set.terms.spots), 'plain', {
    lines: [
      ...told,
      ...(told.length === 0 ? termsLines(telling, part, set) : [words.soFar(set, telling.figures)]),
      ...(passed.length === 0 ? [] : [words.stillToTell(passed, telling.figures)]),
      ...areaLines(telling, set),
    ],
    actions: [action, ...areaTaps(telling, name, set)],
    fields: fields(telling),
  });
}

const fields = ({ words }: Telling): readonly CardField[] => [
  { id: 'dry-films', label: words.page.fields['dry-films'] ?? '', unit: 'um' },
];

/** Of those that are asked for. */
function lackingIn({ spots, terms }: SetJudged): readonly number[] {
  const whole = spots.filter(({ lacks }) => lacks === 0).map(({ number }) => number);
  return Array.from({ length: terms.spots }, (_, i) => i + 1).filter((spot) => !whole.includes(spot));
}

/** The first of them from that one on; behind the last the first of all. */
function lackingFrom(set: SetJudged, from: number): number {
  const lacking = lackingIn(set);
  return lacking.find((spot) => spot >= from) ?? lacking[0] ?? 1;
}

/** What was told of the set besides: it is told with the spot. */
function besides(telling: Telling, command: Command, name: string): string {
  if (command.verb !== 'film') return '';
  const { spots: _, ...rest } = command;
  return lineOf(telling, { command: rest, stance: { is: 'asked' } }).slice(`film ${name}`.length);
}

function spotTap(telling: Telling, name: string, { terms }: SetJudged, spot: number, more = ''): CardAction {
  return {
    id: 'spot',
    label: telling.words.parts.spots.button(spot, terms.spots),
    line: inUnitsOf(`film ${name} spot ${spot} {dry-films}um${more}`, telling.figures.units),
  };
}

/** By which terms it is judged, and what is taken off. */
function termsLines(telling: Telling, part: Part, { terms }: SetJudged): readonly string[] {
  const { spots: words } = telling.words.parts;
  const limits = terms.rule.rule === 'pa-2' ? filmLimits(terms.rule, terms.rule.level) : undefined;
  return [
    words.terms(terms, part.details.areaSquareMetres, telling.figures),
    ...(limits === undefined || isFailed(limits)
      ? []
      : [words.limits(limits.spotLeastMicrometres, limits.spotMostMicrometres, telling.figures)]),
  ];
}

/** Nobody told what the gauge shows on the steel itself, though that is rough. */
function offLines({ words, figures }: Telling, { prepared }: Part, { off, set, terms }: SetJudged): readonly string[] {
  const { spots } = words.parts;
  const profile = prepared?.profileMicrometres;
  const besides = set.baseMicrometres !== undefined && terms.rule.rule === 'iso-19840' ? [spots.baseNotTaken] : [];
  if (off.is === 'set-on-profile') return [spots.setOnProfile, ...besides];
  return off.is === 'none' && profile !== undefined ? [spots.noneOff(profile, figures)] : besides;
}

const areaLines = ({ words }: Telling, { terms }: SetJudged): readonly string[] =>
  terms.isAreaTold ? [] : [words.parts.spots.areaNotTold(terms.spots)];

const areaTaps = (telling: Telling, name: string, { terms }: SetJudged): readonly CardAction[] =>
  terms.isAreaTold
    ? []
    : [
        {
          id: 'area',
          label: telling.words.parts.spots.areaButton,
          line: inUnitsOf(`part ${name} {area}m2`, telling.figures.units),
        },
      ];

export interface SpotsTold {
  readonly title: string;
  readonly lines: readonly string[];
  readonly actions: readonly CardAction[];
  readonly fields: readonly CardField[];
}

/** What the spots of one line came to, and what comes next of their set. */
export function spotsTold(telling: Telling, part: Part, told: readonly SpotTold[]): SpotsTold | undefined {
  const { spots: words, film } = telling.words.parts;
  const last = told.at(-1);
  const set = setsJudged(part, filmSheet(telling.shop, part, telling.now)).find(
    (each) => each.set.number === last?.set,
  );
  if (set === undefined || last === undefined) return undefined;
  const numbers = told.map(({ spot }) => spot);
  const own = set.spots.filter(({ number }) => numbers.includes(number));
  const next = set.next;
  const { terms } = set;
  const title =
    last.near === undefined
      ? words.title(part.name, Math.min(...numbers), Math.max(...numbers), terms.spots)
      : words.beside(part.name, last.spot, last.near);
  return {
    title,
    lines: [
      ...shownOf(own).map((each) => words.spot(each, set.off, telling.figures)),
      ...droppedLines(telling, set, next === undefined ? set.spots : own),
      ...(next === undefined
        ? [words.whole(set, telling.figures), film(set.finding, telling.figures)]
        : [words.soFar(set, telling.figures)]),
      ...(numbers.includes(1) || next === undefined ? offLines(telling, part, set) : []),
      ...(next === undefined ? [] : areaLines(telling, set)),
      ...besideLines(telling, set, own),
      ...(next === undefined ? [] : [words.asks(next.spot, terms.spots)]),
    ],
    actions: [
      ...(next === undefined ? [] : [spotTap(telling, part.name, set, next.spot)]),
      ...besideTaps(telling, part.name, set, own),
      ...dropTaps(telling, part.name, set, own),
      ...areaTaps(telling, part.name, set),
    ],
    fields: next === undefined ? [] : fields(telling),
  };
}

/** On paper: every spot of it, what was left out and taken off, and what its rule says. */
export function setLines(telling: Telling, part: Part, set: SetJudged): readonly string[] {
  const { words, figures } = telling;
  return [
    ...set.spots.map((each) => words.parts.spots.spot(each, set.off, figures)),
    ...droppedLines(telling, set, set.spots),
    ...setSummary(telling, part, set),
  ];
}

/** How far it is told, and what its rule says. */
export function setSummary(telling: Telling, part: Part, set: SetJudged): readonly string[] {
  const { spots, film } = telling.words.parts;
  const told = set.next === undefined ? spots.whole(set, telling.figures) : spots.soFar(set, telling.figures);
  return [
    spots.ofSet(set.set.number, told),
    ...(set.finding.is === 'half' ? [] : [film(set.finding, telling.figures)]),
    ...offLines(telling, part, set),
  ];
}

/** Of a whole column only what fails is told one by one. */
const mostShown = 5;
const shownOf = (spots: readonly SpotJudged[]): readonly SpotJudged[] =>
  spots.length <= mostShown ? spots : spots.filter(({ beyond, lacks }) => beyond.length > 0 || lacks > 0);

/** They stay visible; those that its rule does not let be left out count. */
function droppedLines(
  { words, figures }: Telling,
  { spots: all, terms }: SetJudged,
  spots: readonly SpotJudged[],
): readonly string[] {
  const count = all.reduce((sum, { dropped }) => sum + dropped.length, 0);
  return spots
    .filter(({ dropped }) => dropped.length > 0)
    .map(({ number, dropped }) => words.parts.spots.dropped(number, dropped, count > terms.mostDropped, figures));
}

/** What failed is marked by spots beside it, where its rule wants that. */
const failsFirst = ({ terms }: SetJudged, spots: readonly SpotJudged[]): SpotJudged | undefined =>
  terms.rule.rule === 'pa-2' ? spots.find(({ beyond }) => beyond.length > 0) : undefined;

function besideLines({ words }: Telling, set: SetJudged, own: readonly SpotJudged[]): readonly string[] {
  const fails = failsFirst(set, own);
  return fails === undefined || fails.near !== undefined ? [] : [words.parts.spots.goBeside(fails.number)];
}

function besideTaps(telling: Telling, name: string, set: SetJudged, own: readonly SpotJudged[]): readonly CardAction[] {
  const fails = failsFirst(set, set.next === undefined ? set.spots : own);
  if (fails === undefined) return [];
  const spot = fails.near ?? fails.number;
  const line = inUnitsOf(`film ${name} beside ${spot} {dry-films}um`, telling.figures.units);
  return [{ id: 'beside', label: telling.words.parts.spots.besideButton(spot), line }];
}

/** Our own figure, no source: a reading so far from the others of its spot is unusual. */
const unusual = 0.3;

/** Of a rule that lets one be left out. */
function dropTaps(
  telling: Telling,
  name: string,
  { terms }: SetJudged,
  own: readonly SpotJudged[],
): readonly CardAction[] {
  const [spot] = own;
  if (spot === undefined || own.length > 1 || terms.mostDropped === 0 || spot.lacks > 0) return [];
  const far = terms.readingsOfSpot === 1 ? spot.readings[0] : farthest(spot.readings);
  const isFar = far !== undefined && (terms.readingsOfSpot > 1 || spot.beyond.length > 0);
  if (!isFar) return [];
  const of = lineOf(telling, {
    command: { verb: 'film', part: name, spots: [{ spot: spot.number, micrometres: [], dropped: [far] }] },
    stance: { is: 'asked' },
  });
  const line = inUnitsOf(of.replace(' drop ', ' {dry-films}um drop '), telling.figures.units);
  return [{ id: 'drop', label: telling.words.parts.spots.dropButton(far, telling.figures), line }];
}

function farthest<Of extends number>(readings: readonly Of[]): Of | undefined {
  const sorted = readings.toSorted((a, b) => a - b);
  const middle = sorted[Math.floor(sorted.length / 2)] ?? 0;
  const far = readings.toSorted((a, b) => Math.abs(b - middle) - Math.abs(a - middle))[0];
  return far !== undefined && Math.abs(far - middle) > unusual * middle ? far : undefined;
}

/** A spot that is told again: put right, or of another set. */
export function spotToldTaps(
  telling: Telling,
  { command }: Request,
  { part, spot, again }: Extract<Unclear, { code: 'spot-told' }>,
): readonly CardAction[] {
  if (command.verb !== 'film') return [];
  const { spots: words } = telling.words.parts;
  const change = { filmMicrometres: again };
  const amend = { verb: 'amend' as const, of: { verb: 'film' as const, part, spot }, change, why: '' };
  const isOne = (command.spots ?? []).length === 1;
  const asked = { is: 'asked' as const };
  return [
    ...(isOne
      ? [
          {
            id: 'put-right',
            label: words.putRight(spot, again, telling.figures),
            line: lineOf(telling, { command: amend, stance: asked }),
          },
        ]
      : []),
    {
      id: 'new-set',
      label: words.newSet,
      line: lineOf(telling, { command: { ...command, anew: true }, stance: asked }),
    },
  ];
}
