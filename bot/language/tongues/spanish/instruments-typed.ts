// Lo que se dice en español de los instrumentos y de sus verificaciones.

import type { InstrumentWords } from '../instrument-words.ts';

export const spanishInstrumentsTyped: InstrumentWords = {
  kinds: {
    gauge: 'medidor, galga, medidor de espesor, medidor de espesores, medidor de pelicula',
    scale: 'bascula, balanza, pesa',
    hygrometer: 'higrometro, medidor de humedad',
    thermometer: 'termometro, sonda, termopar, pirometro',
    'holiday-tester': 'detector de poros, detector de discontinuidades, holiday, detector',
  },
  wasChecked:
    'calibrado, calibrada, calibraron, calibramos, calibre, calibro, se calibro, verifico, se verifico, verificado, verificada, verificaron, verificamos, comprobado, comprobada, revisado, revisada, recalibrado, recalibrada',
  ofCheck: 'verificacion, calibracion, comprobacion, revision, control, patrones, tolerancia',
  hasFailed:
    'no paso, no pasa, no ha pasado, fallo, falla, ha fallado, no supero, no supera, no superada, rechazado, rechazada, fuera de tolerancia, fuera de calibracion, descalibrado, descalibrada',
  hasPassed: 'paso, pasa, ha pasado, supero, supera, superada, bien, ok, apto, apta, dentro de tolerancia',
  upTo: 'hasta, vale hasta, valida hasta, valido hasta, bueno hasta, buena hasta, proxima, proximo, la proxima, vence, vence en, en, el, de',
  untold:
    'con, sin calibrar, sin verificar, no esta calibrado, no esta calibrada, no se ha calibrado, hay que, tiene que, toca, falta, faltan, manana, todavia no, aun no, no fallo, no ha fallado, deberia, se calibrara, si falla, vencida, vencido, puede que',
};
