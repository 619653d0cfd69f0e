// How a message looks, for any platform: a card, in whose words, whom it mentions, and what stands under it. Kept as it was
// shown, so that it can be shown anew without its taps.

import { z } from 'zod';
import { known } from '../../core/known.ts';
import { type Card, cardText } from '../cards/card.ts';

export interface Look {
  readonly card: Card;
  readonly language: string;
  /** New at each showing, so that a tap names the showing that it was made on. */
  readonly showing: string;
  /** The platform's names of who is mentioned. */
  readonly mention?: readonly string[];
  /** Whoever is called reads first what to do; the figures follow. */
  readonly actFirst?: boolean;
  /** Under the card: who said it, what became of its taps. */
  readonly under?: readonly string[];
}

/** What is shown, and what is to be shown instead as soon as the platform takes it. */
export interface Kept {
  readonly look: Look;
  readonly wish?: Look;
  /** What it tells of beside its subject: it gives way with that, too. */
  readonly moved?: readonly string[];
}

/** Put there by this program, as it was sent. */
const KeptText = z.object({
  look: z.custom<Look>(isLook),
  wish: z.custom<Look>(isLook).optional(),
  moved: z.array(z.string()).optional(),
});

function isLook(read: unknown): boolean {
  return z.looseObject({ card: z.looseObject({ title: z.string(), actions: z.array(z.unknown()) }) }).safeParse(read)
    .success;
}

/** `undefined`: it was closed, or kept by an earlier build. */
export function keptIn(text: string): Kept | undefined {
  const kept = text === '' ? undefined : KeptText.safeParse(JSON.parse(text)).data;
  if (kept === undefined) return undefined;
  const { look, wish, moved } = kept;
  return { look, ...known({ wish, moved }) };
}

/** Equal where nobody sees a difference. */
export function faceOf({ card, mention = [], under = [] }: Look): string {
  return JSON.stringify([card.tone, cardText(card), mention, under]);
}

export const hasTaps = ({ card }: Look): boolean => card.actions.length > 0;

/** What became of its taps stands in their place. */
export const withoutTaps = (look: Look, outcome: string | undefined): Look => ({
  ...look,
  card: { ...look.card, actions: [] },
  under: [...(look.under ?? []), ...(outcome === undefined ? [] : [outcome])],
});

/** More lines under it, above its taps. */
export const withUnder = (look: Look, lines: readonly string[]): Look => ({
  ...look,
  under: [...(look.under ?? []), ...lines],
});
