// A part at the end of its flash-off and what a test asks of it: the card's first button says Dry.

import type { FakeMessage } from './fake/fake-slack.ts';
import type { Workshop } from './fake/workshop.ts';

export async function flashOff(shop: Workshop): Promise<FakeMessage> {
  await shop.types('mix 2.4kg 24C 48%');
  await shop.types('weigh 1 1201g 1198g');
  await shop.passes(103);
  await shop.types('filter 1');
  await shop.types('coat new impeller-7 flow');
  await shop.passes(12);
  return shop.batch();
}

/** What is recorded of impeller-7, the bells left out. */
export const recordedOf = async (shop: Workshop) =>
  (await shop.store.eventsUnder('crew', 'part/impeller-7')).flatMap(({ body }) =>
    body.type === 'Rang' ? [] : [body.type],
  );

export const linesOf = (text = ''): readonly string[] => text.split('\n');

/** As it lay before somebody whose phone shows it still. */
export const stillShown = (message: FakeMessage): FakeMessage => structuredClone(message);
