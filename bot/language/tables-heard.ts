// The tables that most lines are read without, of the tongues that are heard together: each is made when a line first needs it.

import { type LabelTable, labelTableOf } from './labels/label-table.ts';
import type { ListTable } from './parts-said/list-table.ts';
import { type OtherwiseTable, otherwiseTableOf } from './said-of-last/otherwise-table.ts';
import type { PassedOver } from './sayings/signs.ts';
import { type Sayings, type Weigher, weigherOf } from './sayings/weigher.ts';
import { type SaidTable, saidTableOf } from './slots-heard/said-table.ts';
import {
  type AskedMeaning,
  askedMeanings,
  asksMeaning,
  type SaidMeaning,
  type SaidOrAsked,
  saidMeanings,
  saidOrAsked,
} from './tongues/sayings-typed.ts';
import type { Typed } from './tongues/typed.ts';

export interface Tables {
  /** How acts are said in other words. */
  readonly said: SaidTable;
  /** How what was said or asked last is answered and put right. */
  readonly otherwise: OtherwiseTable;
  /** What stands on a can. */
  readonly labelled: LabelTable;
  /** What words speak for, by the sayings of every tongue. */
  readonly weighed: Weigher<SaidMeaning>;
  /** The same of what is asked, of a line that asks. */
  readonly askedWeighed: Weigher<AskedMeaning>;
  /** All of both: what is asked counts one by one, each as much as an act, so that a few words of one question tell that it asks. */
  readonly saidOrAsked: Weigher<SaidOrAsked>;
  /** Whether what was said last is put right, or something is said afresh. */
  readonly otherwiseWeighed: Weigher<'otherwise' | 'afresh'>;
}

export function tablesOf(tongues: readonly Typed[]): Tables {
  const made: { -readonly [Name in keyof Tables]?: Tables[Name] } = {};
  let passed: PassedOver | undefined;
  const passedOver = ({ light, lists }: SaidTable): PassedOver => {
    passed ??= { light, names: namesOf(lists) };
    return passed;
  };
  return {
    get said() {
      made.said ??= saidTableOf(tongues);
      return made.said;
    },
    get otherwise() {
      made.otherwise ??= otherwiseTableOf(tongues);
      return made.otherwise;
    },
    get labelled() {
      made.labelled ??= labelTableOf(tongues);
      return made.labelled;
    },
    get weighed() {
      made.weighed ??= weigherOf(
        tongues.flatMap(({ sayings, askings }) => [...sayings, ...askings.map(anyAsking)]),
        saidMeanings,
        passedOver(this.said),
      );
      return made.weighed;
    },
    get askedWeighed() {
      made.askedWeighed ??= weigherOf(
        tongues.flatMap(({ askings }) => askings),
        askedMeanings,
        passedOver(this.said),
      );
      return made.askedWeighed;
    },
    get saidOrAsked() {
      made.saidOrAsked ??= weigherOf(
        tongues.flatMap(({ sayings, askings }) => [...sayings, ...askings.map(eachAsking)]),
        saidOrAsked,
        passedOver(this.said),
      );
      return made.saidOrAsked;
    },
    get otherwiseWeighed() {
      made.otherwiseWeighed ??= weigherOf(
        tongues.flatMap(({ sayings, corrections }) => [{ otherwise: corrections }, saidAfresh(sayings)]),
        ['otherwise', 'afresh'],
        passedOver(this.said),
      );
      return made.otherwiseWeighed;
    },
  };
}

const saidAfresh = (sayings: readonly Sayings<SaidMeaning>[]): Sayings<'otherwise' | 'afresh'> => ({
  afresh: sayings.flatMap((each) => Object.values(each)).join('\n'),
});

const anyAsking = (askings: Sayings<AskedMeaning>): Sayings<SaidMeaning> => ({
  asking: Object.values(askings).join('\n'),
});

const eachAsking = (askings: Sayings<AskedMeaning>): Sayings<SaidOrAsked> =>
  Object.fromEntries(askedMeanings.map((meaning) => [asksMeaning(meaning), askings[meaning] ?? '']));

/** `flange`, `flanges`. */
const namesOf = ({ nouns, plurals }: ListTable): ReadonlySet<string> =>
  new Set([...nouns.keys()].flatMap((noun) => [noun, ...plurals.map((end) => noun + end)]));
