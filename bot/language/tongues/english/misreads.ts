// Misreads, in English: what was read, what is needed, an example.

import type { SettingName } from '../../../../core/settings.ts';
import type { Misread, MisreadCode, Need, RowFault } from '../../reading.ts';
import { englishSettings } from './settings.ts';
import { slotNames } from './slots.ts';

const reasons: Readonly<Record<MisreadCode | RowFault, (token: string) => string>> = {
  'unknown-verb': (token) => `"${token}" was not understood`,
  'unit-missing': (token) =>
    /\d ?(?:oz|ounces?)$/i.test(token) ? `"${token}" may be a weight: of a liquid say fl oz` : `"${token}" has no unit`,
  'ambiguous-number': (token) => `"${token}" can be read in two ways`,
  'ambiguous-time': (token) => `"${token}" can be read in two ways`,
  'ambiguous-name': (token) => `"${token}" fits more than one`,
  'unknown-sheet': (token) => `there is no sheet "${token}"`,
  impossible: (token) => `"${token}" cannot be`,
  'in-the-future': (token) => `"${token}" is still to come`,
  incomplete: () => 'the line ends too early',
  'left-over': (token) => `"${token}" was not understood here`,
  'no-cry': (token) => `this speaks of "${token}" and does not call for help, so nobody is called`,
  'which-cry': () => 'what has happened? Nobody is called yet: one tap calls',
  'permit-alone': () =>
    'nothing says what is permitted. A lead releases what is held, with permit and the reason behind',
  'inside-vessel': () =>
    "nobody coats from inside by this: the employer's confined-space permit is asked for. From outside, name the part and say from-outside",
  'no-alone': () => 'what is it that is not so? Say no with it; what was recorded by mistake is taken back with undo',
  'nothing-here': () => 'it names nothing, and nothing here waits for that. Say it with what it was done to',
  'which-act': () => 'one tap says it, and nothing is recorded before',
  'no-row-read': () => 'no row of that list could be read',
  'no-name': () => 'it names no part',
  'named-twice': (token) => `${token} stands there twice`,
  'column-not-taken': (token) => `nothing is booked of the column ${token}`,
  'digits-alone': (token) => `digits alone are a batch or a can: put letters to it, such as p-${token}`,
  'too-many-parts': (token) => `${token}: more parts than one message takes, send them in several`,
};

/** Of one piece, in half a line. */
export const englishFault = (code: MisreadCode | RowFault, token: string): string => reasons[code](token);

export function englishMisread(misread: Misread, example: string): readonly string[] {
  const lines = [`${reasons[misread.code](misread.token)}.`.replace(/^./, (first) => first.toUpperCase())];
  if (misread.code === 'which-act') return lines;
  for (const { number, line, code, token } of misread.faulty ?? []) {
    lines.push(`Line ${number}, ${line}: ${reasons[code](token)}.`);
  }
  if (misread.couldBe.length > 0) lines.push(`It could be ${misread.couldBe.join(' or ')}.`);
  if (misread.limits !== undefined) {
    const { lowest, highest, unit, above } = misread.limits;
    lines.push(`Needed: ${above === true ? 'above' : 'from'} ${lowest} to ${highest} ${unit}.`.replace(/ \.$/, '.'));
  }
  if (misread.code === 'impossible' && misread.needs.some(({ slot }) => slot === 'humidity')) {
    lines.push('No hygrometer gives that reading: read it again.');
  }
  if (misread.needs.length > 0) lines.push(`Needed: ${misread.needs.map(englishNeed).join('; ')}.`);
  lines.push(`For example: ${example}`);
  return lines;
}

function englishNeed(need: Need): string {
  const name = need.setting === undefined ? slotNames[need.slot] : askedFor(need.setting);
  if (need.choices !== undefined) return `${name}: ${need.choices.join(', ')}`;
  return need.units.length === 0 ? name : `${name} in ${need.units.join(', ')}`;
}

function askedFor(setting: SettingName): string {
  const { asked, label } = englishSettings.names[setting];
  return asked ?? label;
}
