// A bell's kind and whom or what it is about, from its key alone: `batch/1/stir-done/2`, `crew/digest/2026-03-02`.

import { type ReminderKind, reminderKinds } from '../../core/wanted-reminder.ts';

export interface RingNamed {
  readonly kind: ReminderKind;
  readonly name: string;
}

/** `undefined` for a key of a later version. */
export function ringNamed(key: string): RingNamed | undefined {
  const [noun, second = '', third = ''] = key.split('/');
  // The crew's own bells have no name before their kind, and a day or a number after it.
  const name = noun === 'crew' ? third : second;
  const said = noun === 'crew' ? second : third;
  const kind = otherNames.get(`${noun}/${said}`) ?? reminderKinds.find((known) => known === said);
  return kind === undefined ? undefined : { kind, name };
}

/** The shape that every key has, whatever its kind; without the number of its ring. */
export function isRingKey(text: string): boolean {
  return /^(?:batch|part|can|place)\/[^/]+\/[a-z-]+$|^session\/\d+\/[a-z-]+(?:\/\d+)?$|^crew\/[a-z]+(?:\/[^/]+)*$/.test(
    text,
  );
}

/** As a line holds it: in quotes where a name in it would not stay as it is. */
export function writeRingKey(key: string): string {
  return key === key.toLowerCase() && !/\s/.test(key) ? key : JSON.stringify(key);
}

/** Where the key does not hold the kind itself. */
const otherNames: ReadonlyMap<string, ReminderKind> = new Map([
  ['can/stir-done', 'can-stirred'],
  ['crew/bell', 'bell-test'],
]);
