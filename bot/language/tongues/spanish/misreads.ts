// Misreads, in Spanish: what was read, what is needed, an example.

import type { Misread, MisreadCode, Need, RowFault } from '../../reading.ts';
import { capital, decimals } from './names.ts';
import { spanishSettings } from './settings.ts';
import { spanishSlots } from './slots.ts';
import type { Spoken } from './spoken.ts';

const isOunces = (token: string): boolean => /\d ?(?:oz|onzas?)$/i.test(token);
const isBareDegree = (token: string): boolean => /\d ?(?:°|grados?)$/i.test(token);

const reasons: Readonly<Record<MisreadCode | RowFault, (token: string) => string>> = {
  'unknown-verb': (token) => `no entendí «${token}»`,
  'unit-missing': (token) => {
    if (isOunces(token)) return `«${token}» puede ser de peso: de un líquido se dice onzas líquidas, fl oz`;
    return isBareDegree(token) ? `«${token}» no dice si son C o F` : `«${token}» no lleva unidad`;
  },
  'ambiguous-number': (token) => `«${token}» se puede leer de dos maneras`,
  'ambiguous-time': (token) => `«${token}» se puede leer de dos maneras`,
  'ambiguous-name': (token) => `«${token}» vale para más de uno`,
  'unknown-sheet': (token) => `no consta «${token}»`,
  impossible: (token) => `«${token}» no puede ser`,
  'in-the-future': (token) => `«${token}» aún no ha llegado`,
  incomplete: () => 'la línea está incompleta',
  'left-over': (token) => `no entendí «${token}» en esta línea`,
  'no-cry': (token) => `esto habla de «${token}» y no pide ayuda, así que no se avisa a nadie`,
  'which-cry': () => '¿qué ha pasado? Todavía no se ha avisado a nadie: pulse qué es y se avisa',
  'permit-alone': () => 'no se dice qué se permite',
  'inside-vessel': () =>
    'dentro no se entra a pintar con esto: hace falta el permiso de la empresa para espacios confinados. Desde fuera, nombre la pieza y diga desde-fuera',
  'no-alone': () => '¿qué es lo que no? Dígalo con ello; lo anotado por error se quita con deshacer',
  'nothing-here': () => 'no nombra nada, y aquí nada espera eso. Dígalo con aquello a lo que se hizo',
  'which-act': () => 'pulse y queda dicho; hasta entonces no se anota nada',
  'no-row-read': () => 'no se pudo leer ninguna fila de esa lista',
  'no-name': () => 'no nombra ninguna pieza',
  'named-twice': (token) => `${token} está dos veces`,
  'column-not-taken': (token) => `de la columna ${token} no se anota nada`,
  'digits-alone': (token) => `solo cifras son una mezcla o una lata: póngale letras, como p-${token}`,
  'too-many-parts': (token) => `${token}: son más piezas de las que caben en un mensaje, mándelas en varios`,
};

export const spanishFault = (code: MisreadCode | RowFault, token: string): string => reasons[code](token);

export const spanishMisread =
  (say: Spoken) =>
  (misread: Misread, example: string): readonly string[] => {
    const needs = misread.needs.map((need) => needed(say, need)).join('; ');
    // What is missing says by itself that the line is not whole.
    const isOnlyShort = misread.code === 'incomplete' && needs !== '';
    const lines = isOnlyShort ? [`Falta: ${needs}.`] : [`${capitalAfterMark(reasons[misread.code](misread.token))}.`];
    if (misread.code === 'which-act') return lines;
    for (const { number, line, code, token } of misread.faulty ?? []) {
      lines.push(`Línea ${number}, ${line}: ${reasons[code](token)}.`);
    }
    if (misread.couldBe.length > 0) {
      lines.push(`¿${capital(misread.couldBe.map((text) => shown(say, text)).join(' o '))}?`);
    }
    if (misread.code === 'permit-alone') {
      lines.push(`Una pieza retenida la libera ${say.a('lead')}, con permiso y el motivo detrás.`);
    }
    if (misread.limits !== undefined) {
      const { lowest, highest, unit, above } = misread.limits;
      const least = shown(say, `${lowest}`);
      const most = shown(say, `${highest} ${unitShown(unit)}`.trim());
      lines.push(
        above === true ? `Tiene que pasar de ${least} y no de ${most}.` : `Tiene que estar entre ${least} y ${most}.`,
      );
    }
    if (misread.code === 'impossible' && misread.needs.some(({ slot }) => slot === 'humidity')) {
      lines.push('Ningún higrómetro da esa lectura: léala otra vez.');
    }
    if (needs !== '' && !isOnlyShort) lines.push(`Hace falta: ${needs}.`);
    lines.push(`Por ejemplo: ${example}`);
    return lines;
  };

const capitalAfterMark = (text: string): string =>
  text.startsWith('¿') ? `¿${capital(text.slice(1))}` : text.startsWith('«') ? text : capital(text);

const unitShown = (unit: string): string => unit.replace('degC', '°C').replace('um', 'µm').replace(/m2/, 'm²');

/** To a reader in Spain 1.201g is a kilogram and more. */
const shown = (say: Spoken, text: string): string =>
  decimals(say, text.replace(/^(\d+)\.(\d+)(?=\D*$)/, '$1,$2')).replace(/^([\d.,]+)([a-z]+)$/i, '$1 $2');

function needed(say: Spoken, need: Need): string {
  const { asked, label } =
    need.setting === undefined
      ? { asked: spanishSlots(say)[need.slot], label: '' }
      : spanishSettings(say).names[need.setting];
  const name = asked ?? label;
  if (need.choices !== undefined) return `${name}: ${need.choices.join(', ')}`;
  return need.units.length === 0 ? name : `${name} en ${need.units.join(', ')}`;
}
