// The tables that most lines are read without, of the tongues that are heard together: each is made when a line first needs it.

import { type LabelTable, labelTableOf } from './labels/label-table.ts';
import type { ListTable } from './parts-said/list-table.ts';
import { type OtherwiseTable, otherwiseTableOf } from './said-of-last/otherwise-table.ts';
import { type Sayings, sayingsIn } from './sayings/sayings.ts';
import { type PassedOver, rootsOf } from './sayings/signs.ts';
import { type SignsCounted, signsCounted } from './sayings/signs-counted.ts';
import { type Weigher, weigherOf } from './sayings/weigher.ts';
import { type SaidTable, saidTableOf } from './slots-heard/said-table.ts';
import {
  type AskedMeaning,
  askedMeanings,
  asksMeaning,
  isAsks,
  type SaidMeaning,
  type SaidOrAsked,
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
  /** Whether words stand beside what is told, tell it, or tell that it is not so. */
  readonly asideWeighed: Weigher<'aside' | 'told' | 'nothing'>;
  /** The roots that asides begin with. */
  readonly asidesBegin: ReadonlySet<string>;
  /** What leads in to what is told, by the roots of its words. */
  readonly leadsIn: ReadonlySet<string>;
}

/** Sayings of acts and requests, of each question, of putting right what was said, and of what stands beside it. */
type Kind = SaidOrAsked | 'otherwise' | 'aside';
const kinds: readonly Kind[] = [...saidOrAsked, 'otherwise', 'aside'];
const isSaying = (kind: Kind): kind is SaidOrAsked => kind !== 'otherwise' && kind !== 'aside';

interface Counted {
  /** By tongue. */
  readonly signs: readonly SignsCounted<Kind>[];
  readonly passedOver: PassedOver;
}

export function tablesOf(tongues: readonly Typed[]): Tables {
  const made: { -readonly [Name in keyof Tables]?: Tables[Name] } = {};
  let counted: Counted | undefined;
  const weigher = <Meaning extends string>(said: SaidTable, meaningOf: (kind: Kind) => Meaning | undefined) => {
    counted ??= countedOf(tongues, said);
    return weigherOf(counted.signs, meaningOf, counted.passedOver);
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
      made.weighed ??= weigher(this.said, (kind) => (isAsks(kind) ? 'asking' : isSaying(kind) ? kind : undefined));
      return made.weighed;
    },
    get askedWeighed() {
      made.askedWeighed ??= weigher(this.said, (kind) => askedOf.get(kind));
      return made.askedWeighed;
    },
    get saidOrAsked() {
      made.saidOrAsked ??= weigher(this.said, (kind) => (isSaying(kind) ? kind : undefined));
      return made.saidOrAsked;
    },
    get otherwiseWeighed() {
      made.otherwiseWeighed ??= weigher(this.said, (kind) =>
        kind === 'otherwise' ? 'otherwise' : isAsks(kind) || kind === 'aside' ? undefined : 'afresh',
      );
      return made.otherwiseWeighed;
    },
    get asideWeighed() {
      made.asideWeighed ??= weigher(this.said, (kind) =>
        kind === 'aside' || kind === 'nothing' ? kind : kind === 'otherwise' ? undefined : 'told',
      );
      return made.asideWeighed;
    },
    get asidesBegin() {
      made.asidesBegin ??= new Set(
        tongues.flatMap(({ asides }) => sayingsIn(asides).flatMap((one) => rootsOf(one).slice(0, 1))),
      );
      return made.asidesBegin;
    },
    get leadsIn() {
      made.leadsIn ??= new Set(
        tongues.flatMap(({ leadingIn }) => sayingsIn(leadingIn).map((one) => rootsOf(one).join(' '))),
      );
      return made.leadsIn;
    },
  };
}

function countedOf(tongues: readonly Typed[], { light, lists }: SaidTable): Counted {
  const passedOver = { light, names: namesOf(lists) };
  const signs = tongues.map(({ sayings, askings, corrections, asides }) =>
    signsCounted<Kind>(
      [...sayings, ...askings.map(eachAsking), { otherwise: corrections, aside: asides }],
      kinds,
      passedOver,
    ),
  );
  return { signs, passedOver };
}

const askedOf: ReadonlyMap<Kind, AskedMeaning> = new Map(
  askedMeanings.map((meaning) => [asksMeaning(meaning), meaning]),
);

const eachAsking = (askings: Sayings<AskedMeaning>): Sayings<Kind> =>
  Object.fromEntries(askedMeanings.map((meaning) => [asksMeaning(meaning), askings[meaning] ?? '']));

/** `flange`, `flanges`. */
const namesOf = ({ nouns, plurals }: ListTable): ReadonlySet<string> =>
  new Set([...nouns.keys()].flatMap((noun) => [noun, ...plurals.map((end) => noun + end)]));
