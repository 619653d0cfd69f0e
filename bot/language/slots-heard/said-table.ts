// The phrases of the tongues that are heard together, each with what it says, for quick finding by its first word.

import { type SaidAct, saidActs } from '../tongues/said-words.ts';
import type { Typed } from '../tongues/typed.ts';
import { withoutAccents } from '../typed/without-accents.ts';

/** The kinds of words that stand round an act. */
export type Tells = 'reading' | 'denial' | 'hedge' | 'plan' | 'ask' | 'roughly' | 'pronoun' | 'filler';
export type Says = { readonly is: 'act'; readonly act: SaidAct } | { readonly is: Tells };

export interface Phrase {
  readonly words: readonly string[];
  readonly says: Says;
}

export interface SaidTable {
  /** The longest first. */
  readonly byFirst: ReadonlyMap<string, readonly Phrase[]>;
  /** Acts of one word, for slips of the thumb. */
  readonly actWords: readonly string[];
  readonly light: ReadonlySet<string>;
  readonly fromPot: ReadonlySet<string>;
  readonly heardAs: ReadonlyMap<string, string>;
  readonly marks: ReadonlyMap<string, string>;
  readonly asksFirst: readonly (readonly string[])[];
  readonly requests: readonly { readonly said: RegExp; readonly verb: string }[];
  readonly articles: ReadonlySet<string>;
  readonly ranges: ReadonlySet<string>;
  readonly joints: ReadonlySet<string>;
  readonly pots: ReadonlySet<string>;
  readonly cans: ReadonlySet<string>;
}

/** Their verbs, `close` and `clean`, say something else inside a sentence. */
const wordsSayOther: ReadonlySet<SaidAct> = new Set(['close', 'ack', 'flush', 'rags']);

const listed = (phrases: string): readonly string[] =>
  withoutAccents(phrases)
    .split(',')
    .map((phrase) => phrase.trim())
    .filter((phrase) => phrase !== '');

export function saidTableOf(tongues: readonly Typed[]): SaidTable {
  const byFirst = new Map<string, Phrase[]>();
  const add = (says: Says, phrases: string): void => {
    for (const phrase of listed(phrases)) {
      const words = phrase.split(' ');
      const first = words[0] ?? '';
      const others = byFirst.get(first) ?? [];
      // The first that claims a phrase has it: acts before what denies them, that before what only rounds off.
      const isThere = others.some((other) => other.words.join(' ') === phrase);
      if (!isThere) byFirst.set(first, [...others, { words, says }]);
    }
  };
  for (const { said, verbs } of tongues) {
    for (const act of saidActs) {
      add({ is: 'act', act }, said.acts[act] ?? '');
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
    add({ is: 'filler' }, said.fillers);
  }
  for (const phrases of byFirst.values()) phrases.sort((one, other) => other.words.length - one.words.length);
  const all = (of: (tongue: Typed) => readonly string[]): ReadonlySet<string> => new Set(tongues.flatMap(of));
  return {
    byFirst,
    actWords: [...byFirst.values()].flatMap((phrases) =>
      phrases.flatMap(({ words, says }) => (says.is === 'act' && words.length === 1 ? words : [])),
    ),
    light: all(({ said }) => listed(said.light)),
    asksFirst: tongues.flatMap(({ said }) => listed(said.asksFirst).map((phrase) => phrase.split(' '))),
    requests: tongues.flatMap(({ said }) => said.requests),
    articles: all(({ said }) => listed(said.articles)),
    fromPot: all(({ said }) => listed(said.fromPot)),
    marks: new Map(tongues.flatMap(({ said }) => Object.entries(said.marks))),
    heardAs: new Map(tongues.flatMap(({ said }) => Object.entries(said.heardAs))),
    ranges: all(({ said }) => listed(said.ranges)),
    joints: all(({ said }) => listed(said.joints)),
    pots: all(({ pots }) => withoutAccents(pots).split(' ')),
    cans: all(({ cans }) => withoutAccents(cans).split(' ')),
  };
}
