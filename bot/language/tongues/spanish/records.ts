// Answers about the past, in Spanish: stretches of days, traces, the solvent ledger, proof, paper.

import type { ThrownWhy } from '../../../../core/records/material.ts';
import type { englishRecords } from '../english/records.ts';
import {
  capital,
  counted,
  methodNamed,
  spanishDay,
  spanishMaterialName,
  spanishSource,
  spanishWho,
  told,
} from './names.ts';
import { spanishRingName } from './rings.ts';
import type { Spoken } from './spoken.ts';

const thrownWhy: Readonly<Record<ThrownWhy, string>> = {
  'left-over': 'sobrante',
  'past-pot-life': 'terminada la vida de la mezcla',
  thick: 'espesa',
  gelled: 'gelificada',
  hot: 'caliente',
};

const rollingYear = 'año móvil';

export const spanishRecords = (say: Spoken): typeof englishRecords => ({
  span: (first, last) =>
    first === last ? `El día entero: ${spanishDay(first)}` : `Del ${spanishDay(first)} al ${spanishDay(last)}`,
  idle: 'En ese tiempo no se anotó nada.',
  noSuchSpan: 'Esos días no existen.',
  yield: (batch, planned, mixed) => `Mezcla ${batch}: previstos ${planned}, mezclados ${mixed}`,
  applied: (batch, applied, area) => `Mezcla ${batch}: aplicados ${applied}${area}`,
  onArea: (area) => ` en ${area}`,
  areaMissing: (count) => ` (${count} sin área conocida)`,
  notSaidLeft: (batch) => `Mezcla ${batch}: nadie ha dicho lo que sobró.`,
  thrown: (batch, mass, why) => `Mezcla ${batch}: ${mass} tirados, ${thrownWhy[why]}`,
  caught: (batch, mass) => `Mezcla ${batch}: ${mass} recogidos y usados otra vez`,
  ratio: (batch, error) => `Mezcla ${batch}: relación ${error}`,
  stir: (batch, wanted, given) => `Mezcla ${batch}: agitación requerida ${wanted}, cumplida ${given}`,
  coated: (part, batch, method, time, by) => `${time} ${part}: ${methodNamed(say, method)}, mezcla ${batch}, por ${by}`,
  released: (parts) => `Liberadas: ${parts}`,
  held: (part, what) => `${part}: ${what}`,
  deviation: (time, by, what) => `! ${time} ${spanishWho(by)}: ${what}`,
  permission: (time, by, what, why) => `! ${time} ${by}, con permiso previo (${why}): ${what}`,
  correction: (time, by, was, is, why) =>
    `Corregido ${time} por ${by}: antes ${was}, ahora ${is}${why === '' ? '' : ` (${why})`}`,
  slowest: (key, minutes) => `Respuesta más lenta: ${spanishRingName(say, key)}, ${minutes}`,
  can: (can, letter, lot, poured, left) =>
    `Lata ${can}: Parte ${letter} lote ${lot}, vertidos ${poured}, quedan ${left}`,
  air: (time, what) => `${time} ${what}`,
  lastHash: (seq, hash) => `Registro hasta la anotación ${seq}: ${hash}`,
  more: (count) => `… y ${count} más; en la exportación está todo.`,
  noPicture: 'No se pudo dibujar el gráfico.',
  picture: (path) => `gráfico: ${path}`,

  tracePart: (part) => `Trazabilidad: ${part}`,
  traceBatch: (batch) => `Trazabilidad: mezcla ${batch}`,
  traceLot: (lot) => `Trazabilidad: lote ${lot}`,
  bookedAs: (what) => `Entró como ${what}`,
  details: { serial: 'serie', job: 'orden', customer: 'cliente', metal: '', wall: 'pared' },
  phase: (phase) => `Está: ${phase}`,
  coat: (number, time, by, method, batch, sheet) =>
    `Capa ${number}: ${time} ${methodNamed(say, method)} por ${by}, mezcla ${batch}, ${sheet}`,
  lot: (letter, lot, can, mass) => `  Parte ${letter}: lote ${lot}, lata ${can}, ${mass}`,
  noLots: '  Lotes: no constan; nadie anotó ninguna lata.',
  airThen: (what) => `  Aire: ${what}`,
  airNotRead: '  Aire: no se leyó a tiempo.',
  airFigures: { air: 'aire', humidity: 'humedad', dewPoint: 'punto de rocío', surface: say.one('substrate') },
  step: (time, by, what) => `${time} ${spanishWho(by)}: ${what}`,
  late: (late) => ` (anotado ${late} después)`,
  judgedBy: (count, editions) =>
    `Juzgado por ${count === 1 ? 'la edición' : 'las ediciones'} ${editions} de las reglas.`,
  steps: 'Pasos',
  onParts: (parts) => `Fue a: ${parts}`,
  onNoPart: 'De momento no ha ido a ninguna pieza.',
  inBatch: (batch, mass, parts) => `Mezcla ${batch}: ${mass}, en ${parts}`,
  noParts: 'ninguna pieza',
  canLeft: (can, letter, sheet, left) => `Lata ${can}: Parte ${letter} ${sheet}, quedan ${left}`,
  partStands: (part, phase) => `${part}: ${phase}`,
  notKnown: 'sin cargar',
  nothingKnown: (what) => `No hay nada anotado de ${what}.`,
  lotLabel: (lot) => `lote ${lot}`,
  batchLabel: (batch) => `mezcla ${batch}`,

  found: (what) => `Encontrado: ${what}`,
  foundNone: (what) => `No hay nada anotado con ${what}.`,
  foundPart: (part, details, phase) => `${part}${details === '' ? '' : ` (${details})`}: ${phase}`,
  foundCan: (can, letter, lot) => `Lata ${can}: Parte ${letter} lote ${lot}`,

  ledger: (first, last) =>
    first === last
      ? `${capital(say.many('solvent'))} y COV: ${spanishDay(first)}`
      : `${capital(say.many('solvent'))} y COV: del ${spanishDay(first)} al ${spanishDay(last)}`,
  ledgerKinds: { coating: 'Recubrimiento', thinner: 'Diluyente', cleaner: 'Limpieza' },
  ledgerRow: (kind, name, amount, voc) => `${kind} ${spanishMaterialName(name)}: ${amount}, COV ${voc}`,
  ledgerContent: (actual, lessExempt) => `  contenido de COV ${actual} real; descontados agua y exentos, ${lessExempt}`,
  ledgerDensity: (density) => `  densidad ${density}`,
  ledgerSolids: (share) => `  sólidos en volumen ${share}`,
  noExempt: 'ninguno: solo exentos',
  ledgerNoFigure: '  Sin dato de COV: cuenta toda su masa, por prudencia.',
  ledgerNoVolume: 'volumen desconocido',
  ledgerDay: (date, voc) => `${spanishDay(date)}: COV ${voc}`,
  ledgerMonth: (month, voc) => `${spanishDay(month)}: COV ${voc}`,
  ledgerRule: `Cuenta todo lo pesado, se tirara o no; ${say.many('solvent')} exentos según 40 CFR 51.100(s). Un estado puede eximir menos.`,
  limit: (per, limit, used, share) => `Límite ${limit} por ${per}: van ${used}, ${share}`,
  limitPer: { day: 'día', month: 'mes', year: rollingYear },
  limitNear: 'Cerca del límite: ya va el 80 % o más.',
  limitOver: 'Por encima del límite que fijó el taller.',
  noLimits: `No hay límite fijado: fijar límite cov ${say.locale === 'es-US' ? '660lb' : '300kg'}/mes.`,
  solventNoted: (material, amount) => `${spanishMaterialName(material)}: anotados ${amount}`,

  exported: (rows) => `Exportado: ${counted(rows, 'anotación', 'anotaciones')}`,
  written: (where) => `Escrito: ${where}`,
  exportHow:
    'Una fila por anotación, horas con su zona, unidades en la cabecera. El texto que una hoja de cálculo tomaría por fórmula lleva un apóstrofo delante.',
  traveller: (what) => `${capital(say.one('traveller'))}: ${what}`,
  travellerNone: (what) => `No hay piezas de la orden ${what}.`,
  pages: (count) => (count === 1 ? 'Una página.' : `${count} páginas.`),

  verified: 'El registro está íntegro',
  broken: 'El registro no cuadra',
  verifiedLines: (events, time) =>
    `${counted(events, 'anotación', 'anotaciones')}, la última de ${time}; cada una da su propia huella y sigue a la anterior.`,
  verifiedEmpty: 'Todavía no hay nada anotado.',
  givenFound: (count) =>
    count === 1
      ? '1 huella dada en un resumen o en una hoja de ruta sigue donde estaba.'
      : `${count} huellas dadas en resúmenes y hojas de ruta siguen donde estaban.`,
  edited: (seq, type, stream) => `La anotación ${seq} (${type}, ${stream}) fue cambiada: ya no da su propia huella.`,
  missing: (from, to) => (from === to ? `Falta la anotación ${from}.` : `Faltan las anotaciones ${from} a ${to}.`),
  replaced: (seq, type, stream) =>
    `La anotación ${seq} (${type}, ${stream}) no sigue a la anterior: en lugar de una de las dos había otra.`,
  tailCut: (endsAt, known) =>
    `El registro acaba en la anotación ${endsAt}, pero se escribieron ${known}: le cortaron el final.`,
  givenDiffers: (seq) => `La huella que se dio de la anotación ${seq} no es la que hay ahora.`,
  hashFound: (hash, seq, time) => told`${hash} está en la anotación ${seq}, escrita ${time}.`,
  hashNotFound: (hash) =>
    `${hash} no está en este registro: le cortaron el final, se hizo de nuevo, o la huella es de otra cuadrilla.`,
  proofLimits: 'Esto muestra cambios posteriores a una huella dada. No puede mostrar lo que nunca se escribió.',

  backedUp: (file) => `Copiado: ${file}`,
  backupStays: 'Queda en la máquina que guarda el registro, en su carpeta «copies».',
  backupHow: 'Para recuperarlo, arranque con la copia: --data y dónde está. Después, verificar.',
  backupFailed: (why) => `No se hizo la copia: ${why}`,
  backupWho: (who) => `Pídasela a: ${who}.`,
  backupRole: `La copia de todo el registro la saca ${say.a('lead')} o un supervisor.`,
  backupName: 'Escriba un nombre de archivo sencillo, letras, cifras, punto y guion: copia viernes.sqlite.',

  keep: 'Cuánto se guarda cada registro, como mínimo',
  keepYears: (what, years, source) => `${what}: ${years} años (${spanishSource(say, source)})`,
  keepUntil: (what, until, source) => `${what}: ${until} (${spanishSource(say, source)})`,
  ledgerHolds: (field, source) => `El libro de disolventes lleva ${field} (${spanishSource(say, source)})`,
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

  pictures: {
    timeline: 'El día por mezcla y pieza',
    air: 'Aire',
    humidity: 'Humedad',
    cure: 'Curado',
    film: 'Lecturas de película',
    humidityAxis: '% HR',
    progressAxis: 'curado cumplido, %',
    progress: 'curado cumplido',
    reading: 'número de lectura',
    airLine: 'aire',
    dewLine: 'punto de rocío',
    surfaceLine: say.one('substrate'),
    partLine: 'pieza',
    roomLine: 'sala',
    limit: 'límite',
    wet: 'húmeda',
    dry: 'seca',
    marks: { coat: 'capa', thick: 'espesa', released: 'liberada', held: 'retenida' },
    bars: {
      stirring: 'agitación',
      induction: 'inducción',
      'pot-life': say.one('pot-life'),
      'flash-off': 'oreo',
      cure: 'curado',
      'can-open': 'destapada',
      spray: say.one('spraying'),
    },
    batch: (name) => `Mezcla ${name}`,
    can: (name) => `Lata ${name}`,
    session: (name) => `Sesión ${name}`,
    empty: 'No hay nada que dibujar.',
  },

  paper: {
    title: capital(say.one('traveller')),
    part: 'Pieza',
    product: 'Producto',
    steps: 'Pasos',
    when: 'Hora',
    who: 'Quién',
    what: 'Qué',
    coats: 'Capas',
    readings: 'Lecturas de película',
    acceptance: 'Aceptación',
    rule: {
      own: `la regla propia ${say.ofThe('sheet')}`,
      'iso-19840': 'ISO 19840',
      'pa-2': 'SSPC-PA 2',
      range: `el espesor ${say.ofThe('sheet')}, sin regla de aceptación nombrada`,
    },
    noRule: 'Para este producto no se nombra regla de aceptación: se dan lecturas, sin dictamen.',
    judged: (rule, least, most, source) =>
      `Según ${rule}: de ${least} a ${most}. Fuente: ${spanishSource(say, source)}.`,
    noReadings: 'No se leyó película seca.',
    readingLine: (state, list) => `Película ${state === 'wet' ? 'húmeda' : 'seca'}: ${list}`,
    statistics: (mean, low, high, count) => `${count} lecturas en seco: media ${mean}, mínima ${low}, máxima ${high}.`,
    deviations: 'Desviaciones y permisos',
    noDeviations: 'Ninguno según el registro.',
    struck: 'Lo corregido consta junto a lo que había, quién lo corrigió y por qué.',
    corrected: (by, time, why) => `corregido ${time} por ${by}${why === '' ? '' : `: ${why}`}`,
    invented: 'Producto inventado: solo para practicar, no para un cliente.',
    released: (by, time) => told`Liberada por ${by}, ${time}.`,
    notReleased: 'Sin liberar.',
    held: (why) => `Retenida${why === '' ? '' : `: ${why}`}.`,
    recordEnd: (seq, hash) => `Registro hasta la anotación ${seq}, SHA-256 ${hash}`,
    printed: (crew, at, f) => `${crew}, impreso ${f.dated(at)}`,
    page: (number, of) => `${number} / ${of}`,
  },
});
