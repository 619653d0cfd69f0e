// Names that the record holds in one English spelling, as a Spanish reader is shown them. What is not listed is somebody's
// own name for a thing and stays as it is.

import type { SolventId } from '../../../../core/calc/solvents.ts';
import type { Method } from '../../../../core/methods.ts';
import { ownValue } from '../../../../core/own-key.ts';
import type { EmergencyField } from '../../../../core/session/session-commands.ts';
import type { EpochMs } from '../../../../core/units.ts';
import type { Ending } from '../../ending.ts';
import { exampleIn as inUnits } from '../../example-units.ts';
import type { Figures, Rounding } from '../../figures.ts';
import type { HelpGroup } from '../../help-groups.ts';
import type { VocabularyName } from '../../vocabulary.ts';
import type { english } from '../english/sentences.ts';
import { spanishHelpGroups } from './help-topics.ts';
import { printedInAmerica } from './in-america.ts';
import { spanishMethods } from './methods.ts';
import { spanishRuleNames } from './rule-names.ts';
import { figureSourceIn, spanishSource } from './sources.ts';
import type { Spoken } from './spoken.ts';
import { spanishVerbs } from './verbs.ts';

const places: Readonly<Record<string, string>> = {
  room: 'sala',
  booth: 'cabina',
  oven: 'horno',
  shop: 'taller',
  store: 'almacén',
  hall: 'nave',
};

/** `booth-2` is `cabina-2`; the shop's own names stay. */
export function spanishPlace(place: string): string {
  const [, root = '', rest = ''] = /^([a-z]+)([-_]?\d*)$/.exec(place) ?? [];
  const name = ownValue(places, root);
  return name === undefined ? place : `${name}${rest}`;
}

const metals: Readonly<Record<string, string>> = {
  steel: 'acero',
  stainless: 'acero inoxidable',
  iron: 'hierro',
  aluminium: 'aluminio',
  'cast-iron': 'fundición',
  'ductile-iron': 'fundición nodular',
  'grey-iron': 'fundición gris',
  'mild-steel': 'acero dulce',
  'carbon-steel': 'acero al carbono',
  'galvanised-steel': 'acero galvanizado',
  'galvanized-steel': 'acero galvanizado',
  copper: 'cobre',
  brass: 'latón',
  bronze: 'bronce',
  titanium: 'titanio',
  nickel: 'níquel',
  magnesium: 'magnesio',
};

export const spanishSolvents: Readonly<Record<SolventId, string>> = {
  acetone: 'acetona',
  'isopropyl-alcohol': 'alcohol isopropílico',
  ethanol: 'etanol',
  toluene: 'tolueno',
  xylene: 'xileno',
  'butyl-acetate': 'acetato de n-butilo',
  'methyl-ethyl-ketone': 'metiletilcetona',
  'methyl-isobutyl-ketone': 'metilisobutilcetona',
  'ethyl-acetate': 'acetato de etilo',
  butanol: 'n-butanol',
  cyclohexanone: 'ciclohexanona',
  butoxyethanol: '2-butoxietanol',
  'methoxypropyl-acetate': 'acetato de metoxipropilo (PGMEA)',
  propanol: '1-propanol',
  methanol: 'metanol',
  'methyl-acetate': 'acetato de metilo',
  'methyl-propyl-ketone': 'metil n-propil cetona',
  'varnish-naphtha': 'nafta VM&P',
  'mineral-spirits': 'aguarrás mineral (nafta, 100 flash)',
  'propyl-acetate': 'acetato de n-propilo',
  'isopropyl-acetate': 'acetato de isopropilo',
  'isoamyl-acetate': 'acetato de isoamilo',
  turpentine: 'trementina',
};

const emergencyFields: Readonly<Record<EmergencyField, string>> = {
  call: 'teléfono',
  eyes: 'ojos',
  spill: 'derrame',
  fire: 'fuego',
  down: 'caído',
  hot: 'caliente',
  'skin-burn': 'piel',
  breathless: 'ahogo',
  emergency: 'emergencia',
};

/** Of each row so many words as a phone shows in a line or two; many more are understood. */
const wordsShown = 6;

/** Words and example of a row as a Spanish reader may type them. */
export const spanishTyped = (say: Spoken) => ({
  words: (name: VocabularyName): readonly string[] => wordsIn(say, name).slice(0, wordsShown),
  example: (name: VocabularyName): string => decimals(say, exampleIn(say, name)),
  helpGroup: (group: HelpGroup) => capital(firstOf(spanishHelpGroups[group])),
  helpAll: (group: HelpGroup) => `ayuda todo ${firstOf(spanishHelpGroups[group])}`,
  listExample: 'pieza impulsor-7 fundición 12mm; pieza válvula-3 acero 6mm',
  namedPart: 'impulsor-7',
});

const firstOf = (words: string): string => words.split(' ')[0] ?? words;

/** What is printed in the country first. */
function wordsIn({ locale }: Spoken, name: VocabularyName): readonly string[] {
  const { words } = spanishVerbs[name];
  const printed = locale === 'es-ES' ? undefined : ownValue(printedInAmerica, name);
  return printed === undefined ? words : [printed, ...words.filter((word) => word !== printed)];
}

/** By the words of the country. */
function exampleIn({ locale }: Spoken, name: VocabularyName): string {
  const { words, example } = spanishVerbs[name];
  if (locale === 'es-ES') return example;
  const [first = name] = words;
  const printed = ownValue(printedInAmerica, name) ?? first;
  // The gun that is washed is a pistola everywhere.
  const ofMethods = name === 'flush' || name === 'spray-on' || name === 'spray-off' || name === 'used';
  const { name: spraying, nameInAmerica = spraying } = spanishMethods.spray;
  return (ofMethods ? example : example.replace(spraying, nameInAmerica)).replace(first, printed);
}

export function spanishNames(say: Spoken): typeof english.names {
  const rules = spanishRuleNames(say);
  return {
    method: (method) => methodName(say, method),
    methodWay: (method) => inAmerica(say, spanishMethods[method].way, method),
    methodAsked: 'Antes de la capa toque su método: dice cómo se aplica y qué llevar.',
    methodFinish: (method) => inAmerica(say, spanishMethods[method].finish, method),
    place: spanishPlace,
    metal: spanishMetal,
    solvent: (id) => spanishSolvents[id],
    rule: (code) => rules[code],
    emergencyField: (field) => emergencyFields[field],
    figureSource: (id, law) => decimals(say, figureSourceIn(id, spanishSource(say, law))),
    source: (source) => spanishSource(say, source),
  };
}

/** Written with a comma; elsewhere than in Spain a point stands there. */
export const decimals = (say: Spoken, text: string): string =>
  say.locale === 'es-ES' ? text : text.replaceAll(/(?<=\d),(?=\d)/g, '.');

/** An example in a sentence, by the units and the decimal sign of the country. */
export const inCountry = (say: Spoken, example: string): string =>
  decimals(say, inUnits(example, say.locale === 'es-US' ? 'us' : 'metric'));

/** `cast-iron` is `fundición`, `fundición gris` stays. */
export const spanishMetal = (metal: string): string => ownValue(metals, metal) ?? metal;

export function methodName({ locale }: Spoken, method: Method): string {
  const { name, nameInAmerica = name } = spanishMethods[method];
  return locale === 'es-ES' ? name : nameInAmerica;
}

const emergencyWords: Readonly<Record<string, string>> = emergencyFields;

export function spanishEmergencyWord(field: string): string {
  return ownValue(emergencyWords, field) ?? field;
}

const materials: Readonly<Record<string, string>> = spanishSolvents;

/** A solvent by its id, else the shop's own name. */
export const spanishMaterialName = (material: string): string => ownValue(materials, material) ?? material;

/** `las 13:52`, `la 1:10`, and of another day `el martes 3 a las 10:30`: after `desde` and `hasta`. */
export function theTime(figures: Figures, at: EpochMs, to: Rounding = 'down'): string {
  const { day, clock, hour } = figures.moment(at, to);
  const hours = `${hour === 1 ? 'la' : 'las'} ${clock}`;
  return day === undefined ? hours : `el ${day} a ${hours}`;
}

/** A bell's time, on the minute that errs as it does. */
export const theEnding = (figures: Figures, { dueAt, errs }: Ending): string =>
  theTime(figures, dueAt, errs === 'at-least' ? 'up' : 'down');

export const atEnding = (figures: Figures, { dueAt, errs }: Ending): string =>
  atTime(figures, dueAt, errs === 'at-least' ? 'up' : 'down');

/** `a las 13:52`, `a la 1:10`, and of another day `el martes 3 a las 10:30`. */
export function atTime(figures: Figures, at: EpochMs, to: Rounding = 'down'): string {
  const told = theTime(figures, at, to);
  return figures.moment(at, to).day === undefined ? `a ${told}` : told;
}

/** A sentence that may end in a clock time: `9:40 a.m.` brings its own point. */
export const told = (parts: TemplateStringsArray, ...said: readonly (string | number | undefined)[]): string =>
  String.raw({ raw: parts }, ...said).replaceAll('.m..', '.m.');

/** In Spain a relief is given and taken, elsewhere the shift is. */
export const taking = (say: Spoken, ofRelief: string, ofShift: string): string =>
  byCountry(say, `${ofRelief} el relevo`, `${ofShift} el turno`);

export const handoverLine = (say: Spoken): string => byCountry(say, 'relevo NOMBRE', 'entregar turno NOMBRE');
export const takeoverLine = (say: Spoken): string => byCountry(say, 'tomar relevo', 'recibir turno');

const byCountry = ({ locale }: Spoken, inSpain: string, inAmerica: string): string =>
  locale === 'es-ES' ? inSpain : inAmerica;

/** The line that opens a batch, in the reader's units. */
export const mixExample = (figures: Figures): string =>
  figures.units === 'us' ? 'mezclar 5lb' : `mezclar ${figures.decimal(2.4)}kg`;

/** Who tells without a name is filed under an English word. */
export function spanishWho(name: string): string {
  return name === 'anonymous' ? 'anónimo' : name;
}

/** `queda` before a minute, `quedan` before more. */
export const withMinutes = (one: string, more: string, minutes: number): string =>
  Math.floor(minutes + 1e-6) === 1 ? one : more;

export const capital = (text: string): string => text.replace(/^\p{L}/u, (first) => first.toUpperCase());

/** `1 anotación`, `12 anotaciones`. */
export function counted(count: number, one: string, more: string): string {
  return `${count} ${count === 1 ? one : more}`;
}

/** What is told of a method, by its name in the country of whoever reads it. */
function inAmerica<Told extends string | undefined>(say: Spoken, told: Told, method: Method): Told | string {
  const { name } = spanishMethods[method];
  const here = methodName(say, method);
  return told === undefined ? told : told.replace(name, here).replace(capital(name), capital(here));
}
