// Misreads, in Spanish: what was read, what is needed, an example.

import type { Misread, MisreadCode, Need } from '../reading.ts';
import type { Slot } from '../slots.ts';
import { spanishVocabulary } from '../vocabulary-spanish.ts';

const reasons: Readonly<Record<MisreadCode, (token: string) => string>> = {
  'unknown-verb': (token) => `"${token}" no es palabra con la que empiece una línea`,
  'unit-missing': (token) => `"${token}" no lleva unidad`,
  'ambiguous-number': (token) => `"${token}" se puede leer de dos maneras`,
  'ambiguous-time': (token) => `"${token}" se puede leer de dos maneras`,
  'ambiguous-name': (token) => `"${token}" vale para más de uno`,
  'unknown-sheet': (token) => `no hay ficha "${token}"`,
  impossible: (token) => `"${token}" no puede ser`,
  'in-the-future': (token) => `"${token}" aún no ha llegado`,
  incomplete: () => 'a la línea le falta algo',
  'left-over': (token) => `aquí sobra "${token}"`,
};

const slotNames: Readonly<Record<Slot, string>> = {
  amount: 'cantidad',
  sheet: 'ficha',
  batch: 'número de mezcla',
  'part-a': 'Parte A',
  'part-b': 'Parte B',
  component: 'A o B',
  lot: 'lote',
  expiry: 'caducidad',
  handling: 'gas o entera',
  can: 'número de lata',
  'can-mass': 'peso de la lata',
  'can-volume': 'capacidad de la lata',
  vessel: 'capacidad del recipiente',
  added: 'lo añadido',
  caught: 'lo recogido',
  left: 'lo que sobra',
  part: 'pieza',
  parts: 'piezas',
  method: 'método',
  way: 'horno o sala',
  place: 'lugar',
  reason: 'motivo',
  serial: 'número de serie',
  job: 'orden',
  customer: 'cliente',
  metal: 'metal',
  wall: 'espesor de pared',
  area: 'área',
  'air-temperature': 'temperatura del aire',
  humidity: 'humedad',
  'surface-temperature': 'temperatura de la superficie',
  'lowest-temperature': 'temperatura mínima',
  'part-temperature': 'temperatura de la pieza',
  'oven-temperature': 'temperatura del horno',
  'highest-temperature': 'temperatura que aguanta',
  'wet-film': 'película húmeda',
  'dry-film': 'película seca',
  grade: 'grado de preparación',
  profile: 'perfil',
  salts: 'sales',
  dust: 'polvo',
  pass: 'pasada',
  'door-time': 'tiempo con la puerta abierta',
  rating: 'nota de adherencia',
  rubs: 'dobles frotes',
  'rub-result': 'resultado del frote',
  coupon: 'probeta',
  'snooze-time': 'cuánto se aplaza',
  ring: 'aviso',
  'on-or-off': 'entra o sale, on u off',
  person: 'quién',
  act: 'qué anotación',
  change: 'el dato bueno',
  setting: 'ajuste',
  'air-limit': 'cuánto vale una lectura del aire',
  'digest-hour': 'hora del resumen',
  'morning-hour': 'hora de la mañana',
  rate: 'ritmo',
  'ready-time': 'para qué hora',
  'unit-system': 'métricas o us',
  'crew-name': 'nombre de la cuadrilla',
  zone: 'zona horaria, Europe/Madrid',
  role: 'operario, encargado o supervisor',
  language: 'es o en',
  rings: 'hilo o directo',
  time: 'hora',
  'time-ago': 'hace cuánto',
  session: 'número de sesión',
  'starts-at': 'hora de inicio',
  people: 'quiénes',
  whereabouts: 'fuera, queda o pinta',
  'fan-state': 'sí o no',
  'face-velocity': 'velocidad en la cara',
  'yes-or-no': 'sí o no',
  'spray-rate': 'cuánto se pinta por hora',
  gear: 'pistola o recipientes',
  solvent: 'disolvente',
  'flush-volume': 'cuánto disolvente',
  'until-day': 'hasta qué día',
  told: 'qué pasó',
  'wet-load': 'carga húmeda',
  gas: 'gas',
  'gas-volume': 'volumen de gas',
  'room-volume': 'volumen de la sala',
  work: 'trabajo',
  'brief-ahead': 'con cuánta antelación',
  'lel-share': 'parte del límite de explosividad',
  'mixing-factor': 'factor de mezcla de aire',
  'quiet-hours': 'horas de silencio',
  'emergency-field': 'teléfono, ojos, derrame, fuego, caído o caliente',
  verb: 'verbo',
  material: 'material',
  'solvent-amount': 'cantidad de disolvente',
  use: 'para qué',
  which: 'este o pasado',
  span: 'qué días',
  traced: 'pieza, mezcla o lote',
  sought: 'qué se busca',
  form: 'formato',
  hash: 'huella',
  file: 'archivo',
  'voc-limit': 'límite de COV',
  day: 'día',
};

/** Of a pasted list, the list itself is the example. */
const listExample = 'pieza impulsor-7 fundición 12mm; pieza válvula-3 acero 6mm';

export function spanishMisread(misread: Misread): readonly string[] {
  const lines = [`${reasons[misread.code](misread.token)}.`.replace(/^\p{L}/u, (first) => first.toUpperCase())];
  for (const { number, line, code, token } of misread.faulty ?? []) {
    lines.push(`Línea ${number}, ${line}: ${reasons[code](token)}.`);
  }
  if (misread.couldBe.length > 0) lines.push(`Puede ser ${misread.couldBe.map(withComma).join(' o ')}.`);
  if (misread.limits !== undefined) {
    const { lowest, highest, unit, above } = misread.limits;
    lines.push(
      `Tiene que ir de ${above === true ? 'más de ' : ''}${lowest} a ${highest} ${unit}.`.replace(/ \.$/, '.'),
    );
  }
  if (misread.needs.length > 0) lines.push(`Hace falta: ${misread.needs.map(spanishNeed).join('; ')}.`);
  lines.push(`Por ejemplo: ${exampleOf(misread)}`);
  return lines;
}

/** To a Spanish reader 1.201g is a kilogram and more. */
const withComma = (text: string): string => text.replace(/^(\d+)\.(\d+)(?=\D*$)/, '$1,$2');

function spanishNeed(need: Need): string {
  const name = slotNames[need.slot];
  return need.units.length === 0 ? name : `${name} en ${need.units.join(', ')}`;
}

const examples: Readonly<Record<string, { readonly example: string }>> = spanishVocabulary;

function exampleOf({ verb, faulty, example }: Misread): string {
  if (faulty !== undefined) return listExample;
  return examples[verb ?? 'mix']?.example ?? example;
}
