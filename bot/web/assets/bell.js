// The bell of the page: sound made here, a buzz, and where the browser permits it a notification. Browsers let a page
// sound only after somebody has touched it, so the button says which of the three it is: on, off, or waiting for a touch.

const key = 'batchbell-bell';
/** What a browser takes for a touch: a finger counts when it leaves the glass, a mouse when it goes down. */
const touches = ['pointerdown', 'pointerup', 'click', 'keydown'];
let context;
let wanted = remembered() !== 'off';

function remembered() {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

/** @param {HTMLButtonElement} button */
export function prepareBell(button) {
  const shown = () => show(button);
  button.hidden = false;
  shown();
  button.addEventListener('click', async () => {
    // What it says is what the thumb answers: whatever is not on is turned on.
    wanted = button.dataset.state !== 'on';
    try {
      localStorage.setItem(key, wanted ? 'on' : 'off');
    } catch {
      // Without storage it holds for this page only.
    }
    if (wanted) {
      await wake(shown);
      if (sounds()) strike(1, 660);
    }
    shown();
    if (wanted) await askToNotify();
  });
  // A touch anywhere wakes a bell that is wanted; one on its own button has been answered by the click.
  for (const touch of touches) {
    document.addEventListener(touch, async ({ target }) => {
      if (!wanted || sounds() || button.contains(target)) return;
      await wake(shown);
      shown();
    });
  }
  // Turned off on this phone is off in all of its tabs.
  window.addEventListener('storage', (event) => {
    if (event.key !== key) return;
    wanted = event.newValue !== 'off';
    shown();
  });
}

const sounds = () => wanted && context?.state === 'running';

async function wake(shown) {
  try {
    if (context === undefined) {
      context = new AudioContext();
      // A phone that slept, or took a call, stops the sound by itself: the button must not go on saying that it is on.
      context.addEventListener('statechange', shown);
    }
    await context.resume();
  } catch {
    // No sound to be had here: the button goes on saying so.
  }
}

function show(button) {
  const { on, off, waits } = button.dataset;
  button.dataset.state = !wanted ? 'off' : sounds() ? 'on' : 'waits';
  button.querySelector('span').textContent = !wanted ? off : sounds() ? on : waits;
  button.setAttribute('aria-pressed', String(sounds() === true));
}

/** What rings for this person, by its tone: what must stop sounds deeper and longer. */
export function ring({ title, tone, key: ringKey }) {
  const urgent = tone === 'stop' || tone === 'warn';
  if (sounds()) strike(urgent ? 5 : 3, urgent ? 520 : 780);
  navigator.vibrate?.(urgent ? [400, 150, 400, 150, 400] : [200, 100, 200]);
  if (document.hidden) notify(title, { tag: ringKey, requireInteraction: urgent });
}

/** Never fails: the post that rings stands on the page whatever becomes of its notification. */
function notify(title, options) {
  if (!('Notification' in window) || Notification.permission !== 'granted') return;
  try {
    new Notification(title, options);
  } catch {
    // Phones have the name and refuse to make one from a page.
  }
}

async function askToNotify() {
  if (!('Notification' in window) || Notification.permission !== 'default') return;
  try {
    await Notification.requestPermission();
  } catch {
    // Some refuse to ask over plain HTTP.
  }
}

function strike(times, hertz) {
  for (let i = 0; i < times; i += 1) {
    const at = context.currentTime + i * 0.45;
    for (const [partial, loudness] of [
      [1, 0.5],
      [2.76, 0.2],
    ]) {
      const tone = context.createOscillator();
      const volume = context.createGain();
      tone.frequency.value = hertz * partial;
      volume.gain.setValueAtTime(loudness, at);
      volume.gain.exponentialRampToValueAtTime(0.001, at + 0.42);
      tone.connect(volume).connect(context.destination);
      tone.start(at);
      tone.stop(at + 0.43);
    }
  }
}
