// Everything that can be said: acts, which become events, and questions, which only read. What an act may hold is its row
// in core/verbs/. Quantities arrive in base units; which batch or part may be left out where only one can be meant.

import type { SubstanceId } from './calc/exposure-limits.ts';
import type { PurgeAsked } from './can/purge.ts';
import type { BatchNumber, PartName, PersonName, SheetId } from './ids.ts';
import type { Lift } from './lift-names.ts';
import type { Method } from './methods.ts';
import { isOwnKey, tableOf } from './own-key.ts';
import type { RecordQuestion } from './records/record-questions.ts';
import type { MaskSaid } from './session/mask.ts';
import type { VapourAsked, Work } from './session/session-commands.ts';
import type { EpochMs, Grams, Micrometres, PartsPerMillion, Percent, SquareMetres } from './units.ts';
import { acts, correctionVerbs } from './verbs/correction-verbs.ts';
import { crewVerbs } from './verbs/crew-verbs.ts';
import { sessionVerbs } from './verbs/session-verbs.ts';
import type { Field } from './verbs/slot.ts';
import { stepVerbs } from './verbs/step-verbs.ts';
import type { Topic } from './verbs/topics.ts';
import type { SaidOf, SlotOf, VerbRow } from './verbs/verb.ts';

const rows = { ...acts, ...crewVerbs, ...sessionVerbs, ...stepVerbs, ...correctionVerbs };
export type Rows = typeof rows;

export type Verb = keyof Rows;
export const isVerb = (name: string): name is Verb => isOwnKey(rows, name);
export const verbs: readonly Verb[] = Object.keys(rows).filter(isVerb);
/** One value for each verb. */
export const ofEachVerb = <T>(value: (verb: Verb) => T): Readonly<Record<Verb, T>> =>
  tableOf(verbs.map((verb) => [verb, value(verb)]));

/** Of all that an act can be told. */
export type SlotName = SlotOf<Rows[Verb]>;
export const verbRows: { readonly [V in Verb]: VerbRow<Readonly<Record<string, Field<unknown, SlotName>>>> } = rows;
export type Command = { [V in Verb]: { readonly verb: V } & SaidOf<Rows[V]> }[Verb];
export type CommandOf<V extends Verb> = Extract<Command, { verb: V }>;

/** Commands that may hold this field. */
export type CommandWith<Field extends string> = Extract<Command, { readonly [F in Field]?: unknown }>;

/** A decision counts from when it is given: no telling that it was already given makes one. */
export function isDecision({ verb }: Command): boolean {
  return verbRows[verb].options?.decision === true;
}

type Calling = { [V in Verb]: Rows[V] extends VerbRow<infer _, { calls: true }> ? V : never }[Verb];
/** Acts with a batch, or on one: which may be left out. */
export type BatchCommand = Exclude<CommandWith<'batch'>, { verb: Calling }>;

export function takesBatch(command: Command): command is BatchCommand {
  const { fields, options } = verbRows[command.verb];
  return fields.batch !== undefined && options?.calls !== true;
}

/** The command with this batch, where it takes one. */
export function withBatch(command: Command, batch: BatchNumber): Command {
  return takesBatch(command) ? { ...command, batch } : command;
}

/** The same of other parts, where it is done to parts; one each where it takes only one. */
export function withParts(command: Command, parts: readonly PartName[]): readonly Command[] {
  if ('parts' in command) return [{ ...command, parts }];
  if (command.verb === 'part' || !('part' in command)) return [];
  return parts.map((part) => ({ ...command, part }));
}

export type Question =
  | { readonly ask: 'day'; readonly day: DayAsked }
  | { readonly ask: 'now' }
  /** What whoever asks does next. */
  | { readonly ask: 'what-now' }
  /** Begun, or left: on a record apart. */
  | { readonly ask: 'practice' }
  | { readonly ask: 'practice-off' }
  | { readonly ask: 'stock' }
  /** The shop's own, with how their checks stand. */
  | { readonly ask: 'instruments' }
  | ({ readonly ask: 'plan' } & PlanAsked)
  | RecordQuestion
  | { readonly ask: 'vent'; readonly asked: VapourAsked }
  | { readonly ask: 'purge'; readonly asked: PurgeAsked }
  /** Left out: all that sprayers wear; the sheet of the open session, or the usual one. */
  | { readonly ask: 'mask'; readonly mask?: MaskSaid; readonly person?: PersonName; readonly sheet?: SheetId }
  /** How long a cartridge lasts; `humidity` left out: as it was last read. */
  | {
      readonly ask: 'cartridge';
      readonly breathed: readonly { readonly substance: SubstanceId; readonly ppm: PartsPerMillion }[];
      readonly humidity?: Percent;
      readonly isHard: boolean;
    }
  | { readonly ask: 'hazards'; readonly work: Work; readonly method?: Method }
  /** In the asker's own words; left out: of the last card. */
  /** `of`: what it names beside the figure. */
  | { readonly ask: 'why'; readonly about?: string; readonly of?: readonly ThingAsked[] }
  /** A word of the trade, by its key in the glossary. */
  | { readonly ask: 'what-is'; readonly term: string }
  /** Left out: what fits the moment. `group`: all of one group of lines, or of every one. */
  | { readonly ask: 'help'; readonly verb?: string; readonly group?: string; readonly rules?: true }
  | StateQuestion;

/** What a question is about, as it was named. Which of it there is is looked up where it is answered. */
export type ThingAsked =
  | { readonly is: 'number'; readonly number: number; readonly noun?: 'batch' | 'can' | 'session' }
  | { readonly is: 'name'; readonly name: string };

/** How things stand, asked in words. */
export type StateQuestion =
  /** What stands against an act; `said`: all of it was told. */
  | {
      readonly ask: 'can-i';
      readonly act: Verb;
      readonly said?: Command;
      readonly method?: Method;
      readonly of: readonly ThingAsked[];
    }
  /** `act`: the one that it is asked of: when it may be, whether it was, who did it. */
  | { readonly ask: 'how-long' | 'who-did'; readonly act?: Verb; readonly of: readonly ThingAsked[] }
  | { readonly ask: 'where-is' | 'how-hot' | 'to-do'; readonly of: readonly ThingAsked[] }
  /** `plan`: how much of it is to be mixed, by whichever method. */
  | { readonly ask: 'how-much'; readonly of: readonly ThingAsked[]; readonly plan?: Omit<PlanAsked, 'method'> }
  | { readonly ask: 'what-late' | 'at-risk' }
  | { readonly ask: 'went-wrong' }
  /** `mass`: to which the other part of the product is asked. */
  | { readonly ask: 'how-stands'; readonly topic: Topic; readonly of: readonly ThingAsked[]; readonly mass?: Grams };

export type PlannedParts =
  | { readonly count: number; readonly eachSquareMetres: SquareMetres }
  | { readonly part: PartName };

export interface PlanAsked {
  readonly parts: readonly PlannedParts[];
  readonly method: Method;
  /** Left out: the most of the sheet's range. */
  readonly dryFilmMicrometres?: Micrometres;
  readonly sheet?: SheetId;
  /** When the first batch is wanted, ready to apply. */
  readonly readyAt?: EpochMs;
}

export type DayAsked =
  | { readonly kind: 'today' }
  | { readonly kind: 'yesterday' }
  /** ISO, `2026-03-02`. */
  | { readonly kind: 'date'; readonly date: string };

/** How the speaker means it: asking before the act, telling after it, or with leave from somebody who may give it. */
export type Stance =
  | { readonly is: 'asked' }
  | { readonly is: 'happened' }
  /** `why`: all that was said. `lifts`: where it was told of what each reason is. */
  | { readonly is: 'permitted'; readonly why: string; readonly lifts?: readonly Lift[] };
