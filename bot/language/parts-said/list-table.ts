// The words by which several parts are told, of the tongues that are heard together.

import type { ListWords } from '../tongues/list-words.ts';
import { withoutAccents } from '../typed/without-accents.ts';

type Phrases = readonly (readonly string[])[];

export interface ListTable {
  /** The longest first. */
  readonly plurals: readonly string[];
  readonly and: Phrases;
  readonly to: Phrases;
  readonly articles: Phrases;
  readonly articlesOfMany: ReadonlySet<string>;
  readonly articlesOfEither: ReadonlySet<string>;
  readonly ofThem: Phrases;
  readonly counted: ReadonlySet<string>;
  readonly readings: ReadonlySet<string>;
  /** Single words for all of them: a number behind one says how many. */
  readonly all: ReadonlySet<string>;
  readonly asMuch: readonly { readonly before: string; readonly joint: string }[];
  readonly of: Phrases;
  readonly beside: Phrases;
  readonly ones: ReadonlySet<string>;
  readonly except: Phrases;
  readonly serials: ReadonlySet<string>;
  readonly jobs: ReadonlySet<string>;
  /** A word to the others that mean the same thing. */
  readonly nouns: ReadonlyMap<string, readonly string[]>;
  readonly sameFor: {
    readonly before: Phrases;
    readonly behind: Phrases;
    readonly samePot: Phrases;
    /** First words of those before, last words of those behind. */
    readonly begins: ReadonlySet<string>;
    readonly ends: ReadonlySet<string>;
  };
}

export function listTableOf(tongues: readonly ListWords[]): ListTable {
  const all = (of: (words: ListWords) => readonly string[]): readonly string[] => [...new Set(tongues.flatMap(of))];
  const phrases = (each: readonly string[]): Phrases => each.map((phrase) => withoutAccents(phrase).split(' '));
  const listed = (words: string): readonly string[] => words.split(', ');
  const before = phrases(all(({ sameFor }) => listed(sameFor.before)));
  const samePot = phrases(all(({ sameFor }) => listed(sameFor.samePot)));
  const behind = phrases(all(({ sameFor }) => listed(sameFor.behind)));
  return {
    plurals: all(({ plurals }) => plurals).toSorted((one, other) => other.length - one.length),
    and: phrases(all(({ and }) => and)),
    to: phrases(all(({ to }) => to)),
    articles: phrases(all(({ articles }) => articles)),
    articlesOfMany: new Set(all(({ articlesOfMany }) => articlesOfMany)),
    articlesOfEither: new Set(all(({ articlesOfEither = [] }) => articlesOfEither)),
    counted: new Set(all(({ counted, readings }) => [...counted, ...readings])),
    readings: new Set(all(({ readings }) => readings)),
    ofThem: phrases(all(({ ofThem }) => ofThem)),
    all: new Set(all(({ many }) => listed(many.all)).filter((phrase) => !phrase.includes(' '))),
    asMuch: tongues.flatMap(({ asMuch }) => asMuch ?? []),
    of: phrases(all(({ of }) => of)),
    beside: phrases(all(({ beside }) => beside)).toSorted((one, other) => other.length - one.length),
    ones: new Set(all(({ ones }) => ones)),
    except: phrases(all(({ except }) => except)),
    serials: new Set(all(({ serials }) => serials)),
    jobs: new Set(all(({ jobs }) => jobs)),
    nouns: nounsOf(tongues),
    sameFor: {
      ...{ before, behind, samePot },
      begins: new Set(before.flatMap(([first]) => first ?? [])),
      ends: new Set([...behind, ...samePot].flatMap((phrase) => phrase.at(-1) ?? [])),
    },
  };
}

function nounsOf(tongues: readonly ListWords[]): ListTable['nouns'] {
  const alike = new Map<string, Set<string>>();
  for (const { nouns } of tongues) {
    for (const [thing, words] of Object.entries(nouns)) {
      alike.set(thing, new Set([thing, ...(alike.get(thing) ?? []), ...words.split(' ')]));
    }
  }
  const pairs = [...alike.values()].flatMap((words) =>
    [...words].map((word) => [word, [...words].filter((other) => other !== word)] as const),
  );
  return new Map(pairs);
}
