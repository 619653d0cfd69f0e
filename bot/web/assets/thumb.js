// What lay under the thumb until a moment ago. The page moves by itself: what runs is drawn anew, a card comes in below. A
// tap that lands where another button stood until just now was aimed at that one.

/** As in `bot/talk/pressed.ts`: whoever sees the change needs about so long to read and to move. */
const thumbMs = 1_500;
const justMoved = 'just-moved';

export function watchThumb(root) {
  let scenes = [];
  let finger;
  let still;

  addEventListener(
    'pointerdown',
    ({ clientX, clientY }) => {
      finger = { x: clientX, y: clientY, at: performance.now() };
    },
    { capture: true, passive: true },
  );

  /** Called before anything on the page changes its place or its words. */
  function aboutToMove() {
    const now = performance.now();
    scenes = [...scenes.filter(({ until }) => now - until < thumbMs), { until: now, buttons: buttonsInSight() }];
    root.classList.add(justMoved);
    clearTimeout(still);
    still = setTimeout(() => root.classList.remove(justMoved), thumbMs);
  }

  /** What stood under the finger then, or in the same place of its card, where it says another thing; else `undefined`. */
  function wasUnder({ line, place }) {
    const now = performance.now();
    const isOn = ({ box }) => finger !== undefined && now - finger.at < thumbMs && isIn(box, finger);
    return scenes
      .filter(({ until }) => now - until < thumbMs)
      .flatMap(({ buttons }) => buttons.find(isOn) ?? buttons.find((button) => button.place === place) ?? [])
      .findLast((button) => button.line !== line);
  }

  return { aboutToMove, wasUnder };
}

function isIn({ left, top, right, bottom }, { x, y }) {
  return x >= left && x <= right && y >= top && y <= bottom;
}

function buttonsInSight() {
  return [...document.querySelectorAll('form[data-say] button')].flatMap((button) => {
    const form = button.form;
    const label = form.elements.label?.value;
    const box = button.getBoundingClientRect();
    if (label === undefined || box.width === 0 || box.bottom < 0 || box.top > innerHeight) return [];
    return [{ box, label, line: form.elements.line.value, place: form.elements.place.value }];
  });
}
