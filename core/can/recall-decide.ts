// A lot is called back: no more of it is opened, poured or put on, and every part that has some of it on is held, released and
// gone or not. What becomes of each is decided part by part; that the recall is over lifts no hold.

import type { CommandOf } from '../commands.ts';
import { mayNotSettle, roleMissing } from '../crew/who-may.ts';
import { accepted, type Decision, onCrew, type Said, unclear } from '../decision.ts';
import type { NewEvent } from '../history.ts';
import { canStream, crewStream, partStream } from '../ids.ts';
import { known } from '../known.ts';
import type { Part } from '../part/part.ts';
import { isOfLot } from '../sealed-stock.ts';
import type { Shop } from '../shop.ts';
import { pouredFrom } from './poured-from.ts';

export function decideRecall(shop: Shop, said: Said<CommandOf<'recall'>>): Decision {
  const wanted = roleMissing(shop.crew, said.by, { say: 'recall' });
  if (wanted !== undefined) return unclear(mayNotSettle(shop.crew, wanted));
  const { lot, component, why } = said.command;
  const cans = [...shop.cans.values()].filter(
    (can) => isOfLot(can, lot) && (component === undefined || can.component === component),
  );
  const numbers = new Set(cans.map(({ number }) => number));
  const recall: NewEvent = {
    streams: [crewStream, ...cans.map(({ number }) => canStream(number))],
    happenedAt: said.now,
    body: { type: 'LotRecalled', lot, why, ...known({ component }) },
  };
  const held = [...shop.parts.values()].filter((part) => hasOn(shop, part, numbers)).map(({ name }) => name);
  return accepted(
    recall,
    ...held.map(
      (name): NewEvent => ({
        streams: [partStream(name)],
        happenedAt: said.now,
        body: { type: 'PartHeld', why, because: ['lot-recalled'] },
      }),
    ),
  );
}

export function decideRecallOver(shop: Shop, said: Said<CommandOf<'recall-over'>>): Decision {
  const wanted = roleMissing(shop.crew, said.by, { say: 'recall-over' });
  if (wanted !== undefined) return unclear(mayNotSettle(shop.crew, wanted));
  const { lot, component, why } = said.command;
  const isOn = shop.crew.recalls.some((each) => each.endedAt === undefined && isOfLot(each, lot));
  if (!isOn) return unclear({ code: 'not-recalled', lot });
  return onCrew({ ...said, at: said.now }, { type: 'RecallEnded', lot, why, ...known({ component }) });
}

/** Not what a rework took off again, nor what is scrapped or given back. */
function hasOn(shop: Shop, { coats, verdict }: Part, cans: ReadonlySet<number>): boolean {
  if (verdict?.is === 'scrapped' || verdict?.is === 'returned') return false;
  return coats.some(({ batch: number }) => {
    const batch = shop.batches.get(number);
    return batch !== undefined && pouredFrom(batch).some((can) => cans.has(can));
  });
}
