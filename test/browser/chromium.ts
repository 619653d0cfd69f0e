// Debian's Chromium for the browser tests. Where there is none they are skipped and say how to get it; a build server has
// it, or fails.

import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const named = process.env.CHROMIUM;
const places = named === undefined ? ['/usr/bin/chromium', '/usr/bin/chromium-browser'] : [named];
const found = places.find((place) => existsSync(place));

/** Whether the browser tests run here. */
export const hasChromium = found !== undefined;

if (!hasChromium) {
  const how = 'no Chromium: install Debian’s package chromium, or set CHROMIUM to its path';
  if (process.env.CI === 'true') throw new Error(`browser tests cannot run: ${how}`);
  process.stderr.write(`browser tests skipped: ${how}\n`);
}

interface Launch {
  /** As people's browsers are: no sound before somebody has touched the page. Off where a test has no finger. */
  readonly soundNeedsTouch?: boolean;
  /** Names that lead to this machine, `bell.example`. */
  readonly namesHere?: readonly string[];
}

export async function launchChromium({ soundNeedsTouch = false, namesHere = [] }: Launch = {}): Promise<Browser> {
  const sound = soundNeedsTouch ? [] : ['--autoplay-policy=no-user-gesture-required'];
  const names = namesHere.map((name) => `MAP ${name} 127.0.0.1`).join(', ');
  const quiet = ['--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'];
  const browser = await chromium.launch({
    executablePath: found ?? '',
    timeout: 0,
    args: [
      ...quiet,
      ...sound,
      ...(names === '' ? [] : [`--host-resolver-rules=${names}`]),
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
    ],
  });
  // What hangs is stopped by the runner alone: a busy machine takes as long as it takes.
  browser.on('context', (context) => context.setDefaultTimeout(0));
  return browser;
}
