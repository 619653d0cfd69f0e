// Files a picture that somebody dropped into a batch's thread: by reference, with the batch or with one of its parts.

import type { Executor } from '../core/execute.ts';
import { nameIn, numberIn, type PersonName, partStream, type StreamId } from '../core/ids.ts';
import type { Clock } from '../core/ports.ts';
import type { EpochMs } from '../core/units.ts';
import { type Answer, answerFrom, makeAnswer } from './answer.ts';
import { makeCard } from './cards/card.ts';
import type { Host } from './host.ts';

export interface Picture {
  readonly id: string;
  readonly as: PersonName;
  /** The batch in whose thread it lies. */
  readonly about: StreamId;
  /** What was written with it: a part that it names is what it shows. */
  readonly text: string;
  readonly reference: string;
  readonly saidAt: EpochMs | undefined;
}

/** A caption is a line, not a letter. */
const longestCaption = 200;

export function createPictures(executor: Executor, host: Pick<Host, 'telling'>, clock: Clock) {
  return async ({ id, as, about, text, reference, saidAt }: Picture): Promise<Answer> => {
    const now = clock.now();
    const coated = (await executor.look([about])).batches.get(numberIn(about))?.coats ?? [];
    const said = text.toLowerCase().split(/[\s,;:]+/);
    const part = coated.find((coat) => said.includes(coat.part))?.part;
    const stream = part === undefined ? about : partStream(part);
    const caption = text.trim() === '' ? undefined : text.trim().slice(0, longestCaption);
    const photo = { id, by: as, now, at: saidAt ?? now, stream, reference, caption };
    const given = await executor.filePhoto(photo, (shop) => {
      const t = host.telling(shop, as);
      const card = makeCard(t.words.chat.pictureFiled(nameIn(stream)), 'plain');
      const head = { at: t.f.iso(now), in: id, as, to: [as], key: null, code: null };
      return JSON.stringify(makeAnswer({ ...head, kind: 'reply', recorded: true, about: [about], card }));
    });
    return answerFrom(given);
  };
}
