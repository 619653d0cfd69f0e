// The addresses by which the page may be called besides the machine's own: a name of the shop's, or a proxy with TLS in
// front. Each is an origin, `https://bell.example`: scheme, name, and a port where it is not the usual one.

/** Those that cannot serve, as they were typed; or the origins, each once. */
export type PublicUrls = { readonly urls: readonly string[] } | { readonly notOne: string };

/** `typed`: each one address, or several with commas between. */
export function readPublicUrls(typed: readonly string[]): PublicUrls {
  const urls = new Set<string>();
  for (const one of typed.flatMap((text) => text.split(',')).map((text) => text.trim())) {
    if (one === '') continue;
    const origin = originOf(one);
    if (origin === undefined) return { notOne: one };
    urls.add(origin);
  }
  return { urls: [...urls] };
}

/** `undefined` for what is more than an origin: the page does not serve under a path of somebody else's. */
function originOf(typed: string): string | undefined {
  if (!URL.canParse(typed)) return undefined;
  const { protocol, origin, pathname, search, hash, username, password, hostname } = new URL(typed);
  const isPlain = pathname === '/' && search + hash + username + password === '' && hostname !== '';
  return isPlain && (protocol === 'https:' || protocol === 'http:') ? origin : undefined;
}
