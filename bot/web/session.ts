// Who is at this screen: a signed cookie that names a person of the crew, the wall board, or nobody yet. The token that
// every post must carry is made from it.

import { createHmac, randomBytes, timingSafeEqual } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Context } from 'hono';
import { getSignedCookie, setSignedCookie } from 'hono/cookie';
import type { PageContext, Session, Who } from './page-env.ts';

const cookieName = 'batchbell';
/** A season. Deleting the secret from the data folder ends every session at once. */
const lastsSeconds = 90 * 24 * 3600;

/** Random for a process without a folder; else kept in it, so that phones stay joined over a restart. */
export function pageSecret(folder: string | undefined): string {
  if (folder === undefined) return randomBytes(32).toString('hex');
  const path = join(folder, 'page-secret');
  try {
    const known = readFileSync(path, 'utf8').trim();
    if (known.length >= 64) return known;
  } catch {
    // The first start makes it.
  }
  mkdirSync(folder, { recursive: true });
  const made = randomBytes(32).toString('hex');
  writeFileSync(path, `${made}\n`, { mode: 0o600 });
  return made;
}

/** Somebody who is no longer in the crew is a visitor again. */
export async function readSession(c: Context, secret: string, people: readonly string[]): Promise<Session | undefined> {
  const value = await getSignedCookie(c, secret, cookieName);
  if (typeof value !== 'string') return undefined;
  const [id, is, name] = value.split('|');
  if (id === undefined || id === '') return undefined;
  if (is === 'board') return { id, who: { is } };
  if (is === 'person' && name !== undefined && people.includes(name)) return { id, who: { is, name } };
  return { id, who: { is: 'visitor' } };
}

/** A new id each time somebody becomes somebody else. */
export async function startSession(c: PageContext, secret: string, who: Who): Promise<Session> {
  const session = { id: randomBytes(16).toString('hex'), who };
  const value = [session.id, who.is, who.is === 'person' ? who.name : ''].join('|');
  // Lax: a link to the page, followed from a chat, must find the phone joined. Posts carry the form's token besides.
  await setSignedCookie(c, cookieName, value, secret, {
    path: '/',
    httpOnly: true,
    secure: c.get('calledAs').startsWith('https:'),
    sameSite: 'Lax',
    maxAge: lastsSeconds,
  });
  return session;
}

export function formToken(secret: string, { id }: Session): string {
  return createHmac('sha256', secret).update(`form:${id}`).digest('base64url');
}

export function isSame(given: string, wanted: string): boolean {
  const [a, b] = [given, wanted].map((text) => createHmac('sha256', 'compare').update(text).digest());
  return a !== undefined && b !== undefined && timingSafeEqual(a, b);
}
