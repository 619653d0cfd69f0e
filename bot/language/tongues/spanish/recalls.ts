// Un lote que se retira, en español.

import type { englishRecalls } from '../english/recalls.ts';
import { partsNamed } from './parts-in.ts';

export const spanishRecalls: typeof englishRecalls = {
  title: (lot) => `Lote ${lot}: retirado`,
  why: (why) => `Motivo: ${why}`,
  held: (parts, figures) =>
    parts.length === 0
      ? 'Según el registro, ninguna pieza lo lleva.'
      : `Retenidas, porque lo llevan: ${partsNamed(parts, figures)}. Decida de cada una qué se hace con ella.`,
  aside: (cans, figures) =>
    cans.length === 1
      ? `Aparte y marque la lata ${cans.map(String).join('')}.`
      : `Aparte y marque las latas ${figures.list(cans.map(String))}.`,
  sealed: (left) => `Latas cerradas que constan: ${left}. No las abra.`,
  nothingMore: 'No se abre, ni se vierte, ni se aplica nada más de él sin un supervisor.',
  unknown: (lot) => `Según el registro no hubo aquí ninguna lata del lote ${lot}. Lea las etiquetas de las cerradas.`,
  over: (lot) => `Lote ${lot}: ya no está retirado`,
  holdsStay: 'Se puede volver a usar. Lo retenido por él sigue retenido hasta que se decida, pieza por pieza.',
  notToUse: (lot) => `Su lote ${lot} se retiró: no se aplica nada de ella si no lo dice un supervisor, con el motivo.`,
  pots: (pots, figures) =>
    pots.length === 1
      ? `En uso con él, y ya no se aplica: mezcla ${pots.map(String).join('')}.`
      : `En uso con él, y ya no se aplican: mezclas ${figures.list(pots.map(String))}.`,
  inStock: 'RETIRADO',
  onDay: (lot, at, why, figures) => `Lote ${lot} retirado, ${figures.timeDown(at)}: ${why}`,
};
