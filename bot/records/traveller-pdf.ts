// A traveller on paper: what is told of each part laid out on A4 or letter paper, one page where it fits. It knows the PDF library and
// nothing of the record; what stands on it comes in as text and pictures.

import type PDFDocument from 'pdfkit';
import { fontFile } from './pictures/draw.ts';

export interface PaperStep {
  readonly time: string;
  readonly who: string;
  readonly what: string;
  /** What it replaced, struck through, with who corrected it and why. */
  readonly was: readonly { readonly struck: string; readonly by: string }[];
}

export interface PaperSection {
  readonly title: string;
  readonly lines: readonly string[];
  readonly warn: boolean;
}

export interface PaperPart {
  readonly title: string;
  readonly subtitle: string;
  readonly verdict: string;
  readonly sections: readonly PaperSection[];
  readonly pictures: readonly Uint8Array[];
  readonly steps: {
    readonly title: string;
    readonly head: readonly [string, string, string];
    readonly rows: readonly PaperStep[];
  };
}

export interface Paper {
  readonly size: keyof typeof sheets;
  readonly heading: string;
  readonly parts: readonly PaperPart[];
  /** At the foot of every page: whose record, up to where, its hash. */
  readonly foot: readonly string[];
  readonly page: (number: number, of: number) => string;
  /** Written into the file; not the machine's clock. */
  readonly createdAt: Date;
}

type Document = InstanceType<typeof PDFDocument>;

/** In points. Both are laid out as wide as the narrower one. */
const sheets = { A4: { width: 595.28, height: 841.89 }, LETTER: { width: 612, height: 792 } };
const margin = 40;
const footHeight = 34;
const width = sheets.A4.width - 2 * margin;
const columns = { time: 92, who: 62 };
const size = { title: 15, text: 8.5, small: 7 };

export interface MadePaper {
  readonly pdf: Uint8Array;
  readonly pages: number;
}

export async function makePaper(paper: Paper): Promise<MadePaper> {
  const { default: Pdf } = await import('pdfkit');
  const document = new Pdf({
    size: paper.size,
    margins: { top: margin, left: margin, right: margin, bottom: margin + footHeight },
    bufferPages: true,
    info: { Title: paper.heading, CreationDate: paper.createdAt },
  });
  const chunks: Uint8Array[] = [];
  document.on('data', (chunk: Uint8Array) => chunks.push(chunk));
  const ended = new Promise<void>((resolve, reject) => {
    document.on('end', resolve);
    document.on('error', reject);
  });
  document.registerFont('text', fontFile('regular')).registerFont('strong', fontFile('bold'));
  paper.parts.forEach((part, i) => {
    if (i > 0) document.addPage();
    layOutPart(document, part);
  });
  const { count: pages } = document.bufferedPageRange();
  for (let i = 0; i < pages; i++) {
    document.switchToPage(i);
    layOutFoot(document, paper, i + 1, pages);
  }
  document.end();
  await ended;
  return { pdf: Buffer.concat(chunks), pages };
}

function layOutPart(document: Document, part: PaperPart): void {
  document.font('strong').fontSize(size.title).fillColor('#000000').text(part.title);
  document
    .font('text')
    .fontSize(size.text + 1)
    .text(part.subtitle);
  document
    .font('strong')
    .fontSize(size.text + 1)
    .text(part.verdict);
  rule(document);
  for (const section of part.sections) layOutSection(document, section);
  layOutPictures(document, part.pictures);
  layOutSteps(document, part);
}

function layOutSection(document: Document, { title, lines, warn }: PaperSection): void {
  keepTogether(document, 30);
  document
    .moveDown(0.35)
    .font('strong')
    .fontSize(size.text + 0.5)
    .fillColor('#000000')
    .text(title);
  const top = document.y;
  document.font('text').fontSize(size.text);
  for (const line of lines)
    document.text(line.trimStart(), margin + (line.startsWith('  ') ? 14 : 4), document.y, { width: width - 18 });
  // A bar in the margin: it stands out on a grey printer too.
  if (warn && document.y > top)
    document
      .rect(margin - 7, top, 3, document.y - top)
      .fill('#000000')
      .fillColor('#000000');
  document.x = margin;
}

const pictureGap = 12;

/** Two side by side. */
function layOutPictures(document: Document, pictures: readonly Uint8Array[]): void {
  if (pictures.length === 0) return;
  const each = (width - pictureGap) / 2;
  const height = Math.max(...pictures.map((picture) => proportion(picture) * each));
  document.moveDown(0.5);
  keepTogether(document, height);
  const top = document.y;
  pictures.forEach((picture, i) => {
    document.image(Buffer.from(picture), margin + i * (each + pictureGap), top, { width: each });
  });
  document.x = margin;
  document.y = top + height;
}

/** Height over width, from the PNG's own header: both stand as four bytes at its begin. */
function proportion(png: Uint8Array): number {
  const header = Buffer.from(png.buffer, png.byteOffset, png.byteLength);
  return header.readUInt32BE(20) / header.readUInt32BE(16);
}

function layOutSteps(document: Document, { steps }: PaperPart): void {
  keepTogether(document, 40);
  document
    .moveDown(0.5)
    .font('strong')
    .fontSize(size.text + 0.5)
    .text(steps.title, margin);
  row(document, steps.head, 'strong');
  for (const step of steps.rows) {
    row(document, [step.time, step.who, step.what], 'text');
    for (const { struck, by } of step.was) {
      const left = margin + columns.time + columns.who;
      const room = { width: width - columns.time - columns.who };
      document.fontSize(size.small).fillColor('#444444');
      document.text(struck, left + 8, document.y, { ...room, strike: true });
      document.text(by, left + 8, document.y, { ...room, strike: false });
      document.fillColor('#000000');
    }
  }
  document.x = margin;
}

function row(document: Document, [time, who, what]: readonly [string, string, string], font: 'text' | 'strong'): void {
  document.font(font).fontSize(size.text - 0.5);
  const room = width - columns.time - columns.who;
  const height = Math.max(
    document.heightOfString(what, { width: room }),
    document.heightOfString(who, { width: columns.who - 6 }),
  );
  keepTogether(document, height + 2);
  const top = document.y;
  document.text(time, margin, top, { width: columns.time - 6 });
  document.text(who, margin + columns.time, top, { width: columns.who - 6 });
  document.text(what, margin + columns.time + columns.who, top, { width: room });
  document.y = top + height + 1.5;
}

/** A new page where so much no longer fits on this one. */
function keepTogether(document: Document, height: number): void {
  if (document.y + height > document.page.height - margin - footHeight) document.addPage();
}

function rule(document: Document): void {
  const y = document.y + 4;
  document
    .moveTo(margin, y)
    .lineTo(margin + width, y)
    .lineWidth(0.8)
    .stroke('#000000');
  document.y = y + 2;
}

function layOutFoot(document: Document, paper: Paper, number: number, of: number): void {
  // Below the bottom margin the library would begin a new page by itself.
  document.page.margins.bottom = 0;
  const top = document.page.height - margin - footHeight + 10;
  document.font('text').fontSize(6.5).fillColor('#333333');
  paper.foot.forEach((line, i) => {
    document.text(line, margin, top + i * 9, { width: width - 40, lineBreak: false });
  });
  document.text(paper.page(number, of), margin + width - 40, top, { width: 40, align: 'right', lineBreak: false });
  document.fillColor('#000000');
}
