// Setting up from the home tab: the forms open as things stand, and each changed field is said like any other line, so that
// it is recorded, judged and told alike. Only the channel is Slack's own, and kept beside the record.

import { ownValue } from '../../core/own-key.ts';
import { makeCard } from '../cards/card.ts';
import { roleLine, type SetUp, type SetUpField } from '../cards/set-up.ts';
import type { Words } from '../language/tongues/tongues.ts';
import type { Where } from '../messages/platform.ts';
import { warn } from '../messages/privately.ts';
import { refreshed } from './answering.ts';
import { joined, noCrew } from './arrivals.ts';
import type { Desk } from './crew-desk.ts';
import { crewMarked, withoutMark } from './crew-mark.ts';
import { answeredInTime, type Filling, type FormAnswer, type Submitted } from './form-answer.ts';
import type { Form } from './forms.ts';
import { type Inbound, setUps } from './inbound.ts';
import { openForm } from './open-form.ts';
import { channelBlock, crewView, leadsBlock, mineView, openingView, supervisorsBlock } from './set-up-view.ts';
import type { SlackParts } from './slack-parts.ts';
import { handle } from './speaking.ts';
import { takeChannel } from './take-channel.ts';

export type SetUpTap = Extract<Inbound, { kind: 'set-up' }>;

interface FieldSaid {
  readonly block: string;
  readonly line: string;
}

/** Nobody has set a zone. */
const unsetZone = 'UTC';

export async function openSetUp(parts: SlackParts, desk: Desk, tap: SetUpTap): Promise<void> {
  const { where, of } = tap;
  const { words: crewWords } = await desk.overview.voice(undefined);
  await openForm(parts, desk, tap, {
    empty: openingView(desk.crew, of, crewWords),
    filled: async () => {
      const name = await desk.roster.personOf(where.team, where.user);
      const { words } = await desk.overview.voice(name);
      const setUp = await desk.overview.setUp(name);
      return of === 'mine' ? mineView(desk.crew, setUp, words) : crewFilled(desk, setUp, where, words);
    },
    instead: ({ words }) => words.chat.form.tapAgain,
  });
}

async function crewFilled(desk: Desk, setUp: SetUp, { team, user }: Where, words: Words) {
  const zone = await desk.roster.zoneOf(user);
  const ids = (names: readonly string[]) => names.flatMap((name) => desk.roster.idOf(team, name) ?? []);
  const chosen = {
    channel: desk.channel(),
    asksChannel: desk.slackCrew.channels.length === 0,
    leads: ids(setUp.leads),
    supervisors: ids(setUp.supervisors),
  };
  const crew = setUp.crew.map((field) =>
    field.id === 'zone' && field.value === unsetZone ? { ...field, value: zone ?? unsetZone } : field,
  );
  return crewView(desk.crew, { ...setUp, crew }, chosen, words);
}

export const submitSetUp = (parts: SlackParts, form: Form, resumed: boolean): Submitted =>
  answeredInTime((filling) => fill(parts, form, filling), resumed);

async function fill(parts: SlackParts, form: Form, { isLate, after }: Filling): Promise<FormAnswer> {
  const { where, values, carried } = form;
  const of = setUps.find((each) => each === withoutMark(carried));
  const desk = parts.which.deskAt(where, { crew: crewMarked(carried) });
  if (desk === undefined || of === undefined) {
    await noCrew(parts, form);
    return { is: 'closed' };
  }
  const name = await desk.roster.personOf(where.team, where.user);
  const voice = await desk.overview.voice(name);
  const { words } = voice;
  const setUp = await desk.overview.setUp(name).catch((error: unknown) => {
    parts.log.error('not-recorded', { id: form.id, error: String(error) });
    return undefined;
  });
  if (setUp === undefined) {
    await warn(parts, where, form.id, voice, words.replies.notRecorded, [words.replies.storeFailed]);
    return { is: 'closed' };
  }
  const errors = new Map<string, string>();
  if (of === 'crew') {
    const fault = await newChannel(parts, desk, form, setUp, words);
    if (fault !== undefined) errors.set(channelBlock, fault);
  }
  const said = of === 'mine' ? changedIn(setUp.personal, values) : await crewSaid(parts, desk, setUp, form);
  const settled: string[] = [];
  for (const { block, line } of said) {
    const id = `${form.id}:${block}`;
    // Filled in on a form of the shop: meant for it, whoever practises.
    const pressed = async () => ({ label: block, moved: { is: 'not' } as const });
    const answer = await handle(parts, desk, { text: line, where, id, saidAt: form.saidAt, pressed });
    if (answer?.recorded === true) settled.push(...answer.card.lines);
    else if (answer !== undefined) errors.set(block, answer.card.lines.join(' '));
  }
  desk.wake();
  const told = async () => {
    const channel = desk.channel();
    if (of === 'crew' && channel !== undefined) await joined(parts, desk, { ...where, channel });
    if (of === 'crew' && settled.length > 0) await tellCrew(parts, desk, settled, name, form.id);
    void parts.background.run('refresh-failed', form.id, () => refreshed(parts, desk));
  };
  after(told());
  if (errors.size === 0) return { is: 'closed' };
  if (!isLate()) return { is: 'wrong', errors: Object.fromEntries(errors) };
  await warn(parts, where, form.id, voice, words.replies.notClear, [...errors.values()]);
  return { is: 'closed' };
}

/** What is wrong with the channel that was chosen; `undefined` where it is the crew's now. */
async function newChannel(parts: SlackParts, desk: Desk, { values }: Form, { mayCrew, who }: SetUp, words: Words) {
  const channel = ownValue(values, channelBlock) ?? '';
  if (channel === '' || channel === desk.channel() || desk.slackCrew.channels.length > 0) return undefined;
  if (!mayCrew) return words.chat.setUp.forLead(who.join(', '));
  const fault = await takeChannel(parts, desk, channel);
  return fault === undefined ? undefined : words.chat.setUp.channelFaults[fault];
}

/** What changes for all is said once to all, with who changed it. */
async function tellCrew(
  { mail }: SlackParts,
  desk: Desk,
  settled: readonly string[],
  name: string,
  id: string,
): Promise<void> {
  const channel = desk.channel();
  if (channel === undefined) return;
  const { words, language } = await desk.overview.voice(undefined);
  const card = makeCard(words.replies.settled, 'plain', { lines: settled });
  const look = { card, language, showing: id, under: [words.chat.by(name)] };
  await mail.post({ channel, thread: undefined }, look, `${id}/settled`);
}

/** Each changed field as the line that says it. */
function changedIn(fields: readonly SetUpField[], values: Form['values']): readonly FieldSaid[] {
  return fields.flatMap(({ id, value, line }) => {
    const typed = ownValue(values, id);
    const said = typed === undefined || typed.trim() === value ? undefined : line(typed);
    return said === undefined ? [] : [{ block: id, line: said }];
  });
}

async function crewSaid(
  { tongues }: SlackParts,
  desk: Desk,
  setUp: SetUp,
  { where, values }: Form,
): Promise<readonly FieldSaid[]> {
  const named = async (block: string, now: readonly string[]) => {
    const users = (ownValue(values, block) ?? '').split(' ').filter((user) => user !== '');
    // Whom Slack does not know cannot be chosen here, and loses nothing by it.
    const elsewhere = now.filter((name) => desk.roster.idOf(where.team, name) === undefined);
    return [...elsewhere, ...(await Promise.all(users.map((user) => desk.roster.personOf(where.team, user))))];
  };
  const leads = await named(leadsBlock, setUp.leads);
  const supervisors = await named(supervisorsBlock, setUp.supervisors);
  const roles = roleLine(await desk.overview.crew(), leads, supervisors, tongues.every);
  return [
    ...changedIn(setUp.crew, values),
    // Last: whoever sets up a crew without a lead may be none of those named.
    ...(roles === undefined ? [] : [{ block: leadsBlock, line: roles }]),
  ];
}
