// Taps that ask for figures: the form opens, is filled in, and says its line; what is wrong stands beside its field.

import { createHash } from 'node:crypto';
import type { BoardItem } from '../cards/board-item.ts';
import { inUnitsOf } from '../cards/card-context.ts';
import { blankLine, fieldsIn } from '../cards/tap-fields.ts';
import { fillLine } from '../language/line-fields.ts';
import type { Where } from '../messages/platform.ts';
import { warn } from '../messages/privately.ts';
import { type Moved, movedUnderForm } from '../talk/pressed.ts';
import { answered } from './answering.ts';
import { noCrew } from './arrivals.ts';
import type { Desk } from './crew-desk.ts';
import { answeredInTime, type Filling, type FormAnswer, type Submitted } from './form-answer.ts';
import { type Carried, faultOf, fieldFaults, formView, loadingView, readCarried } from './form-view.ts';
import type { Inbound } from './inbound.ts';
import { openForm } from './open-form.ts';
import type { SlackParts } from './slack-parts.ts';
import { handle } from './speaking.ts';
import { movedUnder, subjectOn, type Tap, usedTap } from './taps.ts';

export type Form = Extract<Inbound, { kind: 'form' }>;

/** Of the card behind the form: the masses wanted, what is allowed. */
const factsShown = 6;

/** Slack gives 3 s to open it: first empty, in the crew's language, then filled for whoever tapped. */
export async function openTapForm(parts: SlackParts, desk: Desk, tap: Tap): Promise<void> {
  const { words: crewWords } = await desk.overview.voice(undefined);
  const title = tap.label.replace(/…$/, '') || crewWords.chat.form.fill;
  await openForm(parts, desk, tap, {
    empty: loadingView(title, crewWords),
    filled: async () => {
      const { words, units } = await desk.voiceOf(tap.where);
      const line = inUnitsOf(tap.line, units);
      const part = await partBehind(parts, desk, tap.line);
      const carried: Carried = {
        ...{ line, label: title, crew: desk.crew, where: tap.where, message: tap.message },
        ...{ place: tap.place, alone: tap.ephemeral, tappedAt: tap.saidAt, lastAct: part?.lastAct },
      };
      const told = part === undefined ? [] : [`${part.name}: ${part.phase}`];
      return formView(carried, fieldsIn(line, words), [...told, ...(await contextOf(parts, desk, tap))], words);
    },
    instead: ({ words, units, figures }) =>
      words.chat.form.typeInstead(blankLine(words.lineShown(inUnitsOf(tap.line, units), figures), words)),
  });
}

/** A form opens without it where the record cannot be read. */
async function contextOf(parts: SlackParts, desk: Desk, tap: Tap): Promise<readonly string[]> {
  const subject = subjectOn(parts, desk, tap);
  if (subject === undefined) return [];
  try {
    const { facts } = (await desk.overview.standing(subject)).card;
    return facts.slice(0, factsShown).map((fact) => `${fact.label}: ${fact.shown}`);
  } catch (error) {
    parts.log.error('form-without-its-card', { id: tap.id, error: String(error) });
    return [];
  }
}

/** The part whose tap this is, as it stands now: with what holds it, which a form may lift. */
async function partBehind(parts: SlackParts, desk: Desk, line: string): Promise<BoardItem | undefined> {
  try {
    const { items } = await desk.overview.board(undefined);
    return items.find(({ lastAct, taps }) => lastAct !== undefined && taps.some((each) => each.line === line));
  } catch (error) {
    parts.log.error('form-without-its-part', { error: String(error) });
    return undefined;
  }
}

/** What was recorded while it was filled in stands on no card that its sender saw. */
async function movedSince(parts: SlackParts, desk: Desk, carried: Carried, where: Where): Promise<Moved> {
  const { line, message, place, alone = false, tappedAt, lastAct } = carried;
  if ((await partBehind(parts, desk, line))?.lastAct !== lastAct) return { is: 'older', now: undefined };
  const tap = { line, where, message, place, saidAt: tappedAt, ephemeral: alone };
  try {
    return movedUnderForm(movedUnder(parts, desk, tap));
  } catch (error) {
    parts.log.error('form-without-its-card', { error: String(error) });
    return { is: 'older', now: undefined };
  }
}

export const submitTapForm = (parts: SlackParts, form: Form, resumed: boolean): Submitted =>
  answeredInTime((filling) => fill(parts, form, filling), resumed);

async function fill(parts: SlackParts, form: Form, { isLate, after }: Filling): Promise<FormAnswer> {
  const carried = readCarried(form.carried);
  const { team, user } = form.where;
  const where = carried === undefined ? form.where : { ...carried.where, team, user };
  const desk = parts.which.deskAt(where, { message: carried?.message, crew: carried?.crew });
  if (carried === undefined || desk === undefined) {
    await noCrew(parts, { ...form, where });
    return { is: 'closed' };
  }
  const voice = await desk.voiceOf(where);
  const { words } = voice;
  const fields = fieldsIn(carried.line, words);
  const errors = fieldFaults(fields, form.values, words);
  if (Object.keys(errors).length > 0) {
    if (isLate()) await warn(parts, where, form.id, voice, words.replies.notClear, Object.values(errors));
    return { is: 'wrong', errors };
  }
  const text = fillLine(carried.line, new Map(Object.entries(form.values)));
  // The same figures sent twice in one form are one act; corrected ones are another.
  const id = `view:${form.view}:${createHash('sha256').update(text).digest('hex').slice(0, 16)}`;
  const pressed = async () => ({ label: carried.label, moved: await movedSince(parts, desk, carried, where) });
  const answer = await handle(parts, desk, { text, where, id, saidAt: form.saidAt, pressed });
  // Whether a part is new, or a decision still meant, is answered by a tap, which no field has.
  const isForTap =
    answer?.code === 'new-part' ||
    answer?.code === 'parts-in' ||
    answer?.code === 'new-place' ||
    answer?.code === 'card-moved';
  if (answer?.kind === 'misread' && !isForTap && !isLate()) {
    return { is: 'wrong', errors: faultOf(answer.card.lines, fields, form.values) };
  }
  if (answer === undefined) return { is: 'closed' };
  const used = await usedTap(desk, answer, where, carried.message, carried.label);
  // The form closes first: what is shown may wait for Slack.
  after(answered(parts, desk, answer, where, form.id, used));
  return { is: 'closed' };
}
