// Which of the alarms that are on a lead ends: all of one kind, place and thing go together, since they were cried of the same trouble.

import type { CommandOf } from '../commands.ts';
import type { OpenAlarm } from './open-alarms.ts';

type Named = Omit<CommandOf<'alarm-over'>, 'verb'>;

/** Those that are ended together by what is said of them; none where it fits none. */
export function alarmsMeant(open: readonly OpenAlarm[], said: Named): readonly OpenAlarm[] | 'several' {
  if (said.which === 'all') return open;
  const fit = open.filter((alarm) => isNamed(alarm, said));
  // `alarm over fire` is said of the fire of no said place, where one is on.
  const leastTold = fit.filter(({ place, batch, can }) => (place ?? batch ?? can) === undefined);
  const saysKind = said.which !== undefined && leastTold.length > 0;
  const meant = saysKind ? leastTold : fit;
  return new Set(meant.map(troubleOf)).size > 1 ? 'several' : meant;
}

function isNamed({ what, isDrill, place, batch, can }: OpenAlarm, { which, ...said }: Named): boolean {
  if (which !== undefined && (which === 'drill') !== isDrill) return false;
  if (which !== undefined && which !== 'drill' && which !== what) return false;
  return (
    (said.place === undefined || said.place === place) &&
    (said.pot === undefined || said.pot === batch) &&
    (said.can === undefined || said.can === can)
  );
}

const troubleOf = ({ what, isDrill, place, batch, can }: OpenAlarm): string =>
  isDrill ? 'drill' : [what, place, batch, can].join('/');

/** One of each trouble, the gravest first as they came. */
export const troublesOf = (open: readonly OpenAlarm[]): readonly OpenAlarm[] =>
  open.filter((alarm, i) => open.findIndex((other) => troubleOf(other) === troubleOf(alarm)) === i);

/** What names this trouble and no other. */
export const namingTrouble = ({ what, isDrill, place, batch, can }: OpenAlarm): Named =>
  isDrill
    ? { which: 'drill' }
    : { which: what, ...(place && { place }), ...(batch && { pot: batch }), ...(can && { can }) };
