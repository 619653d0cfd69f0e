// Misreads, in Spanish: what was read, what is needed, an example.

import { ownValue } from '../../../../core/own-key.ts';
import type { SettingName } from '../../../../core/settings.ts';
import type { Misread, MisreadCode, Need } from '../../reading.ts';
import { spanishSettings } from './settings.ts';
import { slotNames } from './slots.ts';
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
