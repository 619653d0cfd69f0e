// `traveller impeller-7`, `traveller job 88`: loads the parts, draws their pictures and writes the PDF.

import { nameIn } from '../../core/ids.ts';
import { inNaturalOrder } from '../../core/natural-order.ts';
import { streamsOfPart, tracePart } from '../../core/records/trace.ts';
import { unreadUnder } from '../../core/unread.ts';
import { RestsOnUnread } from '../../core/unread-event.ts';
import { type Card, makeCard } from '../cards/card.ts';
import { type Telling, tap } from '../cards/card-context.ts';
import { loadNamed, type RecordSource } from './loading.ts';
import type { PaperTray } from './paper-tray.ts';
import { drawPng, pictureOf } from './pictures/draw.ts';
import type { Drawing } from './pictures/picture-look.ts';
import { partDrawings } from './pictures/picture-refs.ts';
import { type TravellerPart, travellerPaper } from './traveller.ts';
import { makePaper } from './traveller-pdf.ts';

/** On paper two stand side by side: drawn narrower, so that their letters stay readable. */
const paperWidth = 330;

export async function writeTraveller(
  { executor, store, crew, papers }: RecordSource & { readonly papers: PaperTray },
  telling: Telling,
  of: { readonly part: string } | { readonly job: string },
): Promise<Card> {
  const { records } = telling.words;
  const names = 'part' in of ? [of.part] : store.archive.bookedUnder(crew, 'job', of.job).map(nameIn);
  const shop = await loadNamed(executor, (loaded) => names.flatMap((name) => streamsOfPart(loaded, name)));
  // A part's paper is whole or not at all.
  const broken = names.flatMap((name) => streamsOfPart(shop, name)).flatMap((stream) => unreadUnder(shop, stream));
  if (broken.length > 0) throw new RestsOnUnread(broken);
  const told = { ...telling, shop };
  const parts: TravellerPart[] = [];
  for (const name of [...new Set(names)].sort(inNaturalOrder)) {
    const trace = tracePart(shop, name);
    if (trace === undefined) continue;
    // A beginning fits too: job 8 is not job 88.
    if ('job' in of && trace.part.details.job?.toLowerCase() !== of.job.toLowerCase()) continue;
    const drawings = partDrawings(told, trace.part);
    parts.push({
      trace,
      pictures: await Promise.all(pairs(drawings).map((pair) => drawPng(pictureOf(pair, telling.figures.profile)))),
    });
  }
  if (parts.length === 0) {
    return makeCard('part' in of ? records.nothingKnown(of.part) : records.travellerNone(of.job), 'plain');
  }
  const end = await executor.giveHash('traveller', telling.now);
  if (end === undefined) throw new Error('a part is recorded, but the record has no end');
  const { pdf, pages } = await makePaper(travellerPaper(told, parts, end));
  const what = 'part' in of ? of.part : `job-${of.job}`;
  return makeCard(records.traveller(what), 'good', {
    lines: [records.pages(pages), records.lastHash(end.seq, end.hash)],
    paper: papers.put('travellers', `${records.paper.file}-${what}.pdf`, pdf),
    paperAgain: tap(telling, 'ask-again', `traveller ${'part' in of ? of.part : `job ${JSON.stringify(of.job)}`}`),
  });
}

/** The cure's two drawings belong together; the films stand beside them. */
function pairs(drawings: readonly Drawing[]): readonly (readonly Drawing[])[] {
  const narrow = drawings.map((drawing) => ({ ...drawing, width: paperWidth }));
  const film = narrow.length % 2 === 1 ? narrow.slice(-1) : [];
  const cure = film.length === 0 ? narrow : narrow.slice(0, -1);
  return [cure, film].filter((pair) => pair.length > 0);
}
