// The board of whoever practises: of their own shop, plainly marked, with taps that are of practice. What calls people stays real.

import type { PersonName } from '../../core/ids.ts';
import type { Board } from '../cards/board.ts';
import { boardOfPractice } from '../cards/practice-card.ts';
import type { Overview } from '../talk/overview.ts';
import type { Practices } from './practices.ts';

/** For a front end that shows each person a board of their own. */
export function practisingOverview(overview: Overview, practices: Pick<Practices, 'of'>): Overview {
  return {
    ...overview,
    board: async (name: PersonName | undefined): Promise<Board> => {
      const practice = name === undefined ? undefined : practices.of(name);
      if (name === undefined || practice === undefined) return overview.board(name);
      const { words } = await practice.shop.overview.voice(name);
      return boardOfPractice(await practice.shop.overview.board(name), words);
    },
  };
}
