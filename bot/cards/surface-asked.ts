// What the sheet and the job ask of a part's steel, on cards and paper: said before it is prepared, asked where less was named,
// and told with what nobody gave.

import type { PartName } from '../../core/ids.ts';
import type { Part } from '../../core/part/part.ts';
import { sheetsAtHand } from '../../core/part/surface-life.ts';
import { figuresAsked, isGiven, surfaceAsked } from '../../core/part/surface-limits.ts';
import { isFirstWiping, removalAsked, removalToSay, stillOn } from '../../core/part/surface-removed.ts';
import { batchOf, liveBatches } from '../../core/shop.ts';
import { saidBeforeCleaning } from '../../core/steps/steps-said.ts';
import type { CardAction } from './card.ts';
import type { Telling } from './card-context.ts';
import { saidLines } from './step-lines.ts';

/** That of the pot in use, else the usual one. */
const sheetLikely = ({ shop }: Telling) => liveBatches(shop).at(-1)?.sheet ?? sheetsAtHand(shop)[0];

export function toRemoveLines(telling: Telling, parts: readonly Part[]): readonly string[] {
  const sheet = sheetLikely(telling);
  const what = sheet === undefined ? [] : removalToSay(telling.shop, parts, sheet);
  if (sheet === undefined || what.length === 0) return [];
  return [
    telling.words.parts.toRemove(what, sheet.name, telling.figures),
    ...saidLines(telling, saidBeforeCleaning(sheet)),
  ];
}

/** What to wear for the wiping, where no card of a part that was noted has said it. */
export function wipingLines(telling: Telling, named: readonly PartName[]): readonly string[] {
  const sheet = sheetLikely(telling);
  const isUnsaid = sheet !== undefined && isFirstWiping(telling.shop, named);
  return isUnsaid ? saidLines(telling, saidBeforeCleaning(sheet)) : [];
}

/** One question with its tap, or nothing. */
export function removalQuestion(
  telling: Telling,
  part: Part,
  { by, parts }: { readonly by: string; readonly parts: readonly string[] },
): { readonly lines: readonly string[]; readonly actions: readonly CardAction[] } {
  const sheet = sheetLikely(telling);
  const what =
    sheet === undefined ? [] : removalAsked(telling.shop, part, sheet, { by, at: telling.now, named: parts });
  if (sheet === undefined || what.length === 0) return { lines: [], actions: [] };
  const { offToo, offTooTap } = telling.words.parts;
  const off = what.map((each) => `${each}-off`).join(' ');
  const line = `prep ${part.name} ${off}`;
  return {
    lines: [offToo(what, sheet.name, telling.figures)],
    actions: [{ id: 'off-too', label: offTooTap(what, telling.figures), line, bare: ['yes'] }],
  };
}

/** How the steel was prepared, and what of all that is asked nobody gave. */
export function surfaceOnPaper(telling: Telling, part: Part): string {
  const { parts } = telling.words;
  const { prepared } = part;
  const sheet = batchOf(telling.shop, part)?.sheet ?? sheetLikely(telling);
  const at = part.coats.at(-1)?.at ?? telling.now;
  const asked = sheet === undefined ? [] : surfaceAsked(telling.shop, part, sheet, at);
  const figures = new Set(asked.flatMap(({ limits }) => figuresAsked(limits)));
  const missing = [
    ...(sheet === undefined ? [] : stillOn(sheet, prepared ?? {})).flatMap((each) => parts.contaminants[each]),
    ...[...figures].filter((of) => !isGiven(prepared, of)).map((of) => parts.figureNames[of]),
  ];
  const how = prepared === undefined ? '' : parts.preparation(prepared, telling.figures);
  return parts.onPaper(how === '' && missing.length === 0 ? parts.notGiven : how, missing, telling.figures);
}
