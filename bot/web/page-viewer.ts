// Who is behind a request, what they may see, and how they are told.

import type { Board } from '../cards/board.ts';
import type { Viewer } from './html/viewer.ts';
import type { PageDeps } from './page-deps.ts';
import type { Session } from './page-env.ts';
import { paperLink } from './paper-links.ts';
import { formToken } from './session.ts';

export function nameOf({ who }: Session): string | undefined {
  return who.is === 'person' ? who.name : undefined;
}

export async function viewerOf(deps: PageDeps, session: Session): Promise<Viewer | undefined> {
  const name = nameOf(session);
  if (name === undefined) return undefined;
  const { words, units, figures } = await deps.overview.voice(name);
  return {
    name,
    words,
    profile: figures.profile,
    units,
    token: formToken(deps.secret, session),
    latest: deps.conversation.latest(),
    paperLink: (paper) => paperLink(deps.secret, deps.crew, paper),
  };
}

/** As it stands, in a person's units and language; for the wall in those of the crew. */
export function boardFor({ overview }: PageDeps, name: string | undefined): Promise<Board> {
  return overview.board(name);
}

/** Who may be chosen at the door. */
export async function peopleOf({ overview }: Pick<PageDeps, 'overview'>): Promise<readonly string[]> {
  return (await overview.crew()).people.map(({ name }) => name);
}

/** Whoever has joined may look at the wall; on this machine anybody may. */
export function maySeeWall(deps: PageDeps, { who }: Session): boolean {
  return who.is !== 'visitor' || deps.joinCode === undefined;
}
