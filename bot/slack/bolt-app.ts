// The Bolt application: acknowledges within its time and hands over what arrived; all work comes after. Nothing here
// decides anything.

import { App, type Receiver } from '@slack/bolt';
import type { Log, Postbox } from '../../core/ports.ts';
import type { BackgroundWork } from '../time/background-work.ts';
import type { Submitted } from './form-answer.ts';
import { formCallback } from './form-view.ts';
import type { Form } from './forms.ts';
import type { Inbound } from './inbound.ts';
import { setUpCallback } from './set-up-view.ts';
import { clientOptions } from './slack-client.ts';
import type { SdkLog } from './slack-log.ts';

export interface Identity {
  readonly team: string;
  readonly botId: string;
  readonly botUserId: string;
}

export interface BoltDeps {
  readonly receiver: Receiver;
  readonly botToken: string;
  readonly apiUrl: string | undefined;
  readonly identity: () => Identity | undefined;
  /** Ends when it has been answered. */
  readonly work: (inbound: Inbound) => Promise<void>;
  readonly submit: (form: Form) => Submitted;
  readonly background: BackgroundWork;
  readonly postbox: Postbox;
  readonly log: Log & { readonly forSdk: SdkLog };
}

export interface BoltApp {
  readonly start: (port?: number) => Promise<unknown>;
  readonly stop: () => Promise<unknown>;
  /** As if it had just been delivered. */
  readonly work: (inbound: Inbound) => void;
}

export function createBoltApp(deps: BoltDeps): BoltApp {
  const { log, botToken, apiUrl } = deps;
  const app = new App({
    receiver: deps.receiver,
    logger: log.forSdk,
    clientOptions: clientOptions({ apiUrl, log: log.forSdk }),
    convoStore: false,
    // No call to Slack and no store before the acknowledgement.
    authorize: async () => {
      const known = deps.identity();
      return { botToken, ...(known === undefined ? {} : { botId: known.botId, botUserId: known.botUserId }) };
    },
  });
  listen(app, deps);
  app.error(async (error) => log.error('listener-failed', { error: String(error) }));
  return {
    start: (port) => (port === undefined ? app.start() : app.start(port)),
    stop: () => app.stop(),
    work: (inbound) => workOff(deps, inbound),
  };
}

function listen(app: App, deps: BoltDeps): void {
  app.command(/^\//, async ({ ack, context }) => {
    await ack();
    workOff(deps, inboundIn(context));
  });
  app.action(/.*/s, async ({ ack, context }) => {
    await ack();
    workOff(deps, inboundIn(context));
  });
  app.event(/^(?:app_mention|message|app_home_opened|member_joined_channel)$/, async ({ context }) => {
    workOff(deps, inboundIn(context));
  });
  app.view(new RegExp(`^(?:${formCallback}|${setUpCallback})$`), async ({ ack, context }) => {
    const inbound = inboundIn(context);
    if (inbound?.kind !== 'form') return ack();
    const submitted = deps.submit(inbound);
    follow(deps, inbound, submitted.done);
    const answer = await submitted.answer;
    if (answer.is === 'wrong') await ack({ response_action: 'errors', errors: { ...answer.errors } });
    else await ack();
  });
}

function workOff(deps: BoltDeps, inbound: Inbound | undefined): void {
  if (inbound !== undefined) follow(deps, inbound, deps.work(inbound));
}

/** Finished once it has been answered; what broke is taken up again by the next start. */
function follow({ background, postbox, log }: BoltDeps, { id }: Inbound, worked: Promise<void>): void {
  void background.run('not-worked-off', id, async () => {
    await worked;
    try {
      postbox.finish(id);
    } catch (error) {
      log.error('inbox-not-written', { id, error: String(error) });
    }
  });
}

const inboundIn = (context: object): Inbound | undefined =>
  'inbound' in context ? (context.inbound as Inbound | undefined) : undefined;
