// What every request must pass: the right host name, strict headers, and for a post the same origin and the form's token.

import { hostname } from 'node:os';
import type { Context, MiddlewareHandler } from 'hono';
import { secureHeaders } from 'hono/secure-headers';
import { formToken, isSame, type Session } from './session.ts';

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
  // The page speaks plain HTTP on its own network; there is no other address to insist on.
  strictTransportSecurity: false,
  // Not `no-referrer`: with it a browser hides the origin of our own forms, which the guard below asks for.
  referrerPolicy: 'same-origin',
  xFrameOptions: 'DENY',
  permissionsPolicy: { camera: [], microphone: [], geolocation: [] },
});

/** A page elsewhere may point its own name at this machine: under that name nothing is served. */
export function onlyOwnName(lan: boolean): MiddlewareHandler {
  const own = hostname().toLowerCase();
  return async (c, next) => {
    const name = nameOf(c.req.header('host') ?? '');
    const local = name === 'localhost' || name === '127.0.0.1' || name === '[::1]';
    const onNetwork =
      /^\d+\.\d+\.\d+\.\d+$/.test(name) || name.startsWith('[') || name === own || name === `${own}.local`;
    if (local || (lan && onNetwork)) return next();
    return c.text('Not here.', 421);
  };
}

const nameOf = (host: string): string => host.toLowerCase().replace(/:\d+$/, '');

/** Whether a post comes from a page of ours that this very session was shown. */
export function isOwnPost(c: Context, secret: string, session: Session | undefined, token: string): boolean {
  const site = c.req.header('sec-fetch-site');
  if (site !== undefined && site !== 'same-origin') return false;
  const origin = c.req.header('origin');
  if (origin !== undefined && origin !== `http://${c.req.header('host')}`) return false;
  return session !== undefined && isSame(token, formToken(secret, session));
}
