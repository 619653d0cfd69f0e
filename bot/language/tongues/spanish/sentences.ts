// The Spanish catalogue: shop-floor Spanish for Spain and Mexico alike. Instructions stand in the infinitive, a person is
// `usted`. One term each, and kept:
//
//   batch mezcla · lot lote · can lata · Part A/B Parte A/B · part pieza · job orden · vessel recipiente
//   stir agitado · stirrer agitador · induction inducción · pot life vida útil · ratio relación · left-over sobrante
//   thick espesa · gelled gelificada · waste residuo · blanket gas puesto · headspace espacio libre
//   coat capa, aplicar, recubierta · flow flujo · dip inmersión · brush brocha · roller rodillo · spray pistola · touch up retocar
//   wet/dry film película húmeda/seca · flash-off oreo · dry to touch seca al tacto · open time tiempo abierto
//   recoat window ventana de repintado · cure curado · oven horno · room sala · booth cabina
//   surface superficie · profile perfil · dew point punto de rocío · salts sales · dust polvo
//   release liberar · hold retener · lift permitir · deviation desviación · traveller hoja de ruta · trace trazabilidad
//   sheet ficha · record registro · entry anotación · hash huella · ring aviso · snooze aplazar · heard enterado
//   crew cuadrilla · lead encargado · shift turno · handover relevo · permit permiso
//   brief charla · acknowledge leída · extraction extracción · supplied air aire suministrado · flush lavar
//   face velocity velocidad frontal · open face frente abierto · weighing pesaje · stir in the can agitar lata
//   solvent disolvente · VOC COV · near miss casi accidente · rub dobles frotes · coupon probeta

import type { BatchPhase } from '../../../../core/batch/batch.ts';
import type { PartPhase } from '../../../../core/part/part.ts';
import type { FactId } from '../../../cards/fact-ids.ts';
import type { ButtonId, Words } from '../english/sentences.ts';
import type { Profile } from '../profile.ts';
import { spanishChat } from './chat.ts';
import { spanishFact } from './facts.ts';
import { spanishHoldReason } from './holds.ts';
import { spanishMaterial } from './material.ts';
import { spanishMisread } from './misreads.ts';
import { spanishNames, spanishTyped } from './names.ts';
import { spanishHeldBack, spanishNoFigure, spanishObjection, spanishRuleSources } from './objections.ts';
import { spanishPage } from './page.ts';
import { spanishParts } from './parts.ts';
import { spanishRecords } from './records.ts';
import { spanishReplies } from './replies.ts';
import { spanishLate, spanishRings, spanishUnproved } from './rings.ts';
import { spanishSession } from './session.ts';
import { spanishSettings } from './settings.ts';
import { spanishSlots } from './slots.ts';
import { spokenIn } from './spoken.ts';
import { spanishUnclear } from './unclear.ts';
import { spanishUndo } from './undo.ts';

const facts: Readonly<Record<FactId, string>> = {
  'part-a': 'Parte A',
  'part-b': 'Parte B',
  'ratio-error': 'Relación desviada',
  'ratio-tolerance': 'Desviación admitida',
  'stir-wanted': 'Agitado que pide',
  'stir-given': 'Agitado que lleva',
  'stir-done-at': 'Fin del agitado',
  'pot-life-ends': 'Fin de la vida útil',
  'pot-margin-at': 'Acabar antes de',
  'air-temperature': 'Aire',
  'air-read-at': 'Leído',
  humidity: 'Humedad',
  'dew-point': 'Punto de rocío',
  'surface-temperature': 'Superficie',
  spread: 'Por encima del punto de rocío',
  'night-lowest': 'Mínima',
  'flash-least-at': 'Oreo, mínimo hasta',
  'flash-most-at': 'Oreo, máximo hasta',
  'open-until': 'Retocar hasta',
  'surface-ends-at': 'Aplicar antes de',
  'recoat-opens-at': 'Repintar desde',
  'recoat-closes-at': 'Repintar hasta',
  'part-temperature': 'Pieza',
  'cure-given': 'Curado que lleva',
  'cure-done-at': 'Fin del tiempo de curado',
  'temp-due-at': 'A temperatura, estimado',
  'stage-handle-at': 'Se puede manipular desde',
  'stage-service-at': 'Servicio según la ficha desde',
  'stage-full-at': 'Resistencia completa desde',
  'door-openings': 'Aperturas de puerta',
  'door-open': 'Puerta abierta, en total',
  'part-wall': 'Pared',
  'part-area': 'Área',
  'part-bears': 'Aguanta',
  profile: 'Perfil',
  'film-mean': 'Media',
  'film-lowest': 'Mínima',
  'film-highest': 'Máxima',
  'left-over': 'Sobrante',
  'can-left': 'Queda en la lata',
  headspace: 'Espacio libre',
  'gas-needed': 'Gas que pide',
  'blanket-by': 'Gas antes de',
  'can-stir-wanted': 'Agitar en su lata',
  'can-stir-done-at': 'Fin del agitado',
  'part-b-exact': 'Parte B que pide',
  'add-part-a': 'Añadir Parte A',
  'add-part-b': 'Añadir Parte B',
  caught: 'Recogido',
  uncovered: 'Destapada',
  cans: 'Latas',
  'part-a-stock': 'Parte A en latas abiertas',
  'part-b-stock': 'Parte B en latas abiertas',
  'mixed-total': 'Mezclado',
  'caught-total': 'Recogido',
  'left-over-total': 'Sobrante',
  area: 'Área',
  'film-wanted': 'Película seca que se pide',
  'wet-film-wanted': 'Película húmeda necesaria',
  'mixed-volume': 'A mezclar',
  'mixed-mass': 'A mezclar',
  'transfer-efficiency': 'Se queda en la pieza',
  'happened-at': 'Pasó',
  'late-minutes': 'Retraso',
  'due-at': 'Tocaba',
  batches: 'Mezclas',
  'part-a-total': 'Parte A pesada',
  'part-b-total': 'Parte B pesada',
  parts: 'Piezas recubiertas',
  'air-lowest': 'Aire, mínimo',
  'air-highest': 'Aire, máximo',
  'humidity-lowest': 'Humedad, mínima',
  'humidity-highest': 'Humedad, máxima',
  'solvent-per-hour': 'Disolvente por hora',
  'sprayed-per-hour': 'Pulverizado por hora',
  'air-for-lel': 'Aire contra incendio',
  'air-for-exposure': 'Aire para respirar',
  'fan-gives': 'El ventilador da',
  'fan-over-lel': 'Caudal da/pide, incendio',
  'fan-over-exposure': 'Caudal da/pide, respirar',
  'fan-over-oven': 'Caudal da/pide, horno',
  'face-velocity': 'Velocidad frontal',
  'face-least': 'Velocidad frontal, mínima',
  'lel-share': 'Parte del límite de explosividad',
  'mixing-factor': 'Factor de mezcla de aire',
  'spell-ends-at': 'Fin del tiempo de pistola',
  'fan-until': 'Extracción hasta',
  'solvent-logged': 'Disolvente de lavado',
  'oxygen-left': 'Oxígeno que queda',
  'oven-air': 'Aire para el horno',
  'solvent-in-load': 'Disolvente en la carga',
  rings: 'Avisos',
  'rings-late': 'Avisos tardíos',
  'rings-unanswered': 'Avisos sin contestar',
  deviations: 'Desviaciones',
  permissions: 'Con permiso previo',
  corrections: 'Correcciones',
  'planned-total': 'Previsto',
  'applied-total': 'Aplicado',
  'coated-area': 'Área recubierta',
  voc: 'COV',
  'materials-total': 'Recubrimientos y disolventes gastados',
  'answer-median': 'Respuesta a avisos, mediana',
  events: 'Anotaciones',
  found: 'Encontrados',
};

const buttons: Readonly<Record<ButtonId, string>> = {
  happened: 'Ya se hizo',
  numbers: 'Teléfonos del taller…',
  'minus-5': '5 min antes',
  'minus-10': '10 min antes',
  gas: 'Gas a mano',
  whole: 'Lata entera ahora',
  blanket: 'Gas puesto',
  lid: 'Destapada',
  check: 'Revisada: se usa',
  prestir: 'Agitando en lata',
  discard: 'Desechar…',
  'weigh-a': 'Parte A…',
  'weigh-b': 'Parte B…',
  add: 'Añadido',
  catch: 'Recogido…',
  cover: 'Tapada',
  stock: 'Existencias',
  mix: 'Mezclar',
  'as-said': 'Como se dijo',
  weigh: 'Pesado…',
  stop: 'Agitador parado',
  stir: 'Agitador en marcha',
  filter: 'Filtrada',
  coat: 'Capa aplicada…',
  thick: 'Espesa',
  hot: 'Está caliente',
  empty: 'Vaciada',
  judge: 'Juzgar de nuevo',
  surface: 'Superficie…',
  prep: 'Preparada…',
  'touch-up': 'Retocada',
  dry: 'Seca',
  door: 'Puerta abierta',
  'cure-oven': 'Al horno',
  'cure-room': 'Curar en sala',
  temp: 'La pieza marca…',
  out: 'Fuera',
  wet: 'Película húmeda…',
  film: 'Película seca…',
  lift: 'Levantar la retención…',
  'left-unreleased': 'Salió sin liberar',
  release: 'Liberar',
  hold: 'Retener…',
  ok: 'Enterado',
  snooze: '5 min más tarde',
  handover: 'Dar relevo…',
  takeover: 'Tomar relevo',
  ack: 'La he leído',
  'ack-for': 'Leída a…',
  'fan-on': 'Extracción, medida…',
  'fan-unmeasured': 'Extracción, sin medir',
  'fan-off': 'Sin extracción',
  'supplied-yes': 'Aire suministrado: sí',
  'supplied-no': 'Aire suministrado: no',
  'moved-out': 'Salen de la zona…',
  'spray-on': 'Empieza la pistola',
  'spray-off': 'Para la pistola',
  'flush-step': 'Lavada con',
  flush: 'Pistola lavada',
  vessels: 'Recipientes lavados',
  rags: 'Trapos y filtros al bote',
  close: 'Cerrar la sesión',
  brief: 'Charla',
  vent: 'Cálculo del aire',
  undo: 'Deshacer',
  air: 'Aire…',
  night: 'Mínima nocturna…',
  day: 'El día',
  'whole-day': 'El día entero',
  trace: 'Rastrear',
  traveller: 'Hoja de ruta',
  export: 'Exportar',
  voc: 'Disolventes y COV',
  verify: 'Verificar',
  meant: 'Quería decir',
  again: 'Repetirlo',
  'ask-again': 'Pedirlo otra vez',
};

const phases: Readonly<Record<BatchPhase['is'] | PartPhase['is'], string>> = {
  'to-weigh': 'por pesar',
  blending: 'corre el agitado',
  paused: 'agitador parado',
  filtered: 'en uso',
  dead: 'espesa, gelificada o caliente: residuo',
  emptied: 'vaciada',
  bare: 'sin capa',
  flashing: 'en oreo',
  dry: 'seca, espera el curado',
  curing: 'en curado',
  cured: 'salió de curado',
  released: 'liberada',
};

const blend: Words['blend'] = {
  stir: { wanted: 'Agitado que pide', given: 'Agitado que lleva', doneAt: 'Fin del agitado' },
  induction: { wanted: 'Inducción que pide', given: 'Inducción que lleva', doneAt: 'Fin de la inducción' },
};

export function spanishIn(locale: Profile['locale']): Words {
  const say = spokenIn(locale);
  return {
    facts,
    phases,
    blend,
    buttons,
    names: spanishNames(say),
    typed: spanishTyped,
    session: spanishSession(say),
    settings: spanishSettings(say),
    page: spanishPage(say),
    chat: spanishChat(say),
    replies: spanishReplies(say),
    material: spanishMaterial(say),
    records: spanishRecords(say),
    parts: spanishParts(say),
    objection: (objection, f) => spanishObjection(say, objection, f),
    unclear: (unclear, f) => spanishUnclear(say, unclear, f),
    ruleSources: spanishRuleSources(say),
    noFigure: spanishNoFigure(say),
    heldBack: (without, f) => spanishHeldBack(say, without, f),
    holdReason: (hold, f) => spanishHoldReason(say, hold, f),
    misread: spanishMisread(say),
    fact: (fact, f) => spanishFact(say, fact, f),
    slots: spanishSlots(say),
    rings: spanishRings(say),
    unproved: spanishUnproved,
    late: spanishLate,
    undo: spanishUndo(say),
  };
}
