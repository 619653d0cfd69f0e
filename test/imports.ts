// Reads off the sources who imports whom, and which tests therefore need neither store nor process nor browser.

import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';

export interface Source {
  readonly path: string;
  readonly text: string;
}

export interface Import {
  readonly from: string;
  /** A file of ours by its path, or a package by its name. */
  readonly to: string;
  readonly onlyTypes: boolean;
}

const statement =
  /^(?:import|export)\s+(type\s)?([^'";]*?)\s*from\s+'([^']+)'|^import\s+'([^']+)'|\bimport\('([^']+)'\)/gm;

export function importsOf({ path, text }: Source): readonly Import[] {
  return [...text.matchAll(statement)].map(([, type, names = '', named, bare, later]) => {
    const to = named ?? bare ?? later ?? '';
    const listed = /^\{([^}]*)\}$/s
      .exec(names.trim())?.[1]
      ?.split(',')
      .filter((name) => name.trim() !== '');
    return {
      from: path,
      to: to.startsWith('.') ? posix.normalize(posix.join(posix.dirname(path), to)) : to,
      onlyTypes: type !== undefined || (listed?.every((name) => /^\s*type\s/.test(name)) ?? false),
    };
  });
}

export function sourcesIn(folder: string): readonly Source[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => ({
      path: posix.join(folder, name.replaceAll('\\', '/')),
      text: readFileSync(join(folder, name), 'utf8'),
    }));
}

/** What a test waits for that is no sum: a file, a process, a socket, a browser. */
const slow =
  /^(better-sqlite3|playwright-core|nock|ws|@slack\/(bolt|web-api)|@hono\/node-server|node:(child_process|http|https|net))$/;

/** The tests that reach nothing of it, by whatever way. */
export function pureTests(): readonly string[] {
  const reads = new Map(
    ['core', 'bot', 'test'].flatMap(sourcesIn).map((source) => {
      const byValue = importsOf(source).filter(({ onlyTypes }) => !onlyTypes);
      return [source.path, byValue.map(({ to }) => to)] as const;
    }),
  );
  const isPure = (test: string): boolean => {
    const reached = new Set([test]);
    for (const path of reached) for (const next of reads.get(path) ?? []) reached.add(next);
    return ![...reached].some((path) => slow.test(path));
  };
  return [...reads.keys()].filter((path) => path.endsWith('.test.ts') && isPure(path));
}
