// How long a cartridge lasts, in Spanish.

import type { CartridgeLife } from '../../../../core/calc/change-out.ts';
import { celsius, partsPerMillion } from '../../../../core/units.ts';
import type { englishCartridge } from '../english/cartridge.ts';
import { hoursOf } from '../english/exposure.ts';
import { spanishSubstances } from './exposure.ts';

const because: Readonly<Record<CartridgeLife['shortenedBy'][number], string>> = {
  humidity: 'la mitad por humedad del 85 % o más',
  pace: 'la mitad por trabajo duro',
};

export const spanishCartridge: typeof englishCartridge = {
  title: 'Cambio de filtros',
  lasts: ({ hours, shortenedBy }, figures) =>
    `Como mucho ${hoursOf(hours, figures)}, por la regla práctica${shortenedBy.map((each) => `, ${because[each]}`).join('')}.`,
  noFigure: (refused, figures) => {
    if (refused.failed !== 'does-not-apply') {
      return 'SIN cifra: no consta a qué temperatura hierve uno de ellos. No se lleva un filtro a ojo.';
    }
    return refused.what === 'ppm'
      ? `SIN cifra: ${figures.ppm(partsPerMillion(refused.given))} juntos, y la regla acaba en ${figures.ppm(partsPerMillion(refused.limit))}.`
      : `SIN cifra: uno hierve a ${figures.temperature(celsius(refused.given))}, y la regla solo vale por encima de ${figures.temperature(celsius(refused.limit))}. Atraviesa pronto.`;
  },
  takenAs: (air, humidity, isLastRead, isHard, figures) =>
    `Tomado como: ${figures.list(air.map(({ substance, ppm }) => `${spanishSubstances[substance]} ${figures.ppm(ppm)}`))} fuera de la máscara, humedad ${figures.percent(humidity)}${isLastRead ? ', la última leída' : ''}, trabajo ${isHard ? 'duro' : 'normal'}.`,
  needsHumidity: 'Aún sin cifra: nadie ha leído la humedad. Añádala a la línea, como 60%, o anote antes el aire.',
  sensitiser: 'NO con filtros: los isocianatos no avisan cuando uno se agota. Aire suministrado, o no se pinta.',
  otherwise: 'Aire suministrado, o los datos del fabricante para ello.',
  thenNew: 'Después, nuevos; y en todo caso nuevos cada turno.',
  first: 'Antes va el plan de cambio del fabricante, y un indicador de agotamiento si lo hay; esto no los amplía.',
  never: 'Nunca por el olor: quien lo huele ya lo ha respirado.',
  rule: 'Si hierve por encima de 70 °C y hay menos de 200 ppm, 8 h con trabajo normal; inverso al trabajo; la mitad con 85 % de humedad o más',
  source: 'OSHA, Respiratory eTool, regla práctica según AIHA, capítulo 36',
};
