// Where paper, exports, pictures and copies are put. A folder of the shop's data, or a temporary one where the record is
// in memory only.

import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';

export const shelves = ['pictures', 'travellers', 'exports'] as const;
export type TrayShelf = (typeof shelves)[number];

export interface PaperTray {
  /** Writes it and answers with its path. The same name again replaces it. */
  readonly put: (shelf: TrayShelf, name: string, content: Uint8Array | string) => string;
  /**
   * Where a copy of the record goes: a plain name into the folder of copies; a path only from whoever sits at the
   * machine itself. `undefined` for a path from anybody else.
   */
  readonly copyPath: (file: string, atConsole: boolean) => string | undefined;
}

const plainName = /^[a-z0-9][a-z0-9._-]{0,99}$/i;

/** `folder`: undefined for a temporary one, made when first needed. */
export function paperTray(folder: string | undefined): PaperTray {
  let temporary: string | undefined;
  const root = (): string => {
    if (folder !== undefined) return folder;
    temporary ??= mkdtempSync(join(tmpdir(), 'batchbell-'));
    return temporary;
  };
  return {
    put: (shelf, name, content) => {
      const path = resolve(root(), shelf, fileName(name));
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(path, content);
      return path;
    },
    copyPath: (file, atConsole) => {
      const isPlain = plainName.test(file);
      if (!isPlain && !atConsole) return undefined;
      const path = isPlain ? resolve(root(), 'copies', file) : resolve(file);
      mkdirSync(dirname(path), { recursive: true });
      return path;
    },
  };
}

/** Names of parts and jobs are free: only what every file system takes is kept. */
function fileName(name: string): string {
  return name
    .normalize('NFC')
    .replaceAll(/[^\p{L}\p{N}._-]+/gu, '-')
    .replace(/^\.+/, '')
    .slice(0, 120);
}
