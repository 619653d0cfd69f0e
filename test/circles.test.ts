// No file reads itself by way of others, types included: a circle has no first file to read, and one change in it may ask
// for all of it.

import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { describe, expect, it } from 'vitest';

type Graph = ReadonlyMap<string, readonly string[]>;

const reads = /^(?:import|export)\s[^'";]*?from\s+'(\.[^']+)'|^import\s+'(\.[^']+)'|\bimport\('(\.[^']+)'\)/gm;
/** Types couple no folders at run time. A list of nothing but types is written `import type` (the linter sees to it). */
const readsByValue = /^(?:import|export)\s(?!type\s)[^'";]*?from\s+'(\.[^']+)'|^import\s+'(\.[^']+)'/gm;

function imported(path: string, text: string, statement: RegExp): readonly string[] {
  return [...text.matchAll(statement)].map(([, named, bare, later]) =>
    posix.normalize(posix.join(posix.dirname(path), named ?? bare ?? later ?? '')),
  );
}

function graphOf(root: string, folders: readonly string[], statement: RegExp): Graph {
  const paths = folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }).map((path) => posix.join(folder, path)),
  );
  const ours = paths.filter((path) => path.endsWith('.ts'));
  return new Map(ours.map((path) => [path, imported(path, readFileSync(join(root, path), 'utf8'), statement)]));
}

/** The rooms of core as they read each other; what lies in its hall (`core/ids.ts`) is everybody's. */
function roomsOf(files: Graph): Graph {
  const rooms = new Map<string, readonly string[]>();
  for (const [path, read] of files) {
    const [room, ...others] = [path, ...read].map((one) => posix.dirname(one));
    if (room === undefined || room === 'core') continue;
    rooms.set(room, [...(rooms.get(room) ?? []), ...others.filter((other) => other !== room && other !== 'core')]);
  }
  return rooms;
}

/** The strongly connected parts of more than one node, by Tarjan's walk; each in the order of the alphabet. */
function circlesIn(graph: Graph): readonly (readonly string[])[] {
  const found: string[][] = [];
  const order = new Map<string, number>();
  const lowest = new Map<string, number>();
  const open: string[] = [];
  const walk = (node: string): number => {
    const mine = order.size;
    order.set(node, mine);
    lowest.set(node, mine);
    open.push(node);
    for (const next of graph.get(node) ?? []) {
      const seen = order.get(next);
      const reached = seen === undefined ? walk(next) : open.includes(next) ? seen : mine;
      lowest.set(node, Math.min(lowest.get(node) ?? mine, reached));
    }
    const least = lowest.get(node) ?? mine;
    if (least === mine) {
      const circle = open.splice(open.indexOf(node));
      if (circle.length > 1 || (graph.get(node) ?? []).includes(node)) found.push(circle.sort());
    }
    return least;
  };
  for (const node of graph.keys()) if (!order.has(node)) walk(node);
  return found.sort((a, b) => b.length - a.length || `${a[0]}`.localeCompare(`${b[0]}`));
}

/** A circle as it can be read: each file with those of the same circle that it reads. */
function told(graph: Graph, circle: readonly string[]): string {
  const inside = (path: string) => (graph.get(path) ?? []).filter((next) => circle.includes(next));
  return circle.map((path) => `${path} -> ${inside(path).join(', ')}`).join('\n');
}

const root = join(import.meta.dirname, '..');
const graph = graphOf(root, ['core', 'bot'], reads);

describe('given every file of core and bot', () => {
  it('then none reads itself by way of others', () => {
    expect(circlesIn(graph).map((circle) => told(graph, circle))).toEqual([]);
  });
});

describe('given the rooms of core', () => {
  it('then no two, nor more, read each other by value', () => {
    const rooms = roomsOf(graphOf(root, ['core'], readsByValue));
    expect(circlesIn(rooms).map((circle) => told(rooms, circle))).toEqual([]);
  });
});

describe('the walk for circles', () => {
  const circlesOf = (rows: Readonly<Record<string, readonly string[]>>) => circlesIn(new Map(Object.entries(rows)));

  it('finds two apart and one through three files, and not what only leads there', () => {
    const rows = { a: ['b'], b: ['c'], c: ['a'], d: ['a', 'e'], e: ['d'], f: ['e', 'a'] };
    expect(circlesOf(rows)).toEqual([
      ['a', 'b', 'c'],
      ['d', 'e'],
    ]);
  });

  it('finds a file that reads itself, and none where two ways lead to one leaf', () => {
    expect(circlesOf({ a: ['a'] })).toEqual([['a']]);
    expect(circlesOf({ a: ['b', 'c'], b: ['d'], c: ['d'], d: [] })).toEqual([]);
  });

  it('reads types, bare imports and later ones', () => {
    const text = `import type { A } from './a.ts';\nimport {\n  b,\n} from '../b.ts';\nimport './c.ts';\nawait import('./d.ts');\n`;
    expect(imported('core/x/y.ts', text, reads)).toEqual(['core/x/a.ts', 'core/b.ts', 'core/x/c.ts', 'core/x/d.ts']);
  });
});
