// One life of a Batchbell that dies at a named point: the built program over its own SQLite file, its clock virtual, its
// store, statements and messages wrapped so that each passing of a point can be the last. What reached people is written
// to standard output, synchronously, before the process may die: the parent is the witness.

import { writeSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';

const life = JSON.parse(process.argv[2] ?? '{}');
const passes = {};

function report(line) {
  writeSync(1, `${JSON.stringify(line)}\n`);
}

function pass(point) {
  passes[point] = (passes[point] ?? 0) + 1;
  if (life.kill?.point !== point || passes[point] !== life.kill.nth) return;
  report({ is: 'dying', point });
  process.kill(process.pid, 'SIGKILL');
}

// Statements that write, also those inside the commit's transaction.
const written = /^\s*(insert|update|delete)\b.*?\b(event|filed|live|reminder|answer)\b/s;
const prepare = Database.prototype.prepare;
Database.prototype.prepare = function prepareWatched(sql) {
  const statement = prepare.call(this, sql);
  const found = written.exec(sql);
  if (found === null) return statement;
  const name = `sql ${found[1]} ${found[2]}${sql.includes('returning') ? ' (claim)' : sql.includes('rejections + 1') ? ' (reject)' : ''}`;
  for (const way of ['run', 'get']) {
    const act = statement[way].bind(statement);
    statement[way] = (...values) => {
      pass(`${name}: before`);
      const result = act(...values);
      pass(`${name}: after`);
      return result;
    };
  }
  return statement;
};
const transaction = Database.prototype.transaction;
Database.prototype.transaction = function transactionWatched(work) {
  return transaction.call(this, (...values) => {
    pass('transaction: begun');
    const result = work(...values);
    pass('transaction: before its end');
    return result;
  });
};

const at = (path) => import(new URL(`../../dist/${path}`, import.meta.url).href);
const [
  { virtualClock },
  { ringUntil },
  { wire },
  { lockData },
  { openSqliteStore },
  { readSheetFolders },
  { english },
] = await Promise.all([
  at('bot/time/clocks.js'),
  at('bot/terminal/script.js'),
  at('bot/run/wiring.js'),
  at('core/store/data-lock.js'),
  at('core/store/sqlite-store.js'),
  at('core/store/sheet-files.js'),
  at('bot/language/tongues/english/sentences.js'),
]);

const lock = lockData(life.folder);
const time = virtualClock(life.start);
const clock = {
  now: time.now,
  moveTo: (to) => {
    time.moveTo(to);
    report({ is: 'time', at: time.now() });
  },
};

const dueTimes = new Map();
const real = openSqliteStore(join(life.folder, 'batchbell.sqlite'));
const store = Object.fromEntries(
  Object.entries(real).map(([name, ask]) => {
    const isAwaited = typeof ask === 'function' && name !== 'close';
    return [name, isAwaited ? watchedCall(name, ask) : ask];
  }),
);

function watchedCall(name, ask) {
  return async (...values) => {
    pass(`${name}: asked`);
    const result = await ask(...values);
    if (name === 'claim' && result !== undefined) dueTimes.set(result.numberedKey, result.dueAt);
    pass(`${name}: answered`);
    return result;
  };
}

const arrived = new Set(life.arrived);
let posts = life.posts;

/** A platform in bad weather: now and then it turns a post away, or takes it (or loses it) without an answer. */
function weather() {
  posts += 1;
  if (posts % 7 === 3) return { outcome: 'rejected', arrives: false };
  if (posts % 7 === 5) return { outcome: 'unknown', arrives: true };
  if (posts % 11 === 8) return { outcome: 'unknown', arrives: false };
  return { outcome: 'posted', arrives: true };
}

const frontEnd = {
  tell: async (answer) => {
    pass('post: asked');
    const { outcome, arrives } = weather();
    const { facts, lines } = answer.card;
    report({
      is: 'post',
      at: clock.now(),
      key: answer.key,
      dueAt: dueTimes.get(answer.key),
      arrives,
      outcome,
      lateMinutes: facts.find(({ id }) => id === 'late-minutes')?.value,
      saysLate: lines.some((line) => line.startsWith('Late by ')),
      saysRepeat: lines.includes(english.replies.ringRepeat),
    });
    if (arrives) arrived.add(answer.key);
    pass('post: sent, not answered');
    return outcome;
  },
  wasTold: async (numberedKey) => {
    pass('look-up: asked');
    const found = arrived.has(numberedKey) ? 'yes' : 'no';
    pass('look-up: answered');
    return life.askable ? found : 'unknown';
  },
};
const log = {
  info: () => undefined,
  error: (event, details) => {
    if (event.endsWith('-broke')) process.stderr.write(`${event} ${JSON.stringify(details)}\n`);
  },
};
const shelf = readSheetFolders([new URL('../../core/products/sheets', import.meta.url).pathname]);
const { executor, host, ringer } = wire({ store, clock, log, crewFile: life.crewFile, shelf, frontEnd });

await executor.reconcile(clock.now());
await ringUntil(clock.now(), ringer, clock);
let lastAt = life.lastAt;
for (const { id, as, text, afterMinutes } of life.deliveries) {
  await ringUntil(Math.max(clock.now(), lastAt + afterMinutes * 60_000), ringer, clock);
  pass('delivery: taken');
  const answer = await host.handle({ text, as, in: id, id });
  pass('answer: not given yet');
  report({ is: 'answer', at: clock.now(), id, recorded: answer.recorded, text: JSON.stringify(answer) });
  pass('answer: given');
  lastAt = clock.now();
}
await ringUntil(Math.max(clock.now(), lastAt + life.restMinutes * 60_000), ringer, clock);
report({ is: 'end', at: clock.now(), passes });
real.close();
lock.release();
