// What may be done next, as taps: each act as the line that says it, with a field where something is asked first.

import type { NextAct } from '../../core/next-acts.ts';
import type { NextActId } from '../../core/status.ts';
import { writeLine } from '../language/write-line.ts';
import type { CardAction } from './card.ts';
import { type Telling, tap } from './card-context.ts';

export function nextTaps(telling: Telling, next: readonly NextAct<NextActId>[]): readonly CardAction[] {
  return next.map((act) => {
    const action = tap(telling, act.id, lineOf(telling, act));
    const { command } = act;
    if (act.id !== 'flush-step' || command.verb !== 'flush' || command.solvent === undefined) return action;
    return { ...action, label: `${action.label} ${telling.words.names.solvent(command.solvent)}` };
  });
}

// biome-ignore lint/complexity/noExcessiveLinesPerFunction: a table, a case for each next act
function lineOf(telling: Telling, { id, of, command, stance }: NextAct<NextActId>): string {
  switch (id) {
    case 'weigh':
      return `weigh ${of} {part-a}g {part-b}g`;
    case 'weigh-a':
      return `weigh ${of} a {part-a}g`;
    case 'weigh-b':
      return `weigh ${of} b {part-b}g`;
    case 'coat':
      return `coat {part} ${of} {method}`;
    case 'catch':
      return `catch ${of} {caught}g`;
    case 'discard':
      return `discard ${of} {why}`;
    case 'surface':
      return `surface ${of} {surface-temperature}C`;
    case 'prep':
      return `prep ${of} {grade}`;
    case 'wet':
      return `wet ${of} {wet-films}um`;
    case 'temp':
      return `temp ${of} {part-temperature}C`;
    case 'door':
      return `door ${of} {minutes}m`;
    case 'film':
      return `film ${of} {dry-films}um`;
    case 'hold':
      return `hold ${of} {why}`;
    case 'lift':
      return `release ${of} permit {why}`;
    case 'ack-for':
      return `ack ${of} {people}`;
    case 'fan-on':
      return `fan ${of} on {face-velocity}mps`;
    case 'moved-out':
      return `near ${of} {people} out`;
    case 'flush-step':
      return `flush ${of} gun ${command.verb === 'flush' ? (command.solvent ?? '') : ''} {flush-volume}mL`;
    case 'spray-on':
      return `spray on ${of}`;
    case 'spray-off':
      return `spray off ${of}`;
    case 'filter':
    case 'stop':
    case 'stir':
    case 'cover':
    case 'thick':
    case 'hot':
    case 'empty':
    case 'check':
    case 'blanket':
    case 'prestir':
    case 'lid':
    case 'dry':
    case 'touch-up':
    case 'cure-oven':
    case 'cure-room':
    case 'out':
    case 'release':
    case 'brief':
    case 'ack':
    case 'fan-unmeasured':
    case 'fan-off':
    case 'supplied-yes':
    case 'supplied-no':
    case 'flush':
    case 'vessels':
    case 'rags':
    case 'close':
      return writeLine({ command, stance }, telling.shop.crew.zone);
  }
}
