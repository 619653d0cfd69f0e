// What a request carries once it has passed the guards, and who is behind it.

import type { Context } from 'hono';
import type { Board } from '../cards/board.ts';
import type { Viewer } from './html/viewer.ts';
import type { PageNeeds } from './page-needs.ts';
import { paperLink } from './paper-links.ts';
import { formToken, type Session } from './session.ts';

export interface PageEnv {
  /** `calledAs`: the origin by which the browser knows the page. */
  readonly Variables: { session: Session; calledAs: string };
}

export type PageContext = Context<PageEnv>;

export function nameOf({ who }: Session): string | undefined {
  return who.is === 'person' ? who.name : undefined;
}

export async function viewerOf(needs: PageNeeds, session: Session): Promise<Viewer | undefined> {
  const name = nameOf(session);
  if (name === undefined) return undefined;
  const { words, units } = await needs.overview.voice(name);
  return {
    name,
    words,
    units,
    token: formToken(needs.secret, session),
    latest: needs.conversation.latest(),
    paperLink: (paper) => paperLink(needs.secret, needs.crew, paper),
  };
}

/** As it stands, in a person's units and language; for the wall in those of the crew. */
export function boardFor({ overview }: PageNeeds, name: string | undefined): Promise<Board> {
  return overview.board(name);
}

/** Who may be chosen at the door. */
export async function peopleOf({ overview }: Pick<PageNeeds, 'overview'>): Promise<readonly string[]> {
  return (await overview.crew()).people.map(({ name }) => name);
}

/** Whoever has joined may look at the wall; on this machine anybody may. */
export function maySeeWall(needs: PageNeeds, { who }: Session): boolean {
  return who.is !== 'visitor' || needs.joinCode === undefined;
}
