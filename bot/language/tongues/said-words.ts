// What people say in place of the verb that begins a strict line, and the words round it, by tongue. Phrases are parted by commas;
// articles, forms of "be" and "have", and names of parts, pots and cans that stand inside a phrase are passed over.

/** How the strict line of each begins. What needs something behind it is told where lines are made (`slots-heard/act-rows.ts`). */
export const saidActs = [
  ...(['mix', 'weigh', 'stir', 'stop', 'filter', 'thick', 'gel', 'empty', 'cover', 'uncover', 'catch'] as const),
  ...([
    'lid',
    'shut',
    'blanket',
    'prestir',
    'coat',
    'touch-up',
    'dry',
    'cure oven',
    'cure room',
    'cure',
    'out',
  ] as const),
  ...(['prep blasting', 'prep sanding', 'prep wiping', 'prep grease-off', 'prep old-coat-off'] as const),
  ...([
    'temp',
    'wet',
    'film',
    'adhesion',
    'release',
    'shipped',
    'hold',
    'rework',
    'scrap',
    'return customer',
    'return supplier',
    'concession',
    'prep',
    'surface',
    'air',
    'fan on',
    'fan off',
    'fan no',
  ] as const),
  ...([
    'supplied yes',
    'supplied no',
    'spray on',
    'spray off',
    'flush',
    'flush gun',
    'flush brush',
    'flush roller',
    'rags',
    'close',
    'ack',
  ] as const),
] as const;
export type SaidAct = (typeof saidActs)[number];
const all: ReadonlySet<string> = new Set(saidActs);
export const isSaidAct = (meaning: string): meaning is SaidAct => all.has(meaning);

/** Begins a line that asks for something to be done or noted, as a pattern, and the word for what it asks. */
export interface RequestSaid {
  readonly said: RegExp;
  readonly verb: string;
  /** Begins what it is asked for, which is no part of it: `para las seis piezas`. */
  readonly upTo?: RegExp;
  /** It orders: what it asks for is taken as it stands. */
  readonly isOrder?: true;
}

export type Acts = Readonly<Partial<Record<SaidAct, string>>>;

export interface SaidWords {
  /** What it is called besides the words of its verb. */
  readonly acts: () => Acts;
  /** A reading was taken: of what, its figure and its thing tell. */
  readonly readings: string;
  /** Passed over inside a phrase too. */
  readonly light: string;
  /** Round a sentence off: greetings, thanks, politeness. */
  readonly fillers: string;
  /** Before a time that something took: `for 5 minutes`. */
  readonly lasting: string;
  /** Of them, what greets or thanks. */
  readonly greetings: string;
  /** It is not so. */
  readonly denials: string;
  /** What a good film and a clean surface have none of, and the words before it: `no runs` denies nothing that was done. */
  readonly blemishes: string;
  readonly noneOf: string;
  /** Right before the part that a test is told of: `on the 7 gave 85`. */
  readonly beforePart: string;
  /** Whose film holds on clean steel, or breaks. */
  readonly water: string;
  /** It may not be so, or only if. */
  readonly hedges: string;
  /** It is still to come. */
  readonly plans: string;
  /** Words of soon, which beside what the speaker does themselves say that it is still to come: `ahorita la meto`. */
  readonly soon: string;
  readonly iDo: string;
  /** Before how long it will be until then: `in 5 minutes`. */
  readonly within: string;
  /** Words that ask wherever they stand. */
  readonly asks: string;
  /** Words that ask where they come first. */
  readonly asksFirst: string;
  /** Of these a line tells where a thing follows and by what it was done: `did 1 to 3 with the brush`. */
  readonly tellsFirst: string;
  readonly byWhat: string;
  /** Before what a coat came from. */
  readonly whence: string;
  /** Before `at` they say what was looked at, and no hour: `had a look at 9`. */
  readonly looks?: string;
  /** A pot by its size among those that there are. */
  readonly largest: string;
  readonly smallest: string;
  /** Who tells: behind them no word asks, `I have weighed`. */
  /** A word of its own by which what is told is still to come, as it is typed: `dejaré`. */
  readonly toCome?: RegExp;
  readonly tellers: string;
  /** Whom a line may ask about behind its first word: `did you`. */
  readonly somebody: string;
  /** A figure that nobody read to the digit. */
  readonly roughly: string;
  readonly requests: readonly RequestSaid[];
  /** What was named before. */
  readonly pronouns: string;
  /** Before the number of a part that is known by it: `the 8`, `la 8`. */
  readonly articles: string;
  /** In front of a pot only: what was taken from it. */
  readonly fromPot: string;
  /** Between a thing and what it is of: `the lid on 3`. */
  readonly beforeThing: string;
  /** Words besides acts and ways that a thumb slips on, where what it meant can still be told. */
  readonly slips: string;
  /** Words that dictation hears in place of an act's. */
  readonly heardAs: Readonly<Record<string, string>>;
  /** The same, only before a number: `patch two`. */
  readonly heardAsMark: Readonly<Record<string, string>>;
  /** Marks that are dictated by their names. */
  readonly marks: Readonly<Record<string, string>>;
  /** Between two acts. */
  readonly joints: string;
}

export const together = (one: Acts, other: Acts): Acts =>
  Object.fromEntries(
    saidActs.flatMap((act) => {
      const phrases = [other[act], one[act]].filter((each) => each !== undefined);
      return phrases.length === 0 ? [] : [[act, phrases.join(', ')] as const];
    }),
  );
