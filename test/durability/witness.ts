// The outside of a life that is killed: starts the child, reads what it reports before it dies, and remembers what
// reached people and what was answered as recorded.

import { spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { z } from 'zod';
import { type Delivery, inventedCrew, twoBatches } from './two-batches.ts';

const Line = z.discriminatedUnion('is', [
  z.object({ is: z.literal('time'), at: z.number() }),
  z.object({ is: z.literal('dying'), point: z.string() }),
  z.object({
    is: z.literal('post'),
    at: z.number(),
    key: z.string(),
    dueAt: z.number(),
    arrives: z.boolean(),
    outcome: z.enum(['posted', 'rejected', 'unknown']),
    lateMinutes: z.number().optional(),
    saysLate: z.boolean(),
    saysRepeat: z.boolean(),
  }),
  z.object({ is: z.literal('answer'), at: z.number(), id: z.string(), recorded: z.boolean(), text: z.string() }),
  z.object({ is: z.literal('end'), at: z.number(), passes: z.record(z.string(), z.number()) }),
]);
type Line = z.infer<typeof Line>;
export type Post = Extract<Line, { is: 'post' }>;
type Given = Extract<Line, { is: 'answer' }>;

/** Dies at the `nth` passing of a point. */
export interface Kill {
  readonly point: string;
  readonly nth: number;
}

export interface Witnessed {
  readonly posts: readonly Post[];
  /** Every answer given, the same delivery's more than once. */
  readonly answers: readonly Given[];
  readonly at: number;
  readonly ended: boolean;
  readonly passes: Readonly<Record<string, number>>;
}

/** 2 March 2026, 08:00 UTC. */
const firstMorning = Date.UTC(2026, 2, 2, 8);

export const nothingYet: Witnessed = { posts: [], answers: [], at: firstMorning, ended: false, passes: {} };

export interface Life {
  readonly folder: string;
  /** Whether the platform can be asked for a message by its key. */
  readonly askable: boolean;
  readonly kill: Kill | undefined;
  /** How long nothing ran before this life. */
  readonly downMs: number;
}

/** Lives until it dies or its script ends. The platform delivers the last answered delivery again, then what is new. */
export async function live(life: Life, before: Witnessed): Promise<{ seen: Witnessed; died: boolean }> {
  const argument = JSON.stringify({
    ...life,
    crewFile: inventedCrew,
    start: before.at + life.downMs,
    lastAt: before.answers.at(-1)?.at ?? firstMorning,
    deliveries: deliveriesAfter(before),
    arrived: before.posts.filter(({ arrives }) => arrives).map(({ key }) => key),
    posts: before.posts.length,
    restMinutes: 60,
  });
  const child = spawn(process.execPath, [new URL('kill-child.mjs', import.meta.url).pathname, argument], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = new Promise<NodeJS.Signals | number | null>((resolve) => {
    child.on('close', (code, signal) => resolve(signal ?? code));
  });
  const lines: Line[] = [];
  for await (const line of createInterface({ input: child.stdout })) lines.push(Line.parse(JSON.parse(line)));
  const how = await ended;
  if (how !== 'SIGKILL' && how !== 0) throw new Error(`the child ended with ${how}`);
  return { seen: lines.reduce(witness, { ...before, ended: false }), died: how === 'SIGKILL' };
}

function deliveriesAfter({ answers }: Witnessed): readonly Delivery[] {
  const given = new Set(answers.map(({ id }) => id));
  const next = twoBatches.findIndex(({ id }) => !given.has(id));
  const from = next === -1 ? twoBatches.length : next;
  return twoBatches.slice(Math.max(0, from - 1)).map((delivery) => ({
    ...delivery,
    afterMinutes: given.has(delivery.id) ? 0 : delivery.afterMinutes,
  }));
}

function witness(seen: Witnessed, line: Line): Witnessed {
  switch (line.is) {
    case 'dying':
      return seen;
    case 'time':
      return { ...seen, at: line.at };
    case 'post':
      return { ...seen, at: line.at, posts: [...seen.posts, line] };
    case 'answer':
      return { ...seen, at: line.at, answers: [...seen.answers, line] };
    case 'end':
      return { ...seen, at: line.at, ended: true, passes: line.passes };
    default: {
      const never: never = line;
      return never;
    }
  }
}
