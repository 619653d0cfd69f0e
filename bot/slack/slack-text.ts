// Text on its way to Slack: escaped where Slack would parse it, cut where it would be refused, and the cut is said. And words and
// times as Slack writes them, brought to what people mean.

/** The three characters that Slack's markup knows, and no others. A name can then ping nobody and hide no link. */
export function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** At most so many UTF-16 units, ending in `…` where something is missing; a pair of surrogates is never halved. */
export function cut(text: string, most: number): string {
  if (text.length <= most) return text;
  const head = text.slice(0, most - 1);
  const last = head.charCodeAt(head.length - 1);
  return `${last >= 0xd800 && last <= 0xdbff ? head.slice(0, -1) : head}…`;
}

/** Of text that is escaped already: an entity is never halved. */
export function cutEscaped(text: string, most: number): string {
  return cut(text, most).replace(/&[a-z]*…$/, '…');
}

/** Shorter than this a cut line tells nothing. */
const worthShowing = 40;

/**
 * Lines up to so many characters; what is cut ends in `…`, and where lines are missing the last one says how many. `each`:
 * what a line costs beside its characters.
 */
export function cutLines(
  lines: readonly string[],
  most: number,
  missing: (count: number) => string,
  { each = 1, shorten = cut }: { readonly each?: number; readonly shorten?: typeof cut } = {},
): readonly string[] {
  const length = lines.reduce((sum, line) => sum + line.length + each, -each);
  if (length <= most) return lines;
  let room = most - missing(lines.length).length - each;
  const kept: string[] = [];
  for (const line of lines) {
    const fits = line.length + each <= room;
    if (!fits && room < worthShowing + each) break;
    kept.push(fits ? line : shorten(line, room - each));
    room -= line.length + each;
    if (!fits) break;
  }
  return kept.length === lines.length ? kept : [...kept, missing(lines.length - kept.length)];
}

export interface PlainText {
  readonly type: 'plain_text';
  readonly text: string;
  readonly emoji: false;
}

/** Shown as it is: no markup, no emoji names. Slack refuses an empty one. */
export const plain = (text: string, most: number): PlainText => ({
  type: 'plain_text',
  text: cut(text === '' ? ' ' : text, most),
  emoji: false,
});

/** Slack's three entities, and a link or channel as its own words. A person stays `<@U123>`: the roster knows the name. */
export function unescaped(text: string): string {
  return text
    .replaceAll(/<@([UW][A-Z0-9]+)\|[^<>]*>/g, '<@$1>')
    .replaceAll(/<(?:mailto:|tel:)?[^<>|]*\|([^<>]*)>/g, '$1')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&');
}

const mention = /<@([UW][A-Z0-9]+)(?:\|[^<>]*)?>/g;

export const mentions = (text: string, user: string | undefined): boolean =>
  [...text.matchAll(mention)].some(([, mentioned]) => mentioned === user);

export const withoutMention = (text: string, user: string | undefined): string =>
  text.replaceAll(mention, (whole, mentioned) => (mentioned === user ? ' ' : whole)).trim();

/** A message's `ts` begins with the second at which it was posted. */
export function msOf(ts: string | null | undefined): number | undefined {
  const seconds = Number(ts ?? Number.NaN);
  return Number.isFinite(seconds) ? Math.round(seconds * 1000) : undefined;
}
