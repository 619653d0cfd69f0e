// Taps that ask for figures: the form opens, is filled in, and says its line; what is wrong stands beside its field.

import { createHash } from 'node:crypto';
import type { StreamId } from '../../core/ids.ts';
import type { Log } from '../../core/ports.ts';
import type { Answer } from '../answer.ts';
import { fieldsIn, fillLine } from '../cards/tap-fields.ts';
import { inUnitsOf } from '../cards/tap-units.ts';
import type { Desk } from './desk.ts';
import { answeredInTime, type FormAnswer } from './form-answer.ts';
import { type Carried, faultOf, fieldFaults, formView, loadingView, readCarried } from './form-view.ts';
import type { Inbound, Where } from './inbound.ts';
import type { Pace } from './sender.ts';
import type { Call } from './slack-client.ts';
import { openedView } from './view-opened.ts';
import type { WhichCrew } from './which-crew.ts';

export type Form = Extract<Inbound, { kind: 'form' }>;
export type Tap = Extract<Inbound, { kind: 'tap' }>;

/** What was tapped on which message, for what then stands in place of its buttons. */
export interface Used {
  readonly ts: string;
  readonly channel: string;
  readonly outcome: string;
}

export interface Said {
  readonly text: string;
  readonly where: Where;
  /** Of the delivery, for the record. */
  readonly id: string;
  readonly saidAt: number | undefined;
}

export interface FormsNeeds {
  readonly which: WhichCrew;
  readonly call: Call;
  readonly pace: Pace;
  readonly log: Log;
  readonly handle: (desk: Desk, said: Said) => Promise<Answer | undefined>;
  readonly subjectOn: (tap: Tap) => StreamId | undefined;
  readonly usedTap: (
    desk: Desk,
    answer: Answer,
    where: Where,
    ts: string | undefined,
    label: string,
  ) => Promise<Used | undefined>;
  readonly answered: (desk: Desk, answer: Answer, where: Where, id: string, used?: Used) => void;
  readonly noCrew: (inbound: Inbound) => Promise<void>;
}

/** Of the card behind the form: the masses wanted, what is allowed. */
const factsShown = 6;

export function createForms(needs: FormsNeeds) {
  const { which, call, pace, log } = needs;

  /** Slack gives 3 s to open it: first empty, in the crew's language, then filled for whoever tapped. */
  async function open(desk: Desk, tap: Tap): Promise<void> {
    const { words: crewWords } = await desk.overview.voice(undefined);
    const title = tap.label.replace(/…$/, '') || crewWords.chat.form.fill;
    const view = await openedView(call, tap.trigger, loadingView(title, crewWords));
    if (view === undefined) return log.error('form-not-opened', { id: tap.id });
    const { words, units } = await desk.overview.voice(await desk.roster.personOf(tap.where.team, tap.where.user));
    const line = inUnitsOf(tap.line, units);
    const carried: Carried = { line, label: title, where: tap.where, message: tap.message };
    const subject = needs.subjectOn(tap);
    const facts = subject === undefined ? [] : (await desk.overview.standing(subject)).card.facts;
    const context = facts.slice(0, factsShown).map((fact) => `${fact.label}: ${fact.shown}`);
    const filled = formView(carried, fieldsIn(line, words), context, words);
    const updated = await call('views.update', { view_id: view, view: filled });
    if (updated.kind !== 'done') log.error('form-not-filled', { id: tap.id, outcome: updated.kind });
  }

  const submit = (form: Form, resumed = false): Promise<FormAnswer> =>
    answeredInTime(
      (isLate) =>
        fill(form, isLate).catch((error: unknown): FormAnswer => {
          log.error('form-not-answered', { id: form.id, error: String(error) });
          return { is: 'closed' };
        }),
      pace,
      resumed,
    );

  async function fill(form: Form, isLate: () => boolean): Promise<FormAnswer> {
    const carried = readCarried(form.carried);
    const { team, user } = form.where;
    const where = carried === undefined ? form.where : { ...carried.where, team, user };
    const desk = which.deskAt(where);
    if (carried === undefined || desk === undefined) {
      await needs.noCrew({ ...form, where });
      return { is: 'closed' };
    }
    const { words } = await desk.overview.voice(await desk.roster.personOf(team, user));
    const fields = fieldsIn(carried.line, words);
    const errors = fieldFaults(fields, form.values, words);
    if (Object.keys(errors).length > 0) return { is: 'wrong', errors };
    const text = fillLine(carried.line, new Map(Object.entries(form.values)));
    // The same figures sent twice in one form are one act; corrected ones are another.
    const id = `view:${form.view}:${createHash('sha256').update(text).digest('hex').slice(0, 16)}`;
    const answer = await needs.handle(desk, { text, where, id, saidAt: undefined });
    if (answer?.kind === 'misread' && !isLate()) {
      return { is: 'wrong', errors: faultOf(answer.card.lines, fields, form.values) };
    }
    if (answer === undefined) return { is: 'closed' };
    const used = await needs.usedTap(desk, answer, where, carried.message, carried.label);
    // The form closes first: what is shown may wait for Slack.
    needs.answered(desk, answer, where, form.id, used);
    return { is: 'closed' };
  }

  return { open, submit };
}
