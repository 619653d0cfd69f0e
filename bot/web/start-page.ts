// Starts the page from what the program was started with, and says where it is. Loaded only where there is a page: a
// terminal alone does not pay for it.

import type { Writable } from 'node:stream';
import type { CrewFile } from '../../core/crew/crew.ts';
import type { Failed } from '../../core/failed.ts';
import type { Flags } from '../config/config.ts';
import type { Tongues } from '../language/tongues/tongues.ts';
import { readAssets } from './assets.ts';
import { newJoinCode } from './join-code.ts';
import { openPage, type Page } from './page.ts';
import type { PageDeps } from './page-deps.ts';
import { pageSecret } from './session.ts';

export type PageStart = Pick<
  PageDeps,
  'host' | 'conversation' | 'overview' | 'picture' | 'papers' | 'clock' | 'log' | 'notice'
> & {
  readonly flags: Flags;
  /** Where the secret is kept that phones stay joined by; `undefined`: in memory. */
  readonly folder: string | undefined;
  readonly crewFile: CrewFile;
  readonly tongues: Tongues;
  readonly assetFolder: string;
  /** Where it is said that the page is open. */
  readonly out: Writable;
};

const beatMs = { usual: 5_000, demo: 1_000 };

export async function startPage(start: PageStart): Promise<Page | Failed<string>> {
  const { flags, folder, crewFile, tongues, assetFolder, out, ...parts } = start;
  const { language, units } = crewFile;
  const words = tongues.wordsIn(language, units);
  const publicUrls = flags['public-url'];
  // Whoever can call it by a public address is not at this machine.
  const joinCode = flags.lan || publicUrls.length > 0 ? newJoinCode() : undefined;
  const needs: PageDeps = {
    ...parts,
    words,
    hearing: tongues.every,
    language,
    lan: flags.lan,
    publicUrls,
    joinCode,
    crew: crewFile.name,
    secret: pageSecret(folder),
    assets: readAssets(assetFolder),
    beatMs: flags.demo ? beatMs.demo : beatMs.usual,
  };
  try {
    const page = await openPage(needs, flags.port);
    out.write(`${words.page.opened([...publicUrls, ...page.addresses].join('  '))}\n`);
    if (joinCode !== undefined) {
      const { openedTo, openedAt } = words.page;
      out.write(`${flags.lan ? openedTo(joinCode) : openedAt(publicUrls.join('  '), joinCode)}\n`);
    }
    return page;
  } catch (error) {
    return { failed: `--port ${flags.port}: ${error instanceof Error ? error.message : String(error)}` };
  }
}
