// Where paper, exports, pictures and copies are put. A folder of the shop's data, or a temporary one where the record is
// in memory only.

import { lstatSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, extname, join, resolve } from 'node:path';
import type { CrewId } from '../../core/ids.ts';

export const shelves = ['pictures', 'travellers', 'exports', 'makers-papers'] as const;
export type TrayShelf = (typeof shelves)[number];

export interface PaperTray {
  /** Writes it and answers with its name here: shelf and file. The same name again replaces it. */
  readonly put: (shelf: TrayShelf, name: string, content: Uint8Array | string) => string;
  /** Where it lies on this machine, by a name that `put` gave; `undefined` for anything else. */
  readonly pathOf: (name: string) => string | undefined;
  /** What lies there by a name that `put` gave; `undefined` for anything else. */
  readonly read: (name: string) => Uint8Array<ArrayBuffer> | undefined;
  /**
   * Where a copy of the record goes: a plain name into the folder of copies; a path only from whoever sits at the
   * machine itself. `undefined` for a path from anybody else.
   */
  readonly copyPath: (file: string, atConsole: boolean) => string | undefined;
}

const plainName = /^[a-z0-9][a-z0-9._-]{0,99}$/i;

/**
 * `folder`: undefined for a temporary one, made when first needed. `crew`: where several share the folder, each has its own
 * shelves.
 */
export function paperTray(folder: string | undefined, crew?: CrewId): PaperTray {
  let temporary: string | undefined;
  const root = (): string => {
    if (folder !== undefined) return folder;
    temporary ??= mkdtempSync(join(tmpdir(), 'batchbell-'));
    return temporary;
  };
  const shelfFolder = (shelf: TrayShelf): string =>
    crew === undefined ? join(root(), shelf) : join(root(), 'crews', fileName(crew), shelf);
  const pathOf = (name: string): string | undefined => {
    const [shelf, file = '', ...more] = name.split('/');
    const known = shelves.find((each) => each === shelf);
    if (known === undefined || more.length > 0 || file === '' || fileName(file) !== file) return undefined;
    return resolve(shelfFolder(known), file);
  };
  return {
    put: (shelf, name, content) => {
      const file = fileName(name);
      const path = resolve(shelfFolder(shelf), file);
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(path, content);
      return `${shelf}/${file}`;
    },
    pathOf,
    read: (name) => {
      const path = pathOf(name);
      return path === undefined ? undefined : contentOf(path);
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

/** A link laid there by somebody else leads out of the tray: only a plain file is read. */
function contentOf(path: string): Uint8Array<ArrayBuffer> | undefined {
  try {
    return lstatSync(path).isFile() ? new Uint8Array(readFileSync(path)) : undefined;
  } catch {
    return undefined;
  }
}

/** Names of parts and jobs are free: only what every file system takes is kept. */
function fileName(name: string): string {
  const kept = name
    .normalize('NFC')
    .replaceAll(/[^\p{L}\p{N}._-]+/gu, '-')
    .replace(/^\.+/, '');
  const end = extname(kept);
  return kept.length <= longestName ? kept : kept.slice(0, longestName - end.length) + end;
}

/** Of a file's name, by which programs know what it is from its end. */
const longestName = 120;
