// Sending: one message a second in a channel, limits obeyed by whom they concern, and what became of a call told apart.

import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import nock from 'nock';
import { afterAll, afterEach, beforeEach, describe, expect, test } from 'vitest';
import { makeCard } from '../../../bot/cards/card.ts';
import { createMail } from '../../../bot/messages/mail.ts';
import { createSender } from '../../../bot/messages/sender.ts';
import { type Call, type Called, clientOptions, createCall } from '../../../bot/slack/slack-client.ts';
import { createSlackLog } from '../../../bot/slack/slack-log.ts';
import { slackPlatform } from '../../../bot/slack/slack-platform.ts';
import type { Pace } from '../../../bot/time/pace.ts';
import { fakeRates } from './fake/fake-rates.ts';
import { type FakeSlack, startFakeSlack } from './fake/fake-slack.ts';
import { quickPace } from './fake/quick-pace.ts';

const log = createSlackLog({ write: () => undefined });
const body = (text: string) => ({ text, blocks: [] });
type Body = Readonly<Record<string, unknown>>;
const noReply = async () => false;

/** Each call in its channel's turn, under the limit that Slack has for it. */
function sendingBy(call: Call, pace: Pace) {
  const sender = createSender(pace);
  const { limitOf } = slackPlatform(call, noReply);
  const doing = { 'chat.postMessage': 'post', 'chat.update': 'change' } as const;
  type Method = keyof typeof doing;
  const made = (method: Method, body: Body | (() => Promise<Body | undefined>)) => async (): Promise<Called> => {
    const ready = typeof body === 'function' ? await body() : body;
    return ready === undefined ? { kind: 'done', result: {} } : call(method, ready);
  };
  const send = (channel: string, method: Method, body: Body | (() => Promise<Body | undefined>)) =>
    sender.send(channel, limitOf(doing[method], channel), made(method, body));
  const sendNow = (channel: string, method: Method, body: Body) =>
    sender.sendNow(channel, limitOf(doing[method], channel), made(method, body));
  return { send, sendNow };
}

describe('a channel', () => {
  test('gets one message a second, in the order of asking', async () => {
    const sent: string[] = [];
    const pace = quickPace();
    const sender = sendingBy(async (_, { text }) => {
      sent.push(String(text));
      return { kind: 'done', result: {} };
    }, pace);
    await Promise.all(['a', 'b', 'c'].map((text) => sender.send('C1', 'chat.postMessage', body(text))));
    expect(sent).toEqual(['a', 'b', 'c']);
    const waited = pace.waits.reduce((sum, wait) => sum + wait, 0);
    expect(waited).toBeGreaterThan(1_900);
  });

  test('that is limited waits for as long as Slack says, and holds up no other', async () => {
    const sent: string[] = [];
    let limited = true;
    const waiting: (() => void)[] = [];
    const pace = {
      now: () => (limited ? 0 : 31_000),
      wait: () => new Promise<void>((resolve) => waiting.push(resolve)),
    };
    const sender = sendingBy(async (_, { channel }) => {
      if (channel === 'C1' && limited) return { kind: 'limited', retryAfterMs: 30_000 };
      sent.push(String(channel));
      return { kind: 'done', result: {} };
    }, pace);
    const first = sender.send('C1', 'chat.postMessage', { channel: 'C1' });
    await sender.send('C2', 'chat.postMessage', { channel: 'C2' });
    expect(sent).toEqual(['C2']);
    // A change of a message already there is under another limit.
    await sender.send('C1', 'chat.update', { channel: 'C2' });
    limited = false;
    for (const go of waiting) go();
    await first;
    expect(sent).toEqual(['C2', 'C2', 'C1']);
  });

  test('that stays limited is given up after five tries', async () => {
    let tries = 0;
    const sender = sendingBy(async (): Promise<Called> => {
      tries += 1;
      return { kind: 'limited', retryAfterMs: 1_000 };
    }, quickPace());
    expect((await sender.send('C1', 'chat.postMessage', {})).kind).toBe('limited');
    expect(tries).toBe(5);
  });

  test('that is limited for "0 seconds" is given one all the same', async () => {
    const pace = quickPace();
    let tries = 0;
    const sender = sendingBy(async (): Promise<Called> => {
      tries += 1;
      return tries < 3 ? { kind: 'limited', retryAfterMs: 0 } : { kind: 'done', result: {} };
    }, pace);
    expect((await sender.send('C1', 'chat.postMessage', {})).kind).toBe('done');
    expect(pace.waits).toEqual([1_000, 1_000]);
  });

  test('that is limited for a minute is waited for, for a second more it is not', async () => {
    const answers = async (seconds: number) => {
      const pace = quickPace();
      let tries = 0;
      const sender = sendingBy(async (): Promise<Called> => {
        tries += 1;
        return tries === 1 ? { kind: 'limited', retryAfterMs: seconds * 1000 } : { kind: 'done', result: {} };
      }, pace);
      return { kind: (await sender.send('C1', 'chat.update', {})).kind, waits: pace.waits.length };
    };
    expect(await answers(60)).toEqual({ kind: 'done', waits: 1 });
    expect(await answers(61)).toEqual({ kind: 'limited', waits: 0 });
  });

  test('sends what there is to say when its turn comes, and nothing where there is nothing any more', async () => {
    const sent: unknown[] = [];
    const sender = sendingBy(async (_, { text }) => {
      sent.push(text);
      return { kind: 'done', result: {} };
    }, quickPace());
    let said = 'early';
    const first = sender.send('C1', 'chat.postMessage', body('first'));
    const second = sender.send('C1', 'chat.postMessage', async () => body(said));
    const third = sender.send('C1', 'chat.postMessage', async () => undefined);
    said = 'late';
    await Promise.all([first, second, third]);
    expect(sent).toEqual(['first', 'late']);
  });

  test('that is limited makes a bell no wait: it is turned away without a call', async () => {
    let tries = 0;
    const sender = sendingBy(async (): Promise<Called> => {
      tries += 1;
      return { kind: 'limited', retryAfterMs: 30_000 };
    }, quickPace());
    await sender.sendNow('C1', 'chat.postMessage', {});
    expect((await sender.sendNow('C1', 'chat.postMessage', {})).kind).toBe('limited');
    expect(tries).toBe(1);
  });
});

describe('a call', () => {
  let fake: FakeSlack;
  beforeEach(async () => {
    fake = await startFakeSlack(() => Date.now());
  });
  afterEach(() => fake.close());
  const call = (token = 'xoxb-one') => createCall({ token, apiUrl: fake.apiUrl, log: log.forSdk });
  const posting = { channel: 'C1', text: 'x', blocks: [{ type: 'section', text: { type: 'plain_text', text: 'x' } }] };

  test('that is limited says for how long, and is not tried again behind our back', async () => {
    fake.fail('chat.postMessage', { is: 'limited', seconds: 7 });
    expect(await call()('chat.postMessage', posting)).toEqual({ kind: 'limited', retryAfterMs: 7_000 });
    expect(fake.calls).toHaveLength(1);
  });

  test('that is limited without a time is limited all the same', async () => {
    fake.fail('chat.postMessage', { is: 'limited', seconds: undefined });
    expect((await call()('chat.postMessage', posting)).kind).toBe('limited');
  });

  test('that Slack refuses has not happened; one that broke half way may have', async () => {
    fake.fail('chat.postMessage', { is: 'refused', error: 'is_archived' }, { is: 'refused', error: 'fatal_error' });
    expect(await call()('chat.postMessage', posting)).toEqual({ kind: 'refused', error: 'is_archived' });
    expect((await call()('chat.postMessage', posting)).kind).toBe('unknown');
  });

  test('with a 500, or taken and dropped, may have happened; the SDK does not try it again', async () => {
    fake.fail('chat.postMessage', { is: 'broken', status: 500 }, { is: 'dropped' });
    expect((await call()('chat.postMessage', posting)).kind).toBe('unknown');
    expect((await call()('chat.postMessage', posting)).kind).toBe('unknown');
    expect(fake.messages).toHaveLength(1);
    expect(fake.calls).toHaveLength(2);
  });

  test('to nobody never left', async () => {
    const gone = await startFakeSlack(() => Date.now());
    await gone.close();
    const nobody = createCall({ token: 'xoxb-one', apiUrl: gone.apiUrl, log: log.forSdk });
    expect((await nobody('chat.postMessage', posting)).kind).toBe('unsent');
  });

  test('without an answer ends after its time-out', async () => {
    const silent = createServer(() => undefined);
    await new Promise<void>((resolve) => {
      silent.listen(0, '127.0.0.1', resolve);
    });
    const { port } = silent.address() as AddressInfo;
    const waiting = createCall({
      token: 'xoxb-one',
      apiUrl: `http://127.0.0.1:${port}/api/`,
      log: log.forSdk,
      timeoutMs: 200,
    });
    expect((await waiting('chat.postMessage', posting)).kind).toBe('unknown');
    silent.closeAllConnections();
    silent.close();
  });

  test('of two clients goes out under its own token: each has options of its own', async () => {
    await call('xoxb-one')('auth.test', {});
    await call('xoxb-two')('auth.test', {});
    expect(fake.calls.map(({ token }) => token)).toEqual(['xoxb-one', 'xoxb-two']);
    expect(clientOptions({ apiUrl: undefined, log: log.forSdk })).not.toBe(
      clientOptions({ apiUrl: undefined, log: log.forSdk }),
    );
  });

  test('that posted and was dropped is found by its key, and not posted again', async () => {
    const one = call();
    const platform = slackPlatform(one, noReply);
    const mail = createMail({ platform, sender: createSender(quickPace()), now: () => Date.now() });
    fake.fail('chat.postMessage', { is: 'dropped' });
    const look = { card: makeCard('x', 'plain'), language: 'en', showing: 'x' };
    const posted = await mail.post({ channel: 'C1', thread: undefined }, look, 'key-1');
    expect(posted).toEqual({ kind: 'posted', ts: fake.messages[0]?.ts });
    expect(fake.messages).toHaveLength(1);
  });
});

describe('Slack’s own limits, kept by its stand-in', () => {
  let fake: FakeSlack;
  afterEach(() => fake.close());

  test('a second message within the second is turned away; after it, it is taken', async () => {
    let now = 0;
    fake = await startFakeSlack(
      () => 0,
      fakeRates(() => now),
    );
    const call = createCall({ token: 'xoxb-one', apiUrl: fake.apiUrl, log: log.forSdk });
    const post = (channel: string) => call('chat.postMessage', { channel, text: 'x', blocks: [] });
    expect((await post('C1')).kind).toBe('done');
    now = 999;
    expect(await post('C1')).toEqual({ kind: 'limited', retryAfterMs: 1_000 });
    expect((await post('C2')).kind).toBe('done');
    now = 1_000;
    expect((await post('C1')).kind).toBe('done');
  });

  test('the fifty-first change within a minute is turned away', async () => {
    let now = 0;
    fake = await startFakeSlack(
      () => 0,
      fakeRates(() => now),
    );
    const call = createCall({ token: 'xoxb-one', apiUrl: fake.apiUrl, log: log.forSdk });
    await call('chat.postMessage', { channel: 'C1', text: 'x', blocks: [] });
    const [message] = fake.messages;
    const change = () => call('chat.update', { channel: 'C1', ts: message?.ts, text: 'x', blocks: [] });
    for (let changed = 1; changed <= 50; changed += 1) expect((await change()).kind).toBe('done');
    now = 20_000;
    expect(await change()).toEqual({ kind: 'limited', retryAfterMs: 40_000 });
    now = 60_000;
    expect((await change()).kind).toBe('done');
  });

  test('many messages at once into one channel: not one is turned away', async () => {
    const pace = quickPace();
    fake = await startFakeSlack(() => 0, fakeRates(pace.now));
    const call = createCall({ token: 'xoxb-one', apiUrl: fake.apiUrl, log: log.forSdk });
    const sender = sendingBy(call, pace);
    const posts = Array.from({ length: 6 }, (_, i) =>
      sender.send('C1', 'chat.postMessage', { channel: 'C1', text: String(i), blocks: [] }),
    );
    expect((await Promise.all(posts)).every(({ kind }) => kind === 'done')).toBe(true);
    expect(fake.calls).toHaveLength(6);
    expect(fake.messages.map(({ text }) => text)).toEqual(['0', '1', '2', '3', '4', '5']);
  });
});

describe('to Slack itself', () => {
  afterAll(() => {
    nock.cleanAll();
    nock.enableNetConnect();
    nock.restore();
  });

  test('a message goes to its own address, with the token in the header and nowhere else', async () => {
    nock.disableNetConnect();
    const seen: Record<string, string>[] = [];
    nock('https://slack.com', { reqheaders: { authorization: 'Bearer xoxb-real' } })
      .post('/api/chat.postMessage', (sent: Record<string, string>) => seen.push(sent) > 0)
      .reply(200, { ok: true, ts: '1.1', channel: 'C1' });
    const real = createCall({ token: 'xoxb-real', apiUrl: undefined, log: log.forSdk });
    expect((await real('chat.postMessage', { channel: 'C1', text: 'x', unfurl_links: false })).kind).toBe('done');
    expect(JSON.stringify(seen)).not.toContain('xoxb');
    expect(nock.isDone()).toBe(true);
  });
});
