// By which of its addresses the page was called. What a proxy adds to a request (`X-Forwarded-…`) is believed only so far
// as it chooses among the addresses that the page was started with: it never lets anybody in by another name.

import { getConnInfo } from '@hono/node-server/conninfo';
import type { Context } from 'hono';

/** An origin. Without a public address it is what the request says, which the guards have looked at. */
export function calledAs(c: Context, publicUrls: readonly string[]): string {
  const host = c.req.header('host')?.toLowerCase() ?? '';
  const hosts = [...listIn(c.req.header('x-forwarded-host')), host];
  const [scheme] = listIn(c.req.header('x-forwarded-proto'));
  const origin = c.req.header('origin');
  // The browser's own word for its page, where a proxy says nothing.
  const fitting = publicUrls.filter((url) => url === origin || hosts.some((each) => isHostOf(url, each)));
  return fitting.find((url) => url.startsWith(`${scheme}:`)) ?? fitting[0] ?? `http://${host}`;
}

/** `host`: as a request has it, with the port or, where it is the scheme's own, without. */
export function isHostOf(publicUrl: string, host: string): boolean {
  const { protocol, host: own } = new URL(publicUrl);
  const asked = `${protocol}//${host}`;
  return URL.canParse(asked) && new URL(asked).host === own;
}

/**
 * Whose tries are counted. Behind a proxy on this machine it is the last of the addresses that the proxy tells: those
 * before it are what the caller says. From anywhere else a request speaks for itself.
 */
export function callerOf(c: Context, publicUrls: readonly string[]): string {
  const remote = getConnInfo(c).remote.address ?? 'unknown';
  const isHere = /^(::ffff:)?127\.|^::1$/.test(remote);
  if (!isHere || !publicUrls.includes(calledAs(c, publicUrls))) return remote;
  return listIn(c.req.header('x-forwarded-for')).at(-1) ?? remote;
}

const listIn = (header: string | undefined): readonly string[] =>
  (header ?? '')
    .toLowerCase()
    .split(',')
    .map((each) => each.trim())
    .filter((each) => each !== '');
