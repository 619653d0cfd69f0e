// All that the page asks of the program: nobody in here knows a noun or the store.

import type { Clock, Log } from '../../core/ports.ts';
import type { Hearing } from '../language/hearing.ts';
import type { Words } from '../language/tongues/tongues.ts';
import type { PaperTray } from '../records/paper-tray.ts';
import type { Host } from '../talk/host.ts';
import type { Overview } from '../talk/overview.ts';
import type { Assets } from './assets.ts';
import type { Conversation } from './conversation.ts';

export interface PageDeps {
  readonly host: Pick<Host, 'handle'>;
  readonly conversation: Conversation;
  readonly overview: Pick<Overview, 'board' | 'crew' | 'voice'>;
  /** The PNG behind a card's `image`. */
  readonly picture: (ref: string) => Promise<Uint8Array | undefined>;
  /** Travellers and exports that were written, for whoever is signed in. */
  readonly papers: Pick<PaperTray, 'read'>;
  /** Of whose papers a link is. */
  readonly crew: string;
  /** For whoever is not known yet. */
  readonly words: Words;
  readonly language: string;
  /** All that may be typed, whoever types it. */
  readonly hearing: Hearing;
  readonly clock: Clock;
  readonly log: Log;
  readonly secret: string;
  /** Whether the network is listened to, or only this machine. */
  readonly lan: boolean;
  /** Origins by which it may be called besides the machine's own names. */
  readonly publicUrls: readonly string[];
  /** `undefined`: open to this machine only, and nobody is asked for a code. */
  readonly joinCode: string | undefined;
  readonly assets: Assets;
  /** Stands on every page: what is only for show says so. */
  readonly notice: string | undefined;
  /** How often an open page is told that it is still connected, and what has changed. */
  /** How many lines one caller may say in a breath. */
  readonly linesAtOnce?: number;
  readonly beatMs: number;
}
