// The lines that are not answered yet, as they lie on the phone: each under a key of its own, so that two tabs of one
// browser that are both away never write over one another's. What lies there is the queue, whoever put it there.

const before = 'batchbell-outbox/';
/** Where an earlier edition of this page kept all of them as one. */
const oldKey = 'batchbell-outbox';

/** @param {() => void} onElsewhere another tab has added, answered or taken back a line */
export function openKeptLines(onElsewhere) {
  /** Where the storage is full or forbidden a line lives as long as its page. */
  const unkept = new Map();
  bringOver();

  /** In the order in which they were said, in whichever tab. */
  function all() {
    return [...stored(), ...unkept.values()].sort(
      (a, b) => a.turn - b.turn || a.typedAt - b.typedAt || (a.id < b.id ? -1 : 1),
    );
  }

  function add(line) {
    // Not by the clock: a phone's may be set back between two lines.
    put({ ...line, turn: 1 + Math.max(0, ...all().map(({ turn }) => turn)) });
  }

  function put(line) {
    try {
      localStorage.setItem(before + line.id, JSON.stringify(line));
      unkept.delete(line.id);
    } catch {
      unkept.set(line.id, line);
    }
  }

  function remove(id) {
    unkept.delete(id);
    try {
      localStorage.removeItem(before + id);
    } catch {
      // Forbidden: then it never lay there.
    }
  }

  /** Those of the earlier edition come first: they were typed before. */
  function bringOver() {
    try {
      const lines = JSON.parse(localStorage.getItem(oldKey) ?? '[]');
      for (const [i, line] of lines.entries()) put({ ...line, turn: i - lines.length });
      localStorage.removeItem(oldKey);
    } catch {
      // Unreadable or forbidden.
    }
  }

  window.addEventListener('storage', ({ key }) => {
    if (key === null || key.startsWith(before)) onElsewhere();
  });
  return { all, add, put, remove };
}

function stored() {
  try {
    return Object.keys(localStorage)
      .filter((key) => key.startsWith(before))
      .flatMap((key) => readable(localStorage.getItem(key)));
  } catch {
    return [];
  }
}

/** What lies there and is no line is nobody's. */
function readable(text) {
  try {
    const line = JSON.parse(text ?? 'null');
    return typeof line?.id === 'string' && Array.isArray(line.fields) ? [line] : [];
  } catch {
    return [];
  }
}
