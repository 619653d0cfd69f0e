// What takes back or corrects an act that was said before.

import type { BatchNumber, CanNumber, PartName, PlaceName, SessionNumber, SheetId } from '../ids.ts';
import type { Celsius, EpochMs, Micrometres, Percent } from '../units.ts';
import { batchVerbs } from './batch-verbs.ts';
import { canVerbs } from './can-verbs.ts';
import { instrumentVerbs } from './instrument-verbs.ts';
import { partVerbs } from './part-verbs.ts';
import { placeVerbs } from './place-verbs.ts';
import { sessionVerbs } from './session-verbs.ts';
import { count, ownWay, ownWords, part, place, spoken, unasked } from './slot.ts';
import { type Amended, type LeavingIn, verb } from './verb.ts';

/** Acts of which some leave what can be put right. */
export const acts = { ...batchVerbs, ...canVerbs, ...partVerbs, ...placeVerbs, ...sessionVerbs, ...instrumentVerbs };
export type AmendableVerb = LeavingIn<typeof acts>;

/** Which act is corrected: the last of this verb on this batch, can, session, part or place. */
export interface AmendTarget {
  readonly verb: AmendableVerb;
  readonly batch?: BatchNumber;
  readonly can?: CanNumber;
  readonly session?: SessionNumber;
  readonly part?: PartName;
  /** Of its film, told spot by spot. */
  readonly spot?: number;
  readonly place?: PlaceName;
}

/** What was wrong: only what is named changes. */
export interface Amendment extends Amended<typeof acts> {
  readonly at?: EpochMs;
  readonly celsius?: Celsius;
  readonly relativeHumidityPercent?: Percent;
  readonly filmMicrometres?: readonly Micrometres[];
  /** Of a coat: out of which batch it really came, and what it really went on. */
  readonly ofBatch?: BatchNumber;
  readonly onPart?: PartName;
  /** Of a batch that is not weighed yet: what is really mixed. */
  readonly ofSheet?: SheetId;
  /** Of a hold. */
  readonly holdWhy?: string;
}

export const correctionVerbs = {
  /**
   * The speaker's latest; `entry` where a tap says which it was meant to be, `despite` where the speaker was shown what
   * rests on it, up to that entry.
   */
  undo: verb({
    entry: unasked<number>('number', { behind: 'entry' }),
    despite: unasked<number>('number', { behind: 'despite' }),
  }),
  amend: verb(
    {
      of: ownWay<AmendTarget>()([spoken('act'), count('batch'), part('part'), place('place')], { required: true }),
      change: ownWay<Amendment>()([spoken('change')], { required: true }),
      why: ownWords('reason', { orNone: true }),
    },
    { endsInWords: true },
  ),
};
