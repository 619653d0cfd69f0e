// What is said of taking an act back, in Spanish: which act it is, what rests on it, and why it stays.

import type { ActTold, UndoUnclear } from '../../../../core/corrections/undo-objections.ts';
import type { Entry } from '../../../../core/history.ts';
import type { AmendTarget } from '../../../../core/verbs/correction-verbs.ts';
import { actsAlike } from '../../acts-alike.ts';
import { doneTo } from '../../done-to.ts';
import type { Figures } from '../../figures.ts';
import type { Words } from '../english/sentences.ts';
import { spanishFact } from './facts.ts';
import { spanishPlace } from './names.ts';
import { partsNamed } from './parts-in.ts';
import type { Spoken } from './spoken.ts';
import { spanishVerbs } from './verbs.ts';

/** With what it was done to, where the act itself does not say so. */
function about(entry: Pick<Entry, 'stream' | 'fact'>): string {
  const done = doneTo(entry);
  if (done === undefined) return '';
  const { noun, name } = done;
  switch (noun) {
    case 'batch':
      return `mezcla ${name}: `;
    case 'can':
      return `lata ${name}: `;
    case 'session':
      return `sesión ${name}: `;
    case 'part':
      return `${name}: `;
    case 'place':
      return `${spanishPlace(name)}: `;
  }
}

export const spanishUndo = (say: Spoken): Words['undo'] => ({
  act: (entry, figures) => actTold(say, entry, figures),
  acts: (entries, figures) => actsTold(say, entries, figures),
  asReason: 'deshacer',
  takeBack: (act) => `Anular: ${act}`,
  change: (is, was) => `Cambiar: ${is} en vez de ${was}`,
});

const actTold = (say: Spoken, entry: Pick<Entry, 'stream' | 'fact'>, figures: Figures): string =>
  `${about(entry)}${spanishFact(say, entry.fact, figures)}`;

const actsTold = (
  say: Spoken,
  entries: readonly Pick<Entry, 'stream' | 'fact'>[],
  figures: Figures,
): readonly string[] =>
  actsAlike(
    entries,
    (entry) => actTold(say, entry, figures),
    (parts) => partsNamed(parts, figures),
  );

/** Con la hora a la que se hizo. */
export const actNamed = (say: Spoken, { entry, corrected }: ActTold, figures: Figures): string =>
  `${corrected ? 'la corrección de ' : ''}${actTold(say, entry, figures)} (${figures.timeDown(entry.happenedAt)})`;

/** Lo mismo de varias piezas, y a la misma hora, de una vez. */
function namedAlike(say: Spoken, acts: readonly ActTold[], figures: Figures): readonly string[] {
  const times = [...new Set(acts.map(({ entry }) => entry.happenedAt))];
  const isOne = times.length === 1 && acts.length > 1 && acts.every(({ corrected }) => !corrected);
  if (!isOne) return acts.map((each) => actNamed(say, each, figures));
  const entries = acts.map(({ entry }) => entry);
  return actsTold(say, entries, figures).map((act) => `${act} (${times.map((at) => figures.timeDown(at)).join('')})`);
}

function amendOf({ verb, batch, can, session, part, place }: AmendTarget): string {
  const what = [batch, can, session, part].find((each) => each !== undefined);
  return ['corregir', what, spanishVerbs[verb].words[0] ?? verb, place === undefined ? undefined : `en ${place}`]
    .filter((each) => each !== undefined)
    .join(' ');
}

export function spanishUndoUnclear(say: Spoken, unclear: UndoUnclear, figures: Figures): string {
  switch (unclear.code) {
    case 'nothing-to-undo':
      return 'No hay nada suyo que deshacer ni corregir.';
    case 'undo-too-late': {
      const how =
        unclear.amend === undefined
          ? 'Se queda así; diga de nuevo cómo está.'
          : `Escriba: ${amendOf(unclear.amend)}, y después qué estaba mal y por qué.`;
      return `Solo se deshace lo de las últimas 8 horas. Su última anotación es más antigua: ${actNamed(say, unclear.last, figures)}. ${how}`;
    }
    case 'undo-not-last': {
      if (unclear.named === undefined) return 'Esa anotación no está, o ya se ha anulado.';
      const { by } = unclear.named.entry;
      if (!unclear.isTheirs) {
        return `Eso lo anotó ${by}: ${actNamed(say, unclear.named, figures)}. Solo lo deshace ${by}; si no, escriba corregir.`;
      }
      const since = unclear.last === undefined ? '' : ` Después anotó: ${actNamed(say, unclear.last, figures)}.`;
      return `Esa no es su última anotación: ${actNamed(say, unclear.named, figures)}.${since} Primero se deshace la última.`;
    }
    case 'undo-rests': {
      const { later, last } = unclear;
      const what = later.corrected
        ? `Ya la corrigió ${later.entry.by} (${figures.timeDown(later.entry.happenedAt)})`
        : `Hay una anotación posterior de ${later.entry.by} que se apoya en ella: ${actNamed(say, later, figures)}`;
      return `Su última anotación es ${actNamed(say, last, figures)}. ${what}. Escriba corregir.`;
    }
    case 'undo-asks': {
      // Each has commas of its own.
      const acts = namedAlike(say, unclear.acts, figures).join('; ');
      const rests = unclear.rests.map((each) => `${actNamed(say, each, figures)}, de ${each.entry.by}`).join('; ');
      const resting =
        rests === '' ? '' : ` En ello se apoya: ${rests}. Lo que se apoya en ello se queda, y se juzga de nuevo.`;
      return `Se anularía: ${acts}.${resting} Sus relojes y avisos se van con ello.`;
    }
  }
}
