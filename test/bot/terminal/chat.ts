// Batchbell from outside: the built program in a process of its own, a script on its standard input, its answers read
// from standard output as what the black box promises, and nothing else let through.

import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { z } from 'zod';

const Fact = z.strictObject({
  id: z.string(),
  label: z.string(),
  value: z.union([z.number(), z.string()]),
  unit: z.string(),
});

const iso = z.string().regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d{3})?(Z|[+-]\d{2}:\d{2})$/);

/** The shape that the design promises: these keys, no others. */
export const Answer = z.strictObject({
  at: iso,
  kind: z.enum(['reply', 'objection', 'misread', 'reminder', 'digest', 'error']),
  in: z.string().nullable(),
  as: z.string().nullable(),
  to: z.array(z.string()),
  key: z.string().nullable(),
  code: z.string().nullable(),
  recorded: z.boolean(),
  card: z.strictObject({
    title: z.string(),
    tone: z.enum(['plain', 'good', 'warn', 'stop']),
    facts: z.array(Fact),
    lines: z.array(z.string()),
    hazards: z.array(z.strictObject({ text: z.string(), source: z.string() })),
    actions: z.array(z.strictObject({ id: z.string(), label: z.string(), line: z.string() })),
    fields: z.array(z.looseObject({ id: z.string() })),
    next: z.array(z.strictObject({ key: z.string(), dueAt: iso })),
    image: z.string().nullable(),
    /** Where the paper, export or copy lies that the card is about; nothing on any other. */
    file: z.string().optional(),
    ping: z.array(z.string()),
  }),
  text: z.string(),
});
export type Answer = z.infer<typeof Answer>;

export interface Ran {
  readonly code: number | null;
  /** In the order in which they were printed. */
  readonly answers: readonly Answer[];
  readonly out: string;
  readonly err: string;
}

const main = new URL('../../../dist/bot/main.js', import.meta.url).pathname;

export interface Way {
  readonly flags?: readonly string[];
  /** Local, in the zone of the flags; 2 March 2026, 08:00 unless said otherwise. */
  readonly clock?: string;
  readonly json?: boolean;
  /** Whole KiB that any one file may grow to. */
  readonly fileLimitKib?: number;
}

/** Runs a script of lines to its end. */
export async function chat(lines: readonly string[], way: Way = {}): Promise<Ran> {
  const { flags = [], clock = '2026-03-02T08:00', json = true, fileLimitKib } = way;
  const args = [main, ...(json ? ['--json'] : []), '--clock', clock, ...flags];
  const [program, programArgs] =
    fileLimitKib === undefined
      ? ([process.execPath, args] as const)
      : // The shell's blocks are of 512 bytes.
        (['sh', ['-c', `ulimit -f ${fileLimitKib * 2}; exec "$0" "$@"`, process.execPath, ...args]] as const);
  const child = spawn(program, programArgs, { stdio: 'pipe', env: { PATH: process.env.PATH } });
  child.stdin.on('error', () => undefined);
  child.stdin.end(lines.map((line) => `${line}\n`).join(''));
  let out = '';
  let err = '';
  child.stdout.setEncoding('utf8').on('data', (part: string) => {
    out += part;
  });
  child.stderr.setEncoding('utf8').on('data', (part: string) => {
    err += part;
  });
  const code = await new Promise<number | null>((resolve) => {
    child.on('close', resolve);
  });
  const answers = json
    ? out
        .split('\n')
        .filter(Boolean)
        .map((line) => Answer.parse(JSON.parse(line)))
    : [];
  return { code, answers, out, err };
}

/** Gone after the test. */
export function folder(): string {
  const made = mkdtempSync(join(tmpdir(), 'batchbell-chat-'));
  onTestFinished(() => rmSync(made, { recursive: true }));
  return made;
}

export function file(name: string, content: unknown, within = folder()): string {
  mkdirSync(within, { recursive: true });
  const path = join(within, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}

/** Invented people. */
export const crewOfThree = {
  name: 'Invented crew',
  people: [
    { name: 'ada', role: 'lead' },
    { name: 'kari', role: 'crew' },
    { name: 'bo', role: 'supervisor', units: 'us' },
  ],
};

export const factsOf = (answer: Answer | undefined): Readonly<Record<string, number | string>> =>
  Object.fromEntries((answer?.card.facts ?? []).map(({ id, value }) => [id, value]));

/** `09:42 batch/1/stir-done`, of everything that rang, in order. */
export const ringsIn = ({ answers }: Ran): readonly string[] =>
  answers.filter(({ key }) => key !== null).map(({ at, key }) => `${at.slice(11, 16)} ${key}`);

export const repliesIn = ({ answers }: Ran): readonly Answer[] => answers.filter((answer) => answer.in !== null);
