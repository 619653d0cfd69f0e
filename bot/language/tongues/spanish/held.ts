// Of held parts, in Spanish.

import type { DispositionTelling } from '../../../../core/disposition.ts';
import type { FactOf } from '../../../../core/history.ts';
import type { HoldObjection } from '../../../../core/part/part-objections.ts';
import type { Figures } from '../../figures.ts';
import type { englishHeld } from '../english/held.ts';
import { spanishRecalls } from './recalls.ts';
import type { Spoken } from './spoken.ts';

const asked: Readonly<Record<DispositionTelling, string>> = {
  why: 'el motivo',
  person: 'quién del cliente la acepta como está',
  document: 'el documento que lo dice',
  date: 'su fecha, no posterior a hoy',
  to: 'si vuelve al cliente o al proveedor',
};

const back = { customer: ' al cliente', supplier: ' al proveedor' };

export const spanishHeld = (say: Spoken): typeof englishHeld => ({
  recalls: spanishRecalls,
  seenTo: (owners, toDo, figures) =>
    `${owners.length === 0 ? 'Nadie responde de ella' : `${owners.length === 1 ? 'Responde' : 'Responden'} ${figures.list([...owners])}`}${toDo === undefined ? '' : `: ${toDo}`}`,
  assigned: (part) => `${part}: quién responde de su retención`,
  toType: (part) =>
    `Para decidir sobre ${part}, escriba retrabajar, concesión, chatarra o devolver, con su nombre y el motivo; o liberar ${part} permiso retención, y por qué.`,
  nothingLeft: 'Ya no queda nada retenido de lo suyo.',
  titles: {
    rework: (part) => `${part}: a retrabajar`,
    concession: (part) => `${part}: liberada por concesión`,
    scrap: (part) => `${part}: a chatarra`,
    return: (part) => `${part}: devuelta`,
  },
  told: (why) => `Motivo: ${why}`,
  stripIt: `Ahora: quite la capa vieja, pues ${say.the('sheet')} no admite nada encima; prepárela y aplique de nuevo.`,
  abradeIt: `Ahora: decápela o líjela, y aplique de nuevo dentro de lo que admite ${say.the('sheet')}.`,
  startsAnew: 'Sus capas anteriores siguen en el historial. Para liberarla cuenta solo lo que se dé desde ahora.',
  earlier: (coats) => `Capas antes de retrabajarla: ${coats}`,
  nothingMore: 'No se le pide nada más, y no suena más.',
  concession: ({ person, document, date, by, at }, figures) =>
    `Por concesión del cliente: ${person}, ${document}, con fecha ${figures.date(date)} (${by}, ${figures.timeDown(at)}).`,
  disposed: (verdict, figures) =>
    `${verdict.is === 'scrapped' ? 'A chatarra' : `Devuelta${verdict.to === undefined ? '' : back[verdict.to]}`}, por ${verdict.by}, ${figures.timeDown(verdict.at)}: ${verdict.why}.`,
  retestStands: `Lo que falló antes sigue en pie: lo levanta ${say.a('lead')}, o mide otra vez con repetición y el motivo.`,
  retestAsks: 'Lo que falló antes sigue en pie. Si esta lectura vale en su lugar, dígalo con repetición y el motivo.',
  eachNamed: 'Cada cosa pide su propio motivo.',
});

export function spanishHoldObjection(objection: HoldObjection, figures: Figures): string {
  switch (objection.code) {
    case 'not-on-hold':
      return 'No está retenida.';
    case 'disposed':
      return `${objection.is === 'scrapped' ? 'Fue a chatarra' : 'Se devolvió'}, por ${objection.by}, ${figures.timeDown(objection.at)}. Para trabajarla al final, se decide retrabajar y el motivo.`;
    case 'not-told':
      return `Falta decir: ${figures.list(objection.lacking.map((telling) => asked[telling]))}.`;
  }
}

export const spanishAssigned = ({ owner, toDo }: Pick<FactOf<'HoldAssigned'>, 'owner' | 'toDo'>): readonly string[] => [
  ...(owner === undefined ? [] : [`responde ${owner}`]),
  ...(toDo === undefined ? [] : [`hay que: ${toDo}`]),
];

export function spanishDisposed(
  { as, why, to, person = '', document = '', date }: FactOf<'PartDisposed'>,
  figures: Figures,
): string {
  switch (as) {
    case 'rework':
      return `a retrabajar: ${why}`;
    case 'concession':
      return `se acepta como está por concesión: ${person}, ${document}${date === undefined ? '' : `, con fecha ${figures.date(date)}`}`;
    case 'scrap':
      return `a chatarra: ${why}`;
    case 'return':
      return `devuelta${to === undefined ? '' : back[to]}: ${why}`;
  }
}

/** Behind a reading. */
export const spanishRetest = ({ retest }: { readonly retest?: string | undefined }): string =>
  retest === undefined ? '' : `, repetición: ${retest}`;
