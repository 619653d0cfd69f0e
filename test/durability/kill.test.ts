import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
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

describe('killed at every await of the write path and of the bell', () => {
  /** How often each point is passed in a life without a death. */
  let passes: Readonly<Record<string, number>>;
  let all: readonly Told[] = [];
  const sum = (of: (one: Told) => number) => all.reduce((total, one) => total + of(one), 0);

  beforeAll(async () => {
    const folder = mkdtempSync(join(tmpdir(), 'batchbell-kill-'));
    const { seen } = await live({ folder, askable: true, kill: undefined, downMs: 0 }, nothingYet);
    expect((await aftermath(folder, seen, true)).findings, 'the life without a death').toEqual([]);
    rmSync(folder, { recursive: true });
    passes = seen.passes;
  });

  test.each(nths)(
    'given deaths at passing %i of each, then nothing answered is lost and every bell rings',
    async (nth) => {
      // Two lanes at once, one with a platform that can be asked for a message, one without.
      const kills = Object.keys(passes).flatMap((point) => ((passes[point] ?? 0) >= nth ? [{ point, nth }] : []));
      const askable = (i: number) => (i + nths.indexOf(nth)) % 2 === 0;
      const lanes = [true, false].map((asked) =>
        lane(
          kills.filter((_, i) => askable(i) === asked),
          asked,
        ),
      );
      const told = (await Promise.all(lanes)).flat();
      all = [...all, ...told];
      expect(told.flatMap(({ findings }) => findings)).toEqual([]);
      expect(told.flatMap(({ died }) => died).length).toBeGreaterThan(0);
    },
  );

  test('given all of them, then somebody died at every point, and bells came late, again, and marked as a repeat', () => {
    const deaths = all.flatMap(({ died }) => died);
    const points = Object.keys(passes);
    console.table(Object.fromEntries(points.map((point) => [point, deaths.filter((at) => at === point).length])));
    const reached = {
      posts: sum(({ posts }) => posts),
      answers: sum(({ answers }) => answers),
      events: sum(({ events }) => events),
      lateRings: sum(({ lateRings }) => lateRings),
      markedRepeats: sum(({ markedRepeats }) => markedRepeats),
      answeredTwice: sum(({ answeredTwice }) => answeredTwice),
    };
    console.log({ kills: deaths.length, lives: all.length, ...reached });
    expect(deaths.length).toBeGreaterThanOrEqual(200);
    expect(
      points.filter((point) => !deaths.includes(point)),
      'points where nobody died',
    ).toEqual([]);
    expect(Object.entries(reached).filter(([, count]) => count === 0)).toEqual([]);
  });
});
