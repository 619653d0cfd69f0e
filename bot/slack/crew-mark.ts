// Whose a message or a form is, written into what Slack gives back of it: somebody of two crews taps what lies before them,
// and speaks for none by that.

import type { CrewId } from '../../core/ids.ts';

const mark = '|';

export const markedFor = (crew: CrewId, name: string): string => `${crew}${mark}${name}`;

export function crewMarked(name: string): CrewId | undefined {
  const at = name.lastIndexOf(mark);
  return at <= 0 ? undefined : name.slice(0, at);
}

export const withoutMark = (name: string): string => name.slice(name.lastIndexOf(mark) + 1);
