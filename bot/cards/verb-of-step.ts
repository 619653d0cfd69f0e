// In which act's line a step is said, for an example of it; none where there is nothing to say.

import type { Verb } from '../../core/commands.ts';
import type { Doing } from '../../core/guide/guidance.ts';

export function verbOfStep(doing: Doing): Verb | undefined {
  switch (doing.is) {
    case 'act':
    case 'stir-can':
    case 'use-up':
      return doing.act.command.verb;
    case 'name-can':
      return 'received';
    case 'open-can':
      return 'open';
    case 'name-parts':
      return 'part';
    case 'mix':
      return 'mix';
    case 'read-air':
      return 'air';
    case 'wait':
    case 'countersign':
    case 'stay-out':
      return undefined;
  }
}
