// Where a line comes from, in Spanish: paragraphs and standards by their names, the words round them translated. What a shop's own
// sheet says stands as it was written.

import { ownValue } from '../../../../core/own-key.ts';
import type { FigureSourceId } from '../../../../core/session/figure-sources.ts';
import type { Spoken } from './spoken.ts';

const sources: Readonly<Record<string, string>> = {
  "a California district's monthly log form": 'el libro mensual de un distrito de California',
  'Maine chapter 129, 7': 'Maine, capítulo 129, 7',
};

/** What the law of the United States says is told as such elsewhere: what holds there the project has not read. */
export const lawOf = (say: Spoken, quoted: string): string =>
  say.locale !== 'es-US' && !quoted.includes('EE. UU.') && /\b(?:CFR|NFPA|Maine|California|NIOSH)\b/.test(quoted)
    ? `EE. UU.: ${quoted}`
    : quoted;

/** The formula round the rule that it rests on. */
const figureSources: Readonly<Record<FigureSourceId, (law: string) => string>> = {
  lel: (law) => `${law}; el 25 % del límite, o la fracción más estricta que se haya fijado aquí`,
  exposure: (law) => `vapor entre el límite diario que cuenta aquí (${law}), por el factor de mezcla de aire`,
  fan: () => 'frente abierto por velocidad medida',
  face: (law) => law,
  oven: (law) =>
    `440 ft³/min por galón de EE. UU. (${law}), o el dato propio si pide más; tal como lo mueve el extractor en caliente`,
  'oven-purge': (law) => law,
  purge: (law) => `20,9 exp(-v/V), bien mezclado; 19,5 %: ${law}`,
  settled: () => 'el argón pesa 1,38 veces lo que el aire (gas ideal) y se queda en los fosos',
  flush: (law) => law,
};

/** What the sheets that come with Batchbell say of their figures; a shop's own stand as they were written. */
const phrases: readonly (readonly [RegExp, string])[] = [
  // Before the words that stand in it.
  [/what is from memory says so/g, 'lo que es de memoria lo dice'],
  [/common practice, no source/g, 'práctica común, sin fuente'],
  [/\bDirectives (\d+\/\d+)\/EC and (\d+\/\d+)\/EC/g, 'las Directivas $1/CE y $2/CE'],
  [/\bDirective (\d+\/\d+)\/EC/g, 'Directiva $1/CE'],
  [/\bDirective (\d+\/\d+)\/EEC/g, 'Directiva $1/CEE'],
  [/\bDirective (\d+\/\d+)\/EU/g, 'Directiva $1/UE'],
  [/\bDirective \(EU\) /g, 'Directiva (UE) '],
  [/\bRegulation \(EC\) No /g, 'Reglamento (CE) n.º '],
  [/\bannex /g, 'anexo '],
  [/\bentry (?=\d)/g, 'entrada '],
  [/\bUSA\b/g, 'EE. UU.'],
  [/the employer's confined-space permit/g, 'permiso de la empresa para espacios confinados'],
  [/whose figure is not kept; in its place/g, 'cuya cifra no consta aquí; en su lugar'],
  [/\bTable (?=[A-Z])/g, 'tabla '],
  [/, written for spraying/g, ', escrito para pintar a pistola'],
  [/, written for booths that dry/g, ', escrito para cabinas que secan'],
  [/\bfrom memory\b/g, 'de memoria'],
  [/the lists under /g, 'las listas de la '],
  [/the lowest that is kept of any country or of NIOSH/g, 'el más bajo que consta de cualquier país o de NIOSH'],
  [/NIOSH Pocket Guide/g, 'guía de bolsillo de NIOSH'],
  [
    /Ontario’s list, as a public reference library stores it/g,
    'la lista de Ontario, como la guarda una biblioteca pública',
  ],
  [/\bfourth edition\b/g, 'cuarta edición'],
  [/\bsmall booths\b/g, 'cabinas pequeñas'],
  [/the part itself/g, 'la propia pieza'],
  [/of carcinogens/g, 'de carcinógenos'],
  [/four volumes/g, 'cuatro volúmenes'],
  [/this rule(?=:)/g, 'esta regla'],
  [/a day or shift(?=:)/g, 'un día o turno'],
  [/a quarter(?=:)/g, 'el 25 %'],
  [/\(10 and 20 until 31 December 2028\)/g, '(10 y 20 hasta el 31 de diciembre de 2028)'],
  [/(?<=\bm\/s) and /g, ' y '],
  [/(?<=\b1910\.94) and /g, ' y '],
  [/(?<=: 6) and 12 ug/g, ' y 12 µg'],
  [/\bmg NCO\/m3/g, 'mg NCO/m³'],
  [/\bug NCO\/m3/g, 'µg NCO/m³'],
  [/invented for the demo/g, 'inventado para la demostración'],
  [/acetone, then isopropyl alcohol of (?=\d)/g, 'acetona, después alcohol isopropílico al '],
  [/(?<=\d )minutes\b/g, 'minutos'],
  [/\bby weight\b/g, 'en peso'],
  [/\bthe densities\b/g, 'las densidades'],
  [/\bthe rule\b/g, 'la regla'],
  [/(?<=\)|%) and (?=\d|\(|las )/g, ' y '],
];

export function spanishSource(say: Spoken, source: string): string {
  // What is called another country's keeps its own translation behind the name.
  const [, country = '', named = source] = /^(USA: )?(.*)$/s.exec(source) ?? [];
  const told = phrases.reduce(
    (text, [english, spanish]) => text.replaceAll(english, spanish),
    `${country}${ownValue(sources, named) ?? named}`,
  );
  return lawOf(say, say.locale === 'es-ES' ? told.replaceAll(/(?<=\d)\.(?=\d+ m\/s)/g, ',') : told);
}

/** The formula, round the rule that it rests on. */
export const figureSourceIn = (id: FigureSourceId, law: string): string => figureSources[id](law);
