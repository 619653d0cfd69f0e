import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { type Aftermath, aftermath } from './aftermath.ts';
import { type Kill, live, nothingYet, type Witnessed } from './witness.ts';

/** Each point is passed so many times by its processes before they die there: at the first, the second, the third ... */
const nths = [1, 2, 3, 5, 8, 13];
/** How long nothing runs after a death: a supervisor's restart, a coffee, and back from somewhere else. */
const downMs = [1_000, 20_000, 90_000, 240_000];

interface Told extends Aftermath {
  readonly died: readonly string[];
  readonly posts: number;
  readonly answers: number;
}

/** One folder: die at each kill in turn, start again, and come to the script's end at last. */
async function chain(kills: Kill[], askable: boolean): Promise<Told> {
  const folder = mkdtempSync(join(tmpdir(), 'batchbell-kill-'));
  const died: string[] = [];
  const unreached: Kill[] = [];
  let seen: Witnessed = nothingYet;
  // A life that reached the script's end without passing its point leaves that kill to another folder.
  while (!seen.ended) {
    const kill = died.length < 15 ? kills.shift() : undefined;
    const down = died.length === 0 ? 0 : (downMs[died.length % downMs.length] ?? 0);
    const life = await live({ folder, askable, kill, downMs: down }, seen);
    seen = life.seen;
    if (life.died && kill !== undefined) died.push(kill.point);
    else if (kill !== undefined) unreached.push(kill);
  }
  const after = await aftermath(folder, seen, askable);
  rmSync(folder, { recursive: true });
  // Sooner next time, or it is never reached.
  kills.push(...unreached.filter(({ nth }) => nth > 1).map(({ point, nth }) => ({ point, nth: nth - 1 })));
  return { ...after, died, posts: seen.posts.length, answers: seen.answers.length };
}

async function lane(kills: Kill[], askable: boolean): Promise<readonly Told[]> {
  const told: Told[] = [];
  while (kills.length > 0) told.push(await chain(kills, askable));
  return told;
}

test('killed at every await of the write path and of the bell, nothing answered is lost and every bell rings', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'batchbell-kill-'));
  const { seen } = await live({ folder, askable: true, kill: undefined, downMs: 0 }, nothingYet);
  expect((await aftermath(folder, seen, true)).findings, 'the life without a death').toEqual([]);
  rmSync(folder, { recursive: true });
  const points = Object.keys(seen.passes);

  // Two lanes at once, one with a platform that can be asked for a message, one without.
  const kills = nths.flatMap((nth) =>
    points.filter((point) => (seen.passes[point] ?? 0) >= nth).map((point) => ({ point, nth })),
  );
  const told = (
    await Promise.all([
      lane(
        kills.filter((_, i) => i % 2 === 0),
        true,
      ),
      lane(
        kills.filter((_, i) => i % 2 === 1),
        false,
      ),
    ])
  ).flat();

  const deaths = told.flatMap(({ died }) => died);
  const sum = (of: (one: Told) => number) => told.reduce((total, one) => total + of(one), 0);
  console.table(Object.fromEntries(points.map((point) => [point, deaths.filter((at) => at === point).length])));
  console.log({
    kills: deaths.length,
    lives: told.length,
    posts: sum(({ posts }) => posts),
    answers: sum(({ answers }) => answers),
    events: sum(({ events }) => events),
    lateRings: sum(({ lateRings }) => lateRings),
    markedRepeats: sum(({ markedRepeats }) => markedRepeats),
    answeredTwice: sum(({ answeredTwice }) => answeredTwice),
  });
  expect(told.flatMap(({ findings }) => findings)).toEqual([]);
  expect(deaths.length).toBeGreaterThanOrEqual(200);
  expect(
    points.filter((point) => !deaths.includes(point)),
    'points where nobody died',
  ).toEqual([]);
  for (const reached of [sum(({ lateRings }) => lateRings), sum(({ markedRepeats }) => markedRepeats)]) {
    expect(reached).toBeGreaterThan(0);
  }
  expect(sum(({ answeredTwice }) => answeredTwice)).toBeGreaterThan(0);
}, 300_000);
