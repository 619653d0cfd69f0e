// Whether this crew says how its surfaces are prepared: from the first of which it said so, or as it is set. What was not
// kept until then is held against no coat before it.

import type { Entry } from '../history.ts';

/** `before`: as far as the record had it then. */
export function keepsPrep(
  { entries }: { readonly entries: readonly Entry[] },
  before = Number.POSITIVE_INFINITY,
): boolean {
  const last = entries.findLast(({ fact, seq }) => seq < before && saysIt(fact) !== undefined);
  return last !== undefined && saysIt(last.fact) === true;
}

function saysIt(fact: Entry['fact']): boolean | undefined {
  if (fact.type === 'SurfacePrepared') return true;
  return fact.type === 'SettingChanged' && fact.setting.name === 'prep' ? fact.setting.on : undefined;
}
