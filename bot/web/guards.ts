// What every request must pass: the right host name, strict headers, and for a post the same origin and the form's token.

import { hostname } from 'node:os';
import type { MiddlewareHandler } from 'hono';
import { secureHeaders } from 'hono/secure-headers';
import { isHostOf } from './called-as.ts';
import type { PageDeps } from './page-deps.ts';
import type { PageContext, Session } from './page-env.ts';
import { formToken, isSame } from './session.ts';

/** Nothing from elsewhere, nothing inline, nothing framed. */
export const strictHeaders: MiddlewareHandler = secureHeaders({
  contentSecurityPolicy: {
    defaultSrc: ["'none'"],
    scriptSrc: ["'self'"],
    styleSrc: ["'self'"],
    imgSrc: ["'self'", 'data:'],
    connectSrc: ["'self'"],
    formAction: ["'self'"],
    baseUri: ["'none'"],
    frameAncestors: ["'none'"],
  },
  // The page itself speaks plain HTTP; whether there is no other way is for the proxy to say that has the certificate.
  strictTransportSecurity: false,
  // Not `no-referrer`: with it a browser hides the origin of our own forms, which the guard below asks for.
  referrerPolicy: 'same-origin',
  xFrameOptions: 'DENY',
  permissionsPolicy: { camera: [], microphone: [], geolocation: [] },
});

/** A page elsewhere may point its own name at this machine: under that name nothing is served. */
export function onlyOwnName({ lan, publicUrls }: Pick<PageDeps, 'lan' | 'publicUrls'>): MiddlewareHandler {
  const own = hostname().toLowerCase();
  return async (c, next) => {
    const host = (c.req.header('host') ?? '').toLowerCase();
    const name = host.replace(/:\d+$/, '');
    const local = name === 'localhost' || name === '127.0.0.1' || name === '[::1]';
    const onNetwork =
      /^\d+\.\d+\.\d+\.\d+$/.test(name) || name.startsWith('[') || name === own || name === `${own}.local`;
    if (local || (lan && onNetwork) || publicUrls.some((url) => isHostOf(url, host))) return next();
    return c.text('Not here.', 421);
  };
}

/** Whether a post comes from a page of ours that this very session was shown. */
export function isOwnPost(
  c: PageContext,
  { secret, publicUrls }: Pick<PageDeps, 'secret' | 'publicUrls'>,
  session: Session | undefined,
  token: string,
): boolean {
  const site = c.req.header('sec-fetch-site');
  if (site !== undefined && site !== 'same-origin') return false;
  const origin = c.req.header('origin');
  // A proxy may have written its own host over the one that was called: a page of a public address is ours all the same.
  if (origin !== undefined && ![c.get('calledAs'), ...publicUrls].includes(origin)) return false;
  return session !== undefined && isSame(token, formToken(secret, session));
}
