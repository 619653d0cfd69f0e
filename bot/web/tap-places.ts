// Where on the page a tap stands, and how what stands there had moved when it was pressed. What runs is drawn anew under the
// thumb; the cards of the conversation stay as they were, and are older ones once more was recorded.

import { z } from 'zod';
import type { Board } from '../cards/board.ts';
import { inUnitsOf } from '../cards/card-context.ts';
import { type Moved, movedUnderForm, type Pressed, type Said } from '../talk/pressed.ts';
import type { Conversation } from './conversation.ts';
import type { Viewer } from './html/viewer.ts';
import type { SayForm } from './say-form.ts';

export const tilePlace = (item: string, button: number): string => `t${item}-${button}`;
export const postPlace = (n: number, button: number): string => `p${n}-${button}`;

const Was = z.object({ label: z.string().min(1).max(200), line: z.string().min(1).max(500) });

type Tap = SayForm & { readonly label: string; readonly place: string };

/** What is typed is meant as it is, and so is what can be started from nothing: it stands on no card, and is never drawn anew. */
export function isTap(form: SayForm): form is Tap {
  return form.label !== undefined && form.place !== undefined && !form.place.startsWith('q');
}

/** `board`: as it is now; without one a tile is taken for an older one. */
export function pressedOn(
  form: Tap,
  board: Board | undefined,
  conversation: Pick<Conversation, 'hasMovedOn'>,
  { units }: Pick<Viewer, 'units'>,
): Pressed {
  const { label, place, line, was } = form;
  const shown = (tap: Said): Said => ({ label: tap.label, line: inUnitsOf(tap.line, units) });
  const tiles = (board?.items ?? []).flatMap(({ id, taps, lastAct }) =>
    taps.map((tap, i) => ({ place: tilePlace(id, i), lastAct, ...shown(tap) })),
  );
  const before = was === undefined ? undefined : readWas(was);
  if (before !== undefined && before.line !== line) {
    const offered = tiles.some((tile) => tile.line === before.line);
    return { label, moved: { is: 'under-the-thumb', before, offered } };
  }
  const moved = place.startsWith('p') ? onPost(place, conversation) : onTile(tiles, form);
  return { label, moved: form.fields.size > 0 ? movedUnderForm(moved) : moved };
}

type Tile = Said & { readonly place: string; readonly lastAct: number | undefined };

/** A form that is being filled in stays as it was drawn: its tap may stand there still, with more behind it. */
function onTile(tiles: readonly Tile[], { place, line, lastAct }: SayForm): Moved {
  if (place?.startsWith('t') !== true) return { is: 'not' };
  const now = tiles.find((tile) => tile.place === place);
  if (now?.line === line) return now.lastAct === lastAct ? { is: 'not' } : { is: 'older', now: undefined };
  return { is: 'older', now: now === undefined ? undefined : { label: now.label, line: now.line } };
}

function onPost(place: string, { hasMovedOn }: Pick<Conversation, 'hasMovedOn'>): Moved {
  return hasMovedOn(Number(/^p(\d+)-/.exec(place)?.[1] ?? Number.NaN))
    ? { is: 'older', now: undefined }
    : { is: 'not' };
}

function readWas(text: string): Said | undefined {
  try {
    return Was.safeParse(JSON.parse(text)).data;
  } catch {
    return undefined;
  }
}
