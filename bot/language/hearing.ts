// What may be typed by one speaker: the tables of the tongues that are heard together, made once for each set of them.

import { type SettingName, settingNames } from '../../core/settings.ts';
import { type CryTable, cryTableOf } from './cry-words.ts';
import { type HelpGroup, helpGroups } from './help-groups.ts';
import { type PartColumn, partColumns } from './parts-in/part-column-names.ts';
import { type DoneTable, doneTableOf } from './sayings/done-table.ts';
import { type ReasonTable, reasonTableOf } from './sayings/reason-table.ts';
import { type Tables, tablesOf } from './tables-heard.ts';
import type { TimesTyped, Typed } from './tongues/typed.ts';
import { type Spellings, spellingsOf } from './typed/units-typed.ts';
import { withoutAccents } from './typed/without-accents.ts';
import { methodWordsOf, type OnRow, rowsOf, type VerbTable, verbsOf } from './verbs-of-tongues.ts';
import type { VocabularyName } from './vocabulary.ts';

interface Numbers {
  /** What is said in words in place of figures: `dos`, `y medio`, `menos cuarto`. */
  readonly numbers: ReadonlyMap<string, number>;
  /** Words that are numbers, and name nothing: `seven`. */
  readonly numberWords: ReadonlySet<string>;
  /** `second` */
  readonly ordinals: ReadonlyMap<string, number>;
  readonly andHalf: ReadonlySet<string>;
  readonly pastHour: ReadonlyMap<string, number>;
  /** What is said in words, `half an hour`. */
  readonly minutes: ReadonlyMap<string, number>;
}

export interface Hearing extends Numbers, Tables {
  readonly tongues: readonly Typed[];
  readonly verbs: VerbTable;
  /** The first word of those that have two. */
  readonly firstOfTwo: ReadonlySet<string>;
  /** The same of three words or four. */
  readonly firstOfMore: ReadonlySet<string>;
  readonly rows: ReadonlyMap<VocabularyName, OnRow>;
  /** A word to the spelling that the readers know. */
  readonly meanings: ReadonlyMap<string, string>;
  /** Those of them that each tongue has. */
  readonly wordsOf: ReadonlyMap<Typed, ReadonlySet<string>>;
  readonly units: Spellings;
  readonly times: readonly TimesTyped[];
  /** Slots by their label. */
  readonly labels: ReadonlyMap<string, string>;
  readonly helpGroups: ReadonlyMap<string, HelpGroup>;
  readonly settings: ReadonlyMap<string, SettingName>;
  readonly languages: ReadonlyMap<string, string>;
  readonly noSlips: ReadonlySet<string>;
  readonly leaves: ReadonlySet<string>;
  /** `batch12`: a word that ran into its number. */
  readonly gluedNumber: RegExp;
  /** `pot 1`, with the number. */
  readonly potNumbered: RegExp;
  readonly canNumbered: RegExp;
  /** Heads of a table of parts, and which detail stands under each. */
  readonly columns: ReadonlyMap<string, PartColumn>;
  /** All that there are, heard together: what a name may be does not hang on who speaks. */
  readonly every: Hearing;
  /** What a clause begins with that says why. */
  readonly reasons: ReasonTable;
  readonly done: DoneTable;
  /** Of all that there are: whoever needs help is heard. */
  readonly cries: CryTable;
}

const numbersOf = (tongues: readonly Typed[]): Numbers => ({
  numbers: new Map(tongues.flatMap(({ numbers }) => Object.entries(numbers.words))),
  numberWords: new Set(
    tongues.flatMap(({ numbers: { spoken } }) =>
      [spoken.small, spoken.tens].flatMap((table) => Object.keys(table).filter((word) => word.length > 2)),
    ),
  ),
  ordinals: new Map(tongues.flatMap(({ questions }) => Object.entries(questions.ordinals))),
  andHalf: new Set(tongues.flatMap(({ numbers }) => numbers.andHalf)),
  pastHour: new Map(tongues.flatMap(({ numbers }) => Object.entries(numbers.pastHour))),
  minutes: new Map(tongues.flatMap(({ times }) => Object.entries(times.minutes))),
});

/** English first. `all`: every tongue that there is, where these are not all. */
export function hearingOf(tongues: readonly Typed[], codes: readonly string[], all?: Hearing): Hearing {
  const verbs = verbsOf(tongues, all?.tongues ?? tongues);
  const tables = tablesOf(tongues);
  const said = (of: (tongue: Typed) => string): readonly string[] => tongues.flatMap((tongue) => wordsOf(of(tongue)));
  return {
    tongues,
    verbs,
    firstOfTwo: firstWords(verbs, 2),
    firstOfMore: firstWords(verbs, 3),
    rows: rowsOf(tongues),
    meanings: new Map(tongues.flatMap(meaningsOf)),
    wordsOf: new Map(
      tongues.map((tongue) => [
        tongue,
        new Set(meaningsOf(tongue).flatMap(([word, meaning]) => (word === meaning ? [] : [word]))),
      ]),
    ),
    units: spellingsOf(tongues.map(({ units }) => units)),
    times: tongues.map(({ times }) => times).filter(({ atHour, atOne, atNoon }) => atHour ?? atOne ?? atNoon),
    ...numbersOf(tongues),
    labels: labelsOf(tongues),
    helpGroups: helpGroupsOf(tongues),
    settings: settingsOf(tongues),
    languages: new Map([
      ...(all?.tongues ?? tongues).flatMap(({ languages }) => byPhrase(languages)),
      ...codes.map((code) => [code.toLowerCase(), code] as const),
    ]),
    noSlips: new Set(said(({ noSlips, leaves }) => `${noSlips} ${leaves}`)),
    leaves: new Set(said(({ leaves }) => leaves)),
    gluedNumber: gluedNumberOf(said(({ runsInto }) => runsInto)),
    potNumbered: numberAfter(said(({ pots }) => pots)),
    canNumbered: numberAfter(said(({ cans }) => cans)),
    columns: columnsOf(tongues),
    // Most lines are read without them.
    get said() {
      return tables.said;
    },
    get otherwise() {
      return tables.otherwise;
    },
    get weighed() {
      return (all ?? tables).weighed;
    },
    get otherwiseWeighed() {
      return (all ?? tables).otherwiseWeighed;
    },
    get asideWeighed() {
      return (all ?? tables).asideWeighed;
    },
    get asidesBegin() {
      return (all ?? tables).asidesBegin;
    },
    get leadsIn() {
      return (all ?? tables).leadsIn;
    },
    get askedWeighed() {
      return (all ?? tables).askedWeighed;
    },
    get saidOrAsked() {
      return (all ?? tables).saidOrAsked;
    },
    get labelled() {
      return tables.labelled;
    },
    get every() {
      return all ?? this;
    },
    reasons: all?.reasons ?? reasonTableOf(tongues),
    done: all?.done ?? doneTableOf(tongues),
    cries: all?.cries ?? cryTableOf(tongues, verbs),
  };
}

const labelsOf = (tongues: readonly Typed[]): Hearing['labels'] =>
  new Map(
    tongues.flatMap(({ slots }) =>
      Object.entries(slots).map(([name, label]) => [withoutAccents(label), name] as const),
    ),
  );

const settingsOf = (tongues: readonly Typed[]): Hearing['settings'] =>
  new Map(
    tongues.flatMap(({ settings }) =>
      settingNames.flatMap((name) =>
        (settings[name].typed?.split(', ') ?? []).map((words) => [withoutAccents(words), name] as const),
      ),
    ),
  );

const helpGroupsOf = (tongues: readonly Typed[]): Hearing['helpGroups'] =>
  new Map(
    tongues.flatMap(({ helpGroups: typed }) =>
      helpGroups.flatMap((group) => wordsOf(typed[group]).map((word) => [word, group] as const)),
    ),
  );

const gluedNumberOf = (runsInto: readonly string[]): RegExp =>
  new RegExp(`^(${either(runsInto)})\\.?(\\d.*)$|^(at)(\\d{1,2}[:.h]\\d{2}.*|\\d{4}|\\d{1,2}[ap]m)$`, 'iu');

const firstWords = (verbs: VerbTable, atLeast: number): ReadonlySet<string> =>
  new Set(
    [...verbs.keys()]
      .map((word) => word.split(' '))
      .flatMap(([first = '', ...more]) => (more.length + 1 >= atLeast ? [first] : [])),
  );

const columnsOf = (tongues: readonly Typed[]): Hearing['columns'] =>
  new Map(
    tongues.flatMap(({ partsIn }) =>
      partColumns.flatMap((column) => partsIn.columns[column].split(', ').map((head) => [head, column] as const)),
    ),
  );

/** The number that stands beside one of these words, and is no amount. */
const numberAfter = (words: readonly string[]): RegExp =>
  new RegExp(
    `(?<![\\p{L}\\d])(?:${either(words)})\\s*(?:no\\.?|num\\.?|#)?\\s*(\\d{1,6})(?![\\d.,]*\\s?(?:\\p{L}\\b|kg|%)|[.,:]?\\d)`,
    'iu',
  );

const wordsOf = (words: string): readonly string[] => words.split(' ').filter((word) => word !== '');
const either = (words: readonly string[]): string => words.join('|');

/** Every word with what it means, each as often as it stands in a table. */
export function meaningsOf(tongue: Typed): readonly (readonly [string, string])[] {
  const terms = Object.entries(tongue.terms).map(([concept, { typed }]) => [concept, withoutAccents(typed)] as const);
  const rows = [...Object.entries(tongue.meanings), ...terms].flatMap(([meaning, words]) =>
    wordsOf(words).map((word) => [word, meaning] as const),
  );
  return [...rows, ...methodWordsOf(tongue)];
}

function byPhrase(phrases: Readonly<Record<string, string>>): readonly (readonly [string, string])[] {
  return Object.entries(phrases).flatMap(([name, words]) => words.split(', ').map((word) => [word, name] as const));
}

/** `cabina-2` is `booth-2`, whoever typed it: a crew has one booth in two languages. */
const numbered = /^(\p{L}+)([-_]?\d+)$/u;
const mayBeNumbered: ReadonlySet<string> = new Set(['oven', 'room', 'booth', 'shop', 'store', 'hall']);

/** The spelling that the readers know; any other word as it is. */
export function meaningOf(word: string, { meanings }: Hearing): string {
  const plain = withoutAccents(word);
  const meaning = meanings.get(plain);
  if (meaning !== undefined) return meaning;
  const last = plain.charCodeAt(plain.length - 1);
  const [, root = '', number] = last >= 48 && last <= 57 ? (numbered.exec(plain) ?? []) : [];
  const place = meanings.get(root) ?? '';
  return mayBeNumbered.has(place) ? `${place}${number}` : word;
}

/** True for a word that would be read as another: no name can be spelt so. */
export const meansAnother = (word: string, hearing: Hearing): boolean => meaningOf(word, hearing) !== word;
