// Where the record lies: a folder with its one file, or a copy of the record named itself, to start with it restored.

import { existsSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';

export interface RecordPlace {
  readonly folder: string;
  readonly file: string;
}

/** `data`: as the flag names it; a file that exists is the record itself. */
export function recordPlace(data: string | undefined): RecordPlace | undefined {
  if (data === undefined) return undefined;
  const isFile = existsSync(data) && statSync(data).isFile();
  return isFile ? { folder: dirname(data), file: data } : { folder: data, file: join(data, 'batchbell.sqlite') };
}
