// Stands between Slack's deliveries and Bolt: every delivery is written down before it is acknowledged, so that none is
// lost when the process ends in between, and one that came before is acknowledged and dropped.

import type { App, Receiver, ReceiverEvent } from '@slack/bolt';
import type { Log, Postbox } from '../../core/ports.ts';
import { epochMs } from '../../core/units.ts';
import type { Inbound } from './inbound.ts';
import type { Ourselves } from './read-event.ts';
import { readInbound } from './read-inbound.ts';

export interface ReceiverDeps {
  readonly inner: Receiver;
  readonly postbox: Postbox;
  readonly ourselves: () => Ourselves;
  readonly now: () => number;
  readonly log: Log;
}

/** Bolt's own receiver, with the inbox in front. Listeners find what was read under `context.inbound`. */
export function withInbox({ inner, postbox, ourselves, now, log }: ReceiverDeps): Receiver {
  async function receive(app: App, event: ReceiverEvent): Promise<void> {
    const inbound = stamped(readInbound(event.body, ourselves()));
    if (inbound === undefined || takeIn(inbound)) {
      return app.processEvent({ ...event, customProperties: { ...event.customProperties, inbound } });
    }
    log.info('delivered-again', { id: inbound.id });
    await event.ack();
  }

  /** Commands and forms bring no time of their own: they were said when they came, whenever they are worked off. */
  const stamped = (inbound: Inbound | undefined): Inbound | undefined =>
    inbound === undefined ? undefined : { ...inbound, saidAt: inbound.saidAt ?? now() };

  function takeIn(inbound: Inbound): boolean {
    try {
      return postbox.takeIn({ id: inbound.id, at: epochMs(now()), content: JSON.stringify(inbound) });
    } catch (error) {
      // The host says "not recorded" of itself; whoever typed must hear that rather than nothing.
      log.error('inbox-not-written', { id: inbound.id, error: String(error) });
      return true;
    }
  }

  return {
    init: (app) => {
      // Of the App a receiver only calls this.
      inner.init({ processEvent: (event: ReceiverEvent) => receive(app, event) } as unknown as App);
    },
    start: (...args) => inner.start(...args),
    stop: (...args) => inner.stop(...args),
  };
}
