// The board on the wall: drawn anew whenever it changes, and marked as old the moment nobody answers any more.

import { keepConnected } from './connection.js';

const wall = document.querySelector('main.wall');
const lost = document.querySelector('.lost');
let clock = wall.dataset.at;

keepConnected({
  address: () => '/board/events',
  on: {
    scene: ({ data }) => {
      wall.innerHTML = data;
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
