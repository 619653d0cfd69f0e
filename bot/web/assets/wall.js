// The board on the wall: drawn anew whenever it changes, and marked as old the moment nobody answers any more.

import { keepConnected } from './connection.js';

const wall = document.querySelector('main.wall');
const lost = document.querySelector('.lost');
const isPhone = matchMedia('(max-width: 50rem)');
let clock = wall.dataset.at;

keepConnected({
  address: () => '/board/events',
  on: {
    scene: ({ data }) => {
      wall.innerHTML = data;
      fold();
      clock = wall.querySelector('time').textContent;
    },
    beat: ({ data }) => {
      clock = data;
    },
  },
  onState: (state) => {
    if (state === 'connecting') return;
    const isLost = state === 'lost';
    if (isLost === !lost.hidden) return;
    lost.textContent = lost.dataset.text.replace('{time}', clock);
    lost.hidden = !isLost;
    document.body.classList.toggle('stale', isLost);
  },
});

/** Nobody scrolls a wall: what its screen has no room for is not cut in half but counted, in words. A phone is scrolled. */
function fold() {
  for (const more of wall.querySelectorAll('.more')) {
    const items = [...more.previousElementSibling.children];
    for (const item of items) item.hidden = false;
    say(more, 0);
    if (isPhone.matches) continue;
    const fits = (element) =>
      element.getBoundingClientRect().bottom <= more.parentElement.getBoundingClientRect().bottom + 1;
    const firstCut = items.findIndex((item) => !fits(item));
    // The first stays, whatever the room: its list scrolls then.
    let shown = firstCut === -1 ? items.length : Math.max(1, firstCut);
    for (;;) {
      for (const [i, item] of items.entries()) item.hidden = i >= shown;
      say(more, items.length - shown);
      if (shown <= 1 || more.hidden || fits(more)) break;
      shown -= 1;
    }
  }
}

/** `hidden`: besides those that never came. */
function say(more, hidden) {
  const count = Number(more.dataset.beyond) + hidden;
  more.hidden = count === 0;
  more.textContent = more.dataset.text.replace('{count}', count);
}

document.documentElement.classList.add('folds');
new ResizeObserver(fold).observe(wall);

/** A wall's screen must not go dark; where the browser does not permit this, the screen's own setting must. */
async function stayAwake() {
  try {
    await navigator.wakeLock?.request('screen');
  } catch {
    // Not permitted: over plain HTTP from another machine it is not.
  }
}
document.addEventListener('visibilitychange', () => !document.hidden && stayAwake());
stayAwake();
