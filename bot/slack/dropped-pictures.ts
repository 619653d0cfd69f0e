// Pictures that somebody drops: filed with the batch in whose thread they lie, or with that of which their words tell. Where
// there is none, whoever meant it for us is told where pictures belong.

import type { StreamId } from '../../core/ids.ts';
import type { Answering } from './answering.ts';
import type { Desk } from './crew-desk.ts';
import type { Inbound } from './inbound.ts';
import type { Lines } from './lines.ts';
import type { ShowAnswer } from './show-answer.ts';
import type { Speaking } from './speaking.ts';

type Dropped = Extract<Inbound, { kind: 'picture' }>;

interface DroppedPicturesNeeds {
  readonly speaking: Speaking;
  readonly answering: Answering;
  readonly said: Lines['said'];
  readonly warn: ShowAnswer['warn'];
}

export function createDroppedPictures({ speaking, answering, said, warn }: DroppedPicturesNeeds) {
  async function dropped(desk: Desk, picture: Dropped): Promise<void> {
    const about = speaking.subjectAt(desk, picture.where);
    // In a thread a mention says its words only: the pictures come once more as a message of that thread.
    const comesTwice = picture.addressed && picture.mentions && picture.where.via === 'mention';
    if (about !== undefined) return comesTwice ? onlyWords(desk, picture) : filed(desk, picture, about);
    if (!picture.addressed) return;
    const answers = picture.text === '' ? [] : await said(desk, picture);
    const told = answers.find(({ recorded }) => recorded)?.about?.[0];
    if (told !== undefined) await filed(desk, { ...picture, text: '' }, told);
    else await tellWhere(desk, picture);
  }

  async function onlyWords(desk: Desk, picture: Dropped): Promise<void> {
    if (picture.text !== '') await said(desk, picture);
  }

  async function filed(desk: Desk, picture: Dropped, about: StreamId): Promise<void> {
    const { where, mentions } = picture;
    const as = await desk.roster.personOf(where.team, where.user);
    const saidAt = speaking.notFromTheFuture(picture.saidAt);
    const text = await speaking.withNames(desk, picture.text, where.team);
    for (const file of picture.files) {
      const id = `${picture.id}:${file.id}`;
      const reference = `slack:${file.id}`;
      const answer = await desk.filePicture({ id, as, about, text, saidAt, reference, wordsSaid: mentions });
      await answering.answered(desk, answer, where, id);
    }
  }

  async function tellWhere(desk: Desk, { where, id }: Dropped): Promise<void> {
    const { words } = await desk.voiceOf(where);
    await warn(where, id, words, words.chat.pictureNotFiled, [words.chat.pictureWhere]);
  }

  return { dropped };
}
