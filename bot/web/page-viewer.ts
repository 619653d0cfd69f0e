// Who is behind a request, what they may see, and how they are told.

import type { Board } from '../cards/board.ts';
import type { Viewer } from './html/viewer.ts';
import type { Session } from './page-env.ts';
import type { PageNeeds } from './page-needs.ts';
import { paperLink } from './paper-links.ts';
import { formToken } from './session.ts';

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
