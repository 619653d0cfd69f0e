// The Bolt application: acknowledges within its time and hands over what arrived; all work comes after. Nothing here
// decides anything.

import { App, type Receiver } from '@slack/bolt';
import type { Log, Postbox } from '../../core/ports.ts';
import type { Conversation } from './conversation.ts';
import { formCallback } from './form-view.ts';
import type { Inbound } from './inbound.ts';
import { setUpCallback } from './set-up-view.ts';
import { clientOptions } from './slack-client.ts';
import type { SdkLog } from './slack-log.ts';

export interface Identity {
  readonly team: string;
  readonly botId: string;
  readonly botUserId: string;
}

export interface BoltNeeds {
  readonly receiver: Receiver;
  readonly botToken: string;
  readonly apiUrl: string | undefined;
  readonly identity: () => Identity | undefined;
  readonly conversation: Conversation;
  readonly postbox: Postbox;
  readonly log: Log & { readonly forSdk: SdkLog };
}

export interface BoltApp {
  readonly start: (port?: number) => Promise<unknown>;
  readonly stop: () => Promise<unknown>;
  /** As if it had just been delivered. */
  readonly work: (inbound: Inbound) => void;
  /** Ends when everything that was taken in has been worked off. */
  readonly idle: () => Promise<void>;
}

export function createBoltApp(needs: BoltNeeds): BoltApp {
  const { conversation, postbox, log, botToken, apiUrl } = needs;
  const working = new Set<Promise<void>>();
  const app = new App({
    receiver: needs.receiver,
    logger: log.forSdk,
    clientOptions: clientOptions({ apiUrl, log: log.forSdk }),
    convoStore: false,
    // No call to Slack and no store before the acknowledgement.
    authorize: async () => {
      const known = needs.identity();
      return { botToken, ...(known === undefined ? {} : { botId: known.botId, botUserId: known.botUserId }) };
    },
  });

  function work(inbound: Inbound | undefined): void {
    if (inbound !== undefined) follow(inbound, conversation.work(inbound));
  }

  /** Finished once it has been answered; what broke is taken up again by the next start. */
  function follow({ id }: Inbound, worked: Promise<void>): void {
    const done = worked.then(
      () => finish(id),
      (error: unknown) => log.error('not-worked-off', { id, error: String(error) }),
    );
    working.add(done);
    void done.finally(() => working.delete(done));
  }

  function finish(id: string): void {
    try {
      postbox.finish(id);
    } catch (error) {
      log.error('inbox-not-written', { id, error: String(error) });
    }
  }

  const inboundIn = (context: object): Inbound | undefined =>
    'inbound' in context ? (context.inbound as Inbound | undefined) : undefined;

  app.command(/^\//, async ({ ack, context }) => {
    await ack();
    work(inboundIn(context));
  });
  app.action(/.*/s, async ({ ack, context }) => {
    await ack();
    work(inboundIn(context));
  });
  app.event(/^(?:app_mention|message|app_home_opened|member_joined_channel)$/, async ({ context }) => {
    work(inboundIn(context));
  });
  app.view(new RegExp(`^(?:${formCallback}|${setUpCallback})$`), async ({ ack, context }) => {
    const inbound = inboundIn(context);
    if (inbound?.kind !== 'form') return ack();
    const submitted = conversation.submit(inbound);
    follow(inbound, submitted.done);
    const answer = await submitted.answer;
    if (answer.is === 'wrong') await ack({ response_action: 'errors', errors: { ...answer.errors } });
    else await ack();
  });
  app.error(async (error) => log.error('listener-failed', { error: String(error) }));

  return {
    start: (port) => (port === undefined ? app.start() : app.start(port)),
    stop: () => app.stop(),
    idle: async () => {
      while (working.size > 0) await Promise.all(working);
    },
    work,
  };
}
