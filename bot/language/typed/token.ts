// One piece of a typed line: what it is, and its place in the line.

import type { TypedNumber } from './number-typed.ts';
import type { Quantity, Unit } from './units-typed.ts';

export interface Span {
  /** As typed. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

export type Token =
  /** `word`: in lower case and, for the small words, as the readers spell it: `horno` is `oven`. */
  | (Span & { readonly kind: 'word'; readonly word: string })
  | (Span & { readonly kind: 'quoted'; readonly words: string })
  | (Span & { readonly kind: 'number'; readonly number: TypedNumber; readonly countable: boolean })
  | (Span & { readonly kind: 'quantity'; readonly quantity: Quantity; readonly unit: Unit; readonly value: number })
  /** A quantity that can be read in more than one way. */
  | (Span & { readonly kind: 'doubt'; readonly is: Quantity['is']; readonly couldBe: readonly string[] })
  /** Below anything that exists in this unit: -1 kg. */
  | (Span & { readonly kind: 'impossible'; readonly is: Quantity['is']; readonly lowest: number; readonly unit: Unit });

export type Word = Extract<Token, { kind: 'word' }>;

/** As the readers spell it; empty where it is no word. */
export const wordIn = (token: Token | undefined): string => (token?.kind === 'word' ? token.word : '');

export type NumberToken = Extract<Token, { kind: 'number' }>;
export type QuantityToken = Extract<Token, { kind: 'quantity' }>;
