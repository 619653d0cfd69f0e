// What a respirator is worth for spraying: its factor with the source, what it allows for the sheet's solvents, and what it is never
// worn for. An answer, and nothing is recorded by it.

import type { Question } from '../../core/commands.ts';
import { isFailed } from '../../core/failed.ts';
import {
  type Breathed,
  factorOfNiosh,
  isPurifying,
  judgedMask,
  type Mask,
  maskOf,
  usesOf,
  usualMasks,
} from '../../core/session/mask.ts';
import { fanGives } from '../../core/session/session-air.ts';
import { sprayCase } from '../../core/session/session-decide.ts';
import { needOf } from '../../core/session/spray-case.ts';
import { openSessions, sheetFor } from '../../core/shop.ts';
import { type Card, makeCard } from './card.ts';
import type { Telling } from './card-context.ts';
import { cartridgeCard } from './cartridge-card.ts';
import { cautionLines } from './caution.ts';

/** What is worn, and how long its cartridge lasts. */
export const maskAnswer = (telling: Telling, asked: Extract<Question, { ask: 'mask' | 'cartridge' }>): Card =>
  asked.ask === 'mask' ? maskCard(telling, asked) : cartridgeCard(telling, asked);

function maskCard(telling: Telling, asked: Extract<Question, { ask: 'mask' }>): Card {
  const { shop, figures } = telling;
  const words = telling.words.session.mask;
  const session = openSessions(shop).at(-1);
  const found = asked.sheet === undefined && session !== undefined ? session.sheet : sheetFor(shop, asked.sheet);
  if (isFailed(found)) {
    return makeCard(telling.words.replies.notClear, 'warn', { lines: [telling.words.unclear(found.failed, figures)] });
  }
  const breathed = breathedThere(telling, found);
  const mask = maskOf(asked.mask ?? {});
  const masks = mask === undefined ? usualMasks : [mask];
  const judged = masks.map((mask) => judgedMask(mask, breathed));
  const isNever = judged.every(({ never, enough, factor }) => never !== undefined || enough === false || !factor);
  const isCartridge = judged.some(({ mask, never }) => isPurifying(mask) && never === undefined);
  const tone = isNever ? 'stop' : breathed.timesLimit === undefined ? 'warn' : 'plain';
  return makeCard(words.title(found.name), tone, {
    lines: [
      ...judged.map((each) => words.judged(each, figures)),
      ...(mask === undefined ? [] : usesLines(telling, mask, judged[0]?.factor, breathed)),
      ...nioshLine(telling, mask),
      words.concentration(breathed.timesLimit, session?.place, figures),
      ...(isCartridge ? [words.changeOut, words.mist, words.restsOn] : []),
      ...(asked.person === undefined ? [] : [fitLine(telling, asked.person)]),
      ...cautionLines(telling),
    ],
    hazards: [{ text: words.factor, source: words.source }],
  });
}

/** Advice, beside the table of the law. */
function nioshLine(telling: Telling, mask: Mask | undefined): readonly string[] {
  const factor = mask && factorOfNiosh(mask);
  return factor === undefined ? [] : [telling.words.session.mask.niosh(factor, telling.figures)];
}

function usesLines(telling: Telling, mask: Mask, factor: number | undefined, { sheet }: Breathed): readonly string[] {
  if (factor === undefined || judgedMask(mask, breathedThere(telling, sheet)).never !== undefined) return [];
  return usesOf(factor, sheet).map((use) => telling.words.session.mask.use(use, telling.figures));
}

/** By the sum of the open session, and by what a gas monitor last showed in its place. */
function breathedThere({ shop, now }: Telling, sheet: Breathed['sheet']): Breathed {
  const session = openSessions(shop).findLast((open) => open.sheet.id === sheet.id);
  if (session === undefined) return { sheet, timesLimit: undefined, oxygen: undefined, lelShare: undefined };
  const need = needOf(sprayCase(shop, session, now, {}));
  const gives = session.extraction?.running
    ? fanGives(shop.crew.spray.booths.get(session.place), session.extraction.faceMetresPerSecond)
    : undefined;
  const isWhole = need?.forExposure !== undefined && need.withoutLimit.length === 0;
  const timesLimit = isWhole && gives !== undefined && gives > 0 ? need.forExposure / gives : undefined;
  const last = (gas: 'o2' | 'lel') => shop.places.get(session.place)?.gas?.findLast((each) => each.gas === gas)?.value;
  return { sheet, timesLimit, oxygen: last('o2'), lelShare: last('lel') };
}

function fitLine({ shop, words, figures }: Telling, typed: string): string {
  const dates = [...shop.crew.spray.dates].find(([name]) => name.toLowerCase() === typed.toLowerCase());
  const until = dates?.[1].fit;
  return until === undefined
    ? words.session.undated(typed, ['fit'], figures)
    : words.session.qualified(typed, 'fit', until, figures);
}
