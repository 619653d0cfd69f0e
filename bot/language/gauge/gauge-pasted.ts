// A gauge's readings as they are pasted, or typed as the answer to what was asked of a spot: in rows, in a column, apart by commas. They
// become one strict line; where the numbers of spots cannot be told from readings, a tap each that shows what it records.

import { partNamed } from '../names-typed.ts';
import type { LineContext } from '../reading.ts';
import type { Last } from '../said-of-last/last.ts';
import { cleanLine } from '../typed/clean-line.ts';
import { tokenize } from '../typed/tokens.ts';
import { withoutAccents } from '../typed/without-accents.ts';
import type { Understood } from '../understood.ts';
import { verbAt } from '../verbs-typed.ts';
import { type GaugeRow, type GaugeRows, type GaugeWords, gaugeRows } from './gauge-rows.ts';

/** Of which part's film, and what stands for its readings. */
interface Subject {
  readonly line: string;
  readonly body: string;
  /** As the card asks for them. */
  readonly unit: string;
  /** What a tap of the card says of the spot, where readings alone are the answer. */
  readonly spot: string;
  readonly besides: string;
  readonly mustNumber: boolean;
}

/** What numbers a spot: `#4`, `1: 95`, `2) 98`. */
const spotNumbers = /(?<=^|\s)(?:#\s?(\d{1,3})|(\d{1,3})[:)](?=\s))/g;

const numbersIn = (text: string): readonly string[] =>
  [...text.trim().matchAll(spotNumbers)].map(([, hash, marked]) => hash ?? marked ?? '');

/** Rows, or a line that numbers its spots: in other words what numbers a spot would be a reading. */
export const isOfGauge = (text: string): boolean => /[\n\t]/.test(text.trim()) || numbersIn(text).length > 0;

/** `#7 film 12 13`, `dft 7: 20`: what alone names the part numbers no spot. */
function numberOf(part: string, text: string): string | undefined {
  return text.toLowerCase().includes(part) ? undefined : /(\d+)$/.exec(part)?.[1];
}

export function numbersSpots(text: string, part: string): boolean {
  const own = numberOf(part, text);
  return numbersIn(text).some((number) => number !== own);
}

/** `measured hub-1 1: 95 100 105 2: 98`: what stands from the first number on. */
export function spotsBehind(text: string, part: string, context: LineContext): string | undefined {
  const own = numberOf(part, text);
  const first = [...text.matchAll(spotNumbers)].find(([, hash, marked]) => (hash ?? marked) !== own);
  const read = first && gaugeRows(text.slice(first.index), wordsOf(context));
  return read && `film ${part} ${spotsOf(read.rows)}${read.unit ?? ''}`;
}

/** `text`: as it came, since its rows tell. */
export function gaugePasted(text: string, context: LineContext): Understood | undefined {
  const asked = askedSpot(context);
  const instead = asked && (goneOn(text, asked, context) ?? putRight(text, asked, context));
  if (instead !== undefined) return { is: 'sure', line: instead };
  if (!/\d/.test(text)) return undefined;
  const of = filmNamed(text, context) ?? (asked && answerTo(text, asked));
  const read = of && gaugeRows(of.body, wordsOf(context));
  if (of === undefined || read === undefined) return undefined;
  const unit = read.unit ?? of.unit;
  const isNumbered = read.rows.some(({ spot }) => spot !== undefined);
  if (!isNumbered && of.mustNumber) return undefined;
  if (isNumbered && mayBePart(read.rows, asked, context)) return undefined;
  const numbered = `${of.line} ${spotsOf(read.rows)}${unit}${of.besides}`;
  if (!read.isDoubtful) {
    return { is: 'sure', line: isNumbered ? numbered : `${of.line}${of.spot} ${flat(read, '')}${unit}${of.besides}` };
  }
  return {
    is: 'likely',
    lines: [numbered, `${of.line}${of.spot} ${flat(read, unit === '' ? 'um' : unit)}${of.besides}`],
  };
}

/** `and 8: 12 13 12`, where a spot 8 was not asked for and a part has that number. */
function mayBePart([row, ...more]: readonly GaugeRow[], asked: AskedSpot | undefined, context: LineContext): boolean {
  if (row?.spot === undefined || more.length > 0 || asked === undefined || row.spot === asked.spot) return false;
  const end = `-${row.spot}`;
  return context.parts.some((name) => name !== asked.part && name.endsWith(end));
}

const spotsOf = (rows: readonly GaugeRow[]): string =>
  rows.map(({ spot, readings }) => `spot ${spot} ${readings.join(' ')}`).join(' ');

/** Each with its unit: none of them numbers a spot. */
const flat = ({ rows, isDoubtful }: GaugeRows, unit: string): string =>
  rows
    .flatMap(({ spot, readings }) => [...(isDoubtful ? [`${spot}`] : []), ...readings])
    .map((reading) => `${reading}${unit}`)
    .join(unit === '' ? ' ' : ' ');

/** `film hub-1` and its readings in rows under it, or behind it. */
function filmNamed(text: string, context: LineContext): Subject | undefined {
  if (!/[\n\t]|\d,\d{3},\d{3}/.test(text.trim())) return undefined;
  const [first = ''] = text.trim().split(/\r?\n/);
  const line = cleanLine(first.replaceAll('\t', ' '));
  const tokens = tokenize(line, context.hearing);
  const verb = verbAt(tokens, 0, context.hearing);
  const name = verb?.row.name === 'film' ? tokens[verb.to] : undefined;
  const part = name?.kind === 'word' ? partNamed(name.word, context) : undefined;
  if (name === undefined || part === undefined) return undefined;
  const at = text.toLowerCase().indexOf(name.text.toLowerCase());
  const body = text.slice(at + name.text.length).replace(/^[\s:,;]+/, '');
  return { line: `film ${part}`, body, unit: '', spot: '', besides: '', mustNumber: false };
}

interface AskedSpot {
  readonly part: string;
  /** Left out where its rule asks for no spots; `undefined` where no card asks. */
  readonly spot: number | undefined;
  readonly unit: string;
  /** What else its line says of the set. */
  readonly besides: string;
  /** Else its card only offers it: then a spot has to be named. */
  readonly isAsked: boolean;
}

/** What the last card asks of a film; else what the speaker said of one just before. */
function askedSpot(context: LineContext): AskedSpot | undefined {
  const last = context.last?.();
  const open = last?.open.filter(({ line }) => askedFilm.test(line)) ?? [];
  // What marks how far a bare spot goes is only offered.
  const asked = open.find(({ isAsked, line }) => isAsked && !line.includes(' beside '));
  const found = asked ?? open[0];
  if (last !== undefined && found === undefined) return doubted(last) ?? saidBefore(last);
  const [, part, spot, unit = '', besides = ''] = askedFilm.exec(found?.line ?? '') ?? [];
  if (part === undefined) return undefined;
  return { part, spot: spot === undefined ? undefined : Number(spot), unit, besides, isAsked: asked !== undefined };
}

/** Whether its readings could be so was asked: they may be told again instead. */
function doubted({ open }: Last): AskedSpot | undefined {
  const [, part, spot, unit = ''] = toldFilm.exec(open[0]?.line ?? '') ?? [];
  return part === undefined || spot === undefined
    ? undefined
    : { part, spot: Number(spot), unit, besides: '', isAsked: true };
}

const toldFilm = /^film (\S+) spot (\d+) [\d. ]+(um|mil)$/;

/** Only for a line that names its spot. */
function saidBefore(last: Last): AskedSpot | undefined {
  const act = last.said();
  const [, part] = (act?.isFresh === true ? /^film (\S+) .*\d/.exec(act.line ?? '') : null) ?? [];
  return part === undefined
    ? undefined
    : { part, spot: Number.POSITIVE_INFINITY, unit: 'um', besides: '', isAsked: false };
}

const askedFilm = /^film (\S+)(?: (?:spot|beside) (\d+))? \{dry-films\}(\w*)(.*)$/;

/** Figures alone are its readings. */
function answerTo(text: string, { part, spot, unit, besides, isAsked }: AskedSpot): Subject {
  const of = spot === undefined ? '' : ` spot ${spot}`;
  return { line: `film ${part}`, body: text.trim(), unit, spot: of, besides, mustNumber: !isAsked };
}

/** `next`, `skip`: the spot is asked for again, or the one behind it. */
function goneOn(text: string, { part, spot, besides, isAsked }: AskedSpot, context: LineContext): string | undefined {
  const word = withoutAccents(cleanLine(text).toLowerCase());
  if (spot === undefined || !isAsked) return undefined;
  if (said('next', context).has(word)) return `film ${part}${besides}`;
  return said('skip', context).has(word) ? `film ${part} spot ${spot + 1}${besides}` : undefined;
}

/** `spot 2 was 95 100 105`: of one that comes before the one that is asked for; else it is told. */
function putRight(text: string, { part, spot = 0, unit }: AskedSpot, context: LineContext): string | undefined {
  const words = withoutAccents(cleanLine(text).toLowerCase()).split(' ');
  const marks = said('spot', context);
  // `the spot 2`, `el punto 2`.
  const from = marks.has(words[0] ?? '') ? 0 : 1;
  const [mark = '', number = '', was = '', ...rest] = words.slice(from);
  const isMeant = marks.has(mark) && said('was', context).has(was);
  const read = isMeant ? gaugeRows(rest.join(' '), wordsOf(context)) : undefined;
  const [row, ...more] = read?.rows ?? [];
  if (row === undefined || row.spot !== undefined || more.length > 0 || !/^\d+$/.test(number)) return undefined;
  const figures = `${row.readings.join(' ')}${read?.unit ?? unit}`;
  const isBefore = Number.isFinite(spot) && Number(number) < spot;
  return isBefore ? `amend ${part} film spot ${number} ${figures}` : `film ${part} spot ${number} ${figures}`;
}

const wordsOf = (context: LineContext): GaugeWords => ({
  spots: said('spot', context),
  isUnit: (word) => isFilmUnit(word, context),
});

const isFilmUnit = (word: string, { hearing }: LineContext): boolean => {
  const unit = hearing.units.get(word.toLowerCase());
  return unit !== undefined && unit !== 'degree' && unit.is === 'film';
};

/** What people type for it on the line of a film. */
const said = (word: string, { hearing }: LineContext): ReadonlySet<string> =>
  new Set(
    hearing.tongues.flatMap(({ verbs }) => (verbs.film.means[word] ?? '').split(' ').filter((each) => each !== '')),
  );
