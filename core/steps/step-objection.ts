// What speaks against an act by a step of the maker's paper: the crew has said that it is lacking, or it was not kept.

import type { FilterTold } from '../filters.ts';
import type { PartName, PersonName } from '../ids.ts';
import type { LateCost } from '../products/sheet-steps.ts';
import type { Gear } from '../session/session-commands.ts';
import type { Celsius, EpochMs, Minutes } from '../units.ts';
import type { AskedStep } from './step-rows.ts';

export type StepObjection =
  | { readonly code: 'step-lacking'; readonly step: AskedStep; readonly by: PersonName; readonly at: EpochMs }
  /** Whether the part bears the oven, where the crew notes it of its parts. */
  | { readonly code: 'heat-not-known'; readonly part: PartName; readonly ovenCelsius: Celsius }
  /** A deviation of taking the lid off, by how long it then stayed off. */
  | { readonly code: 'uncovered-too-long'; readonly openMinutes: Minutes; readonly mostMinutes: Minutes }
  | { readonly code: 'filter-not-as-sheet'; readonly told: FilterTold; readonly asked: FilterTold }
  /** A deviation of the cleaning, by how long the gear had rested. */
  | {
      readonly code: 'gear-cleaned-late';
      readonly gear: Gear;
      readonly afterMinutes: Minutes;
      readonly mostMinutes: Minutes;
      readonly costs: LateCost | undefined;
    };

export type StepLacking = Extract<StepObjection, { code: 'step-lacking' }>;
