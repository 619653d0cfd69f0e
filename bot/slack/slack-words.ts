// Words and times as Slack writes them, brought to what people mean.

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
