// The phrases of the tongues that are heard together, each with what it says, for quick finding by its first word.

import { type ListTable, listTableOf } from '../parts-said/list-table.ts';
import { type Many, manies } from '../tongues/list-words.ts';
import { type RequestSaid, type SaidAct, saidActs } from '../tongues/said-words.ts';
import type { Typed } from '../tongues/typed.ts';
import { withoutAccents } from '../typed/without-accents.ts';

/** The kinds of words that stand round an act. */
export type Tells = 'reading' | 'denial' | 'hedge' | 'plan' | 'ask' | 'roughly' | 'pronoun' | 'filler';
export type Says =
  | { readonly is: 'act'; readonly act: SaidAct }
  | { readonly is: 'many'; readonly many: Many }
  | { readonly is: Tells };

export interface Phrase {
  readonly words: readonly string[];
  readonly says: Says;
}

export interface SaidTable {
  /** The longest first. */
  readonly byFirst: ReadonlyMap<string, readonly Phrase[]>;
  /** Words that a slip of the thumb may have been, by their length. */
  readonly slipWords: ReadonlyMap<number, readonly string[]>;
  /** Words that deny, doubt or plan, by their letters: two that swap places make no other word of them. */
  readonly unsaidByLetters: ReadonlyMap<string, string>;
  readonly light: ReadonlySet<string>;
  /** `no dust`, `sin descuelgues`: what is as it should be. */
  readonly clean: ReadonlySet<string>;
  readonly greetings: ReadonlySet<string>;
  readonly lasting: ReadonlySet<string>;
  readonly fromPot: ReadonlySet<string>;
  /** `the lid on 3`: between a thing and what it is of. */
  readonly beforeThing: ReadonlySet<string>;
  readonly heardAs: ReadonlyMap<string, string>;
  readonly heardAsMark: ReadonlyMap<string, string>;
  /** Units of several words, and the same in short. */
  readonly inShort: {
    readonly units: ReadonlyMap<string, string>;
    readonly byFirst: ReadonlyMap<string, readonly string[]>;
  };
  readonly marks: ReadonlyMap<string, string>;
  readonly asksFirst: readonly (readonly string[])[];
  /** The longest first. */
  readonly soon: readonly (readonly string[])[];
  readonly iDo: ReadonlySet<string>;
  readonly within: ReadonlySet<string>;
  readonly pronouns: ReadonlySet<string>;
  readonly toCome: readonly RegExp[];
  readonly tellers: ReadonlySet<string>;
  readonly somebody: ReadonlySet<string>;
  readonly whence: ReadonlySet<string>;
  readonly looks: ReadonlySet<string>;
  readonly none: ReadonlySet<string>;
  /** Small words right before a part that a test is told of. */
  readonly beforePart: ReadonlySet<string>;
  readonly water: ReadonlySet<string>;
  readonly largest: ReadonlySet<string>;
  readonly smallest: ReadonlySet<string>;
  readonly tellsFirst: ReadonlySet<string>;
  readonly byWhat: ReadonlySet<string>;
  readonly requests: readonly RequestSaid[];
  readonly articles: ReadonlySet<string>;
  readonly lists: ListTable;
  readonly joints: ReadonlySet<string>;
  readonly pots: ReadonlySet<string>;
  readonly cans: ReadonlySet<string>;
}

/** Their verbs, `close` and `clean`, say something else inside a sentence. */
const wordsSayOther: ReadonlySet<SaidAct> = new Set(['close', 'ack', 'flush', 'rags']);

const listed = (phrases: string): readonly string[] =>
  withoutAccents(phrases)
    .split(',')
    .map((phrase) => phrase.trim().replaceAll(/n't\b/g, 'nt'))
    .filter((phrase) => phrase !== '');

export function saidTableOf(tongues: readonly Typed[]): SaidTable {
  const byFirst = new Map<string, Phrase[]>();
  const claimed = new Set<string>();
  const add = (says: Says, phrases: string): void => {
    for (const phrase of listed(phrases)) {
      // The first that claims a phrase has it: acts before what denies them, that before what only rounds off.
      if (claimed.has(phrase)) continue;
      claimed.add(phrase);
      const words = phrase.split(' ');
      const first = words[0] ?? '';
      const others = byFirst.get(first);
      if (others === undefined) byFirst.set(first, [{ words, says }]);
      else others.push({ words, says });
    }
  };
  for (const { said, verbs } of tongues) {
    const acts = said.acts();
    for (const act of saidActs) {
      add({ is: 'act', act }, acts[act] ?? '');
      const row = Object.entries(verbs).find(([name]) => name === act);
      if (row !== undefined && !wordsSayOther.has(act)) add({ is: 'act', act }, row[1].words.join(','));
    }
  }
  for (const { said } of tongues) {
    add({ is: 'denial' }, said.denials);
    add({ is: 'hedge' }, said.hedges);
    add({ is: 'plan' }, said.plans);
    add({ is: 'ask' }, said.asks);
    add({ is: 'roughly' }, said.roughly);
    add({ is: 'reading' }, said.readings);
    add({ is: 'pronoun' }, said.pronouns);
  }
  for (const { said, lists } of tongues) {
    for (const many of manies) add({ is: 'many', many }, lists.many[many]);
    add({ is: 'filler' }, said.fillers);
    add({ is: 'filler' }, cleanOf(said).join());
  }
  for (const phrases of byFirst.values()) phrases.sort((one, other) => other.words.length - one.words.length);
  const all = (of: (tongue: Typed) => readonly string[]): ReadonlySet<string> => new Set(tongues.flatMap(of));
  return {
    byFirst,
    slipWords: slipWordsOf(byFirst, tongues),
    unsaidByLetters: new Map(
      [...byFirst.values()].flatMap((phrases) =>
        phrases.flatMap(({ words: [word = ''], says }) =>
          says.is === 'denial' || says.is === 'hedge' || says.is === 'plan' ? [[lettersOf(word), word] as const] : [],
        ),
      ),
    ),
    ...wordsSaid(tongues),
    clean: all(({ said }) => cleanOf(said)),
    asksFirst: tongues.flatMap(({ said }) => listed(said.asksFirst).map((phrase) => phrase.split(' '))),
    soon: tongues
      .flatMap(({ said }) => listed(said.soon).map((phrase) => phrase.split(' ')))
      .toSorted((one, other) => other.length - one.length),
    requests: tongues.flatMap(({ said }) => said.requests),
    marks: new Map(tongues.flatMap(({ said }) => Object.entries(said.marks))),
    heardAs: new Map(tongues.flatMap(({ said }) => Object.entries(said.heardAs))),
    lists: listTableOf(tongues.map(({ lists }) => lists)),
    heardAsMark: new Map(tongues.flatMap(({ said }) => Object.entries(said.heardAsMark))),
    inShort: inShortOf(tongues),
    pots: all(({ pots }) => withoutAccents(pots).split(' ')),
    cans: all(({ cans }) => withoutAccents(cans).split(' ')),
  };
}

const cleanOf = ({ noneOf, blemishes }: Typed['said']): readonly string[] =>
  listed(noneOf).flatMap((none) => listed(blemishes).map((blemish) => `${none} ${blemish}`));

function wordsSaid(tongues: readonly Typed[]) {
  const all = (of: (said: Typed['said']) => string): ReadonlySet<string> =>
    new Set(tongues.flatMap(({ said }) => listed(of(said))));
  return {
    light: all((said) => said.light),
    iDo: all((said) => said.iDo),
    within: all((said) => said.within),
    pronouns: all((said) => said.pronouns),
    lasting: all((said) => said.lasting),
    greetings: all((said) => said.greetings),
    toCome: tongues.flatMap(({ said }) => said.toCome ?? []),
    tellers: all((said) => said.tellers),
    somebody: all((said) => said.somebody),
    whence: all((said) => said.whence),
    looks: all((said) => said.looks ?? ''),
    none: all((said) => said.noneOf),
    beforePart: all((said) => said.beforePart),
    water: all((said) => said.water),
    largest: all((said) => said.largest),
    smallest: all((said) => said.smallest),
    tellsFirst: all((said) => said.tellsFirst),
    byWhat: all((said) => said.byWhat),
    articles: all((said) => said.articles),
    fromPot: all((said) => said.fromPot),
    beforeThing: all((said) => said.beforeThing),
    joints: all((said) => said.joints),
  };
}

/** Shorter ones are near to every other word. */
const fewestLetters = 3;

export const lettersOf = (word: string): string => [...word].sort().join('');

function slipWordsOf(byFirst: SaidTable['byFirst'], tongues: readonly Typed[]): SaidTable['slipWords'] {
  const ofActs = [...byFirst.values()].flatMap((phrases) =>
    phrases.flatMap(({ words, says }) => (says.is === 'act' && words.length === 1 ? words : [])),
  );
  const ofThings = tongues.flatMap(({ methods, pots, cans, said }) =>
    [...Object.values(methods).map(({ typed }) => typed), pots, cans, said.slips].flatMap((words) =>
      withoutAccents(words).split(' '),
    ),
  );
  const byLength = new Map<number, string[]>();
  for (const word of new Set([...ofActs, ...ofThings])) {
    if (word.length < fewestLetters) continue;
    const all = byLength.get(word.length);
    if (all === undefined) byLength.set(word.length, [word]);
    else all.push(word);
  }
  return byLength;
}

function inShortOf(tongues: readonly Typed[]): SaidTable['inShort'] {
  const units = new Map(tongues.flatMap(({ numbers }) => Object.entries(numbers.spoken.inShort)));
  const byFirst = new Map<string, readonly string[]>();
  for (const phrase of units.keys()) {
    const [first = ''] = phrase.split(' ');
    byFirst.set(first, [...(byFirst.get(first) ?? []), phrase]);
  }
  return { units, byFirst };
}
