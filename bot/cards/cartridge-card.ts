// How long a cartridge lasts at the most against what is breathed outside the mask, by a published rule of thumb and no further than it
// goes. An answer: the maker's change schedule comes first.

import { cartridgeLife } from '../../core/calc/change-out.ts';
import { type Solvent, type SolventId, solvents } from '../../core/calc/solvents.ts';
import type { Question } from '../../core/commands.ts';
import { isFailed } from '../../core/failed.ts';
import { ownValue } from '../../core/own-key.ts';
import { namedAbroad } from '../../core/session/figure-sources.ts';
import { airServingIn } from '../../core/shop.ts';
import { type Card, makeCard } from './card.ts';
import type { Telling } from './card-context.ts';
import { cautionLines } from './caution.ts';

const solventOf = (id: string) => ownValue<Solvent>(solvents satisfies Record<SolventId, Solvent>, id);

export function cartridgeCard(telling: Telling, asked: Extract<Question, { ask: 'cartridge' }>): Card {
  const { words, figures, shop, now } = telling;
  const { cartridge } = words.session;
  const humidity = asked.humidity ?? airServingIn(shop, undefined, now).relativeHumidityPercent;
  const rests = [cartridge.first, cartridge.never, ...cautionLines(telling)];
  const isSensitiser = asked.breathed.some(({ substance }) => substance === 'hdi' || substance === 'mdi');
  if (isSensitiser) return makeCard(cartridge.title, 'stop', { lines: [cartridge.sensitiser, ...rests] });
  if (humidity === undefined) return makeCard(cartridge.title, 'warn', { lines: [cartridge.needsHumidity, ...rests] });
  const breathed = asked.breathed.map(({ substance, ppm }) => ({
    ppm,
    boils: solventOf(substance)?.boilingPointCelsius,
  }));
  const life = cartridgeLife({ breathed, humidity, pace: asked.isHard ? 'hard' : 'ordinary' });
  const told = isFailed(life) ? cartridge.noFigure(life, figures) : cartridge.lasts(life, figures);
  const source = words.names.source(namedAbroad('29 CFR 1910.134(d)(3)(iii)(B)', shop.crew.spray.law.frame));
  return makeCard(cartridge.title, isFailed(life) ? 'stop' : 'warn', {
    lines: [
      told,
      cartridge.takenAs(asked.breathed, humidity, asked.humidity === undefined, asked.isHard, figures),
      ...(isFailed(life) ? [cartridge.otherwise] : [cartridge.thenNew]),
      ...rests,
    ],
    hazards: [{ text: cartridge.rule, source: `${cartridge.source}; ${source}` }],
  });
}
