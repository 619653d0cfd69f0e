// What the speakers of a tongue type, by the keys that the readers know.

import type { Contaminant, PrepWay } from '../../../core/grades.ts';
import type { Method } from '../../../core/methods.ts';
import type { SettingName } from '../../../core/settings.ts';
import type { AskedStep } from '../../../core/steps/step-rows.ts';
import type { PlainVerb } from '../../../core/verbs/plain.ts';
import type { HelpGroup } from '../help-groups.ts';
import type { LabelWords } from '../labels/label-table.ts';
import type { PartColumn } from '../parts-in/part-column-names.ts';
import type { Sayings } from '../sayings/sayings.ts';
import type { Slot } from '../slots.ts';
import type { VocabularyName } from '../vocabulary.ts';
import type { DoneWords } from './done-words.ts';
import type { CryWords } from './english/cries.ts';
import type { Meanings } from './english/lexicon.ts';
import type { MethodWords } from './english/methods.ts';
import type { SaidOtherwise } from './english/said-otherwise.ts';
import type { SettingWords } from './english/settings.ts';
import type { UnitSpellings } from './english/units.ts';
import type { TermId } from './glossary.ts';
import type { InstrumentWords } from './instrument-words.ts';
import type { ListWords } from './list-words.ts';
import type { Profile } from './profile.ts';
import type { QuestionsTyped } from './questions-typed.ts';
import type { RemindersTyped } from './reminders-typed.ts';
import type { SaidWords } from './said-words.ts';
import type { AskedMeaning, SaidMeaning } from './sayings-typed.ts';
import type { Terms } from './term.ts';

export interface Typed {
  readonly verbs: VerbsTyped;
  readonly openings: readonly Opening[];
  readonly terms: Terms;
  /** What `what is` may ask about. */
  readonly termNames: Readonly<Record<TermId, string>>;
  /** What an act may take, by its label: what stands behind a word of its own is called by it. */
  readonly slots: Readonly<Record<Slot, string>>;
  /** The small words, and the rest that is no term of the trade. */
  readonly meanings: Meanings;
  readonly methods: Readonly<Record<Method, MethodWords>>;
  readonly units: UnitSpellings;
  readonly times: TimesTyped;
  readonly numbers: NumbersTyped;
  readonly settings: Readonly<Record<SettingName, SettingWords>>;
  /** This tongue by its code, as people name it in any, without accents. */
  readonly languages: Readonly<Record<string, string>>;
  readonly lists: ListWords;
  readonly partsIn: PartsInWords;
  readonly cries: CryWords;
  /** How acts are said where no verb begins the line. */
  readonly said: SaidWords;
  /** Whole lines as people say them, by what they mean: what words speak for is weighed by them. */
  readonly sayings: readonly Sayings<SaidMeaning>[];
  /** Of questions, by what they ask. */
  readonly askings: readonly Sayings<AskedMeaning>[];
  /** How what was said last is put right. */
  readonly corrections: string;
  /** What is said round an act and is no part of it. */
  readonly asides: string;
  /** What leads in to what is told, whole. */
  readonly leadingIn: string;
  /** What a clause begins with that says why. */
  readonly reasons: ReasonWords;
  /** What tells that something was done, and when. */
  readonly done: DoneWords;
  readonly saidOtherwise: SaidOtherwise;
  readonly labels: LabelWords;
  readonly instruments: InstrumentWords;
  /** Words that run into the number after them: `batch12`. */
  readonly runsInto: string;
  /** What a pot is called where its number follows: `pot 1 is hot`. */
  readonly pots: string;
  /** Before the number of a can. */
  readonly cans: string;
  /** All that can be typed about one thing, by the word behind `help all`; the first is printed. */
  readonly helpGroups: Readonly<Record<HelpGroup, string>>;
  readonly questions: QuestionsTyped;
  readonly practice: PracticeTyped;
  readonly reminders: RemindersTyped;
  /** Small words and words of other programs: no slip of a verb, however near. */
  readonly noSlips: string;
  /** Whoever types it wants to end what they type in. */
  readonly leaves: string;
  /** What a suggestion writes in place of the readers' own word, where it is not the first word of a verb or a method. */
  readonly offered: Readonly<Record<string, string>>;
  /** What a country prints otherwise, of the readers' own words. */
  readonly printedIn?: Readonly<Partial<Record<Profile['locale'], Readonly<Record<string, string>>>>>;
  /** The same on the lines of one verb. */
  readonly offeredOn: Readonly<Partial<Record<VocabularyName, Readonly<Record<string, string>>>>>;
}

/** Phrases between commas, in lower case without accents. */
export interface ReasonWords {
  /** Whatever stands before it. */
  readonly always: string;
  /** These say it behind a mark: elsewhere they say when, how or which. */
  readonly behindMark: string;
  /** These as well, and what they deny may be what is told. */
  readonly besides: string;
  /** What was said before them is the reason. */
  readonly hence: string;
  /** `89 degrees is what 8 reads`: between a figure and what it is of. */
  readonly comesFirst: string;
  /** `what the probe shows is 91`, `when I looked, 8 was at 89`: a statement that begins as a question does. */
  readonly toldOf: string;
  /** Between what shows a figure and the figure. */
  readonly is: string;
}

/** What sends the clock of practice on, in patterns of lower case without accents. */
export interface PracticeTyped {
  /** Its `rest` or `later`: for how long, or until when; neither: to the next bell. */
  readonly waits: RegExp;
}

export interface VerbWords {
  /** The first is the one printed. Four words at most, lower case; no word of another row. */
  readonly words: readonly string[];
  /** A line that reads as the row. */
  readonly example: string;
  /** Words that only round a sentence off here. */
  readonly ignores: readonly string[];
  /** What words mean on this row only, by the spelling that the readers know. */
  readonly means: Readonly<Record<string, string>>;
}

export const verbWords = (
  words: string,
  example: string,
  ignores = '',
  means: Readonly<Record<string, string>> = {},
): VerbWords => ({ words: words.split(', '), example, ignores: ignores === '' ? [] : ignores.split(', '), means });

/** A plain act also with what it comes to, in half a line. */
export type VerbsTyped = Readonly<Record<VocabularyName, VerbWords>> &
  Readonly<Record<PlainVerb, { readonly done: string }>>;

export const done = (words: string, verb: VerbWords): VerbWords & { readonly done: string } => ({
  ...verb,
  done: words,
});

/** What the beginning of a line says besides its verb. */
export interface SaidByVerb {
  readonly method?: Method;
  /** Where it cures: `al horno impulsor-7 90C`. */
  readonly way?: 'oven';
  /** `sin extracción`, `entro de turno`. */
  readonly says?: 'yes' | 'no';
  /** Another pass of the coat that is still wet. */
  readonly pass?: 'same-coat';
  /** `recipientes lavados`. */
  readonly gear?: 'vessels';
  /** `degreased lid-6 acetone`. */
  readonly removed?: readonly Contaminant[];
  readonly prepWays?: readonly PrepWay[];
  readonly anonymous?: true;
  /** `bonded yes`, `ipa 99%`. */
  readonly step?: AskedStep;
  /** `sling 24 17`: air, by a dry and a wet bulb. */
  readonly psychrometer?: true;
  /** `job 88 asks dust 2`. */
  readonly setting?: SettingName;
  /** `parts in rail-1..rail-12`: a plain word alone behind it is no part's name. */
  readonly several?: true;
}

/** Words that begin a line and say more than their verb alone. */
export interface Opening extends SaidByVerb {
  readonly words: string;
  readonly verb: VocabularyName;
  readonly printed?: string;
}

/** How parts come in, told many at once. */
export interface PartsInWords {
  /** What stands at the head of a table's columns; phrases parted by commas, without accents. */
  readonly columns: Readonly<Record<PartColumn, string>>;
  /** What stands before them in a sentence; phrases parted by commas, without accents. */
  readonly told: Readonly<Record<'serial' | 'job' | 'max', string>>;
  /** Said of parts that are there now; phrases parted by commas, the longer first, without accents. */
  readonly arrived: string;
  /** How many they are by a word that stands for a number, without accents; the longer first. */
  readonly dozens: Readonly<Record<string, number>>;
  /** What stands before their numbers and is no name of theirs; phrases parted by commas, without accents. */
  readonly numbered: string;
  /** Said with the name of one that is told for the first time, and of nothing else. */
  readonly isNew: string;
}

export interface TimesTyped {
  /** Two words that are `at` before a number: `a las 9:40`. */
  readonly atHour?: readonly [string, string];
  /** The same, only before one o'clock: `a la 1:30`. */
  readonly atOne?: readonly [string, string];
  /** One word that is `at` before noon and midnight. */
  readonly atNoon?: string;
  /** Minutes, said in words: `half an hour`. */
  readonly minutes: Readonly<Record<string, number>>;
  /** What leads to a part of the day (`de`, then `la`), and the hours of the twelve-hour clock that each part has. */
  readonly partLeads: string;
  readonly partArticle: string;
  readonly partsOfDay: Readonly<Record<string, PartOfDay>>;
  readonly spoken: TimeWords;
}

/** A time as it is spoken, by what its words do; lower case, without accents. */
export interface TimeWords {
  /** An hour follows. */
  readonly leads: readonly string[];
  /** The same, though not to the minute. */
  readonly roughly: readonly string[];
  /** Minutes that are no number: `quarter`, `media`. */
  readonly minutes: Readonly<Record<string, number>>;
  /** The minutes stand before it, the hour behind: `ten past nine`. */
  readonly past: readonly string[];
  readonly to: readonly string[];
  /** Said before it all where the lead may be missing: `al cuarto para las diez`. */
  readonly mayLead: readonly string[];
  /** The hour stands before it, the minutes behind: `nueve y diez`. */
  readonly plus?: string;
  readonly minus?: string;
  /** Half an hour past the hour to some ears, half an hour short of it to others: `half nine`. */
  readonly halfOf?: string;
  readonly onTheHour: readonly string[];
  /** Behind a duration, where it may lack its unit: `20 back`. */
  readonly back: readonly string[];
  /** Before one. */
  readonly ago: readonly string[];
  /** Between that and the figure, where nobody looked at a clock. */
  readonly about: readonly string[];
  /** Some time of today that nobody can tell. */
  readonly vague: readonly string[];
}

/** What is said in words in place of figures. */
export interface NumbersTyped {
  /** Before a unit, and as hours of the clock. */
  readonly words: Readonly<Record<string, number>>;
  /** Behind a unit, half of it more. */
  readonly andHalf: readonly string[];
  /** Behind an hour: so many minutes more, or fewer. */
  readonly pastHour: Readonly<Record<string, number>>;
  readonly spoken: NumberWords;
}

/** A number as it is spoken or dictated, by what its words do; lower case, without accents. */
export interface NumberWords {
  /** What stands alone below a hundred. */
  readonly small: Readonly<Record<string, number>>;
  /** What a one may follow, with the joint between: `treinta y uno`, `twenty one`. */
  readonly tens: Readonly<Record<string, number>>;
  readonly tensJoint?: string;
  /** Whole hundreds in one word. */
  readonly hundreds: Readonly<Record<string, number>>;
  /** The word behind a number that makes it hundreds, or thousands. */
  readonly hundred?: string;
  readonly thousand: string;
  readonly hundredJoint?: string;
  /** Before the decimals. */
  readonly point: readonly string[];
  readonly nought: readonly string[];
  /** Of the small ones, those that are an article as well: numbers only beside a unit or a mark. */
  readonly articles: readonly string[];
  /** Of them, what counts nothing before a number: `un cincuenta por ciento`. */
  readonly onlyArticles: readonly string[];
  /** Words behind which these are numbers: `la uno`. */
  readonly numbersBehind: readonly string[];
  /** Behind a number or its unit. */
  readonly andPart: Readonly<Record<string, number>>;
  /** Before a unit. */
  readonly partOf: Readonly<Record<string, number>>;
  /** Heard for a number, and rarely meant: only before a point or a unit. */
  readonly soundsLike: Readonly<Record<string, number>>;
  /** Of those, the ones that behind a mark or a part's word say nothing else: `batch too`. */
  readonly soundsOnlyLike: readonly string[];
  /** Between two readings of a list. */
  readonly goesOn: readonly string[];
  /** Units of several words, in the readers' spelling. */
  readonly inShort: Readonly<Record<string, string>>;
}

export interface PartOfDay {
  readonly hours: readonly number[];
  readonly afterNoon: boolean;
}
