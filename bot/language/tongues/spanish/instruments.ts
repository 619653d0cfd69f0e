// De los instrumentos del taller, en español.

import type { CheckResult, InstrumentKind } from '../../../../core/instrument-kinds.ts';
import type {
  englishInstrumentFact,
  englishInstrumentObjection,
  englishInstruments,
  englishInstrumentUnclear,
} from '../english/instruments.ts';
import { partsNamed } from './parts-in.ts';

const kinds: Readonly<Record<InstrumentKind, string>> = {
  gauge: 'medidor de película seca',
  scale: 'báscula',
  hygrometer: 'higrómetro',
  thermometer: 'termómetro',
  'holiday-tester': 'detector de poros',
};

const results: Readonly<Record<CheckResult, string>> = { ok: 'superada', failed: 'NO SUPERADA' };

export const spanishInstrumentFact: typeof englishInstrumentFact = (fact, figures) => {
  switch (fact.type) {
    case 'InstrumentKept':
      return `${fact.instrument}, ${kinds[fact.of]}: ${fact.retired === true ? 'fuera de uso' : 'anotado'}${fact.due === undefined ? '' : `, verificación hasta el ${figures.date(fact.due)}`}`;
    case 'InstrumentChecked':
      return `${fact.instrument}: verificación ${results[fact.result]}${fact.next === undefined ? '' : `, próxima el ${figures.date(fact.next)}`}`;
    case 'InstrumentTaken':
      return `${fact.instrument} se usa en ${fact.place} desde aquí`;
  }
};

export const spanishReadWith = (instrument: string | undefined): string =>
  instrument === undefined ? '' : `, con ${instrument}`;

export const spanishInstrumentObjection: typeof englishInstrumentObjection = (objection, figures) => {
  if (objection.code === 'instrument-overdue') {
    return `La verificación de ${objection.instrument} estaba vencida: valía hasta el ${figures.date(objection.until)}.`;
  }
  const { instrument, failedAt, goodAt } = objection;
  const since =
    goodAt === undefined ? 'y antes no consta ninguna buena' : `la última buena fue el ${figures.dated(goodAt)}`;
  return `Se apoya en lo que leyó ${instrument}, que no pasó su verificación, ${figures.dated(failedAt)}; ${since}. Léalo otra vez con otro, o que decida quien libera.`;
};

export const spanishInstrumentUnclear: typeof englishInstrumentUnclear = (unclear, figures) => {
  if (unclear.code === 'which-kind') {
    return `¿Qué es ${unclear.instrument}? ${figures.list(Object.values(kinds))}: diga cuál.`;
  }
  const { instrument, kept, of } = unclear;
  const what = of.length === 0 ? 'instrumento' : of.map((kind) => kinds[kind]).join(' ni ');
  return `No consta ningún ${what} con el nombre ${instrument}. ${kept.length === 0 ? 'No consta ninguno todavía' : `Constan: ${figures.list([...kept])}`}; uno nuevo se dice así: instrumento ${instrument} medidor.`;
};

export const spanishInstruments: typeof englishInstruments = {
  title: 'Instrumentos',
  none: 'No consta ningún instrumento. Se dice así: instrumento medidor-2 medidor plazo 2027-03-01.',
  kinds,
  row: (name, kind, told) => [`${name}, ${kinds[kind]}`, ...told].join(' · '),
  checked: (result, at, figures) => `verificación del ${figures.dated(at)}, ${results[result]}`,
  notChecked: 'no consta verificación',
  due: (until, figures) => `vale hasta el ${figures.date(until)}`,
  overdue: (until, figures) => `verificación VENCIDA desde el ${figures.date(until)}`,
  dueNotGiven: 'no se dijo la próxima',
  usedIn: (places, figures) => `usado por última vez: ${figures.list([...places])}`,
  retired: 'fuera de uso',
  keptTitle: (name) => `${name}: anotado`,
  retiredTitle: (name) => `${name}: fuera de uso`,
  checkTitle: (name, result) => `${name}: verificación ${results[result]}`,
  since: (at, figures) =>
    at === undefined
      ? 'Antes no consta ninguna verificación buena: queda marcado todo lo leído con él.'
      : `Marcado: todo lo leído con él desde su última verificación buena, ${figures.dated(at)}.`,
  held: (parts, figures) =>
    parts.length === 0
      ? 'Según el registro, no se apoya en él ninguna pieza que no esté ya retenida por ello.'
      : `Retenidas, porque se apoyan en él: ${partsNamed(parts, figures)}. Decida de cada una qué se hace con ella, o léala otra vez.`,
  marked: (readings) => `Lecturas marcadas: ${readings}.`,
  aside: (name) => `Aparte ${name}. La próxima lectura toma otro de su clase, si consta alguno.`,
  takenFrom: (name) => `Leído con ${name}`,
  takenFailed: (name) => `Leído con ${name}, que no pasó su verificación: lo que se apoya en él queda retenido.`,
  takenOverdue: (name, until, figures) =>
    `Leído con ${name}, cuya verificación vencía el ${figures.date(until)}: queda marcado.`,
  notTaken: 'No se dijo con qué instrumento.',
  checkThen: (told) => ` (${told.join(', ')})`,
};
