// What a Spanish speaker types of held parts and what becomes of them.

import { verbWords } from '../typed.ts';

export const spanishHoldVerbs = {
  hold: verbWords(
    'retener, retención, retenida, retenido, retengo, cuarentena, retenidas, retenidos, bloquear, bloqueada, bloqueo, apartar, apartada, no conforme',
    'retener impulsor-7 piel de naranja',
  ),
  'see-to': verbWords('responde, se encarga, que se encargue', 'responde impulsor-7 bea'),
  rework: verbWords(
    'retrabajar, retrabajo, retrabajada, rehacer, rehago, rehecha, reprocesar, reproceso',
    'retrabajar impulsor-7 descuelgues en la brida',
  ),
  concession: verbWords(
    'concesión, por concesión, usar como está, se acepta como está',
    'concesión impulsor-7 persona "Sra. Vega" documento QA-118 fechado 2026-03-02',
    'de, por',
  ),
  instrument: verbWords(
    'instrumento, nuevo instrumento, anotar instrumento',
    'instrumento medidor-2 medidor plazo 2027-03-01',
    '',
    {
      ...{ gauge: 'medidor galga', scale: 'bascula balanza', hygrometer: 'higrometro' },
      ...{ thermometer: 'termometro', 'holiday-tester': 'detector', retired: 'retirado' },
    },
  ),
  calibrated: verbWords(
    'calibrado, calibrada, verificado, verificada, verificación de, calibración de, calibramos',
    'verificado medidor-2 superada próxima 2027-03-01',
    '',
    {
      next: 'proxima proximo siguiente',
      passed: 'superada bien superado apto apta',
      failed: 'fallo falla mal rechazado rechazada',
    },
  ),
  instruments: verbWords('instrumentos, lista de instrumentos', 'instrumentos'),
  recall: verbWords(
    'retirar-lote, retirar lote, retirado lote, lote retirado, retiran lote',
    'retirar-lote lote 7731 lo retira el fabricante',
  ),
  'recall-over': verbWords(
    'lote-readmitido, readmitir lote, lote readmitido',
    'lote-readmitido lote 7731 el fabricante lo da por bueno',
  ),
  scrap: verbWords(
    'chatarra, a chatarra, achatarrar, achatarrada, dar de baja, inservible',
    'chatarra impulsor-7 agrietada en la brida',
  ),
  return: verbWords(
    'devolver, devuelvo, devuelta, devuelto, devolución',
    'devolver impulsor-7 cliente aleación equivocada',
  ),
};
