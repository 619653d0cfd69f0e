// What a Spanish speaker types, besides the English words: both are always understood.

import type { Opening, Typed } from '../typed.ts';
import { begins, ends } from './begun-and-ended.ts';
import { spanishCalm } from './calm.ts';
import { spanishCries } from './cries.ts';
import { spanishDone } from './done-said.ts';
import { spanishHelpGroups } from './help-topics.ts';
import { printedInAmerica } from './in-america.ts';
import { spanishInstrumentsTyped } from './instruments-typed.ts';
import { spanishLabels } from './labels.ts';
import { spanishMeanings } from './lexicon.ts';
import { spanishLists } from './lists.ts';
import { spanishMethods } from './methods.ts';
import { spanishNumbers } from './numbers.ts';
import { spanishPartsTyped } from './parts-typed.ts';
import { spanishPracticeTyped } from './practice.ts';
import { spanishQuestions } from './questions.ts';
import { spanishReasons } from './reasons.ts';
import { spanishRemindersTyped } from './reminders.ts';
import { spanishSaidOtherwise } from './said-otherwise.ts';
import { spanishSaid } from './said-words.ts';
import { spanishAsides } from './sayings/asides.ts';
import { spanishLeadingIn } from './sayings/leading-in.ts';
import { spanishCorrections } from './sayings/otherwise.ts';
import { spanishAskings, spanishSayings } from './sayings/sayings.ts';
import { spanishSettings } from './settings.ts';
import { spanishSlots } from './slots.ts';
import { spokenIn } from './spoken.ts';
import { spanishTerms } from './terms.ts';
import { spanishTermNames } from './terms-typed.ts';
import { spanishTimes } from './times.ts';
import { spanishUnits } from './units.ts';
import { spanishVerbs } from './verbs.ts';

const fans = ['extracción', 'extractor', 'ventilador', 'abanico'];
const fanOff = ['sin', 'apagar', 'apago', 'apagué', 'parar', 'paro'];
const fanOn = ['prender', 'prendo', 'encender', 'enciendo', 'arrancar', 'arranco', 'poner', 'pongo'];
const fan = (verbs: readonly string[], says: 'yes' | 'no'): readonly Opening[] =>
  fans.flatMap((it) =>
    verbs.map((verb): Opening => ({ words: `${verb} ${it}`, verb: 'fan', says, printed: `${verb} ${it}` })),
  );

/** A touch-up, the oven and what is missing begin lines of their own. */
const openings: readonly Opening[] = [
  { words: 'retocar, retocada, retocado, retoco, retoque', verb: 'coat', pass: 'same-coat', printed: 'retocar' },
  {
    words:
      'piezas, piezas nuevas, nuevas piezas, entran piezas, llegan piezas, llegaron piezas, apunta piezas, apuntar piezas, anota piezas, anotar piezas, alta piezas',
    verb: 'part',
    several: true,
    printed: 'piezas',
  },
  ...fan(fanOff, 'no'),
  ...fan(fanOn, 'yes'),
  { words: 'psicrómetro', verb: 'air', psychrometer: true, printed: 'psicrómetro' },
  { words: 'sin aire', verb: 'supplied', says: 'no', printed: 'sin aire' },
  {
    words: 'horno, al horno, meter horno, meto horno, metí horno, metida horno, metido horno, entra horno',
    verb: 'cure',
    way: 'oven',
    printed: 'al horno',
  },
  { words: `entro turno, ${begins('turno')}`, verb: 'shift', says: 'yes', printed: 'entro de turno' },
  { words: `salgo turno, ${ends('turno')}, fin turno`, verb: 'shift', says: 'no', printed: 'salgo de turno' },
  {
    words: 'limpiar recipientes, limpio recipientes, recipientes lavados, recipientes limpios',
    verb: 'flush',
    gear: 'vessels',
  },
  { words: 'desengrasada, desengrasado, desengraso', verb: 'prep', removed: ['grease'], printed: 'desengrasada' },
  { words: 'a tierra, tierra, puenteado, puenteados', verb: 'confirm', step: 'bonding', printed: 'confirmo tierra' },
  { words: 'documentos sí, papeles sí', verb: 'confirm', step: 'papers', says: 'yes', printed: 'confirmo papeles sí' },
  { words: 'documentos no, papeles no', verb: 'confirm', step: 'papers', says: 'no', printed: 'confirmo papeles no' },
  { words: 'equipo clasificado, clasificado', verb: 'confirm', step: 'equipment', printed: 'confirmo equipo' },
  { words: 'horno limpio', verb: 'confirm', step: 'clean-oven', printed: 'confirmo horno' },
  { words: 'sitio limpio, sala limpia', verb: 'confirm', step: 'clean-room', printed: 'confirmo sitio' },
  { words: 'orden, pedido', verb: 'set', setting: 'job', printed: 'pon orden' },
  // Of no liquid it may be a coat, so it is no word of the row.
  { words: 'vertido', verb: 'spill' },
  {
    words: 'alcohol nuevo, nuevo alcohol, isopropílico, isopropanol',
    verb: 'confirm',
    step: 'alcohol',
    printed: 'alcohol nuevo',
  },
  { words: 'anónimo', verb: 'near-miss', anonymous: true },
];

/** What is typed for a setting is the same in every country. */
const settings = spanishSettings(spokenIn('es-ES')).names;

export const spanishTyped: Typed = {
  verbs: spanishVerbs,
  openings,
  terms: spanishTerms,
  termNames: spanishTermNames,
  slots: spanishSlots(spokenIn('es-ES')),
  meanings: spanishMeanings,
  methods: spanishMethods,
  units: spanishUnits,
  times: spanishTimes,
  numbers: spanishNumbers,
  settings,
  languages: { es: 'spanish, espanol, castellano' },
  lists: spanishLists,
  partsIn: spanishPartsTyped,
  cries: { ...spanishCries, ...spanishCalm },
  said: spanishSaid,
  sayings: spanishSayings,
  askings: spanishAskings,
  corrections: spanishCorrections,
  asides: spanishAsides,
  leadingIn: spanishLeadingIn,
  reasons: spanishReasons,
  done: spanishDone,
  saidOtherwise: spanishSaidOtherwise,
  labels: spanishLabels,
  instruments: spanishInstrumentsTyped,
  runsInto: 'mezcla lata',
  pots: 'mezcla olla tanda lote cubeta cubo balde',
  cans: 'lata bote bidón bidon',
  helpGroups: spanishHelpGroups,
  leaves: 'salir',
  questions: spanishQuestions,
  practice: spanishPracticeTyped,
  reminders: spanishRemindersTyped,
  noSlips:
    'llamar llame llamo esperar espera espero esperando huele apesta olor se me te le les lo la lo las el nos hay ha han una',
  offered: {
    no: 'no',
    entry: 'anotación',
    oven: 'horno',
    room: 'sala',
    out: 'fuera',
    stays: 'queda',
    sprays: 'pinta',
    yes: 'sí',
    on: 'sí',
    'no-effect': 'nada',
    softened: 'ablandada',
    through: 'atraviesa',
    wipe: 'limpiar',
    yesterday: 'ayer',
    permit: 'permiso',
    batch: 'mezcla',
    'glass-fibre': 'fibra de vidrio',
    'second-vessel': 'otro recipiente',
    '5m': '5min',
    '10m': '10min',
  },
  printedIn: { 'es-MX': printedInAmerica, 'es-US': printedInAmerica },
  offeredOn: {
    air: { wet: 'húmedo' },
    brief: { spray: 'pintan', near: 'quedan', stays: 'quedan', out: 'fuera', outside: 'vigila' },
    shift: { on: 'entra', off: 'sale' },
    from: { to: 'hasta' },
    set: { call: 'teléfono' },
    flush: { gun: 'pistola', 'isopropyl-alcohol': 'alcohol' },
    film: { spot: 'punto', beside: 'junto', drop: 'descartar', 'new-set': 'otra-serie' },
    amend: { spot: 'punto' },
  },
};
