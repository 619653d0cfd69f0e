// The form for many parts at once: what was pasted there, and a file that was chosen, as one list.

import type { Hearing } from '../language/hearing.ts';
import { asParts } from '../language/parts-in/as-parts.ts';

type Body = Readonly<Record<string, unknown>>;

/** Any other form as it is. */
export async function withParts(body: Body, hearing: Hearing): Promise<Body> {
  if (body.list === undefined) return body;
  const pasted = typeof body.line === 'string' ? body.line.trim() : '';
  const chosen = body.file instanceof File ? textOf(await body.file.arrayBuffer()).trim() : '';
  return { ...body, line: asParts([pasted, chosen].filter((text) => text !== '').join('\n'), hearing) };
}

/** Spreadsheets write in one of these, and do not say in which. */
function textOf(bytes: ArrayBuffer): string {
  const [first, second] = new Uint8Array(bytes);
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
