// A tap that would put an act right, worded as what it changes: what stands, and what would stand in its place.

import type { Entry } from '../../core/history.ts';
import { entriesIn } from '../../core/shop.ts';
import { wouldLeave } from '../../core/would-leave.ts';
import type { ActMeant } from '../language/reading.ts';
import type { Telling } from './card-context.ts';
import { wasAndIs } from './corrected.ts';

const takingBack = /^undo entry (\d+)(?:; (.*))?$/u;

/** `anew`: the act that is said in place of one that is taken back, in words. `undefined` where nothing is put right. */
export function correctionMeant(
  telling: Telling,
  line: string,
  { command, at = telling.now }: ActMeant,
  anew: string | undefined,
) {
  const { words, figures } = telling;
  const [, taken, instead] = takingBack.exec(line) ?? [];
  if (taken !== undefined) {
    const was = entryOf(telling, Number(taken));
    if (was === undefined) return undefined;
    const act = words.undo.act(was, figures);
    return instead === undefined
      ? words.undo.takeBack(act)
      : words.undo.change(anew ?? words.lineShown(instead, figures), act);
  }
  const [event, there] = command.verb === 'amend' ? wouldLeave(telling, command, at) : [];
  if (event?.body.type !== 'Amended') return undefined;
  const was = entryOf(telling, event.body.amends);
  if (was === undefined) return undefined;
  // A coat that is told of another part or pot.
  if (there?.body.type === 'CoatApplied') {
    const { appliedBy } = was.fact.type === 'CoatApplied' ? was.fact : there.body;
    const moved = { stream: there.streams[0], fact: { ...there.body, appliedBy, toldOf: undefined } };
    return words.undo.change(words.undo.act(moved, figures), words.undo.act(was, figures));
  }
  if (event.body.to.kind !== 'corrected') return undefined;
  const change = wasAndIs(telling, was, event.body.to);
  return words.undo.change(change.is, change.was);
}

const entryOf = ({ shop }: Telling, seq: number): Entry | undefined =>
  entriesIn(shop, (entry) => entry.seq === seq).at(0);
