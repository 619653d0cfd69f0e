// What speaks against an act with a can or with what comes out of one, in figures.

import type { Component } from '../components.ts';
import type { HeatSign } from '../heat-care.ts';
import type { BatchNumber, CanNumber, PersonName, SheetId } from '../ids.ts';
import type { EpochMs, Grams, Litres, Minutes } from '../units.ts';

export type MaterialObjection =
  | { readonly code: 'no-gas'; readonly component: Component }
  /** Called back by its maker, or by the shop. */
  | { readonly code: 'lot-recalled'; readonly lot: string; readonly at: EpochMs; readonly why: string }
  | { readonly code: 'can-expired'; readonly lot: string; readonly expires: string }
  /** ISO: the last day on which its sheet lets it be poured from. */
  | { readonly code: 'can-open-too-long'; readonly can: CanNumber; readonly lastDay: string }
  | { readonly code: 'can-discarded'; readonly can: CanNumber; readonly at: EpochMs }
  | {
      readonly code: 'can-doubtful';
      readonly can: CanNumber;
      readonly since: EpochMs;
      /** Of standing without gas; `undefined` where some was left in a can to be used whole. */
      readonly limitMinutes: Minutes | undefined;
    }
  | { readonly code: 'can-reacts'; readonly can: CanNumber; readonly seen: HeatSign; readonly at: EpochMs }
  | { readonly code: 'shut-without-gas'; readonly can: CanNumber }
  | { readonly code: 'whole-left-over'; readonly can: CanNumber; readonly leftGrams: Grams }
  | { readonly code: 'check-by-lead'; readonly can: CanNumber; readonly who: readonly PersonName[] }
  | { readonly code: 'more-than-can-holds'; readonly can: CanNumber; readonly grams: Grams; readonly leftGrams: Grams }
  | { readonly code: 'can-of-other-sheet'; readonly can: CanNumber; readonly sheet: SheetId }
  | {
      readonly code: 'part-a-not-stirred';
      readonly can: CanNumber;
      readonly wantedMinutes: Minutes;
      /** Where it was stirred, but not for so long. */
      readonly givenMinutes: Minutes | undefined;
      /** While the stirrer runs in it. */
      readonly dueAt: EpochMs | undefined;
    }
  /** `smallestGrams`: the least mix that it weighs within the tolerance; `undefined` where none is that the sheet mixes. */
  | {
      readonly code: 'scale-too-coarse';
      readonly scale: string;
      readonly stepGrams: Grams;
      readonly tolerancePercent: number;
      readonly smallestGrams: Grams | undefined;
    }
  | { readonly code: 'weighed-twice'; readonly component: Component; readonly at: EpochMs; readonly grams: Grams }
  | { readonly code: 'b-before-a' }
  | { readonly code: 'adding-not-on-sheet' }
  | { readonly code: 'added-too-late'; readonly untilAt: EpochMs; readonly filtered: boolean }
  /** All that would then be in the pot. */
  | { readonly code: 'adding-passes-most'; readonly mixedGrams: Grams; readonly mostGrams: Grams }
  | { readonly code: 'vessel-too-small'; readonly vesselLitres: Litres; readonly mixedLitres: Litres }
  | { readonly code: 'caught-not-filtered'; readonly grams: Grams; readonly at: EpochMs }
  /** All that would then stand caught and not filtered. */
  | { readonly code: 'caught-more-than-mixed'; readonly grams: Grams; readonly mixedGrams: Grams };

export type MaterialUnclear =
  /** No recall of it is on. */
  | { readonly code: 'not-recalled'; readonly lot: string }
  | { readonly code: 'no-such-can'; readonly can: CanNumber; readonly live: readonly CanNumber[] }
  | { readonly code: 'which-can'; readonly component: Component | undefined; readonly live: readonly CanNumber[] }
  | { readonly code: 'can-not-wanted'; readonly can: CanNumber; readonly component: Component }
  /** Of a can that is opened: nothing was received of its lot, or cans of more than one size. */
  | {
      readonly code: 'can-size-needed';
      readonly component: Component;
      readonly lot: string;
      readonly sizes: readonly Grams[];
    }
  /** Not weighed yet, or its can is named. */
  | { readonly code: 'no-can-wanted'; readonly batch: BatchNumber; readonly component: Component }
  /** Off the plan by just what tells one unit from another, or by a digit. */
  | {
      readonly code: 'other-unit';
      readonly batch: BatchNumber;
      readonly readings: readonly {
        readonly component: Component;
        readonly grams: Grams;
        /** None: it was a digit, and nobody can tell which. */
        readonly otherGrams?: Grams;
        readonly plannedGrams: Grams;
      }[];
    };
