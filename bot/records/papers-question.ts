// `papers`, `papers demo-clear 2`: the papers of a product's maker, who has read which revision, and one of them opened: laid
// in the tray, from which each front end hands it out its own way. Only what a sheet names is ever read.

import { lstatSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isFailed } from '../../core/failed.ts';
import { defaultPlace, type PersonName } from '../../core/ids.ts';
import type { Sheet } from '../../core/products/sheet.ts';
import type { MakerPaper } from '../../core/products/sheet-papers.ts';
import { sheetMeant } from '../../core/products/shelf.ts';
import type { RecordQuestion } from '../../core/records/record-questions.ts';
import { lastSaid } from '../../core/settled.ts';
import { liveBatches } from '../../core/shop.ts';
import { papersReadBy } from '../../core/steps/papers-read.ts';
import { answerTo } from '../../core/steps/steps-answered.ts';
import { type Card, type CardAction, makeCard } from '../cards/card.ts';
import type { Telling } from '../cards/card-context.ts';
import { sheetTaps } from '../cards/sheet-taps.ts';
import { stepTap } from '../cards/step-lines.ts';
import type { PaperTray } from './paper-tray.ts';

type Asked = Extract<RecordQuestion, { ask: 'papers' }>;

/** Data sheets are of some hundred kilobytes; what is far over that is another file. */
const mostMegabytes = 20;

export function papersCard(
  tray: PaperTray,
  telling: Telling,
  { sheet: named, paper: number }: Asked,
  by: PersonName,
): Card {
  const { shop, words, figures, now } = telling;
  const inUse = liveBatches(shop).at(-1)?.sheet.id;
  const meant = sheetMeant(
    shop.shelf,
    lastSaid(shop.crew, 'sheet')?.sheet,
    named ?? (shop.shelf.has(inUse ?? '') ? inUse : undefined),
  );
  if (isFailed(meant))
    return makeCard(words.unclear(meant.failed, figures), 'warn', {
      actions: sheetTaps(telling, meant.failed, (id) => `papers ${id}`),
    });
  const papers = meant.steps?.papers?.named ?? [];
  const asks = readTaps(telling, meant, by);
  if (number !== undefined && papers.length > 0) return openedCard(tray, telling, meant, { number, asks });
  return makeCard(words.papers.title(meant.name), 'plain', {
    lines: [
      ...papers.map((each, i) => words.papers.paper(i + 1, each)),
      ...(papers.length === 0 ? [words.papers.notNamed(meant.name)] : []),
      ...(meant.steps?.papers === undefined
        ? []
        : [words.papers.readBy(papersReadBy(shop.crew.stepAnswers, meant, now), figures)]),
      ...(meant.invented ? [words.replies.inventedSheet] : []),
    ],
    links: linksTo(telling, papers),
    actions: [
      ...papers.flatMap(({ file, of }, i) =>
        file === undefined
          ? []
          : [{ id: `open-${i + 1}`, label: words.papers.open(of), line: `papers ${meant.id} ${i + 1}` }],
      ),
      ...asks,
    ],
  });
}

const linksTo = ({ words }: Telling, papers: readonly MakerPaper[]): NonNullable<Card['links']> =>
  papers.flatMap(({ of, address }) => (address === undefined ? [] : [{ label: words.papers.open(of), address }]));

/** Where whoever asks has not said yet that they have read them, and the sheet asks for it. */
function readTaps(telling: Telling, sheet: Sheet, by: PersonName): readonly CardAction[] {
  const { shop, now } = telling;
  if (sheet.steps?.papers === undefined) return [];
  if (answerTo(shop.crew.stepAnswers, 'papers', { sheet, place: defaultPlace, reader: by }, now)?.kept === true)
    return [];
  const batch = liveBatches(shop).findLast((each) => each.sheet.id === sheet.id);
  return [stepTap(telling, 'papers', true, batch)];
}

function openedCard(
  tray: PaperTray,
  telling: Telling,
  sheet: Sheet,
  { number, asks }: { readonly number: number; readonly asks: readonly CardAction[] },
): Card {
  const { words, shop } = telling;
  const papers = sheet.steps?.papers?.named ?? [];
  const paper = papers[number - 1];
  if (paper === undefined) return makeCard(words.papers.unknown(number, papers.length), 'warn');
  const told = { lines: [words.papers.paper(number, paper)], links: linksTo(telling, [paper]), actions: asks };
  if (paper.file === undefined) return makeCard(paper.title, 'plain', told);
  const read = shop.shelf.get(sheet.id);
  const content = contentOf(read?.kind === 'sheet' ? read.papersIn : undefined, paper.file);
  if (typeof content === 'string') {
    const why = content === 'gone' ? words.papers.gone(paper.file) : words.papers.tooBig(paper.file, mostMegabytes);
    return makeCard(why, 'warn', { lines: [words.papers.askWhoKeeps] });
  }
  const again = { id: 'ask-again', label: words.buttons['ask-again'], line: `papers ${sheet.id} ${number}` };
  return makeCard(paper.title, 'plain', {
    ...told,
    paper: tray.put('makers-papers', `${sheet.id}-${paper.file}`, content),
    paperAgain: again,
  });
}

/** A link laid there leads somewhere else: only a plain file is read. */
function contentOf(folder: string | undefined, file: string): Uint8Array | 'gone' | 'too-big' {
  if (folder === undefined) return 'gone';
  const path = join(folder, file);
  try {
    const found = lstatSync(path);
    if (!found.isFile()) return 'gone';
    return found.size > mostMegabytes * 1_000_000 ? 'too-big' : readFileSync(path);
  } catch {
    return 'gone';
  }
}
