// Files a picture that somebody dropped into a batch's thread: by reference, with the batch or with one of its parts.

import type { Executor } from '../../core/execute.ts';
import { nameIn, nounOf, numberIn, type PersonName, partStream, type StreamId } from '../../core/ids.ts';
import type { Clock } from '../../core/ports.ts';
import type { Shop } from '../../core/shop.ts';
import type { EpochMs } from '../../core/units.ts';
import { makeCard } from '../cards/card.ts';
import { isoLocal } from '../language/times/wall-clock.ts';
import { type Answer, answerFrom, makeAnswer } from './answer.ts';
import type { Host } from './host.ts';

export interface Picture {
  readonly id: string;
  readonly as: PersonName;
  /** The batch in whose thread it lies. */
  readonly about: StreamId;
  /** What was written with it: a part that it names is what it shows. */
  readonly text: string;
  /** Its words have been said by themselves. */
  readonly wordsSaid: boolean;
  readonly reference: string;
  readonly saidAt: EpochMs | undefined;
}

/** A caption is a line, not a letter. */
const longestCaption = 200;

export function createPictureFiling(executor: Executor, host: Pick<Host, 'telling' | 'isAct'>, clock: Clock) {
  /** The line that a caption may have been meant as: as of when it was written, where it says no other time. */
  function meantBy(shop: Shop, { text, about, wordsSaid }: Picture, at: EpochMs): string | undefined {
    if (wordsSaid || text.trim() === '') return undefined;
    const lines = [`at ${isoLocal(at, shop.crew.zone)} ${text.trim()}`, text.trim()];
    return lines.find((line) => host.isAct(shop, line, at, about));
  }

  return async (picture: Picture): Promise<Answer> => {
    const { id, as, about, text, reference, saidAt } = picture;
    const now = clock.now();
    const at = saidAt ?? now;
    const batches = (await executor.look([about])).batches;
    const coated = nounOf(about) === 'batch' ? (batches.get(numberIn(about))?.coats ?? []) : [];
    const said = text.toLowerCase().split(/[\s,;:]+/);
    const part = coated.find((coat) => said.includes(coat.part))?.part;
    const stream = part === undefined ? about : partStream(part);
    const caption = text.trim() === '' ? undefined : text.trim().slice(0, longestCaption);
    const photo = { id, by: as, now, at, stream, reference, caption };
    const given = await executor.filePhoto(photo, (shop) => {
      const telling = host.telling(shop, as);
      const line = meantBy(shop, picture, at);
      const unsaid =
        line === undefined
          ? {}
          : {
              lines: [telling.words.chat.captionNotRecorded(text.trim())],
              actions: [{ id: 'caption', label: telling.words.chat.recordCaption, line }],
            };
      const card = makeCard(
        telling.words.chat.pictureFiled(nameIn(stream)),
        line === undefined ? 'plain' : 'warn',
        unsaid,
      );
      const head = { at: telling.figures.iso(now), in: id, as, to: [as], key: null, code: null };
      return JSON.stringify(makeAnswer({ ...head, kind: 'reply', recorded: true, about: [about], card }));
    });
    return answerFrom(given);
  };
}
