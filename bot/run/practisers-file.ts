// Who practises, in a small file beside the record: after a restart no line of theirs is taken for the shop's.

import { readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import type { CrewId } from '../../core/ids.ts';
import type { Log } from '../../core/ports.ts';
import { type Practisers, practisersInMemory } from '../practice/practice-shop.ts';

const Kept = z.record(z.string(), z.array(z.string()));

/** By crew. `folder`: undefined where the record is in memory only. */
export function openPractisers(folder: string | undefined, log: Log): (crew: CrewId) => Practisers {
  if (folder === undefined) return practisersInMemory;
  const path = join(folder, 'practising.json');
  let kept: Readonly<Record<CrewId, readonly string[]>> = read(path, log);
  return (crew) => ({
    has: (name) => kept[crew]?.includes(name) ?? false,
    put: (name, practises) => {
      const others = (kept[crew] ?? []).filter((other) => other !== name);
      const next = { ...kept, [crew]: practises ? [...others, name] : others };
      try {
        writeFileSync(`${path}.new`, `${JSON.stringify(next)}\n`);
        renameSync(`${path}.new`, path);
      } catch (error) {
        log.error('practising-not-kept', { error: String(error) });
        // Whoever left is out all the same; whoever would begin does not.
        if (practises) return false;
      }
      kept = next;
      return true;
    },
  });
}

function read(path: string, log: Log): z.infer<typeof Kept> {
  try {
    return Kept.parse(JSON.parse(readFileSync(path, 'utf8')));
  } catch (error) {
    const isNew = error instanceof Error && 'code' in error && error.code === 'ENOENT';
    if (!isNew) log.error('practising-not-read', { error: String(error) });
    return {};
  }
}
