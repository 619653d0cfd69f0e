// A coat in a tank, a pit or their like, however it goes on: whoever brushes in there breathes the same solvent. Since edition 7 it is
// asked about each time, by what its place, its part or its pot's place is called.

import type { PartName, PlaceName } from '../ids.ts';
import { type Method, methodRows } from '../methods.ts';
import type { Objection } from '../objections.ts';
import { isConfined } from './confined-places.ts';
import type { Session } from './session.ts';
import type { SpraySettings } from './spray-settings.ts';

/** Where a coat goes on. */
export interface Within {
  readonly part: PartName;
  readonly place: PlaceName | undefined;
  readonly fromOutside: true | undefined;
}

export function confinedCoat({
  method,
  settings,
  spray,
  within: { part, place, fromOutside },
}: {
  readonly method: Method;
  readonly settings: SpraySettings;
  readonly spray: { readonly session: Session } | undefined;
  readonly within: Within;
}): Objection | undefined {
  if (fromOutside === true || spray?.session.fromOutside !== undefined) return undefined;
  const names = [...(place === undefined ? [] : [place]), ...(methodRows[method].fromWithin ? [part] : [])];
  const confined = names.find((name) => isConfined(name, settings.confined));
  return confined === undefined ? undefined : { code: 'confined-place', place: confined };
}
