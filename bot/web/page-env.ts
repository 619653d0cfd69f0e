// What a request carries once it has passed the guards.

import type { Context } from 'hono';

export type Who =
  | { readonly is: 'person'; readonly name: string }
  | { readonly is: 'board' }
  | { readonly is: 'visitor' };

export interface Session {
  readonly id: string;
  readonly who: Who;
}

export interface PageEnv {
  /** `calledAs`: the origin by which the browser knows the page. */
  readonly Variables: { session: Session; calledAs: string };
}

export type PageContext = Context<PageEnv>;
