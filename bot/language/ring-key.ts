// A bell's kind and whom or what it is about, from its key alone: `batch/1/stir-done/2`, `crew/digest/2026-03-02`.

import { type ReminderKind, reminderKinds } from '../../core/reminders/wish.ts';

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

/** Where the key does not hold the kind itself. */
const otherNames: ReadonlyMap<string, ReminderKind> = new Map([
  ['can/stir-done', 'can-stirred'],
  ['crew/bell', 'bell-test'],
]);
