// What may be done next, as taps: each act as the line that says it, with a field where something is asked first.

import type { Command, CommandOf } from '../../core/commands.ts';
import type { NextAct } from '../../core/next-acts.ts';
import type { NextActId } from '../../core/status.ts';
import type { CardAction } from './card.ts';
import { lineOf, type Telling, tap } from './card-context.ts';

/** `ids`: of what comes next only these. */
export function nextTaps(
  telling: Telling,
  next: readonly NextAct<NextActId>[],
  ids?: readonly NextActId[],
): readonly CardAction[] {
  const shown = ids === undefined ? next : next.filter(({ id }) => ids.includes(id));
  return shown.map((act) => {
    const action = tap(telling, act.id, lineOfNext(telling, act));
    const { command } = act;
    if (act.id === 'filter' && command.verb === 'filter') return filterTap(telling, action, command);
    if (act.id === 'coat-part' && command.verb === 'coat') return coatTap(telling, action, command);
    if (act.id !== 'flush-step' || command.verb !== 'flush' || command.solvent === undefined) return action;
    return { ...action, label: `${action.label} ${telling.words.names.solvent(command.solvent)}` };
  });
}

/** What it records of the filter stands on it. */
function filterTap({ words, figures }: Telling, action: CardAction, filter: CommandOf<'filter'>): CardAction {
  const told = words.steps.filterTold(filter, figures);
  return told === '' ? action : { ...action, label: `${action.label}, ${told}` };
}

/** It says of which part, and how. */
function coatTap({ words }: Telling, action: CardAction, { parts, method }: CommandOf<'coat'>): CardAction {
  const label = `${action.label} ${parts.join(', ')}, ${words.names.method(method)}`;
  return { ...action, id: `coat-${parts.join('-')}`, label };
}

function lineOfNext(telling: Telling, { id, of, command, stance }: NextAct<NextActId>): string {
  const asking = asks[id];
  return asking === undefined ? lineOf(telling, { command, stance }) : asking(of, command);
}

/** The next of a set that is told spot by spot. */
const spotOf = (command: Command): string =>
  command.verb === 'film' && command.spots?.[0]?.spot !== undefined ? ` spot ${command.spots[0].spot}` : '';

/** Nothing is asked first. */
const whole = undefined;

/** The line with a field where something is asked first. */
const asks: Readonly<Record<NextActId, ((of: string, command: Command) => string) | undefined>> = {
  weigh: (of) => `weigh ${of} {part-a}g {part-b}g`,
  'weigh-a': (of) => `weigh ${of} a {part-a}g`,
  'weigh-b': (of) => `weigh ${of} b {part-b}g`,
  coat: (of) => `coat {part} ${of} {method}`,
  catch: (of) => `catch ${of} {caught}g`,
  discard: (of) => `discard ${of} {why}`,
  surface: (of) => `surface ${of} {surface-temperature}C`,
  prep: (of) => `prep ${of} {grade}`,
  wet: (of) => `wet ${of} {wet-films}um`,
  temp: (of) => `temp ${of} {part-temperature}C`,
  door: (of) => `door ${of} {minutes}m`,
  film: (of, command) => `film ${of}${spotOf(command)} {dry-films}um`,
  hold: (of) => `hold ${of} {why}`,
  lift: (of) => `release ${of} permit hold {why}`,
  rework: (of) => `rework ${of} {why}`,
  concession: (of) => `concession ${of} person {customer-person} document {document} dated {concession-date}`,
  scrap: (of) => `scrap ${of} {why}`,
  return: (of) => `return ${of} customer {why}`,
  'ack-for': (of) => `ack ${of} {people}`,
  'fan-on': (of) => `fan ${of} on {face-velocity}mps`,
  'moved-out': (of) => `near ${of} {people} out`,
  'flush-step': (of, command) =>
    command.verb === 'flush' ? `flush ${of} ${command.gear} ${command.solvent ?? ''} {flush-volume}mL` : `flush ${of}`,
  'spray-on': (of) => `spray on ${of}`,
  'spray-off': (of) => `spray off ${of}`,
  'coat-part': whole,
  ...{ filter: whole, stop: whole, stir: whole, cover: whole, thick: whole, hot: whole, empty: whole },
  ...{ check: whole, blanket: whole, prestir: whole, 'prestir-gas': whole, lid: whole },
  ...{ dry: whole, 'touch-up': whole, 'cure-oven': whole, 'cure-room': whole, out: whole, release: whole },
  ...{ strip: whole, abrade: whole },
  ...{ brief: whole, ack: whole, 'fan-unmeasured': whole, 'fan-off': whole, 'supplied-yes': whole },
  ...{ 'supplied-no': whole, flush: whole, vessels: whole, 'gear-cleaned': whole, rags: whole, close: whole },
};
