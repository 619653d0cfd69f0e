// Who is on shift, and who has handed over to whom. Until the other takes over by name, both are pinged.

import { type FactFor, isFor } from '../event-readers.ts';
import type { Entry } from '../history.ts';
import type { PersonName } from '../ids.ts';
import type { EpochMs } from '../units.ts';

export interface Handover {
  readonly from: PersonName;
  readonly to: PersonName;
  readonly at: EpochMs;
  /** Everything alive, as a lead hands over; else only what rings for the one who goes. */
  readonly everything: boolean;
  readonly takenAt: EpochMs | undefined;
}

export interface Shifts {
  readonly onShift: ReadonlyMap<PersonName, EpochMs>;
  /** In order of time. */
  readonly handovers: readonly Handover[];
}

const nobodyYet: Shifts = { onShift: new Map(), handovers: [] };

export function foldShifts(entries: readonly Entry[]): Shifts {
  return entries.reduce((shifts, entry) => {
    const { fact } = entry;
    return isFor('shifts', fact) ? withFact(shifts, fact, entry) : shifts;
  }, nobodyYet);
}

function withFact({ onShift, handovers }: Shifts, fact: FactFor<'shifts'>, { by, happenedAt: at }: Entry): Shifts {
  switch (fact.type) {
    case 'ShiftBegun':
      return { onShift: new Map([...onShift, [by, at]]), handovers };
    case 'ShiftEnded':
      return { onShift: new Map([...onShift].filter(([name]) => name !== by)), handovers };
    case 'HandedOver': {
      const handover = { from: by, to: fact.to, at, everything: fact.everything, takenAt: undefined };
      return { onShift, handovers: [...handovers, handover] };
    }
    case 'TakenOver':
      return {
        onShift,
        handovers: handovers.map((each) =>
          each.to === by && each.takenAt === undefined ? { ...each, takenAt: at } : each,
        ),
      };
  }
}

/** Whom a ping reaches that began with `person` at `since`: handovers after that move it on. */
export function pingedFor({ handovers }: Shifts, person: PersonName, since: number): readonly PersonName[] {
  let pinged: readonly PersonName[] = [person];
  for (const { from, to, at, everything, takenAt } of handovers) {
    if (at < since || (!everything && !pinged.includes(from))) continue;
    const stays =
      everything && takenAt !== undefined ? [] : pinged.filter((name) => name !== from || takenAt === undefined);
    pinged = [...new Set([...stays, to])];
  }
  return pinged;
}

/** The handover that still waits for somebody to take over. */
export function waitingHandover({ handovers }: Shifts): Handover | undefined {
  const last = handovers.at(-1);
  return last?.takenAt === undefined ? last : undefined;
}

/** Of these people, who is there: on shift where anybody of them is, else all but who handed everything over. */
export function onDuty(shifts: Shifts, people: readonly PersonName[]): readonly PersonName[] {
  const here = people.filter((name) => shifts.onShift.has(name));
  if (here.length > 0) return here;
  const last = shifts.handovers.findLast(({ everything, takenAt }) => everything && takenAt !== undefined);
  const others = people.filter((name) => name !== last?.from);
  return others.length > 0 ? others : people;
}
