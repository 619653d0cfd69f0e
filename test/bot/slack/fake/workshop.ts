// A workshop with Slack: the real program over a record in memory, a clock that is moved by hand, and the stand-in for
// Slack. Reads aloud: kari types, taps, fills in; time passes; the channel shows.

import type { ActionsBlock, KnownBlock } from '@slack/types';
import { expect } from 'vitest';
import type { Tongues } from '../../../../bot/language/tongues/tongues.ts';
import { type Wired, wire } from '../../../../bot/run/wiring.ts';
import { createSlackLog, type SlackLog } from '../../../../bot/slack/slack-log.ts';
import { type Slack, startSlack } from '../../../../bot/slack/start-slack.ts';
import type { Answer } from '../../../../bot/talk/answer.ts';
import type { Delivery } from '../../../../bot/talk/front-end.ts';
import type { Host } from '../../../../bot/talk/host.ts';
import { thumbMs } from '../../../../bot/talk/pressed.ts';
import { virtualClock } from '../../../../bot/time/clocks.ts';
import type { Pace } from '../../../../bot/time/pace.ts';
import type { CrewFile } from '../../../../core/crew/crew.ts';
import { isFailed } from '../../../../core/failed.ts';
import type { Postbox, Store } from '../../../../core/ports.ts';
import type { SheetShelf } from '../../../../core/products/sheet.ts';
import { readSheetFolders } from '../../../../core/store/sheet-files.ts';
import { openSqlitePostbox } from '../../../../core/store/sqlite-postbox.ts';
import { openSqliteStore } from '../../../../core/store/sqlite-store.ts';
import { epochMs, minutes } from '../../../../core/units.ts';
import {
  type HttpAnswer,
  joins,
  mentions,
  opensHome,
  type Payload,
  post,
  signingSecret,
  slashCommand,
  submits,
  taps,
  writesDirectly,
} from './deliveries.ts';
import { fakeRates } from './fake-rates.ts';
import { counter, type FakeMessage, type FakeSlack, startFakeSlack } from './fake-slack.ts';
import { stateOf } from './filled-field.ts';
import { quickPace } from './quick-pace.ts';

export interface WorkshopOptions {
  readonly crews?: readonly { readonly crew: string; readonly file: Readonly<Record<string, unknown>> }[];
  readonly at?: string;
  readonly mode?: 'http' | 'socket';
  readonly pace?: Pace;
  readonly store?: Store;
  readonly postbox?: Postbox;
  readonly fake?: FakeSlack;
  /** The demo's alone where none is given. */
  readonly shelf?: SheetShelf;
  /** Filled with what is logged. */
  readonly logged?: string[];
  /** Slack keeps its own limits: so many messages a second, so many changes a minute. */
  readonly rated?: boolean;
  /** Folders of sheets beside the demo's. */
  readonly sheets?: readonly string[];
  readonly tongues?: Tongues;
  /** Each answer of the host as it was given, before Slack shows it. */
  readonly hears?: (delivery: Delivery, answer: Answer) => void;
}

/** Invented people; ids as Slack's look. */
export const bayTwo = {
  name: 'bay 2 (invented)',
  zone: 'UTC',
  people: [
    { name: 'kari', role: 'lead', slack: 'UKARI' },
    { name: 'jo', role: 'crew', slack: 'UJO' },
    { name: 'ines', role: 'supervisor', slack: 'UINES', rings: 'direct' },
  ],
  slackChannels: ['C1'],
} as const;

interface TapOptions {
  /** Since they saw the card as it is; a hand needs longer than `thumbMs` to read and to press. */
  readonly lookedMs?: number;
  /** On its way to us for so long. */
  readonly afterMs?: number;
  /** What Slack says otherwise in it. */
  readonly body?: Readonly<Record<string, unknown>>;
}

export type Workshop = Awaited<ReturnType<typeof openWorkshop>>;

export async function openWorkshop(options: WorkshopOptions = {}) {
  const clock = virtualClock(epochMs(Date.parse(options.at ?? '2026-03-02T08:00:00Z')));
  const pace = options.pace ?? quickPace();
  const fake = options.fake ?? (await startFakeSlack(clock.now, options.rated ? fakeRates(pace.now) : undefined));
  const store = options.store ?? openSqliteStore(':memory:');
  const postbox = options.postbox ?? openSqlitePostbox(':memory:');
  const log: SlackLog = createSlackLog({ write: (line: string) => void options.logged?.push(line) });
  const shelf = options.shelf ?? readSheetFolders(['core/products/sheets', ...(options.sheets ?? [])]);
  const wired = new Map<string, Wired>();
  const crews = (options.crews ?? [{ crew: 'crew', file: bayTwo }]).map(({ crew, file }) => ({
    crew,
    file,
    crewFile: crewFileOf(file),
  }));
  // Slack knows whom the crew's file names, unless a test says otherwise.
  for (const { file } of crews) {
    for (const { name, slack } of file.people as readonly { name: string; slack?: string }[]) {
      if (slack !== undefined && !fake.users.has(slack)) fake.users.set(slack, { name });
    }
  }
  const started = await startSlack({
    settings: {
      botToken: 'xoxb-invented',
      apiUrl: fake.apiUrl,
      port: 0,
      ...(options.mode === 'socket' ? { mode: 'socket', appToken: 'xapp-invented' } : { mode: 'http', signingSecret }),
    },
    ...{ postbox, clock, log, crews },
    ...(options.tongues !== undefined && { tongues: options.tongues }),
    pace,
    wire: (crew, crewFile, rings) => {
      const one = overheard(
        wire({
          ...{ store, clock, log, crewFile, shelf, crew, frontEnd: rings },
          ...(options.tongues !== undefined && { tongues: options.tongues }),
        }),
      );
      wired.set(crew, one);
      return { ...one, wake: () => undefined };
    },
  });
  if (isFailed(started)) throw new Error(started.failed);
  const slack: Slack = started;
  const next = counter();
  let closed = false;

  function overheard(one: Wired): Wired {
    const { hears } = options;
    if (hears === undefined) return one;
    const handle: Host['handle'] = async (delivery) => {
      const answer = await one.host.handle(delivery);
      if (answer !== undefined) hears(delivery, answer);
      return answer;
    };
    return { ...one, host: { ...one.host, handle } };
  }

  async function deliver(payload: Payload): Promise<HttpAnswer> {
    const port = slack.port();
    if (port === undefined) throw new Error('nothing listens');
    const answer = await post(port, payload);
    await slack.idle();
    return answer;
  }

  const actionTs = (): string => `${(clock.now() / 1000).toFixed(3)}${String(next()).padStart(3, '0')}`;
  const ts = (): string => `${Math.floor(clock.now() / 1000)}.${String(next()).padStart(6, '0')}`;

  function buttonOf(blocks: readonly KnownBlock[], label: string) {
    const rows = blocks.filter((block): block is ActionsBlock => block.type === 'actions');
    for (const { block_id, elements } of rows) {
      for (const element of elements) {
        if (element.type === 'button' && element.text.text === label) {
          return { type: 'button', block_id, action_id: element.action_id, value: element.value, text: element.text };
        }
        if (element.type !== 'overflow' && element.type !== 'static_select') continue;
        const option = element.options?.find(({ text }) => text.text === label);
        if (option !== undefined) {
          return { type: element.type, block_id, action_id: element.action_id, selected_option: option };
        }
      }
    }
    return undefined;
  }

  function filledIn(values: Readonly<Record<string, string>>, user = 'UKARI'): Payload {
    const [id, view] = [...fake.views].at(-1) ?? [];
    if (id === undefined || view === undefined) throw new Error('no form is open');
    const state = Object.fromEntries(
      view.blocks.flatMap((block) =>
        block.type === 'input' && block.block_id !== undefined && 'element' in block
          ? [[block.block_id, stateOf(block.element, values[block.block_id])]]
          : [],
      ),
    );
    const opened = { id, callback: view.callback_id ?? '', carried: view.private_metadata ?? '' };
    return submits(user, opened, state);
  }

  return {
    ...{ clock, fake, store, postbox, slack, wired, deliver },
    types: (text: string, user = 'UKARI', channel = 'C1', url = fake.responseUrl()) =>
      deliver(slashCommand(text, { user_id: user, channel_id: channel, response_url: url })),
    mentions: (text: string, thread: string | undefined, user = 'UKARI', channel = 'C1') =>
      deliver(
        mentions(text, {
          user,
          channel,
          ts: ts(),
          ...(thread === undefined ? { thread_ts: undefined } : { thread_ts: thread }),
        }),
      ),
    /** Its own `ts` names it, for who changes it later. */
    writes: (text: string, user = 'UKARI', of: Readonly<Record<string, unknown>> = {}) =>
      deliver(writesDirectly(text, { user, channel: `D${user}`, ts: ts(), ...of })),
    joins: (channel: string) => deliver(joins({ channel })),
    readsGroups: async () => slack.readGroups(),
    opensHome: (user = 'UKARI') => deliver(opensHome({ user, channel: `D${user}` })),
    /** Presses the button of this label on a message. */
    taps: async (
      message: FakeMessage,
      label: string,
      user = 'UKARI',
      { afterMs = 0, lookedMs = thumbMs, body = {} }: TapOptions = {},
    ) => {
      const action = buttonOf(message.blocks, label);
      if (action === undefined) throw new Error(`no button "${label}" on:\n${message.text}`);
      clock.moveTo(epochMs(clock.now() + lookedMs));
      const on = { is: 'message', channel: message.channel, ts: message.ts, thread: message.thread } as const;
      const head = { user, trigger: fake.trigger(), responseUrl: fake.responseUrl(), actionTs: actionTs() };
      const made = taps({ ...head, action, on });
      const payload = { ...made, body: { ...made.body, ...body } };
      clock.moveTo(epochMs(clock.now() + afterMs));
      await deliver(payload);
      return payload;
    },
    tapsHome: async (label: string, user = 'UKARI', { lookedMs = thumbMs }: Pick<TapOptions, 'lookedMs'> = {}) => {
      clock.moveTo(epochMs(clock.now() + lookedMs));
      const action = buttonOf((fake.homes.get(user)?.blocks ?? []) as readonly KnownBlock[], label);
      if (action === undefined) throw new Error(`no button "${label}" on the home tab`);
      const head = { user, trigger: fake.trigger(), responseUrl: '', actionTs: actionTs() };
      return deliver(
        taps({ ...head, action, on: { is: 'view', id: `H${user}`, hash: fake.homeHashes.get(user) ?? '' } }),
      );
    },
    tapsWhisper: async (label: string, user = 'UKARI', channel = 'C1') => {
      const action = buttonOf(fake.whispers.at(-1)?.blocks ?? [], label);
      if (action === undefined) throw new Error(`no button "${label}" on:\n${fake.whispers.at(-1)?.text}`);
      const head = { user, trigger: fake.trigger(), responseUrl: fake.responseUrl(), actionTs: actionTs() };
      return deliver(taps({ ...head, action, on: { is: 'ephemeral', channel } }));
    },
    /** Fills in the form that opened last, and sends it. */
    fills: (values: Readonly<Record<string, string>>, user = 'UKARI') => deliver(filledIn(values, user)),
    /** As it leaves the sender, for who looks at the answer before the work is done. */
    filledIn,
    /** Moves from bell to bell, as the ticker does. */
    passes: async (span: number) => {
      const until = clock.now() + span * 60_000;
      for (;;) {
        for (const { ringer } of wired.values()) await ringer.ringDue();
        const dues = await Promise.all([...wired.values()].map(({ ringer }) => ringer.nextDueAt()));
        const due = Math.min(...dues.flatMap((each) => each ?? []));
        if (!Number.isFinite(due) || due > until || due <= clock.now()) break;
        clock.moveTo(epochMs(due));
      }
      clock.moveTo(epochMs(until));
      await slack.refresh();
    },
    batch: (channel = 'C1'): FakeMessage => {
      const found = fake.inChannel(channel).findLast(({ key }) => key?.includes('standing/') === true);
      if (found === undefined) throw new Error(`no batch has a message in ${channel}`);
      return found;
    },
    /** Once, however often it is asked. */
    close: async () => {
      if (closed) return;
      closed = true;
      await slack.stop();
      if (options.fake === undefined) await fake.close();
      if (options.postbox === undefined) postbox.close();
      if (options.store === undefined) store.close();
      expect(fake.complaints).toEqual([]);
    },
  };
}

function crewFileOf(file: Readonly<Record<string, unknown>>): CrewFile {
  const { name, zone, people } = file as unknown as { name: string; zone: string; people: CrewFile['people'] };
  // As in the program: of what many read, the language of the first.
  const [first] = people;
  const language = first !== undefined && 'language' in first ? first.language : 'en';
  return {
    ...{ name, zone, language, units: 'metric', digestHour: 17, escalationMinutes: minutes(10) },
    people: people.map((person) => ({
      language: 'language' in person ? person.language : language,
      units: 'metric',
      name: person.name,
      role: person.role,
      ...('units' in person ? { units: person.units } : {}),
      ...('rings' in person ? { rings: person.rings } : {}),
    })),
  } as CrewFile;
}
