// How long gas runs over what is left in a can, in Spanish.

import { oxygenInAir } from '../../../../core/calc/gas.ts';
import type { englishPurge } from '../english/purge.ts';
import { capital } from './names.ts';
import type { Spoken } from './spoken.ts';

export const spanishPurge = (say: Spoken): typeof englishPurge => ({
  title: 'Gas sobre lo que queda',
  runs: (runs, flow, oxygen, figures) =>
    `${figures.minutesUp(runs)} a ${figures.gasFlow(flow)} dejan ${figures.percent(oxygen, 1)} de oxígeno.`,
  short: (target, figures) =>
    `${capital(say.the('sheet'))} pide ${figures.percent(target, 1)} o menos: déjelo más tiempo.`,
  sum: (target, figures) =>
    `Cuenta: gas = espacio libre × ln(${figures.decimal(oxygenInAir)} % / ${figures.percent(target, 1)}), lo que pide ${say.the('sheet')}; vale si el gas se mezcla con el aire.`,
  taken: (of, figures) =>
    of === undefined
      ? 'Se toma: el espacio libre que usted dio; gas limpio.'
      : `Se toma: la lata lleva ${figures.volume(of.brimfulLitres)} hasta el borde, quedan ${figures.mass(of.leftGrams)}; gas limpio.`,
  'no-such-can': 'No hay abierta ninguna lata con ese número.',
  'no-gas-asked': `${capital(say.the('sheet'))} no pide gas encima: ni objetivo ni cuenta.`,
  'size-unknown': 'No se sabe la capacidad de la lata o lo que queda. Diga el espacio libre: purgar 4L 5L/min.',
  'flow-needed': '¿A qué caudal? Dígalo: purgar 3 5L/min; o fíjelo una vez: fijar caudal gas 5L/min.',
});
