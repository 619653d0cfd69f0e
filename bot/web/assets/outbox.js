// What was typed or tapped and is not answered yet. It is kept on the phone, sent in its order, again and again under the
// same id until there is an answer, and shown until then as not sent. All tabs of a browser have one queue and send it in
// its order: one at a time where the browser holds a lock for them (not over plain HTTP), and whatever two of them send all
// the same is by its id one line to the server.

import { openKeptLines } from './kept-lines.js';

const lockName = 'batchbell-outbox';
const delaysMs = [1000, 2000, 4000, 8000, 15_000];
const patienceMs = 10_000;

/**
 * @param {{
 *   list: HTMLOListElement,
 *   me: () => { as: string, token: string },
 *   onShown: () => void,
 *   onAnswer: (line: object, answer: { n: number, html: string }) => void,
 *   onRefused: (line: object) => void,
 *   onGone: (line: object) => void,
 * }} needs
 */
export function openOutbox({ list, me, onShown, onAnswer, onRefused, onGone }) {
  const kept = openKeptLines(elsewhere);
  /** As last seen: what has gone since was answered or taken back in another tab. */
  let known = kept.all();
  const tab = newId();
  /** Of other tabs: this one's page is older than theirs and may not send for them. */
  const notFromHere = new Set();
  let busy = false;
  let tries = 0;
  let retry;

  function add(line) {
    kept.add({ ...line, tab, id: newId(), typedAt: Date.now(), state: 'waits' });
    send();
  }

  const first = () =>
    kept.all().find(({ id, as, state }) => as === me().as && state === 'waits' && !notFromHere.has(id));

  async function send() {
    clearTimeout(retry);
    if (busy || first() === undefined) return show();
    busy = true;
    show();
    const outcome = await inTurn(sendFirst);
    busy = false;
    if (outcome.is === 'later') {
      retry = setTimeout(send, outcome.waitMs ?? delaysMs[Math.min(tries, delaysMs.length - 1)]);
      tries += 1;
      return show();
    }
    tries = 0;
    send();
  }

  /** Looked up only now: another tab may have sent it while this one waited for its turn. */
  async function sendFirst() {
    const line = first();
    if (line === undefined) return { is: 'nothing' };
    const { as, token } = me();
    const outcome = await post(line, as, token);
    if (outcome.is === 'answered') {
      forget(line.id);
      onAnswer(line, outcome.answer);
    } else if (outcome.is === 'refused' && outcome.status === 403 && line.tab !== tab) {
      notFromHere.add(line.id);
    } else if (outcome.is === 'refused') {
      // Taken back in another tab meanwhile, it does not come again.
      if (kept.all().some(({ id }) => id === line.id)) kept.put({ ...line, state: 'refused', why: outcome.why });
      onRefused(line);
    }
    return outcome;
  }

  async function post(line, as, token) {
    const body = new URLSearchParams([...line.fields, ['as', as], ['token', token], ['form', line.id]]);
    body.set('age', String(Math.max(0, Date.now() - line.typedAt)));
    try {
      const headers = { accept: 'application/json' };
      const response = await fetch('/say', { method: 'POST', body, headers, signal: AbortSignal.timeout(patienceMs) });
      if (response.ok) return { is: 'answered', answer: await response.json() };
      if (response.status === 429)
        return { is: 'later', waitMs: Number(response.headers.get('retry-after') ?? 2) * 1000 };
      if (response.status >= 500) return { is: 'later' };
      return { is: 'refused', status: response.status, why: (await response.json()).why };
    } catch {
      return { is: 'later' };
    }
  }

  function takeBack(id) {
    const line = kept.all().find((one) => one.id === id);
    forget(id);
    show();
    if (line !== undefined) onRefused(line);
  }

  function forget(id) {
    kept.remove(id);
    known = known.filter((one) => one.id !== id);
  }

  /** What another tab has sent or taken back is no longer pending here; what it has added is sent by whoever comes first. */
  function elsewhere() {
    const ids = new Set(kept.all().map(({ id }) => id));
    for (const line of known.filter(({ id }) => !ids.has(id))) onGone(line);
    if (tries === 0) send();
    else show();
  }

  function show() {
    known = kept.all();
    const { as } = me();
    const sent = busy && tries === 0 ? first()?.id : undefined;
    list.replaceChildren(...known.map((line) => item(line, line.id === sent, as)));
    onShown();
  }

  function item(line, sending, as) {
    const { notSent, sending: sendingWords, refused, takeBack: takeBackWords, typedBy } = list.dataset;
    const li = document.createElement('li');
    li.className = `unsent ${line.state}`;
    const words = document.createElement('p');
    words.className = 'said';
    words.append(Object.assign(document.createElement('span'), { textContent: inShort(line.shown) }));
    const state = document.createElement('p');
    state.className = 'unsent-state';
    const typed = new Date(line.typedAt).toTimeString().slice(0, 5);
    const who = line.as === as ? '' : ` ${typedBy} ${line.as}`;
    const said = line.state === 'refused' ? `${refused}: ${line.why}` : sending ? sendingWords : notSent;
    state.textContent = `${said} · ${typed}${who}`;
    if (!sending) {
      const button = Object.assign(document.createElement('button'), { type: 'button', textContent: takeBackWords });
      button.addEventListener('click', () => takeBack(line.id));
      state.append(' ', button);
    }
    li.append(words, state);
    return li;
  }

  window.addEventListener('online', send);
  show();
  return {
    add,
    send,
    holds: (shown) => known.some((one) => one.shown === shown && one.state === 'waits'),
  };
}

/** Of a list its first line, and how many more there are. */
function inShort(shown) {
  const [first, ...more] = shown.split('\n');
  return more.length === 0 ? shown : `${first} (+${more.length})`;
}

/** One tab after the other; a tab that is closed gives up its turn. */
async function inTurn(send) {
  try {
    return await (navigator.locks === undefined ? send() : navigator.locks.request(lockName, send));
  } catch {
    return { is: 'later' };
  }
}

/** Not `randomUUID`: on the crew's network the page is no secure context. */
function newId() {
  return Array.from(crypto.getRandomValues(new Uint8Array(12)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}
