// Parts, their surfaces, films and cures, and the people about them, in Spanish.

import type { CrewUnclear } from '../../../../core/crew/crew-unclear.ts';
import { ownValue } from '../../../../core/own-key.ts';
import type { FilmFinding, FilmRuleNamed } from '../../../../core/part/film-acceptance.ts';
import type { HeatUp } from '../../../../core/part/heat-up.ts';
import type { FilmObjection, LoadUnclear } from '../../../../core/part/part-objections.ts';
import type { Figures } from '../../figures.ts';
import { englishParts } from '../english/parts.ts';
import { spanishRoles } from './chat.ts';
import { spanishMethods } from './methods.ts';
import { atTime, theTime } from './names.ts';
import { spanishRingName } from './rings.ts';

const starts: Readonly<Record<HeatUp['start'], string>> = {
  'part-reading': 'su última lectura',
  surface: 'su superficie, leída antes',
  room: 'el aire de la sala',
  'lowest-of-sheet': 'el aire más frío de la ficha, pues nadie lo leyó',
};

const findings: Readonly<Record<string, string>> = {
  'reading below': 'lectura por debajo',
  'reading above': 'lectura por encima',
  'mean-below': 'media por debajo',
  'reading-below': 'lectura por debajo',
  'reading-above': 'lectura por encima',
  'spot-below': 'punto por debajo',
  'spot-above': 'punto por encima',
  'area-below': 'área por debajo',
  'area-above': 'área por encima',
};

export const spanishParts: typeof englishParts = {
  // As the standards print them, in any language.
  grades: englishParts.grades,
  stages: {
    handle: 'se puede manipular',
    service: 'puede entrar en servicio según la ficha',
    full: 'resistencia completa',
  },
  rubs: { 'no-effect': 'sin efecto', softened: 'se ablanda', through: 'llega a lo de debajo' },
  several: (count) => `${count} piezas: anotadas`,
  detail: (part, known) => `${part}: ${known === '' ? 'aún no se ha dicho nada de ella' : known}`,
  bears: (temperature) => `aguanta ${temperature}`,
  unknownDetails: (parts, what) => `No se sabe de ${parts}: ${what}.`,
  detailNames: { metal: 'metal', wall: 'pared', area: 'área', bears: 'calor que aguanta' },
  prepared: (part, grade) => `${part}: superficie preparada, ${grade}`,
  noSurfaceLife: (sheets) =>
    `${sheets} no dice cuánto dura una superficie preparada: aplicar pronto, y preguntar qué admite el trabajo.`,
  surfaceLifeOf: (sheet) => `Lo que dura, según la ficha de ${sheet}.`,
  surfaceRead: (part) => `${part}: superficie`,
  surfaceNotRead: (parts) =>
    `Falta leer la superficie de ${parts}: sin ella no se sabe el margen sobre el punto de rocío.`,
  surfaceOfPlace: (parts) => `De ${parts} nadie ha leído la superficie; se toma la del lugar.`,
  readSurfaces: 'Antes de cada capa, leer el propio acero: superficie impulsor-7 19C.',
  spreadNeeds: 'Sin el aire de la sala no hay punto de rocío con que comparar.',
  meant: {
    coat: (parts, method, batch) =>
      `Capa en ${parts} (${batch === undefined ? '' : `mezcla ${batch}, `}${spanishMethods[method].name})`,
    prep: (parts) => `Preparada: ${parts}`,
    surface: (part) => `Superficie de ${part}`,
    place: (name) => `${name} es un lugar: su acero`,
    andMore: (names, more) => `${names} y ${more} más`,
    asNew: {
      coat: (parts, isMany) => (isMany ? `Piezas nuevas ${parts}: con su capa` : `Pieza nueva ${parts}: con su capa`),
      prep: (parts, isMany) => (isMany ? `Piezas nuevas ${parts}: preparadas` : `Pieza nueva ${parts}: preparada`),
      surface: (part) => `Pieza nueva ${part}: su superficie`,
    },
  },
  touchedUp: (part, method, batch, pass) =>
    `${part}: pasada ${pass} de la misma capa (${spanishMethods[method].name}, mezcla ${batch})`,
  noOpenTime: 'La ficha no da tiempo abierto: no retocar.',
  estimate: (temperature, start, transfer) =>
    `Estimado, sin medir: desde ${start}, en horno a ${temperature}, pared calentada por las dos caras, ${transfer} W/(m² K) de memoria, sin fuente. Leer la pieza.`,
  noEstimate: 'Sin medir: ese tiempo solo cuenta desde que entró. Leer la propia pieza y decir sonda.',
  notMeasured: (label) => `${label}, estimado, sin medir`,
  askAt: (time) => `Leerla ${atTime(time)}, más o menos.`,
  doors: (count, minutes) =>
    `Puerta abierta ${count === 1 ? 'una vez' : `${count} veces`}${minutes === undefined ? '' : `, ${minutes} en total`}: volver a leer la pieza.`,
  cureNotProved: 'Ninguna lectura comprueba su curado: no está cumplido ni liberada.',
  doorOpened: (parts) => `${parts}: puerta abierta`,
  readOn: (part, others) =>
    `Leído en ${part}, la última en calentarse; vale también para ${others}. Con el nombre de la pieza, la lectura es solo suya.`,
  humidityOutside: (minutes, lowest, highest) =>
    `${minutes} que no cuentan: humedad fuera de lo que pide la ficha, de ${lowest} a ${highest}.`,
  humidityUnknown: (minutes) => `${minutes} que no cuentan: nadie leyó la humedad.`,
  nightHumidity: 'No se leyó la humedad de la noche: se toma la de las lecturas de antes y después.',
  adhesion: (part, rating) => `${part}: adherencia ${rating}`,
  adhesionScale: (rating) =>
    rating.endsWith('B')
      ? 'ASTM D3359 método B: 5B no se levanta nada, 0B más del 65 %.'
      : 'ISO 2409: 0 no se levanta nada, 5 lo peor.',
  rub: (part, count, result) => `${part}: ${count} dobles frotes, ${result}`,
  rubMeaning: 'Que la película aguante el disolvente no basta para darla por curada del todo.',
  coupon: 'En una probeta testigo, no en la pieza.',
  deviationsOn: (count) => `${count === 1 ? 'Hay 1 desviación' : `Hay ${count} desviaciones`} en ella:`,
  deviation: (time, who, what, permitted) =>
    `! ${time} ${who}: ${what}${permitted === undefined ? '' : ` (permitido antes: ${permitted})`}`,
  filmNotRead: 'Nadie ha leído su película seca.',
  film: spanishFilm,
  onShift: (who) => `${who}: entra de turno`,
  offShift: (who) => `${who}: sale de turno`,
  nowOn: (names) => `De turno: ${names}.`,
  nobodyOn: 'Nadie ha dicho que esté de turno.',
  stillRings: (count) =>
    `${count === 1 ? 'Le queda un aviso' : `Le quedan ${count} avisos`}. Dar el relevo: relevo NOMBRE.`,
  handedOver: (to) => `Relevo a ${to}`,
  handoverAll: (to) =>
    `Desde ahora todo lo que está en marcha avisa también a ${to}, y solo a esa persona cuando tome el relevo.`,
  handoverOwn: (to) => `Lo que le avisa a usted avisa también a ${to}, y solo a esa persona cuando tome el relevo.`,
  handoverFrom: (from) => `${from} le da el relevo. Leerlo y decir tomar relevo.`,
  takenOver: (who, from) => `${who} toma el relevo de ${from}`,
  nothingAlive: 'No hay nada en marcha.',
  snoozed: (key) => `Aplazado: ${spanishRingName(key)}`,
  snoozedUntil: (time, who) => `Vuelve a avisar ${atTime(time)}, a ${who}.`,
  ringPutOff: (ring) => `Aviso ${ring}: se había aplazado.`,
  lifted: (who, role, why, reason) => `! Permitido antes por ${who} (${role}): ${why}. ${reason}`,
  roles: spanishRoles,
  curesMorning: (part, time) => `${part}: en curado, avisa ${atTime(time)}`,
  askNight: 'Decir la mínima de la noche: noche 16C.',
  start: (start) => starts[start],
};

export function spanishFilmObjection(objection: FilmObjection, f: Figures): string {
  switch (objection.code) {
    case 'film-drying': {
      const since =
        objection.openUntil === undefined
          ? 'la ficha no da tiempo abierto'
          : `según la ficha admitía otra pasada hasta ${theTime(f.timeDown(objection.openUntil))}`;
      const dry = objection.saidDry ? 'Ya se dijo seca. ' : '';
      return `${dry}La película ha empezado a secarse: ${since}. Un retoque encima no se funde y se despega. Dejarla, y retener la pieza si hay que repararla.`;
    }
    case 'dip-once':
      return `Una sola inmersión: ya se aplicó ${atTime(f.timeDown(objection.coatedAt))}.`;
    case 'surface-life-over':
      return `Preparada ${atTime(f.timeDown(objection.preparedAt))}; según la ficha valía hasta ${theTime(f.timeDown(objection.endedAt))}. Volver a prepararla.`;
  }
}

export function spanishCrewUnclear(unclear: CrewUnclear | LoadUnclear, f: Figures): string {
  switch (unclear.code) {
    case 'no-such-person':
      return `En la cuadrilla nadie se llama ${unclear.person}. Gente: ${f.list(unclear.known)}.`;
    case 'may-not-settle': {
      const whose = { crew: 'la cuadrilla', lead: 'un encargado', supervisor: 'un supervisor' }[unclear.wanted];
      return `Eso lo fija ${whose}: ${f.list(unclear.who)}.`;
    }
    case 'may-not-judge':
      return `Juzgar una mezcla de nuevo es de ${unclear.wanted === 'supervisor' ? 'un supervisor' : 'un encargado'}: ${f.list(unclear.who)}.`;
    case 'handover-to-self':
      return 'Ese nombre es el suyo. Nombrar a quien toma el relevo.';
    case 'nothing-to-take-over':
      return unclear.waitsFor === undefined
        ? 'Nadie le ha dado el relevo. Quien se va dice relevo NOMBRE.'
        : `El relevo es para ${unclear.waitsFor}: quien lo toma lo dice por sí mismo.`;
    case 'not-snoozed':
      return `"${spanishRingName(unclear.key)}" no se aplaza: sigue corriendo, avise o no. Hacerlo, o decir enterado al recibirlo.`;
    case 'which-load':
      return unclear.loads.length === 0
        ? 'No hay nada en el horno. Nombrar la pieza.'
        : `¿Qué carga? En el horno: ${unclear.loads.map((load) => f.list(load)).join('; ')}.`;
  }
}

const capital = (text: string): string => text.replace(/^\p{L}/u, (first) => first.toUpperCase());

/** How the dry film stands by its rule, named. */
export function spanishFilm(finding: FilmFinding, f: Figures): string {
  const rule = finding.is === 'no-rule' ? '' : ruleNamed(finding.rule, f);
  switch (finding.is) {
    case 'no-rule':
      return 'La ficha no da regla para la película seca: son solo datos, y con ellos no se acepta nada.';
    case 'within':
      return `Dentro de la regla: ${rule}.`;
    case 'outside':
      return `Fuera de la regla: ${rule}. ${capital(finding.findings.map((each) => `${ownValue(findings, each.what) ?? each.what}: ${f.film(each.measured)}, límite ${f.film(each.limit)}`).join('; '))}.`;
    case 'cannot-tell':
      return `No se puede decir si está dentro o fuera: ${rule}. Con lo que puede errar el medidor, cae a cualquiera de los dos lados.`;
    case 'too-few':
      return `Pocas lecturas: ${finding.given} de ${finding.needed}, ${rule}.`;
    case 'area-unknown':
      return `${rule} pide lecturas según el área, y nadie ha dicho la de la pieza. Decir pieza NOMBRE 0,8m2.`;
    case 'does-not-apply':
      return `${rule} no se aplica aquí. Una película fina pide la regla propia del trabajo.`;
  }
}

function ruleNamed(rule: FilmRuleNamed, f: Figures): string {
  switch (rule.by) {
    case 'own':
      return `la propia de la ficha, de ${f.film(rule.least)} a ${f.film(rule.most)}, ${rule.readings} lecturas`;
    case 'iso-19840':
      return 'ISO 19840';
    case 'pa-2':
      return `SSPC-PA 2, nivel ${rule.level}`;
  }
}
