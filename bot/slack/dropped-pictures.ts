// Pictures that somebody drops: filed with the batch in whose thread they lie, or with that of which their words tell. Where
// there is none, whoever meant it for us is told where pictures belong.

import type { StreamId } from '../../core/ids.ts';
import { warn } from '../messages/privately.ts';
import { answered } from './answering.ts';
import type { Desk } from './crew-desk.ts';
import type { Inbound } from './inbound.ts';
import { said } from './lines.ts';
import type { SlackParts } from './slack-parts.ts';
import { notFromTheFuture, subjectAt, withNames } from './speaking.ts';

type Dropped = Extract<Inbound, { kind: 'picture' }>;

export async function dropped(parts: SlackParts, desk: Desk, picture: Dropped): Promise<void> {
  const about = subjectAt(parts, desk, picture.where);
  // In a thread a mention says its words only: the pictures come once more as a message of that thread.
  const comesTwice = picture.addressed && picture.mentions && picture.where.via === 'mention';
  if (about !== undefined) return comesTwice ? onlyWords(parts, desk, picture) : filed(parts, desk, picture, about);
  if (!picture.addressed) return;
  const answers = picture.text === '' ? [] : await said(parts, desk, picture);
  const told = answers.find(({ recorded }) => recorded)?.about?.[0];
  if (told !== undefined) await filed(parts, desk, { ...picture, text: '' }, told);
  else await tellWhere(parts, desk, picture);
}

async function onlyWords(parts: SlackParts, desk: Desk, picture: Dropped): Promise<void> {
  if (picture.text !== '') await said(parts, desk, picture);
}

async function filed(parts: SlackParts, desk: Desk, picture: Dropped, about: StreamId): Promise<void> {
  const { where, mentions } = picture;
  const as = await desk.roster.personOf(where.team, where.user);
  const saidAt = notFromTheFuture(parts, picture.saidAt);
  const text = await withNames(parts, desk, picture.text, where.team);
  for (const file of picture.files) {
    const id = `${picture.id}:${file.id}`;
    const reference = `slack:${file.id}`;
    const answer = await desk.filePicture({ id, as, about, text, saidAt, reference, wordsSaid: mentions });
    await answered(parts, desk, answer, where, id);
  }
}

async function tellWhere(parts: SlackParts, desk: Desk, { where, id }: Dropped): Promise<void> {
  const voice = await desk.voiceOf(where);
  const { chat } = voice.words;
  await warn(parts, where, id, voice, chat.pictureNotFiled, [chat.pictureWhere]);
}
