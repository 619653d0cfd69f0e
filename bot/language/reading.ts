// What a typed line comes to: an act, a question, nothing, or a misread. A misread is data, its wording is in the
// catalogues; it never becomes a record.

import type { Command, Question, Stance } from '../../core/commands.ts';
import type { UnitSystem } from '../../core/crew/unit-system.ts';
import type { Failed } from '../../core/failed.ts';
import type { BatchNumber, PartName, PersonName, PlaceName, SheetId } from '../../core/ids.ts';
import type { InstrumentKind } from '../../core/instrument-kinds.ts';
import type { Alarm } from '../../core/session/session-commands.ts';
import type { SettingName } from '../../core/settings.ts';
import type { EpochMs } from '../../core/units.ts';
import type { Limits } from '../../core/verbs/slot-row.ts';
import type { PartsGone } from './asked/parts-gone.ts';
import type { Hearing } from './hearing.ts';
import type { LiveNow } from './live-now.ts';
import type { Last } from './said-of-last/last.ts';
import type { Slot } from './slots.ts';
import type { Profile } from './tongues/profile.ts';
import type { VocabularyName } from './vocabulary.ts';

export interface LineContext {
  /** The speaker's own tongue, the crew's, and English. */
  readonly hearing: Hearing;
  /** The speaker's: what a number without a unit may be in. */
  readonly units?: UnitSystem;
  /** The speaker's: in which order a date is typed. */
  readonly country: Profile;
  readonly now: EpochMs;
  /** IANA name, `Europe/Madrid`: a typed time of day is a wall clock's there. */
  readonly zone: string;
  readonly sheetIds: readonly SheetId[];
  /** Sheets that no part of their name brings. */
  readonly sheetsByFullName?: readonly SheetId[];
  /** The live batches. Helps to tell a batch from a weight; whether a batch exists is not checked here. */
  readonly batches: readonly BatchNumber[];
  readonly parts: readonly PartName[];
  /** Looked up in the record where a question names what is not here. */
  readonly gone?: PartsGone;
  readonly places: readonly PlaceName[];
  /** Kept by the shop: what a reading was made with. */
  readonly instruments?: readonly { readonly name: string; readonly kind: InstrumentKind }[];
  /** The crew: `kari is down` calls people, `the printer is down` does not. */
  readonly people?: readonly PersonName[];
  /** What was said besides is that all is as it should be: the line puts nothing right. */
  readonly saysClean?: true;
  /** Everybody is about to be called, unless somebody says no. */
  readonly mayCallOff?: boolean;
  /** What the speaker may release though it is held. */
  readonly held?: readonly PartName[];
  /** Whether an act's figures are such as are met with here: by it a unit that was left out is told. */
  readonly fits?: (command: Command) => boolean;
  /** What the speaker was asked last: looked up where the line alone says too little. */
  readonly last?: () => Last;
  /** Asked only of a line that the strict reader cannot read. */
  readonly live?: () => LiveNow;
}

export type Reading =
  | {
      readonly kind: 'command';
      readonly command: Command;
      /** The said time, if one was said. */
      readonly at?: EpochMs;
      readonly stance: Stance;
      /** The line as read: spaces, quotes and dashes put right, a mention taken off. */
      readonly line: string;
      /** The strict line that it was taken as, where it was said in other words. */
      readonly takenAs?: string;
      /** Rows of a list of parts that are left out. */
      readonly unread?: readonly FaultyLine[];
    }
  | { readonly kind: 'question'; readonly question: Question; readonly line: string; readonly takenAs?: string }
  /** Several acts in one line, each as a strict line: said one after the other. */
  | { readonly kind: 'several'; readonly lines: readonly string[]; readonly line: string }
  /** A blank line or a # comment. */
  | { readonly kind: 'silence' }
  | { readonly kind: 'misread'; readonly misread: Misread; readonly line: string };

export const misreadCodes = [
  /** The first word is no verb. */
  'unknown-verb',
  /** A number that only a unit can place: `mix 2.4`. */
  'unit-missing',
  /** A number with more than one meaning: `1,201g`. */
  'ambiguous-number',
  /** A time that may belong to the act or to the words around it. */
  'ambiguous-time',
  /** A name that fits several. */
  'ambiguous-name',
  'unknown-sheet',
  /** What cannot be: `air 240C`, `mix -1kg`, `at 25:00`. */
  'impossible',
  'in-the-future',
  /** The line ends before all that is needed was said. */
  'incomplete',
  /** Words or numbers that nothing in this act takes. */
  'left-over',
  /** It holds a word that calls people, and does not read as a call: nobody is called until somebody taps. */
  'no-cry',
  /** It asks for help and does not say what has happened: nobody is called until somebody taps. */
  'which-cry',
  /** A permission of nothing: `permit the customer takes it`. */
  'permit-alone',
  /** A coat inside a tank: no brief serves. */
  'inside-vessel',
  /** A no, where nothing was asked that one word answers. */
  'no-alone',
  /** An act that is clear, of nothing that the line names, and nothing here is in the state for it. */
  'nothing-here',
  /** It may mean what is offered: a tap each, worded as what it does. */
  'which-act',
  /** More parts than one message takes. */
  'too-many-parts',
  /** A list of parts no row of which could be read. */
  'no-row-read',
] as const;
export type MisreadCode = (typeof misreadCodes)[number];

export interface Need {
  readonly slot: Slot;
  /** The units it may have, the shop's usual first; none where a name or a word is wanted. */
  readonly units: readonly string[];
  /** Whose value it is. */
  readonly setting?: SettingName;
  /** What it may be, where that is one of a few. */
  readonly choices?: readonly string[];
}

export interface Misread {
  readonly code: MisreadCode;
  /** The row of the vocabulary that was understood, or comes nearest. */
  readonly verb?: string;
  /** The piece that stopped the reading, as typed; empty where the line ended too early. */
  readonly token: string;
  /** Its place in the line: all before `from` was read. */
  readonly from: number;
  readonly to: number;
  readonly needs: readonly Need[];
  /** What an ambiguous piece may mean. */
  readonly couldBe: readonly string[];
  readonly limits?: Limits;
  /** Its example shows how. */
  readonly exampleOf: VocabularyName;
  /** Another: of the setting that was named, or of a line that only one front end takes. */
  readonly example?: string;
  /** Whole lines, three at most, that read. */
  readonly suggestions: readonly string[];
  /** Of the suggestions, those that call people. */
  readonly calls?: Readonly<Record<string, Alarm>>;
  /** Of the suggestions, the one that says that nobody is to be called. */
  readonly calms?: string;
  /** Of the suggestions, the acts that were understood. */
  readonly meant?: readonly Meant[];
  /** What of the line no suggestion says. */
  readonly untaken?: readonly string[];
  /** The line with a field for the one thing that it lacks. */
  readonly asks?: string;
  /** Of a pasted list: which of its lines. */
  readonly faulty?: readonly FaultyLine[];
}

/** What a line may mean: one act, or several one after the other. */
export interface Meant {
  readonly line: string;
  readonly acts: readonly ActMeant[];
}

export interface ActMeant {
  readonly command: Command;
  readonly at?: EpochMs;
  readonly stance: Stance;
}

export interface FaultyLine extends LineFault {
  /** From 1. */
  readonly number: number;
  readonly line: string;
}

/** Why it is none, and the piece of it that says so. */
export interface LineFault {
  readonly code: MisreadCode | RowFault;
  readonly token: string;
}

/** Why a row of a list of parts is none, besides what a line of its own would be misread for. */
export type RowFault = 'no-name' | 'named-twice' | 'digits-alone' | 'column-not-taken';

/** What a reader hands back instead of a command; the line's frame adds example and suggestions. */
export interface Fault extends Failed<MisreadCode> {
  readonly token?: { readonly text: string; readonly start: number; readonly end: number };
  readonly needs?: readonly Slot[];
  /** The setting whose value is needed. */
  readonly setting?: SettingName;
  readonly couldBe?: readonly string[];
  readonly limits?: Limits;
  /** A line that shows how, where the row's own would not. */
  readonly example?: string;
  /** Lines to try as suggestions; those that do not read are dropped. */
  readonly tries?: readonly string[];
}
