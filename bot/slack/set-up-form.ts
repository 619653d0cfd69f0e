// Setting up from the home tab: the forms open as things stand, and each changed field is said like any other line, so that
// it is recorded, judged and told alike. Only the channel is Slack's own, and kept beside the record.

import type { Log, Postbox } from '../../core/ports.ts';
import type { Answer } from '../answer.ts';
import { makeCard } from '../cards/card.ts';
import { roleLine, type SetUp, type SetUpField } from '../cards/set-up.ts';
import type { Words } from '../language/words/languages.ts';
import { cardMessage } from './card-blocks.ts';
import type { Desk } from './desk.ts';
import { answeredInTime, type FormAnswer } from './form-answer.ts';
import type { Form, Said } from './forms.ts';
import type { Inbound, Where } from './inbound.ts';
import type { Outbox } from './outbox.ts';
import type { Pace } from './sender.ts';
import { channelBlock, crewView, leadsBlock, mineView, openingView, setUps, supervisorsBlock } from './set-up-view.ts';
import type { Call } from './slack-client.ts';
import { takeChannel } from './take-channel.ts';
import { openedView } from './view-opened.ts';
import type { WhichCrew } from './which-crew.ts';

export type SetUpTap = Extract<Inbound, { kind: 'set-up' }>;

export interface SetUpNeeds {
  readonly which: WhichCrew;
  readonly call: Call;
  readonly outbox: Outbox;
  readonly postbox: Postbox;
  readonly pace: Pace;
  readonly log: Log;
  readonly handle: (desk: Desk, said: Said) => Promise<Answer | undefined>;
  readonly privately: (where: Where, message: ReturnType<typeof cardMessage>, id: string) => Promise<void>;
  /** The crew's channel is another one: it is welcomed there once. */
  readonly joined: (desk: Desk, where: Where) => Promise<void>;
  /** All that shows how things stand is shown anew. */
  readonly refreshed: (desk: Desk) => Promise<void>;
  /** Without the form waiting for it. */
  readonly later: (id: string, show: () => Promise<void>) => void;
  readonly noCrew: (inbound: Inbound) => Promise<void>;
}

interface FieldSaid {
  readonly block: string;
  readonly line: string;
}

/** Nobody has set a zone. */
const unsetZone = 'UTC';

export function createSetUpForms(needs: SetUpNeeds) {
  const { which, call, outbox, pace, log } = needs;

  async function open(desk: Desk, tap: SetUpTap): Promise<void> {
    const { team, user } = tap.where;
    const { words: crewWords } = await desk.overview.voice(undefined);
    const view = await openedView(call, tap.trigger, openingView(tap.of, crewWords));
    if (view === undefined) return log.error('form-not-opened', { id: tap.id });
    const name = await desk.roster.personOf(team, user);
    const { words } = await desk.overview.voice(name);
    const setUp = await desk.overview.setUp(name);
    const filled = tap.of === 'mine' ? mineView(setUp, words) : await crewFilled(desk, setUp, tap.where, words);
    const updated = await call('views.update', { view_id: view, view: filled });
    if (updated.kind !== 'done') log.error('form-not-filled', { id: tap.id, outcome: updated.kind });
  }

  async function crewFilled(desk: Desk, setUp: SetUp, { team, user }: Where, words: Words) {
    const zone = await desk.roster.zoneOf(user);
    const ids = (names: readonly string[]) => names.flatMap((name) => desk.roster.slackIdOf(team, name) ?? []);
    const chosen = {
      channel: desk.channel(),
      asksChannel: desk.slackCrew.channels.length === 0,
      leads: ids(setUp.leads),
      supervisors: ids(setUp.supervisors),
    };
    const crew = setUp.crew.map((field) =>
      field.id === 'zone' && field.value === unsetZone ? { ...field, value: zone ?? unsetZone } : field,
    );
    return crewView({ ...setUp, crew }, chosen, words);
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
    const { where, values } = form;
    const of = setUps.find((each) => each === form.carried);
    const desk = which.deskAt(where);
    if (desk === undefined || of === undefined) {
      await needs.noCrew(form);
      return { is: 'closed' };
    }
    const name = await desk.roster.personOf(where.team, where.user);
    const { words } = await desk.overview.voice(name);
    const setUp = await desk.overview.setUp(name);
    const errors: Record<string, string> = {};
    if (of === 'crew') {
      const fault = await newChannel(desk, form, setUp, words);
      if (fault !== undefined) errors[channelBlock] = fault;
    }
    const said = of === 'mine' ? changedIn(setUp.personal, values) : await crewSaid(desk, setUp, form);
    const settled: string[] = [];
    for (const { block, line } of said) {
      const answer = await needs.handle(desk, { text: line, where, id: `${form.id}:${block}`, saidAt: undefined });
      if (answer?.recorded === true) settled.push(...answer.card.lines);
      else if (answer !== undefined) errors[block] = answer.card.lines.join(' ');
    }
    desk.wake();
    needs.later(form.id, async () => {
      const channel = desk.channel();
      if (of === 'crew' && channel !== undefined) await needs.joined(desk, { ...where, channel });
      if (of === 'crew' && settled.length > 0) await tellCrew(desk, settled, name, form.id);
      await needs.refreshed(desk);
    });
    if (Object.keys(errors).length === 0) return { is: 'closed' };
    if (!isLate()) return { is: 'wrong', errors };
    const card = makeCard(words.replies.notClear, 'warn', { lines: Object.values(errors) });
    await needs.privately(where, cardMessage(card, { words, showing: form.id }), form.id);
    return { is: 'closed' };
  }

  /** What is wrong with the channel that was chosen; `undefined` where it is the crew's now. */
  async function newChannel(desk: Desk, { values }: Form, { mayCrew, who }: SetUp, words: Words) {
    const channel = values[channelBlock] ?? '';
    if (channel === '' || channel === desk.channel() || desk.slackCrew.channels.length > 0) return undefined;
    if (!mayCrew) return words.chat.setUp.forLead(who.join(', '));
    const fault = await takeChannel({ call, which, postbox: needs.postbox }, desk, channel);
    return fault === undefined ? undefined : words.chat.setUp.channelFaults[fault];
  }

  /** What changes for all is said once to all, with who changed it. */
  async function tellCrew(desk: Desk, settled: readonly string[], name: string, id: string): Promise<void> {
    const channel = desk.channel();
    if (channel === undefined) return;
    const { words } = await desk.overview.voice(undefined);
    const card = makeCard(words.replies.settled, 'plain', { lines: settled });
    const message = cardMessage(card, { words, showing: id, under: [words.chat.by(name)] });
    await outbox.post({ channel, thread: undefined }, message, `${id}/settled`);
  }

  return { open, submit };
}

/** Each changed field as the line that says it. */
function changedIn(fields: readonly SetUpField[], values: Form['values']): readonly FieldSaid[] {
  return fields.flatMap(({ id, value, line }) => {
    const typed = values[id];
    const said = typed === undefined || typed.trim() === value ? undefined : line(typed);
    return said === undefined ? [] : [{ block: id, line: said }];
  });
}

async function crewSaid(desk: Desk, setUp: SetUp, { where, values }: Form): Promise<readonly FieldSaid[]> {
  const named = async (block: string, now: readonly string[]) => {
    const users = (values[block] ?? '').split(' ').filter((user) => user !== '');
    // Whom Slack does not know cannot be chosen here, and loses nothing by it.
    const elsewhere = now.filter((name) => desk.roster.slackIdOf(where.team, name) === undefined);
    return [...elsewhere, ...(await Promise.all(users.map((user) => desk.roster.personOf(where.team, user))))];
  };
  const leads = await named(leadsBlock, setUp.leads);
  const supervisors = await named(supervisorsBlock, setUp.supervisors);
  const roles = roleLine(await desk.overview.crew(), leads, supervisors);
  return [
    ...changedIn(setUp.crew, values),
    // Last: whoever sets up a crew without a lead may be none of those named.
    ...(roles === undefined ? [] : [{ block: leadsBlock, line: roles }]),
  ];
}
