// Names that the record holds in one English spelling, as a Spanish reader is shown them. What is not listed is somebody's
// own name for a thing and stays as it is.

import { type SolventId, solvents } from '../../../../core/calc/solvents.ts';
import type { ObjectionCode } from '../../../../core/objections.ts';
import { ownValue } from '../../../../core/own-key.ts';
import type { FigureSourceId } from '../../../../core/session/brief-lines.ts';
import type { EmergencyField } from '../../../../core/session/session-commands.ts';
import type { VocabularyName } from '../../vocabulary.ts';
import type { english } from '../english/sentences.ts';
import { spanishMethods } from './methods.ts';
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

const solventNames: Readonly<Record<SolventId, string>> = {
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

const rules: Readonly<Record<ObjectionCode, string>> = {
  'air-needed': 'falta leer el aire',
  'air-outside': 'aire fuera de la ficha',
  'more-than-sheet-mixes': 'más de lo que la ficha mezcla',
  'already-weighed': 'ya pesada',
  'not-weighed': 'sin pesar',
  'ratio-out': 'relación fuera de tolerancia',
  'already-filtered': 'ya filtrada',
  'already-released': 'ya liberada',
  'stirrer-off': 'agitador parado',
  'blend-not-done': 'agitado o inducción sin terminar',
  'not-filtered': 'sin filtrar',
  'past-pot-life': 'vida útil pasada',
  'pot-dead': 'mezcla espesa, gelificada o caliente',
  'pot-empty': 'mezcla vaciada',
  'method-not-on-sheet': 'método que no está en la ficha',
  'recoat-forbidden': 'repintado prohibido',
  'recoat-too-early': 'repintado antes de tiempo',
  'recoat-too-late': 'repintado fuera de plazo',
  'not-coated': 'sin capa',
  'flash-off-not-over': 'oreo sin terminar',
  'not-dry': 'sin secar al tacto',
  'hotter-than-part-bears': 'más calor del que aguanta la pieza',
  'no-such-cure': 'curado que no está en la ficha',
  'oven-outside-sheet': 'horno fuera de la ficha',
  'already-curing': 'ya en curado',
  'not-curing': 'no está en curado',
  'cure-not-given': 'tiempo de curado sin cumplir',
  'on-hold': 'retenida',
  'film-outside': 'película seca fuera de su regla',
  'adhesion-failed': 'adherencia que no pasa',
  'rubbed-through': 'película que cede al frotar',
  'film-drying': 'película que ya se seca',
  'dip-once': 'una sola inmersión',
  'surface-life-over': 'superficie pasada de plazo',
  'no-gas': 'sin gas a mano',
  'can-expired': 'lote caducado',
  'can-discarded': 'lata desechada',
  'can-doubtful': 'lata en duda',
  'check-by-lead': 'la revisa un encargado',
  'more-than-can-holds': 'más de lo que queda en la lata',
  'can-of-other-sheet': 'lata de otro producto',
  'part-a-not-stirred': 'Parte A sin agitar en su lata',
  'weighed-twice': 'pesada dos veces',
  'b-before-a': 'B antes que A',
  'adding-not-on-sheet': 'la ficha no habla de añadir',
  'added-too-late': 'añadido tarde',
  'adding-passes-most': 'con lo añadido, más de lo que admite la ficha',
  'vessel-too-small': 'recipiente pequeño',
  'caught-not-filtered': 'recogida sin filtrar otra vez',
  'no-brief': 'sin charla previa',
  'brief-lapsed': 'charla caducada',
  'brief-not-acknowledged': 'charla sin leer',
  'inside-vessel': 'dentro de un tanque',
  'may-not-spray': 'fuera de la lista de pintores',
  'no-extraction-no-air': 'sin extracción ni aire suministrado',
  'fan-not-measured': 'extracción sin medir',
  'fan-too-weak': 'extracción insuficiente',
  'gear-not-flushed': 'equipo sin lavar',
  'rags-not-canned': 'trapos fuera de su bote',
};

const emergencyFields: Readonly<Record<EmergencyField, string>> = {
  call: 'teléfono',
  eyes: 'ojos',
  spill: 'derrame',
  fire: 'fuego',
  down: 'caído',
  hot: 'caliente',
};

const sources: Readonly<Record<string, string>> = {
  'common practice, no source': 'práctica común, sin fuente',
  'invented for the demo': 'inventado para la demostración',
  "a California district's monthly log form": 'el libro mensual de un distrito de California',
  'Maine chapter 129, 7': 'Maine, capítulo 129, 7',
  "29 CFR 1910.146; the employer's confined-space permit":
    '29 CFR 1910.146; permiso de la empresa para espacios confinados',
};

const figureSources: Readonly<Record<FigureSourceId, string>> = {
  lel: '29 CFR 1910.94(c)(6)(ii); un cuarto del límite, o la parte más estricta que haya fijado la cuadrilla',
  exposure:
    'vapor entre el límite diario publicado más bajo (29 CFR 1910.1000, guía de bolsillo de NIOSH), por el factor de mezcla de aire',
  fan: 'frente abierto por velocidad medida',
  face: '29 CFR 1910.107(b)(5)(i)',
  oven: '440 ft³/min por galón de EE. UU. (NFPA 86, de memoria), o el dato propio del disolvente si pide más',
  purge: '20,9 exp(-v/V), bien mezclado; 19,5 %: 29 CFR 1910.146(b)',
  settled: 'el argón pesa 1,38 veces lo que el aire (gas ideal) y se queda en los fosos',
  flush: '29 CFR 1910.107(g)(5)',
};

/** Of each row so many words as a phone shows in a line or two; many more are understood. */
const wordsShown = 6;

/** Words and example of a row as a Spanish reader may type them. */
export const spanishTyped = {
  words: (name: VocabularyName): readonly string[] => spanishVerbs[name].words.slice(0, wordsShown),
  example: (name: VocabularyName): string => spanishVerbs[name].example,
};

/** What is quoted of a sheet stays as it is. */
export function spanishSource(source: string): string {
  return ownValue(sources, source) ?? source.replaceAll(/(?<=\)) and (?=\d|\()/g, ' y ');
}

export const spanishNames: typeof english.names = {
  method: (method) => spanishMethods[method].name,
  methodTip: (method) => spanishMethods[method].tip,
  place: spanishPlace,
  metal: (metal) => ownValue(metals, metal) ?? metal,
  solvent: (id) => solventNames[id],
  rule: (code) => rules[code],
  emergencyField: (field) => emergencyFields[field],
  figureSource: (id) => figureSources[id],
  source: spanishSource,
};

/** Where the method comes as plain text. */
export function spanishMethod(method: string): string {
  return ownValue<{ readonly name: string }>(spanishMethods, method)?.name ?? method;
}

const emergencyWords: Readonly<Record<string, string>> = emergencyFields;

export function spanishEmergencyWord(field: string): string {
  return ownValue(emergencyWords, field) ?? field;
}

const solventsById: Readonly<Record<string, string>> = solventNames;
/** The ledger names a solvent by its id or as the table prints it. */
const materialNames: ReadonlyMap<string, string> = new Map(
  Object.entries(solvents).flatMap(([id, { name }]) => {
    const shown = ownValue(solventsById, id) ?? name;
    return [[id, shown] as const, [name, shown] as const];
  }),
);

/** A solvent by its name in the record, else the shop's own name. */
export function spanishMaterialName(material: string): string {
  return materialNames.get(material) ?? material;
}

/** `las 13:52`, `la 01:10`, and with its date `el mar 3 mar 10:30`: after `desde` and `hasta`. */
export function theTime(time: string): string {
  if (/^0?1:/.test(time)) return `la ${time}`;
  return /^\d/.test(time) ? `las ${time}` : `el ${time}`;
}

/** `a las 13:52`, `a la 01:10`, and with its date `el mar 3 mar 10:30`. */
export function atTime(time: string): string {
  return /^\d/.test(time) ? `a ${theTime(time)}` : theTime(time);
}

const months = ['ene', 'feb', 'mar', 'abr', 'may', 'jun', 'jul', 'ago', 'sep', 'oct', 'nov', 'dic'];

/** `2 mar 2026` from `2026-03-02`, `mar 2026` from `2026-03`; anything else as it is. */
export function spanishDay(date: string): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})(?:-(\d{2}))?$/.exec(date) ?? [];
  const name = months[Number(month) - 1];
  if (year === undefined || name === undefined) return date;
  return day === undefined ? `${name} ${year}` : `${Number(day)} ${name} ${year}`;
}

/** Who tells without a name is filed under an English word. */
export function spanishWho(name: string): string {
  return name === 'anonymous' ? 'anónimo' : name;
}

/** `queda 1 min`, `quedan 12 min`: the verb by the amount after it. */
export function withAmount(one: string, more: string, amount: string): string {
  return `${/^1 [a-z]+$/i.test(amount) ? one : more} ${amount}`;
}

/** `1 anotación`, `12 anotaciones`. */
export function counted(count: number, one: string, more: string): string {
  return `${count} ${count === 1 ? one : more}`;
}
