// A terminal shows no pictures: it writes them to a file and prints where.

import type { Writable } from 'node:stream';
import type { Words } from '../language/tongues/tongues.ts';
import type { PaperTray } from '../records/paper-tray.ts';
import type { Answer } from '../talk/answer.ts';

export interface PicturePrinterDeps {
  readonly out: Writable;
  readonly papers: Pick<PaperTray, 'put' | 'pathOf'>;
  readonly picture: (ref: string) => Promise<Uint8Array | undefined>;
  readonly words: Words;
}

/** A picture that cannot be drawn must not take the answer with it. */
export function picturePrinter({ out, papers, picture, words }: PicturePrinterDeps) {
  return async ({ card: { image } }: Answer): Promise<void> => {
    if (image === null) return;
    try {
      const png = await picture(image);
      if (png === undefined) return;
      const name = image.replace(/^pictures\//, '').replaceAll('/', '-');
      const paper = papers.put('pictures', name, png);
      out.write(`  ${words.records.picture(papers.pathOf(paper) ?? paper)}\n`);
    } catch {
      out.write(`  ${words.records.noPicture}\n`);
    }
  };
}
