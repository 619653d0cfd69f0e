// What is said of taking an act back, in English: which act it is, what rests on it, and why it stays.

import type { ActTold, UndoUnclear } from '../../../../core/corrections/undo-objections.ts';
import type { Entry } from '../../../../core/history.ts';
import type { AmendTarget } from '../../../../core/verbs/correction-verbs.ts';
import { actsAlike } from '../../acts-alike.ts';
import { doneTo } from '../../done-to.ts';
import type { Figures } from '../../figures.ts';
import { englishFact } from './facts.ts';
import { partsNamed } from './parts-in.ts';

/** With what it was done to, where the act itself does not say so. */
function about(entry: Pick<Entry, 'stream' | 'fact'>): string {
  const done = doneTo(entry);
  if (done === undefined) return '';
  const { noun, name } = done;
  switch (noun) {
    case 'batch':
      return `batch ${name}: `;
    case 'can':
      return `can ${name}: `;
    case 'session':
      return `session ${name}: `;
    case 'part':
      return `${name}: `;
    case 'place':
      return `${name}: `;
  }
}

export const englishUndo = {
  /** In half a line. */
  act: (entry: Pick<Entry, 'stream' | 'fact'>, figures: Figures): string =>
    `${about(entry)}${englishFact(entry.fact, figures)}`,
  /** Several, each so; the same of several parts as one. */
  acts: (entries: readonly Pick<Entry, 'stream' | 'fact'>[], figures: Figures): readonly string[] =>
    actsAlike(
      entries,
      (entry) => englishUndo.act(entry, figures),
      (parts) => partsNamed(parts, figures),
    ),
  /** Why a correction stands that came of it. */
  asReason: 'undo',
  /** Of a tap. */
  takeBack: (act: string) => `Take back: ${act}`,
  /** Of a tap that puts an act right. */
  change: (is: string, was: string) => `Change: ${is} instead of ${was}`,
};

/** With the time at which it was done. */
export const actNamed = ({ entry, corrected }: ActTold, figures: Figures): string =>
  `${corrected ? 'the correction of ' : ''}${englishUndo.act(entry, figures)} (${figures.timeDown(entry.happenedAt)})`;

/** The same of several parts, and at the same time, as one. */
function namedAlike(acts: readonly ActTold[], figures: Figures): readonly string[] {
  const times = [...new Set(acts.map(({ entry }) => entry.happenedAt))];
  const isOne = times.length === 1 && acts.length > 1 && acts.every(({ corrected }) => !corrected);
  if (!isOne) return acts.map((each) => actNamed(each, figures));
  const told = englishUndo.acts(
    acts.map(({ entry }) => entry),
    figures,
  );
  return told.map((act) => `${act} (${times.map((at) => figures.timeDown(at)).join('')})`);
}

function amendOf({ verb, batch, can, session, part, place }: AmendTarget): string {
  const what = [batch, can, session, part].find((each) => each !== undefined);
  return ['amend', what, verb, place === undefined ? undefined : `in ${place}`]
    .filter((each) => each !== undefined)
    .join(' ');
}

export function englishUndoUnclear(unclear: UndoUnclear, figures: Figures): string {
  switch (unclear.code) {
    case 'nothing-to-undo':
      return 'There is nothing of yours to undo or put right.';
    case 'undo-too-late': {
      const how =
        unclear.amend === undefined
          ? 'It stays; say anew how it is.'
          : `Correct it with amend: ${amendOf(unclear.amend)}, then what was wrong and why.`;
      return `Undo goes back 8 hours. Your last act is older: ${actNamed(unclear.last, figures)}. ${how}`;
    }
    case 'undo-not-last': {
      if (unclear.named === undefined) return 'That act is not there, or has been taken back already.';
      const { by } = unclear.named.entry;
      if (!unclear.isTheirs) {
        return `That is said by ${by}: ${actNamed(unclear.named, figures)}. Only ${by} takes it back; else correct it with amend.`;
      }
      const since = unclear.last === undefined ? '' : ` Since then you have said: ${actNamed(unclear.last, figures)}.`;
      return `That is not your last act: ${actNamed(unclear.named, figures)}.${since} The latest goes first.`;
    }
    case 'undo-rests': {
      const { later, last } = unclear;
      const what = later.corrected
        ? `${later.entry.by} has corrected it (${figures.timeDown(later.entry.happenedAt)})`
        : `A later entry by ${later.entry.by} rests on it: ${actNamed(later, figures)}`;
      return `Your last act is ${actNamed(last, figures)}. ${what}. Correct it with amend instead.`;
    }
    case 'undo-asks': {
      const acts = figures.list(namedAlike(unclear.acts, figures));
      const rests = figures.list(unclear.rests.map((each) => `${actNamed(each, figures)} by ${each.entry.by}`));
      const resting = rests === '' ? '' : ` On it rests: ${rests}. What rests on it stays, and is judged anew.`;
      return `This would be taken back: ${acts}.${resting} Its clocks and bells go with it.`;
    }
  }
}
