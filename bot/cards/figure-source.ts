// On what a figure rests, by the law of the crew's country.

import { type FigureSourceId, figureLaws } from '../../core/session/figure-sources.ts';
import type { Telling } from './card-context.ts';

export const figureSource = ({ words, shop }: Telling, id: FigureSourceId): string =>
  words.names.figureSource(id, figureLaws[id]?.[shop.crew.spray.law.frame] ?? '');
