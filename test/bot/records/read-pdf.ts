// A paper read back by another library than the one that wrote it.

import { readFileSync } from 'node:fs';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export async function readPdf(
  file: string,
): Promise<{ readonly pages: number; readonly text: string; readonly images: number }> {
  const loading = getDocument({ data: new Uint8Array(readFileSync(file)), useSystemFonts: false, verbosity: 0 });
  const pdf = await loading.promise;
  let text = '';
  let images = 0;
  for (let number = 1; number <= pdf.numPages; number++) {
    const page = await pdf.getPage(number);
    const { items } = await page.getTextContent();
    text += items.map((item) => ('str' in item ? item.str + (item.hasEOL ? '\n' : ' ') : '')).join('');
    const { fnArray } = await page.getOperatorList();
    // 85: paintImageXObject.
    images += fnArray.filter((operator) => operator === 85).length;
  }
  const { numPages: pages } = pdf;
  await loading.destroy();
  return { pages, text: text.normalize('NFKC').replaceAll(/\s+/g, ' '), images };
}
