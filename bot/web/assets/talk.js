// The conversation's page once its script runs: forms are sent in the background, posts and bells arrive by themselves.
// Without it the same forms work, one page at a time.

import { prepareBell, ring } from './bell.js';
import { keepConnected } from './connection.js';
import { openOutbox } from './outbox.js';
import { takeLists } from './parts-list.js';
import { watchThumb } from './thumb.js';

const at = (selector) => document.querySelector(selector);
const [state, lostNote, strip, scroller, posts, newest] = [
  ...['.state', '.lost', '.strip', 'main', '.posts', '.newest'],
].map(at);
const composer = at('.composer');
/** Two taps within this are one. */
const twiceMs = 600;
const justTapped = 'just-tapped';
const root = document.documentElement;
const { aboutToMove, wasUnder } = watchThumb(root);
let latest = Number(posts.dataset.latest);
const clockNow = at('.clock-now time');
let clock = clockNow.textContent;

const outbox = openOutbox({
  list: at('.outbox'),
  onShown: () => isLow() && toNewest(),
  me: () => ({ as: composer.elements.as.value, token: composer.elements.token.value }),
  onAnswer: (line, { n, html }) => {
    if (n > 0) addPost(n, html, true);
    for (const button of pendingFor(line)) used(button);
  },
  onRefused: notPending,
  // Sent or taken back in another tab: what came of it arrives as a post of its own.
  onGone: notPending,
});

function pendingFor({ shown }) {
  return [...document.querySelectorAll('[data-pending]')].filter((button) => button.dataset.pending === shown);
}

function notPending(line) {
  for (const button of pendingFor(line)) delete button.dataset.pending;
}

document.addEventListener('submit', (event) => {
  const form = event.target;
  if (!form.matches('[data-say]')) return;
  event.preventDefault();
  const hidden = ['token', 'form', 'as'];
  const fields = [...new FormData(form)].filter(([name, value]) => !hidden.includes(name) && typeof value === 'string');
  const shown = lineOf(fields);
  if (form === composer) {
    form.reset();
  } else {
    // A wet thumb taps twice, and the page may have moved in between: the second tap is nobody's meaning, wherever it lands.
    // A form that was filled in was meant.
    const filledIn = fields.some(([name]) => name.startsWith('field:') || name === 'list');
    if (outbox.holds(shown) || (!filledIn && root.classList.contains(justTapped))) return;
    root.classList.add(justTapped);
    setTimeout(() => root.classList.remove(justTapped), twiceMs);
    const was = filledIn ? undefined : wasUnder({ line: shown, place: form.elements.place?.value });
    if (was !== undefined) fields.push(['was', JSON.stringify({ label: was.label, line: was.line })]);
    form.querySelector('button').dataset.pending = shown;
    aboutToMove();
    form.closest('details.ask')?.removeAttribute('open');
    if (form.elements.list !== undefined) form.reset();
    document.activeElement?.blur();
  }
  outbox.add({ as: composer.elements.as.value, fields, shown });
  toNewest();
});

/** As the server fills it in: for show only. */
function lineOf(fields) {
  const values = new Map(fields);
  return values.get('line').replaceAll(/\{([\w-]+)\}([A-Za-z%]*)/g, (_, id, unit) => {
    const value = (values.get(`field:${id}`) ?? '').trim();
    return /[a-z%°]$/i.test(value) || value === '' ? value : value + unit;
  });
}

function used(button) {
  delete button.dataset.pending;
  button.classList.add('used');
  button.closest('.post')?.classList.add('past');
}

/** Posts come over the stream and as answers, whichever is first. */
function addPost(n, html, isAnswer) {
  if (document.getElementById(`post-${n}`) !== null) return;
  aboutToMove();
  at('.welcome')?.remove();
  const low = isLow();
  const later = [...posts.children].find((post) => Number(post.dataset.n) > n);
  const place = document.createElement('template');
  place.innerHTML = html;
  const post = place.content.firstElementChild;
  posts.insertBefore(post, later ?? null);
  latest = Math.max(latest, n);
  if (post.dataset.ring !== undefined) {
    ring({ title: post.querySelector('h2').textContent, tone: post.dataset.tone, key: post.dataset.ring });
  } else if (post.classList.contains('mine')) {
    foldBefore(post);
  }
  if (isAnswer || low) toNewest();
  else newest.hidden = false;
}

/** The taps of what has been answered since give way to the newest ones; they can be called back. */
function foldBefore(post) {
  const heard = post.querySelector('.said')?.textContent.trim().toLowerCase() === 'ok';
  for (const earlier of posts.querySelectorAll('.mine:not(.past)')) {
    if (earlier === post) return;
    if (earlier.dataset.ring === undefined || heard) earlier.classList.add('past');
  }
}

posts.addEventListener('click', ({ target }) => {
  const card = target.closest('.past .card');
  if (card !== null && target.closest('button, summary, a, input, select') === null) {
    card.closest('.past').classList.remove('past');
  }
});

function isLow() {
  return scroller.scrollHeight - scroller.scrollTop - scroller.clientHeight < 160;
}

function toNewest() {
  scroller.scrollTop = scroller.scrollHeight;
  newest.hidden = true;
}

newest.addEventListener('click', toNewest);
scroller.addEventListener(
  'scroll',
  () => {
    if (isLow()) newest.hidden = true;
  },
  { passive: true },
);

/** What runs is drawn anew, but never under a thumb that is filling in a form. */
function showScene(html) {
  const typing = [...strip.querySelectorAll('input:not([type=hidden])')].some((input) => input.value !== '');
  if (typing || (strip.contains(document.activeElement) && document.activeElement.matches('input, select'))) return;
  const open = [...strip.querySelectorAll('details[open]')].map(({ id }) => id);
  const focused = strip.contains(document.activeElement) ? document.activeElement.closest('details')?.id : undefined;
  const { scrollTop } = strip;
  aboutToMove();
  strip.innerHTML = html;
  for (const id of open) document.getElementById(id)?.setAttribute('open', '');
  if (focused !== undefined) document.getElementById(focused)?.querySelector('summary').focus();
  strip.scrollTop = scrollTop;
  showClock(strip.querySelector('[data-clock]').dataset.clock);
}

function showClock(shown) {
  clock = shown;
  clockNow.textContent = shown;
}

function showState(now) {
  if (state.dataset.state === now) return;
  state.dataset.state = now;
  const { connected, connecting, lost } = state.dataset;
  state.textContent = now === 'on' ? connected : now === 'lost' ? `${lost} ${clock}` : connecting;
  lostNote.hidden = now !== 'lost';
  lostNote.textContent = lostNote.dataset.text.replace('{time}', clock);
  if (now === 'on') outbox.send();
}

for (const post of [...posts.querySelectorAll('.mine:not([data-ring])')].slice(0, -1)) post.classList.add('past');
takeLists({ line: composer.elements.line, form: at('.parts-in form') });
root.classList.add('live');
prepareBell(at('.bell'));
keepConnected({
  address: () => `/events?after=${posts.dataset.conversation}-${latest}`,
  on: {
    post: ({ lastEventId, data }) => addPost(Number(lastEventId.split('-')[1]), data, false),
    scene: ({ data }) => showScene(data),
    beat: ({ data }) => showClock(data),
    // Too much has happened since, or it is another conversation: what is unsent is kept.
    anew: () => location.reload(),
  },
  onState: showState,
});
if (location.hash === '') toNewest();
