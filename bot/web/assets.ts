// The page's own files, read once at the start, compressed, each under an address that changes with its content.

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { ownValue } from '../../core/own-key.ts';

export interface Asset {
  readonly type: string;
  readonly plain: Uint8Array<ArrayBuffer>;
  readonly gzipped: Uint8Array<ArrayBuffer>;
}

export interface Assets {
  readonly find: (name: string) => Asset | undefined;
  /** `/assets/v-1a2b3c4d/page.css`. One version for all: modules name one another without it. */
  readonly address: (name: string) => string;
}

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
};

export function readAssets(folder: string): Assets {
  const found = new Map<string, Asset>();
  const hash = createHash('sha256');
  for (const name of readdirSync(folder).sort()) {
    const type = ownValue(types, extname(name));
    if (type === undefined) continue;
    const plain = new Uint8Array(readFileSync(join(folder, name)));
    hash.update(name).update(plain);
    found.set(name, { type, plain, gzipped: new Uint8Array(gzipSync(plain)) });
  }
  const version = `v-${hash.digest('hex').slice(0, 10)}`;
  return { find: (name) => found.get(name), address: (name) => `/assets/${version}/${name}` };
}
