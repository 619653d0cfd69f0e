// How the speakers of a tongue ask how things stand, by the keys that the readers know.

import type { StateQuestion, Verb } from '../../../core/commands.ts';
import type { PartPhase } from '../../../core/part/part.ts';
import type { Topic } from '../../../core/verbs/topics.ts';
import type { WhyTyped } from './why-typed.ts';

/** A topic; `trace`: what went on it; `day`: of all that was done. */
export type AskedKind =
  | Exclude<StateQuestion['ask'], 'how-stands'>
  | Topic
  | 'trace'
  | 'traveller'
  | 'card'
  | 'day'
  | 'mask'
  | 'what-now';

export interface TopicAsked {
  readonly asks: Topic;
  readonly said: RegExp;
  /** Only where nothing of it is named. */
  readonly notOf?: 'part' | 'batch';
  /** Only of a part, by its name or its number. */
  readonly ofPart?: true;
  /** Of somebody named, or where it asks who. */
  readonly ofPerson?: true;
}

/** How it is asked how things stand, in patterns of lower case without accents. */
export interface QuestionsTyped {
  /** What may stand before a question: `hey`, `do you know`. */
  readonly leadIns: RegExp;
  /** What follows a lead-in and leaves what is asked: `do you know whether`. */
  readonly whether: RegExp;
  /** A lead-in that wants to be told or shown something. */
  readonly tells: RegExp;
  /** A thing and what is said of it in one word, `the oven's free`. */
  readonly shortened?: RegExp;
  /** Words of now that something else follows: they change nothing of what is asked. */
  readonly nowInside: RegExp;
  /** Slips and short forms of the words that ask, by what was meant. */
  readonly slips: Readonly<Record<string, string>>;
  /** `1 to 6`, its ends in two groups. */
  readonly stretch: RegExp;
  /** What is coated, of several: a number before it only counts. */
  readonly countedNouns: RegExp;
  /** Words for places that only say where somebody stands. */
  readonly notPlaces: string;
  /** It asks for whom, whoever is named. */
  readonly who: RegExp;
  /** Stands for a person's name in the patterns. */
  readonly somebody: string;
  /** Without its mark: the line begins or ends as only a question does. */
  readonly asking: RegExp;
  /** The same by its end. */
  readonly asksAtEnd: RegExp;
  /** As typed: accents by which a word asks. */
  readonly accented?: RegExp;
  /** What is asked of stands before the word that asks. */
  readonly thingFirst: RegExp;
  /** `7 alright to go in the oven`: what may be done to what it names first. */
  readonly mayFirst: RegExp;
  /** Of these a line that asks is about one thing, wherever the words stand. */
  readonly topics: readonly TopicAsked[];
  /** Amount, unit and part of the product: `700 g of A`. */
  readonly given: RegExp;
  /** The whole line asks which number to call, if something happens. */
  readonly emergencyNumber: RegExp;
  readonly why: WhyTyped;
  /** What has just rung: `why did it beep`. */
  readonly rang: RegExp;
  /** What is no question about how things stand: it asks why, what a word means, or the listener for an act. */
  readonly others: RegExp;
  /** What names no thing and no act: `can 7 be released`, `out of which pot`. */
  readonly modal: RegExp;
  /** Words of acts that are only small words in a question. */
  readonly notActs: string;
  /** `anywhere`: else where the question begins with it, or where the line is marked as one. `marked`: only there. */
  readonly kinds: readonly {
    readonly asks: AskedKind;
    readonly said: RegExp;
    readonly anywhere?: true;
    readonly marked?: true;
  }[];
  /** Acts as they are asked of in other words than their own. */
  readonly acts: readonly { readonly act: Verb; readonly said: RegExp }[];
  /** To spray: a part, where one is named, else to begin. */
  readonly spray: RegExp;
  /** Part A or Part B, and not the article. */
  readonly component: RegExp;
  /** It may be asked of all that runs: of nothing named, `is everybody fine` is no question about the work. */
  readonly ofAll: RegExp;
  /** A word that says that something is done. */
  readonly isDone: RegExp;
  /** `use 2`: what is used is a pot. */
  readonly usesPot: { readonly said: RegExp; readonly as: string };
  /** A reading, an act that was done or one that was not: without a mark or a word that asks, it asks nothing. */
  readonly stated: RegExp;
  /** Said as it is asked, where no mark tells. */
  readonly mayAsk?: RegExp;
  readonly ordinals: Readonly<Record<string, number>>;
  /** A reading as it stands, where its word alone would ask what it means: `what's the dew point this morning`. */
  readonly readsNow: RegExp;
  /** Begins a clause that asks where it stands alone, and tells where an act was told before it: `acabó Kari, ya puede salir`. */
  readonly tellsToo?: RegExp;
  /** Between what is told first and what is asked then. */
  readonly joinsAsked: RegExp;
  /** What may be wrong with the air: `too damp to start`. */
  readonly unfitAir: RegExp;
  /** `the two in the oven`: parts by where they are, not by name. A figure in it (the first group) says how many they are. */
  readonly whereParts: readonly { readonly are: PartPhase['is']; readonly said: RegExp }[];
}
