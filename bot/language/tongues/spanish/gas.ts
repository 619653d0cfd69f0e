// What a gas monitor shows, and what follows from it, in Spanish.

import { type Gas, type GasVerdict, unitOfGas } from '../../../../core/calc/monitor-limits.ts';
import type { GasReading } from '../../../../core/place/place.ts';
import { partsPerMillion } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';
import { firstUpper } from '../../first-upper.ts';
import type { englishMonitor } from '../english/gas.ts';
import { atTime, spanishNames, spanishPlace } from './names.ts';
import type { Spoken } from './spoken.ts';

const names: Readonly<Record<Gas, string>> = {
  lel: 'LIE',
  o2: 'oxígeno',
  co: 'monóxido de carbono',
  h2s: 'sulfhídrico',
};

/** What ends it. */
const checkFirst = 'revisen el medidor, escriban fijar medidor y el día hasta el que vale, y lean de nuevo.';

const now = {
  lel: 'Paren de pintar, todos fuera, ni interruptores ni chispas. La extracción se queda como está.',
  o2: 'Todos fuera ya. Nadie vuelve a entrar sin aire suministrado y el permiso de la empresa.',
  'o2-over': 'Todos fuera ya: ni chispas, ni llamas, ni interruptores. Con tanto oxígeno todo prende y arde con furia.',
  co: 'Todos fuera ya, al aire libre. Paren lo que queme o ande con combustible, si se para desde fuera.',
  h2s: 'Todos fuera ya, al aire libre y con el viento de espaldas. Nadie entra por otro sin aire suministrado.',
};

const amount = (gas: Gas, value: number, figures: Figures): string =>
  unitOfGas[gas] === '%' ? figures.percent(value, 1) : figures.ppm(partsPerMillion(value));

export const spanishGas = ({ gas, value }: Pick<GasReading, 'gas' | 'value'>, figures: Figures): string =>
  `${names[gas]} ${amount(gas, value, figures)}`;

export function spanishMonitor(say: Spoken): typeof englishMonitor {
  const sourced = (gas: Gas, { value, source }: GasVerdict['limit'], figures: Figures) =>
    `${amount(gas, value, figures)} (${spanishNames(say).source(source)})`;
  return {
    title: (place, shown, figures) => `Medidor de gas, ${spanishPlace(place)}: ${spanishGas(shown, figures)}`,
    now: (gas, is) => now[gas === 'o2' && is === 'over' ? 'o2-over' : gas],
    limit: ({ gas, value }, { is, limit, highest }, figures) => {
      const told = sourced(gas, limit, figures);
      switch (is) {
        case 'over':
          return `El límite es ${told}: ${figures.ratio(value / limit.value)} veces.`;
        case 'under':
          return `Se pide al menos ${told}.`;
        case 'advised':
          return `${figures.ratio(value / limit.value)} veces lo aconsejado, ${told}. El límite legal: ${sourced(gas, highest, figures)}.`;
        case 'within':
          return gas === 'o2' ? `Se pide al menos ${told}.` : `El límite es ${told}.`;
      }
    },
    until: (until, figures) => `hasta el ${figures.date(until)}`,
    neverChecked:
      'Nadie ha dicho hasta cuándo vale la revisión del medidor de gas: lo que marca no está probado. Escriba: fijar medidor y el día.',
    outOfCheck: (until, figures) =>
      `La revisión del medidor de gas valía hasta el ${figures.date(until)}: lo que marca no está probado.`,
    oneMoment: 'Un momento y un punto: del siguiente no dice nada. Batchbell no es un medidor de gases.',
    since: ({ at, by, ...shown }, figures) =>
      `Leído de nuevo después: ${spanishGas(shown, figures)} ${atTime(figures, at)}, ${by}. No se llama a nadie.`,
    alarmStays: 'Su alarma sigue activa: solo la termina quien manda, cuando no haya peligro (fin de alarma).',
    read: (place, reading) => `${reading}, ${spanishPlace(place)}`,
    beyond: ({ reading: { at, by, unprovedWithinAt: since, ...shown }, place }, figures) => {
      const read = `el medidor de gas en ${spanishPlace(place)}: ${spanishGas(shown, figures)}, leído por ${by} ${atTime(figures, at)}.`;
      return since === undefined
        ? `Lo último que marcó ${read} Ahí no empieza nada nuevo hasta que alguien lo lea dentro de su límite.`
        : `Marcó ${read} La lectura dentro del límite, ${atTime(figures, since)}, es de un medidor sin revisión conocida y no abre nada: ${checkFirst}`;
    },
    staysShut: (place) => `Esto no abre nada: ${spanishPlace(place)} sigue cerrado. ${firstUpper(checkFirst)}`,
    stayOut: ({ alarm, beyond }) =>
      `Quédense fuera; laven después ${[alarm === undefined ? [] : 'del fin de alarma', beyond.length === 0 ? [] : 'de leer el gas dentro del límite'].flat().join(' y ')}.`,
  };
}
