// How the speakers of a tongue ask why, by the keys that the readers know; patterns of lower case without accents.

/** What a why is about, where it names no figure as it is shown. */
export const whyTopics = [
  'gas-needed',
  'oven-heat',
  'touch-up',
  'recoat',
  'surface',
  'ratio',
  'spread',
  'dew-point',
  'cure',
  'flash',
  'pot-life',
  /** Weaker words for a cure. */
  'hour',
  'blend',
  'film',
  'air',
] as const;
export type WhyTopic = (typeof whyTopics)[number];

export interface WhyTyped {
  /** It asks why in other words than `why`; what it is about is the first group, where there is one. */
  readonly said: readonly RegExp[];
  /** It asks how something is done: what, is the first group; the second, only where an act stands first in it. */
  readonly howTo: RegExp;
  /** The word itself, with what stands before it. */
  readonly word: RegExp;
  /** Behind `why`: it asks what stands against an act. What stands in its place asks whether it may be. */
  readonly not: RegExp;
  readonly may: string;
  /** An hour or a figure with its unit, anywhere in it. */
  readonly figure: RegExp;
  /** It asks what a word means: the first group. */
  readonly defines: readonly RegExp[];
  readonly topics: Readonly<Record<WhyTopic, RegExp>>;
}
