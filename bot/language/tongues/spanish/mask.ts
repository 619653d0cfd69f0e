// Respirators, in Spanish.

import type { Mask, NoCartridge } from '../../../../core/session/mask.ts';
import type { englishMask } from '../english/mask.ts';
import { spanishPlace, spanishSolvents } from './names.ts';
import type { Spoken } from './spoken.ts';

const facepieces: Readonly<Record<Mask['facepiece'], string>> = {
  'quarter-mask': 'Máscara de nariz y boca',
  'half-mask': 'Media máscara',
  'full-facepiece': 'Máscara completa',
  'helmet-or-hood': 'Capucha',
  'loose-fitting': 'Capucha holgada',
};

const types: Readonly<Record<Mask['type'], string>> = {
  'air-purifying': 'con filtros',
  'powered-air-purifying': 'con filtros y ventilador',
  'supplied-air-demand': 'con aire suministrado a demanda',
  'supplied-air-continuous-flow': 'con aire suministrado',
  'supplied-air-pressure-demand': 'con aire suministrado a presión',
  'self-contained-demand': 'con botella a la espalda, a demanda',
  'self-contained-pressure-demand': 'con botella a la espalda',
};

const never = (say: Spoken): Readonly<Record<NoCartridge, string>> => ({
  sensitiser: `AQUÍ NO: ${say.the('sheet')} nombra un sensibilizante respiratorio. Aire suministrado, o no se pinta`,
  'sensitiser-open': `AQUÍ NO: ${say.the('sheet')} no dice si lleva un sensibilizante respiratorio. Aire suministrado, o no se pinta`,
  'oxygen-low':
    'AQUÍ NO: el último oxígeno leído es bajo. Nadie entra sin aire suministrado y el permiso de la empresa',
  explosive: 'AQUÍ NO: se leyó una décima parte del límite de explosividad. Todos fuera',
});

export const spanishMask = (say: Spoken): typeof englishMask => ({
  title: (sheet) => `Protección respiratoria para pintar ${sheet}`,
  judged: ({ mask, factor, never: why, enough }, figures) => {
    const name = `${facepieces[mask.facepiece]} ${types[mask.type]}`;
    if (why !== undefined) return `${name}: ${never(say)[why]}.`;
    if (factor === undefined) return `${name}: la tabla no da factor.`;
    return `${name}: factor ${figures.decimal(factor)}${enough === false ? ', aquí NO basta' : ''}.`;
  },
  use: ({ solvent, most }, figures) =>
    most === undefined
      ? `${spanishSolvents[solvent]}: no se leyó hasta cuánto vale.`
      : `${spanishSolvents[solvent]}: hasta ${figures.ppm(most.ppm)}${most.cappedBy === 'factor' ? '' : most.cappedBy === 'idlh' ? ', donde es peligroso al momento' : ', la décima parte de su límite de explosividad'}.`,
  concentration: (times, place, figures) =>
    times === undefined
      ? `No se sabe qué se respira ahí: haga ${say.the('brief')}, mida la extracción, o pregunte a quien toma muestras del aire.`
      : `Estimado en ${spanishPlace(place ?? '')}, sin medir: los vapores juntos, ${figures.ratio(times)} veces sus límites diarios. La niebla no entra en el cálculo.`,
  niosh: (factor, figures) =>
    `NIOSH cuenta ${figures.decimal(factor)} para aire suministrado de flujo continuo: lo prudente es lo menor.`,
  changeOut:
    'Cambio de filtros: los datos del fabricante para lo que se pulveriza, o un indicador de agotamiento (29 CFR 1910.134(d)(3)(iii)(B)); como tope escriba cambio de filtro tolueno 40ppm 60%.',
  mist: 'Un filtro de vapores no para la niebla: lleva un prefiltro delante (práctica común, sin fuente).',
  restsOn: 'Sin aire suministrado depende además de la evaluación del supervisor.',
  factor: 'Factor de protección asignado; una capucha solo cuenta 1000 con las pruebas de su fabricante, si no 25',
  source: '29 CFR 1910.134(d)(3)(i)(A), tabla 1',
});
