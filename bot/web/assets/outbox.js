// What was typed or tapped and is not answered yet. It is kept on the phone, sent in its order, again and again under the
// same id until there is an answer, and shown until then as not sent.

const key = 'batchbell-outbox';
const delaysMs = [1000, 2000, 4000, 8000, 15_000];
const patienceMs = 10_000;

/**
 * @param {{
 *   list: HTMLOListElement,
 *   me: () => { as: string, token: string },
 *   onShown: () => void,
 *   onAnswer: (line: object, answer: { n: number, html: string }) => void,
 *   onRefused: (line: object) => void,
 * }} needs
 */
export function openOutbox({ list, me, onShown, onAnswer, onRefused }) {
  let lines = stored();
  let busy = false;
  let tries = 0;
  let retry;

  function add(line) {
    lines = [...lines, { ...line, id: newId(), typedAt: Date.now(), state: 'waits' }];
    keep();
    send();
  }

  async function send() {
    clearTimeout(retry);
    const { as, token } = me();
    const line = lines.find((one) => one.as === as && one.state === 'waits');
    if (busy || line === undefined) return show();
    busy = true;
    show();
    const outcome = await post(line, as, token);
    busy = false;
    if (outcome.is === 'later') {
      retry = setTimeout(send, outcome.waitMs ?? delaysMs[Math.min(tries, delaysMs.length - 1)]);
      tries += 1;
      return show();
    }
    tries = 0;
    if (outcome.is === 'answered') {
      lines = lines.filter((one) => one.id !== line.id);
      keep();
      onAnswer(line, outcome.answer);
    } else {
      lines = lines.map((one) => (one.id === line.id ? { ...one, state: 'refused', why: outcome.why } : one));
      keep();
      onRefused(line);
    }
    send();
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
      return { is: 'refused', why: (await response.json()).why };
    } catch {
      return { is: 'later' };
    }
  }

  function takeBack(id) {
    const line = lines.find((one) => one.id === id);
    lines = lines.filter((one) => one.id !== id);
    keep();
    show();
    if (line !== undefined) onRefused(line);
  }

  function show() {
    const { as } = me();
    const [first] = lines.filter((one) => one.as === as && one.state === 'waits');
    list.replaceChildren(...lines.map((line) => item(line, busy && tries === 0 && line === first, as)));
    onShown();
  }

  function item(line, sending, as) {
    const { notSent, sending: sendingWords, refused, takeBack: takeBackWords, typedBy } = list.dataset;
    const li = document.createElement('li');
    li.className = `unsent ${line.state}`;
    const words = document.createElement('p');
    words.className = 'said';
    words.append(Object.assign(document.createElement('span'), { textContent: line.shown }));
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

  function keep() {
    try {
      localStorage.setItem(key, JSON.stringify(lines));
    } catch {
      // A full or forbidden storage: the lines live as long as the page.
    }
  }

  window.addEventListener('online', send);
  show();
  return {
    add,
    send,
    holds: (shown) => lines.some((one) => one.shown === shown && one.state === 'waits'),
  };
}

function stored() {
  try {
    const lines = JSON.parse(localStorage.getItem(key) ?? '[]');
    return Array.isArray(lines) ? lines : [];
  } catch {
    return [];
  }
}

/** Not `randomUUID`: on the crew's network the page is no secure context. */
function newId() {
  return Array.from(crypto.getRandomValues(new Uint8Array(12)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}
