// All that can be typed, by what it is about: a group for each room of verbs, so that a new verb stands in its group by itself.

import { isOwnKey } from '../../core/own-key.ts';
import { alarms } from '../../core/session/session-commands.ts';
import { batchVerbs } from '../../core/verbs/batch-verbs.ts';
import { canVerbs } from '../../core/verbs/can-verbs.ts';
import { partVerbs } from '../../core/verbs/part-verbs.ts';
import { placeVerbs } from '../../core/verbs/place-verbs.ts';
import { questionRows } from '../../core/verbs/question-rows.ts';
import { sessionVerbs } from '../../core/verbs/session-verbs.ts';
import { stepVerbs } from '../../core/verbs/step-verbs.ts';
import { type VocabularyName, vocabulary } from './vocabulary.ts';

export const helpGroups = ['pots', 'cans', 'parts', 'air', 'spraying', 'emergencies', 'crew', 'asking'] as const;
export type HelpGroup = (typeof helpGroups)[number];

/** Of the verbs of a session: what calls people, and what belongs to that. */
const aboutAlarms: ReadonlySet<string> = new Set([...alarms, 'no-alarm', 'alarm-over', 'drill', 'near-miss', 'bell']);

function groupOf(name: VocabularyName): HelpGroup {
  if (aboutAlarms.has(name)) return 'emergencies';
  if (isOwnKey(batchVerbs, name) || isOwnKey(stepVerbs, name)) return 'pots';
  if (isOwnKey(canVerbs, name)) return 'cans';
  if (isOwnKey(partVerbs, name)) return 'parts';
  if (isOwnKey(placeVerbs, name)) return 'air';
  if (isOwnKey(sessionVerbs, name)) return 'spraying';
  return isOwnKey(questionRows, name) ? 'asking' : 'crew';
}

export function namesIn(group: HelpGroup): readonly VocabularyName[] {
  return Object.values(vocabulary).flatMap(({ name }) => (groupOf(name) === group ? [name] : []));
}
