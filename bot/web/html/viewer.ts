// Whose page is being written, and what every form on it must carry.

import type { html } from 'hono/html';
import type { UnitSystem } from '../../../core/crew/unit-system.ts';
import type { Profile } from '../../language/tongues/profile.ts';
import type { Words } from '../../language/tongues/tongues.ts';

export type Html = ReturnType<typeof html>;

export interface Viewer {
  readonly name: string;
  readonly words: Words;
  readonly profile: Profile;
  readonly units: UnitSystem;
  readonly token: string;
  /** The number of the newest post: a tap pressed again on a newer page is a new delivery. */
  readonly latest: number;
  /** Where a paper can be fetched, by its name in the tray. */
  readonly paperLink: (paper: string) => string;
}
