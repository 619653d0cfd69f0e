// Takes what was said, tapped or filled in to the crew's host, and its answer to where it belongs.

import type { StreamId } from '../../core/ids.ts';
import type { Log, Postbox } from '../../core/ports.ts';
import { epochMs } from '../../core/units.ts';
import type { Answer } from '../answer.ts';
import { cardMessage } from './card-blocks.ts';
import type { Desk } from './desk.ts';
import type { FormAnswer } from './form-answer.ts';
import { createForms, type Form, type Said, type Tap, type Used } from './forms.ts';
import type { Homes } from './homes.ts';
import type { Inbound, Where } from './inbound.ts';
import type { Outbox } from './outbox.ts';
import type { Respond } from './respond.ts';
import { wallPace } from './sender.ts';
import { createSetUpForms } from './set-up-form.ts';
import { setUpCallback } from './set-up-view.ts';
import type { ShowAnswer } from './show-answer.ts';
import type { Call } from './slack-client.ts';
import { noCrewMessage, welcomeMessage } from './welcome.ts';
import type { WhichCrew } from './which-crew.ts';

export interface Conversation {
  readonly work: (inbound: Inbound) => Promise<void>;
  readonly submit: (form: Form) => Promise<FormAnswer>;
  /** Everything recorded has been shown. */
  readonly idle: () => Promise<void>;
}

export interface ConversationNeeds {
  readonly which: WhichCrew;
  readonly showing: ShowAnswer;
  readonly homes: Homes;
  readonly outbox: Outbox;
  readonly call: Call;
  readonly respond: Respond;
  readonly postbox: Postbox;
  readonly now: () => number;
  readonly log: Log;
}

/** Two presses nearer than this were meant as one. */
const breathMs = 2_000;

export function createConversation(needs: ConversationNeeds): Conversation {
  const { which, showing, homes, call, postbox, log } = needs;
  const turns = new Map<Desk, Promise<void>>();
  const presses = new Map<string, { readonly id: string; readonly at: number }>();
  const showingStill = new Set<Promise<void>>();

  async function work(inbound: Inbound): Promise<void> {
    const { where } = inbound;
    const desk = which.deskAt(where);
    if (desk === undefined) return noCrew(inbound);
    switch (inbound.kind) {
      case 'line':
        return said(desk, inbound);
      case 'tap':
        return tapped(desk, inbound);
      case 'form':
        await submit(inbound, true);
        return;
      case 'set-up':
        return setUps.open(desk, inbound);
      case 'home':
        return homes.show(desk, where);
      case 'picture':
        return pictured(desk, inbound);
      case 'joined':
        return joined(desk, where);
      default: {
        const never: never = inbound;
        return never;
      }
    }
  }

  /** In the order of arrival: what is shown may wait for Slack, what is decided does not. */
  function handle(desk: Desk, { text, where, id, saidAt }: Said): Promise<Answer | undefined> {
    const about = subjectAt(where);
    const said = notFromTheFuture(saidAt);
    const turn = (turns.get(desk) ?? Promise.resolve()).then(async () => {
      const as = await desk.roster.personOf(where.team, where.user);
      return desk.host.handle({
        text: await withNames(desk, text, where.team),
        as,
        in: id,
        id,
        ...(said === undefined ? {} : { saidAt: said }),
        ...(about === undefined ? {} : { about }),
      });
    });
    turns.set(
      desk,
      turn.then(
        () => undefined,
        () => undefined,
      ),
    );
    return turn;
  }

  /** `handover @jo` as Slack delivers it, with the name that the crew knows. */
  async function withNames(desk: Desk, text: string, team: string): Promise<string> {
    let named = text;
    for (const [mention, user = ''] of text.matchAll(/<@([UW][A-Z0-9]+)>/g)) {
      const name = await desk.roster.personOf(team, user);
      // Of several words, it stands in quotes.
      named = named.replaceAll(mention, /\s/.test(name) ? JSON.stringify(name) : name);
    }
    return named;
  }

  /** Slack's clock may be ahead of ours: nobody speaks from the future. */
  const notFromTheFuture = (saidAt: number | undefined) =>
    saidAt === undefined ? undefined : epochMs(Math.min(saidAt, needs.now()));

  function subjectAt({ team, channel, thread }: Where): StreamId | undefined {
    return channel === undefined || thread === undefined ? undefined : postbox.postAt(team, channel, thread)?.subject;
  }

  /** Shown where it belongs, and everything that it moved shown anew. */
  async function answered(desk: Desk, answer: Answer, where: Where, id: string, used?: Used): Promise<void> {
    if (answer.recorded) {
      desk.wake();
      for (const subject of answer.about ?? []) await desk.thread.settle(subject, used);
      if (used !== undefined) await desk.thread.settleOne(where.team, used.channel, used.ts, used.outcome);
    }
    await showing.show(desk, answer, where, id);
    if (answer.recorded) await refreshed(desk);
  }

  /** Without whoever asked waiting for it. */
  function later(id: string, show: () => Promise<void>): void {
    const shown = show().catch((error: unknown) => log.error('answer-not-shown', { id, error: String(error) }));
    showingStill.add(shown);
    void shown.finally(() => showingStill.delete(shown));
  }

  function subjectOn({ where, message }: Tap): StreamId | undefined {
    if (where.channel === undefined) return undefined;
    const on = message === undefined ? undefined : postbox.postAt(where.team, where.channel, message);
    return on?.subject ?? subjectAt(where);
  }

  async function said(desk: Desk, line: Extract<Inbound, { kind: 'line' }>): Promise<void> {
    // Nothing typed asks for help.
    const answer = await handle(desk, { ...line, text: line.text.trim() === '' ? 'help' : line.text });
    if (answer !== undefined) await answered(desk, answer, line.where, line.id);
  }

  async function tapped(desk: Desk, tap: Tap): Promise<void> {
    if (/\{[\w-]+\}/.test(tap.line)) return forms.open(desk, tap);
    const answer = await handle(desk, { text: tap.line, where: tap.where, id: pressOf(tap), saidAt: tap.saidAt });
    if (answer === undefined) return;
    if (tap.ephemeral) return answeredEphemeral(desk, answer, tap);
    await answered(desk, answer, tap.where, tap.id, await usedTap(desk, answer, tap.where, tap.message, tap.label));
  }

  /** A gloved thumb presses twice: the same button on the same showing within a breath is one act. */
  function pressOf({ showing, id, saidAt = needs.now() }: Tap): string {
    const before = presses.get(showing);
    if (before !== undefined && saidAt - before.at < breathMs) return before.id;
    for (const [other, { at }] of presses) if (saidAt - at >= breathMs) presses.delete(other);
    presses.set(showing, { id, at: saidAt });
    return id;
  }

  /** What stands in place of a used button: who tapped what, and when. */
  async function usedTap(desk: Desk, answer: Answer, where: Where, ts: string | undefined, label: string) {
    if (ts === undefined || where.channel === undefined || !answer.recorded) return undefined;
    const { words, clock } = await desk.overview.voice(undefined);
    return { ts, channel: where.channel, outcome: words.chat.tapped(answer.as ?? '', label, clock) };
  }

  /** A message that only its reader sees is replaced by what came of it. */
  async function answeredEphemeral(desk: Desk, answer: Answer, tap: Tap): Promise<void> {
    const url = tap.where.responseUrl;
    const replaced = url !== undefined && (answer.recorded || answer.kind === 'objection');
    if (replaced) {
      const { words } = await desk.overview.voice(answer.as ?? undefined);
      const card = { ...answer.card, actions: [] };
      await needs.respond(url, { replace_original: true, ...cardMessage(card, { words, showing: tap.id }) });
    }
    await answered(desk, answer, { ...tap.where, via: replaced ? 'button' : 'command' }, tap.id);
  }

  async function pictured(desk: Desk, picture: Extract<Inbound, { kind: 'picture' }>): Promise<void> {
    const { where, text } = picture;
    const about = subjectAt(where);
    if (about === undefined) return;
    const as = await desk.roster.personOf(where.team, where.user);
    const saidAt = notFromTheFuture(picture.saidAt);
    for (const file of picture.files) {
      const id = `${picture.id}:${file.id}`;
      const answer = await desk.filePicture({ id, as, about, text, saidAt, reference: `slack:${file.id}` });
      await answered(desk, answer, where, id);
    }
  }

  async function joined(desk: Desk, where: Where): Promise<void> {
    const note = `joined/${where.team}/${where.channel ?? ''}`;
    if (where.channel === undefined || postbox.note(note) !== undefined) return;
    postbox.setNote(note, 'told');
    const { words } = await desk.overview.voice(undefined);
    await needs.outbox.post({ channel: where.channel, thread: undefined }, welcomeMessage(words), note);
    await desk.batches.refresh();
  }

  /** Of a channel that belongs to nobody, and of somebody who is of no crew here. */
  async function noCrew(inbound: Inbound): Promise<void> {
    const { where } = inbound;
    // Pictures ask nothing; whoever typed or tapped is told.
    if (inbound.kind === 'picture' || inbound.kind === 'joined') return;
    if (inbound.kind === 'home') return homes.showNoCrew(where);
    await showing.privately(where, noCrewMessage(where.channel, inbound.id), inbound.id);
  }

  /** All that shows how things stand. */
  async function refreshed(desk: Desk): Promise<void> {
    await desk.batches.refresh();
    await homes.refresh(desk);
  }

  const forming = { which, call, log, pace: wallPace, handle, noCrew };
  const forms = createForms({
    ...forming,
    subjectOn,
    usedTap,
    answered: (desk, answer, where, id, used) => later(id, () => answered(desk, answer, where, id, used)),
  });
  const setUps = createSetUpForms({
    ...{ ...forming, postbox, joined, refreshed, later },
    outbox: needs.outbox,
    privately: showing.privately,
  });

  const submit = (form: Form, resumed = false): Promise<FormAnswer> =>
    (form.callback === setUpCallback ? setUps : forms).submit(form, resumed);

  return {
    work,
    submit,
    idle: async () => {
      while (showingStill.size > 0) await Promise.all(showingStill);
    },
  };
}
