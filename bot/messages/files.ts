// The files that hang on a card, after its message: its picture, with the figures as text for who cannot see it, and the
// paper that somebody asked for. No message ever waits for one.

import { type Card, fileNameOf } from '../cards/card.ts';
import type { PaperTray } from '../records/paper-tray.ts';
import type { BackgroundWork } from '../time/background-work.ts';
import type { Address } from './platform.ts';

/** A paper that did not get into its place, or of which nobody knows since the platform gave no answer to its sharing. */
export type Missing = 'missing' | 'unsure';

export interface FileDesk {
  /** The PNG behind a card's `image`. */
  readonly picture: (ref: string) => Promise<Uint8Array | undefined>;
  /** Travellers and exports that were written. */
  readonly papers: Pick<PaperTray, 'read'>;
}

export interface HangingFile {
  readonly filename: string;
  readonly title: string;
  /** For who cannot see it; a document is read by itself. */
  readonly alternative?: string;
}

/** `undefined`: it is in its place. */
export type Upload = (file: HangingFile, bytes: Uint8Array, to: Address) => Promise<Missing | undefined>;

export interface Files {
  /**
   * Begins, and comes back at once. `told`: hears of a paper that is missing. A picture's failure is only logged, since the
   * card says it all.
   */
  readonly send: (desk: FileDesk, card: Card, to: Address, told?: Told) => void;
}

type Told = (missing: Missing) => Promise<void>;

export function createFiles(upload: Upload, background: BackgroundWork): Files {
  const begin = (file: string, work: () => Promise<void>) => void background.run('file-not-uploaded', file, work);
  return {
    send: (desk, card, to, told = async () => undefined) => {
      const { image, paper } = card;
      if (image !== null) begin(image, () => sendPicture(upload, desk, card, image, to));
      if (paper !== undefined) begin(paper, () => sendPaper(upload, desk, card, paper, to, told));
    },
  };
}

async function sendPicture(upload: Upload, desk: FileDesk, card: Card, image: string, to: Address): Promise<void> {
  const bytes = await desk.picture(image);
  if (bytes === undefined) return;
  const filename = image.slice(image.lastIndexOf('/') + 1);
  await upload({ filename, title: card.title, alternative: figuresOf(card) }, bytes, to);
}

async function sendPaper(upload: Upload, desk: FileDesk, card: Card, paper: string, to: Address, told: Told) {
  const bytes = desk.papers.read(paper);
  const missing =
    bytes === undefined ? 'missing' : await upload({ filename: fileNameOf(paper), title: card.title }, bytes, to);
  if (missing !== undefined) await told(missing);
}

/** What the picture shows, in words: the title and every figure. */
function figuresOf({ title, facts }: Card): string {
  return [title, ...facts.map(({ label, shown }) => `${label}: ${shown}`)].join('. ');
}
