// A shop to practise in, for one person: its own record, clock and bells. It is opened and closed with the practice.

import type { CrewFile } from '../../core/crew/crew.ts';
import type { PersonName, StreamId } from '../../core/ids.ts';
import type { Shop } from '../../core/shop.ts';
import type { EpochMs } from '../../core/units.ts';
import type { Answer } from '../talk/answer.ts';
import type { Host } from '../talk/host.ts';
import type { Overview } from '../talk/overview.ts';

export interface PracticeShop {
  readonly host: Host;
  readonly overview: Overview;
  readonly now: () => EpochMs;
  readonly look: (streams?: readonly StreamId[]) => Promise<Shop>;
  /** Moves its clock; what rang on the way. */
  readonly goOn: (until: EpochMs) => Promise<readonly Answer[]>;
  readonly close: () => void;
}

export type OpenPracticeShop = (crewFile: CrewFile, start: EpochMs) => PracticeShop;

/** Who practises, beside the record: what they say after a restart is not to be taken for the shop's. */
export interface Practisers {
  readonly has: (name: PersonName) => boolean;
  /** Whether it could be kept. */
  readonly put: (name: PersonName, practises: boolean) => boolean;
}

/** Where nothing outlives the process anyhow. */
export function practisersInMemory(): Practisers {
  const names = new Set<PersonName>();
  return {
    has: (name) => names.has(name),
    put: (name, practises) => {
      if (practises) names.add(name);
      else names.delete(name);
      return true;
    },
  };
}
