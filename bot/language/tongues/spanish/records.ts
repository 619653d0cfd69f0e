// Answers about the past, in Spanish: stretches of days, traces, the solvent ledger, proof, paper.

import type { ThrownWhy } from '../../../../core/records/material.ts';
import type { Applied } from '../../../../core/who-applied.ts';
import type { englishRecords } from '../english/records.ts';
import { atTime, capital, counted, methodName, spanishMaterialName, spanishWho, told } from './names.ts';
import { spanishPaper, spanishPictures } from './paper.ts';
import { spanishRingName } from './rings.ts';
import { spanishSource } from './sources.ts';
import type { Spoken } from './spoken.ts';
import { spanishComponents } from './weighing.ts';

const thrownWhy: Readonly<Record<ThrownWhy, string>> = {
  'left-over': 'sobrante',
  'past-pot-life': 'terminada la vida de la mezcla',
  thick: 'espesa',
  gelled: 'gelificada',
  hot: 'caliente',
  smoking: 'echando humo',
  bulging: 'hinchada',
};

const limitPer = { day: 'día', month: 'mes', year: 'año móvil' };
const ledgerKinds = { coating: 'Recubrimiento', thinner: 'Diluyente', cleaner: 'Limpieza' };

const appliedBy = (method: string, { person, typedBy }: Applied): string => {
  if (person === undefined) return `${method}, sin decir quién pintó, anotada por ${typedBy}`;
  return `${method} por ${person}${person === typedBy ? '' : `, anotada por ${typedBy}`}`;
};

export const spanishRecords = (say: Spoken): typeof englishRecords => ({
  span: (first, last, figures) =>
    first === last ? `El día entero: ${figures.date(first)}` : `Del ${figures.date(first)} al ${figures.date(last)}`,
  idle: 'En ese tiempo no se anotó nada.',
  noSuchSpan: 'Esos días no existen.',
  yield: (batch, planned, mixed, figures) =>
    `Mezcla ${batch}: previstos ${figures.mass(planned)}, mezclados ${figures.mass(mixed)}`,
  applied: (batch, applied, { area, without }, figures) => {
    const on = area > 0 ? ` en ${figures.area(area)}` : '';
    return `Mezcla ${batch}: aplicados ${figures.mass(applied)}${on}${without > 0 ? ` (${without} sin área conocida)` : ''}`;
  },
  notSaidLeft: (batch) => `Mezcla ${batch}: nadie ha dicho lo que sobró.`,
  thrown: (batch, mass, why, figures) => `Mezcla ${batch}: ${figures.mass(mass)} tirados, ${thrownWhy[why]}`,
  caught: (batch, mass, figures) => `Mezcla ${batch}: ${figures.mass(mass)} recogidos y usados otra vez`,
  ratio: (batch, errorPercent, figures) => `Mezcla ${batch}: relación ${figures.signedPercent(errorPercent)}`,
  stir: (batch, wanted, given, figures) =>
    `Mezcla ${batch}: agitación requerida ${figures.minutesUp(wanted)}, cumplida ${figures.minutesDown(given)}`,
  coated: ({ part, batch, method }, at, applied, figures) =>
    `${figures.timeDown(at)} ${part}: mezcla ${batch}, ${appliedBy(methodName(say, method), applied)}`,
  released: (parts, figures) => `${parts.length === 1 ? 'Liberada' : 'Liberadas'}: ${figures.list(parts)}`,
  held: (part, what) => `${part}: ${what}`,
  deviation: (at, by, what, figures) => `! ${figures.timeDown(at)} ${spanishWho(by)}: ${what}`,
  permission: (at, by, what, why, figures) => `! ${figures.timeDown(at)} ${by}, con permiso previo (${why}): ${what}`,
  correction: ({ at, by, why }, was, is, figures) =>
    `Corregido ${atTime(figures, at)} por ${by}: antes ${was}, ahora ${is}${why === '' ? '' : ` (${why})`}`,
  slowest: (key, minutes, figures) =>
    `Respuesta más lenta: ${spanishRingName(say, key, figures)}, ${figures.minutesUp(minutes)}`,
  can: ({ number, component, lot }, poured, left, figures) =>
    `Lata ${number}: ${spanishComponents[component]} lote ${lot}, vertidos ${figures.mass(poured)}, quedan ${figures.mass(left)}`,
  air: (at, what, figures) => `${figures.timeDown(at)} ${what}`,
  lastHash: (seq, hash) => `Registro hasta la anotación ${seq}: ${hash}`,
  lastHashShort: (seq, hash) => `Registro hasta la anotación ${seq}: verificar ${hash.slice(0, 16)}`,
  more: (count) => `… y ${count} más; en la exportación está todo.`,
  noPicture: 'No se pudo dibujar el gráfico.',
  picture: (path) => `gráfico: ${path}`,

  tracePart: (part) => `Trazabilidad: ${part}`,
  traceBatch: (batch) => `Trazabilidad: mezcla ${batch}`,
  traceLot: (lot) => `Trazabilidad: lote ${lot}`,
  bookedAs: (details, figures) => `Entró como ${figures.list(details)}`,
  details: { serial: 'serie', job: 'orden', customer: 'cliente', metal: '', wall: 'pared' },
  phase: (phase) => `Está: ${phase}`,
  coat: (number, { at, method, batch }, applied, sheet, figures) =>
    `Capa ${number}: ${figures.timeDown(at)} ${appliedBy(methodName(say, method), applied)}, mezcla ${batch}, ${sheet}`,
  lot: ({ number, component, lot }, mass, figures) =>
    `  ${spanishComponents[component]}: lote ${lot}, lata ${number}, ${figures.mass(mass)}`,
  stirredInCan: (given, wanted, figures) =>
    `agitada en la lata ${(given < wanted ? figures.minutesDown : figures.minutesUp)(given)} de ${figures.minutesUp(wanted)}`,
  gasOverIt: (at, open, figures) =>
    told`gas puesto ${atTime(figures, at)}, ${figures.minutesUp(open)} después de destaparla`,
  gasNotTold: 'no consta gas puesto',
  traceCan: ({ number, component, lot }) => `Lata ${number}: ${spanishComponents[component]}, lote ${lot}`,
  canLabel: (can) => `lata ${can}`,
  pouredInto: (batch, mass, figures) => `${figures.mass(mass)} vertidos en la mezcla ${batch}`,
  lotNotGiven: (component) => `  Lote de la ${spanishComponents[component]}: no consta.`,
  noLots: '  Lotes: no constan; nadie anotó ninguna lata.',
  airThen: ({ celsius, relativeHumidityPercent, dewPointCelsius, surfaceCelsius }, figures) => {
    const known = [
      ...(celsius === undefined ? [] : [`aire ${figures.temperature(celsius)}`]),
      ...(relativeHumidityPercent === undefined
        ? []
        : [`${say.one('humidity')} ${figures.percent(relativeHumidityPercent)}`]),
      ...(dewPointCelsius === undefined ? [] : [`${say.one('dew-point')} ${figures.temperature(dewPointCelsius)}`]),
      ...(surfaceCelsius === undefined ? [] : [`${say.one('substrate')} ${figures.temperature(surfaceCelsius)}`]),
    ];
    return known.length === 0 ? '  Aire: no se leyó a tiempo.' : `  Aire: ${figures.list(known)}`;
  },
  step: (at, by, what, late, figures) =>
    `${figures.timeDown(at)} ${spanishWho(by)}: ${what}${late === undefined ? '' : ` (anotado ${figures.minutesUp(late)} después)`}`,
  judgedBy: (editions, figures) =>
    `Juzgado por ${editions.length === 1 ? 'la edición' : 'las ediciones'} ${figures.list(editions.map(String))} de las reglas.`,
  steps: 'Pasos',
  onParts: (parts, figures) =>
    parts.length === 0 ? 'De momento no ha ido a ninguna pieza.' : `Fue a: ${figures.list(parts)}`,
  inBatch: (batch, mass, parts, figures) =>
    `Mezcla ${batch}: ${figures.mass(mass)}, en ${parts.length === 0 ? 'ninguna pieza' : figures.list(parts)}`,
  canLeft: ({ number, component }, sheet, left, figures) =>
    `Lata ${number}: ${spanishComponents[component]} ${sheet}, quedan ${figures.mass(left)}`,
  partStands: (part, stands, figures) => `${part}: ${figures.list(stands)}`,
  notKnown: 'sin cargar',
  nothingKnown: (what) => `No hay nada anotado de ${what}.`,
  lotLabel: (lot) => `lote ${lot}`,
  batchLabel: (batch) => `mezcla ${batch}`,

  found: (what) => `Buscado: ${what}`,
  foundNone: (what) => `No hay nada anotado con ${what}.`,
  foundPart: (part, details, phase, figures) =>
    `${part}${details.length === 0 ? '' : ` (${figures.list(details)})`}: ${phase}`,
  foundCan: ({ number, component, lot }) => `Lata ${number}: ${spanishComponents[component]} lote ${lot}`,

  ledger: (first, last, figures) =>
    first === last
      ? `${capital(say.many('solvent'))} y COV: ${figures.date(first)}`
      : `${capital(say.many('solvent'))} y COV: del ${figures.date(first)} al ${figures.date(last)}`,
  ledgerRow: ({ kind, name, litres, grams, vocGrams }, figures) => {
    const volume = litres === undefined ? 'volumen desconocido' : figures.volume(litres);
    const amount = `${volume}, ${figures.mass(grams)}`;
    return `${ledgerKinds[kind]} ${spanishMaterialName(name)}: ${amount}, COV ${figures.mass(vocGrams)}`;
  },
  ledgerContent: (actual, lessExempt, figures) =>
    `  contenido de COV ${figures.contentUp(actual)} real; descontados agua y exentos, ${lessExempt === undefined ? 'ninguno: solo exentos' : figures.contentUp(lessExempt)}`,
  ledgerDensity: (density, figures) => `  densidad ${figures.contentUp(density)}`,
  ledgerSolids: (percent, figures) => `  sólidos en volumen ${figures.percent(percent)}`,
  ledgerNoFigure: '  Sin dato de COV: cuenta toda su masa, por prudencia.',
  ledgerPart: (label, voc, figures) => `${figures.date(label)}: COV ${figures.mass(voc)}`,
  ledgerRule: (frame) =>
    frame === 'us'
      ? `Cuenta todo lo pesado, se tirara o no; ${say.many('solvent')} exentos según 40 CFR 51.100(s). Un estado puede eximir menos.`
      : `Cuenta todo lo pesado, se tirara o no. Quedan fuera los ${say.many('solvent')} que exime EE. UU. (40 CFR 51.100(s)), la acetona entre ellos: pregunte si aquí cuentan.`,
  limit: ({ grams, per }, used, percent, figures) =>
    `Límite ${figures.mass(grams)} por ${limitPer[per]}: van ${figures.mass(used)}, ${figures.percent(percent)}`,
  limitPer,
  limitNear: 'Cerca del límite: ya va el 80 % o más.',
  limitOver: 'Por encima del límite que fijó el taller.',
  noLimits: (figures) => `No hay límite fijado: fijar límite cov ${figures.units === 'us' ? '660lb' : '300kg'}/mes.`,
  solventNoted: (material, amount, figures) =>
    `${spanishMaterialName(material)}: anotados ${amount.kind === 'mass' ? figures.mass(amount.grams) : figures.volume(amount.litres)}`,

  export: {
    heads: {
      event: 'anotación',
      happened_at: 'ocurrido',
      recorded_at: 'anotado',
      by: 'quién',
      type: 'tipo',
      state: 'estado',
      batch: 'mezcla',
      part: 'pieza',
      can: 'lata',
      place: 'lugar',
      part_a_g: 'parte_a_g',
      part_b_g: 'parte_b_g',
      mass_g: 'masa_g',
      volume_l: 'volumen_l',
      temperature_degC: 'temperatura_C',
      humidity_percent: 'humedad_%',
      film_state: 'película',
      film_um: 'película_um',
      film_mean_um: 'película_media_um',
      film_set: 'película_serie',
      film_spot: 'película_punto',
      film_beside: 'película_junto_al_punto',
      film_left_out_um: 'película_descartadas_um',
      film_base_um: 'película_metal_base_um',
      test: 'ensayo',
      test_result: 'resultado_ensayo',
      method: 'método',
      applied_by: 'aplicada_por',
      cure_way: 'curado_en',
      serial: 'serie',
      job: 'orden',
      customer: 'cliente',
      material: 'material',
      lot: 'lote',
      reason: 'motivo',
      despite: 'pese_a',
      permitted: 'permiso',
      corrected_by: 'corregido_por',
      corrected_at: 'corregido',
      corrected_why: 'corregido_porque',
      hash: 'huella',
      instrument: 'instrumento',
      instrument_checked: 'instrumento_verificado',
      instrument_check: 'instrumento_verificacion',
      instrument_due: 'instrumento_plazo',
    },
    states: {
      ...{ stands: 'vigente', late: 'tardía', corrected: 'corregida', undone: 'anulada' },
      ...{ oven: 'horno', room: 'sala', wet: 'húmeda', dry: 'seca' },
    },
    file: (crew) => (crew === 'crew' ? 'registro' : crew),
  },
  exported: (rows) => `Exportado: ${counted(rows, 'anotación', 'anotaciones')}`,
  written: (where) => `Escrito: ${where}`,
  exportHow:
    'Una fila por anotación, horas con su zona, unidades en la cabecera. El texto que una hoja de cálculo tomaría por fórmula lleva un apóstrofo delante.',
  traveller: (what) => `${capital(say.one('traveller'))}: ${what}`,
  travellerNone: (what) => `No hay piezas de la orden ${what}.`,
  pages: (count) => (count === 1 ? 'Una página.' : `${count} páginas.`),

  verified: 'El registro está íntegro',
  broken: 'El registro no cuadra',
  verifiedLines: (events, at, figures) =>
    `${counted(events, 'anotación', 'anotaciones')}, la última: ${figures.timeDown(at)}; cada una da su propia huella y sigue a la anterior.`,
  verifiedEmpty: 'Todavía no hay nada anotado.',
  givenFound: (count) =>
    count === 1
      ? `1 huella dada en un resumen o en ${say.a('traveller')} sigue donde estaba.`
      : `${count} huellas dadas en resúmenes y ${say.many('traveller')} siguen donde estaban.`,
  edited: (seq, type, stream) => `La anotación ${seq} (${type}, ${stream}) fue cambiada: ya no da su propia huella.`,
  missing: (from, to) => (from === to ? `Falta la anotación ${from}.` : `Faltan las anotaciones ${from} a ${to}.`),
  replaced: (seq, type, stream) =>
    `La anotación ${seq} (${type}, ${stream}) no sigue a la anterior: en lugar de una de las dos había otra.`,
  tailCut: (endsAt, known) =>
    `El registro acaba en la anotación ${endsAt}, pero se escribieron ${known}: le cortaron el final.`,
  givenDiffers: (seq) => `La huella que se dio de la anotación ${seq} no es la que hay ahora.`,
  hashFound: (hash, seq, at, figures) => told`${hash} está en la anotación ${seq}, escrita ${figures.timeDown(at)}.`,
  hashNotFound: (hash) =>
    `${hash} no está en este registro: le cortaron el final, se hizo de nuevo, o la huella es de otro registro.`,
  proofLimits: 'Esto muestra cambios posteriores a una huella dada. No puede mostrar lo que nunca se escribió.',

  backedUp: (file) => `Copiado: ${file}`,
  backupStays: 'Queda en la máquina que guarda el registro, en su carpeta «copies».',
  backupHow: 'Para recuperarlo, arranque con la copia: --data y dónde está. Después, verificar.',
  backupFailed: (why) => `No se hizo la copia: ${why}`,
  backupWho: (who, figures) => `Pídasela a: ${figures.list(who)}.`,
  backupRole: `La copia de todo el registro la saca ${say.a('lead')} o un supervisor.`,
  backupName: 'Escriba un nombre de archivo sencillo, letras, cifras, punto y guion: copia viernes.sqlite.',

  keep: 'Cuánto se guarda cada registro, como mínimo',
  keepYears: (what, years, source) => `${what}: ${years} años (${spanishSource(say, source)})`,
  keepUntil: (what, until, source) => `${what}: ${until} (${spanishSource(say, source)})`,
  ledgerHolds: (field, source) => `El libro de ${say.many('solvent')} lleva ${field} (${spanishSource(say, source)})`,
  ledgerFields: {
    name: 'el nombre de cada material',
    volume: 'su volumen',
    'volume-solids': 'sus sólidos en volumen',
    density: 'su densidad',
    'voc-less-exempt': 'su contenido de COV descontados agua y exentos',
    'voc-actual': 'su contenido real de COV',
  },
  keepRule: `Aquí nunca se borra nada. Leído en la edición de 2015${say.locale === 'es-US' ? '' : ', de EE. UU.'}: mire el texto vigente, y el permiso propio del taller.`,
  kept: {
    'solvent-use': 'Consumo de recubrimientos, diluyentes y limpieza, los 2 primeros años en el taller',
    'voc-district-log': 'Libro mensual de COV de un distrito',
    'voc-state-records': 'Registros de COV de un estado',
    'painter-training': `La ${say.one('training')} vale`,
    'fit-test': 'Prueba de ajuste del equipo respiratorio',
    exposure: 'Registros de exposición de las personas',
    medical: 'Registros médicos de las personas, desde que se van',
    'substance-identity': 'Qué sustancia se usó, dónde y cuándo',
    'coating-record': 'El registro de recubrimiento de una pieza',
  },
  keptUntil: {
    'fit-test': 'hasta la siguiente',
    'coating-record': 'el plazo del contrato y su garantía; no se encontró una cifra',
  },

  pictures: spanishPictures(say),
  paper: spanishPaper(say),
});
