// Misreads, in Spanish: what was read, what is needed, an example.

import { ownValue } from '../../../../core/own-key.ts';
import type { SettingName } from '../../../../core/settings.ts';
import type { Misread, MisreadCode, Need } from '../../reading.ts';
import type { Slot } from '../../slots.ts';
import { spanishMethodList } from './methods.ts';
import { spanishSettings } from './settings.ts';
import { spanishVerbs } from './verbs.ts';

const isBareDegree = (token: string): boolean => /\d ?(?:°|grados?)$/i.test(token);

const reasons: Readonly<Record<MisreadCode, (token: string) => string>> = {
  'unknown-verb': (token) => `aquí ninguna línea empieza con "${token}"`,
  'unit-missing': (token) => (isBareDegree(token) ? `"${token}" no dice si son C o F` : `"${token}" no lleva unidad`),
  'ambiguous-number': (token) => `"${token}" se puede leer de dos maneras`,
  'ambiguous-time': (token) => `"${token}" se puede leer de dos maneras`,
  'ambiguous-name': (token) => `"${token}" vale para más de uno`,
  'unknown-sheet': (token) => `no hay ficha "${token}"`,
  impossible: (token) => `"${token}" no puede ser`,
  'in-the-future': (token) => `"${token}" aún no ha llegado`,
  incomplete: () => 'a la línea le falta algo',
  'left-over': (token) => `aquí sobra "${token}"`,
  'no-cry': (token) => `esto habla de "${token}" y no pide ayuda, así que no se avisa a nadie`,
  'which-cry': () => '¿qué ha pasado? Todavía no se ha avisado a nadie: pulse qué es y se avisa',
};

const slotNames: Readonly<Record<Slot, string>> = {
  amount: 'cuánto se mezcla',
  sheet: 'ficha',
  batch: 'número de mezcla',
  'part-a': 'Parte A',
  'part-b': 'Parte B',
  component: 'A o B',
  lot: 'lote',
  expiry: 'caducidad',
  handling: 'gas a mano, o entera',
  can: 'número de lata',
  'can-mass': 'peso de la lata',
  'can-volume': 'capacidad de la lata',
  vessel: 'capacidad del recipiente',
  added: 'peso añadido',
  caught: 'peso recogido',
  left: 'peso que sobra',
  part: 'pieza',
  parts: 'pieza o piezas',
  method: spanishMethodList,
  way: 'horno o sala',
  place: 'lugar',
  reason: 'motivo, con sus palabras',
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
  'highest-temperature': 'temperatura máxima que aguanta',
  'wet-film': 'película húmeda',
  'dry-film': 'película seca',
  grade: 'grado de preparación',
  profile: 'perfil',
  salts: 'sales',
  dust: 'polvo',
  pass: 'otra pasada',
  'door-time': 'tiempo con la puerta abierta',
  rating: 'nota de adherencia',
  rubs: 'dobles frotes',
  'rub-result': 'resultado: nada, ablandada o atraviesa',
  coupon: 'probeta',
  'snooze-time': 'cuánto se aplaza',
  ring: 'qué aviso',
  'on-or-off': 'sí o no, entra o sale',
  person: 'quién',
  act: 'qué anotación',
  change: 'el dato bueno',
  setting: 'qué ajuste',
  'ready-time': 'para qué hora',
  role: 'operario, encargado o supervisor',
  time: 'hora',
  'time-ago': 'hace cuánto',
  session: 'número de sesión',
  'starts-at': 'hora de inicio',
  people: 'quiénes',
  whereabouts: 'fuera, queda o pinta',
  'fan-state': 'sí o no',
  'face-velocity': 'velocidad frontal',
  'yes-or-no': 'sí o no',
  'spray-rate': 'cuánto se pinta por hora',
  gear: 'pistola o recipientes',
  solvent: 'disolvente',
  'flush-volume': 'cuánto disolvente',
  'until-day': 'hasta qué día',
  told: 'qué pasó',
  'wet-load': 'peso de la carga húmeda',
  gas: 'gas',
  'gas-volume': 'volumen de gas',
  'room-volume': 'volumen de la sala',
  work: 'qué trabajo',
  verb: 'de qué se trata, con una palabra como mezclar o aplicar',
  material: 'material',
  'solvent-amount': 'cantidad de disolvente',
  use: 'para qué',
  which: 'este o pasado',
  span: 'qué días',
  traced: 'pieza, mezcla o lote',
  sought: 'qué se busca',
  form: 'formato del archivo',
  hash: 'huella',
  file: 'archivo',
  day: 'día',
};

/** Of a pasted list, the list itself is the example. */
const listExample = 'pieza impulsor-7 fundición 12mm; pieza válvula-3 acero 6mm';

export function spanishMisread(misread: Misread): readonly string[] {
  const lines = [`${reasons[misread.code](misread.token)}.`.replace(/^¿?\p{L}/u, (first) => first.toUpperCase())];
  for (const { number, line, code, token } of misread.faulty ?? []) {
    lines.push(`Línea ${number}, ${line}: ${reasons[code](token)}.`);
  }
  if (misread.couldBe.length > 0) lines.push(`Puede ser ${misread.couldBe.map(withComma).join(' o ')}.`);
  if (misread.limits !== undefined) {
    const { lowest, highest, unit, above } = misread.limits;
    const least = withComma(`${lowest}`);
    const most = withComma(`${highest} ${unitShown(unit)}`.trim());
    lines.push(
      above === true ? `Tiene que pasar de ${least} y no de ${most}.` : `Tiene que estar entre ${least} y ${most}.`,
    );
  }
  if (misread.code === 'impossible' && misread.needs.some(({ slot }) => slot === 'humidity')) {
    lines.push('Ningún higrómetro da esa lectura: leerla otra vez.');
  }
  if (misread.needs.length > 0) lines.push(`Hace falta: ${misread.needs.map(spanishNeed).join('; ')}.`);
  lines.push(`Por ejemplo: ${exampleOf(misread)}`);
  return lines;
}

const unitShown = (unit: string): string => unit.replace('degC', '°C').replace('um', 'µm').replace(/m2/, 'm²');

/** To a Spanish reader 1.201g is a kilogram and more. */
const withComma = (text: string): string => text.replace(/^(\d+)\.(\d+)(?=\D*$)/, '$1,$2');

function spanishNeed(need: Need): string {
  const name = need.setting === undefined ? slotNames[need.slot] : askedFor(need.setting);
  return need.units.length === 0 ? name : `${name} en ${need.units.join(', ')}`;
}

const examples: Readonly<Record<string, { readonly example: string }>> = spanishVerbs;

function exampleOf({ verb, faulty, example }: Misread): string {
  if (faulty !== undefined) return listExample;
  return ownValue(examples, verb ?? 'mix')?.example ?? example;
}

function askedFor(setting: SettingName): string {
  const { asked, label } = spanishSettings.names[setting];
  return asked ?? label;
}
