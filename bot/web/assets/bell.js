// The bell of the page: sound made here, a buzz, and where the browser permits it a notification. Browsers let a page
// sound only after somebody has touched it, so the button says which of the three it is: on, off, or waiting for a touch.

const key = 'batchbell-bell';
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
  button.hidden = false;
  show(button);
  button.addEventListener('click', async () => {
    wanted = !sounds();
    try {
      localStorage.setItem(key, wanted ? 'on' : 'off');
    } catch {
      // Without storage it holds for this page only.
    }
    if (wanted) {
      await wake();
      strike(1, 660);
      if ('Notification' in window && Notification.permission === 'default') await Notification.requestPermission();
    }
    show(button);
  });
  document.addEventListener('pointerdown', async () => {
    if (!wanted || sounds()) return;
    await wake();
    show(button);
  });
}

const sounds = () => wanted && context?.state === 'running';

async function wake() {
  context ??= new AudioContext();
  await context.resume();
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
  if (document.hidden && 'Notification' in window && Notification.permission === 'granted') {
    new Notification(title, { tag: ringKey, requireInteraction: urgent });
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
