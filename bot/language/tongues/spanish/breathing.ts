// Checks of breathing air, in Spanish.

import type { BreathingAirItem, BreathingStandard, ItemJudged } from '../../../../core/calc/breathing-air.ts';
import type { BreathingCheck } from '../../../../core/session/breathing-check.ts';
import type { Figures } from '../../figures.ts';
import { allRead, type englishBreathing, itemFigures, type WhyNotFed } from '../english/breathing.ts';

const items: Readonly<Record<BreathingAirItem, string>> = {
  oxygen: 'Oxígeno',
  oil: 'Aceite',
  'carbon-monoxide': 'Monóxido de carbono',
  'carbon-dioxide': 'Dióxido de carbono',
  odour: 'Olor',
  'dew-point': 'Punto de rocío',
};

const verdicts: Readonly<Record<ItemJudged['is'], string>> = {
  within: 'dentro',
  outside: 'FUERA',
  'not-read': 'sin leer',
};

const standards: Readonly<Record<BreathingStandard, string>> = {
  'grade-d': '29 CFR 1910.134(i)(1)(ii), grado D',
  'en-12021': 'EN 12021:2014, cifras de memoria',
};

const because: Readonly<Record<WhyNotFed, string>> = {
  failed: 'NO PASÓ: no alimenta a nadie',
  'not-whole': 'no se leyó todo',
  overdue: 'vencida: pasaron tres meses',
};

const who = ({ at, by, compressor }: BreathingCheck, figures: Figures) =>
  `${compressor === undefined ? '' : `compresor ${compressor}, `}${figures.dated(at)} por ${by}`;

export const spanishBreathing: typeof englishBreathing = {
  title: (worst) =>
    worst === 'outside'
      ? 'Aire respirable: NO PASA'
      : worst === 'not-read'
        ? 'Aire respirable: no se leyó todo'
        : 'Aire respirable: dentro',
  item: ({ item, is }, read, limits, figures) => {
    const { read: value, asked } = itemFigures(item, read, limits, figures);
    const known = [value, asked === '' ? '' : `se pide ${asked}`].filter((each) => each !== '').join(', ');
    return `${items[item]}: ${verdicts[is]}${known === '' ? '' : ` (${known})`}`;
  },
  by: (standard, compressor) =>
    `Según ${standards[standard]}${compressor === undefined ? '' : `; compresor ${compressor}`}.`,
  tap: 'Aire respirable…',
  feedsNobody: 'No alimenta a nadie hasta otra prueba dentro de límites: no se pinta con aire suministrado.',
  notMonitor: 'Lo leído en ese momento. Alarmas y filtros del compresor son del programa de la empresa.',
  neverChecked:
    'Aire respirable: nadie ha dicho que se comprobara. Escriba: aire respirable o2 20,9% co 4ppm co2 500ppm aceite 0,1mg.',
  checked: (check, why, _until, figures) =>
    `Aire respirable comprobado: ${who(check, figures)}${why === undefined ? '' : `; ${because[why]}`}`,
  fact: (read, figures) =>
    `aire respirable comprobado${read.compressor === undefined ? '' : `, compresor ${read.compressor}`}: ${allRead(items, read, figures)}`,
  notFit: (check, figures) =>
    `El aire respirable no pasó la última prueba (${who(check, figures)}): ${figures.list(check.fails.map((item) => items[item].toLowerCase()))}. No alimenta a nadie: otra prueba, o no se pinta. Esto no lo levanta nadie.`,
  unchecked: (check, why, figures) =>
    `Aire respirable: ${because[why]} (${who(check, figures)}). Escriba aire respirable y lo leído.`,
};

/** Said first, while the gun runs. */
export const spanishFanOff =
  'Dejen de pintar ya: la extracción está apagada y la pistola en marcha. Salgan de la niebla; nadie pinta hasta que vuelva a funcionar.';
