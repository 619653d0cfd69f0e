// What is typed: each line of a message is said in its order and answered by itself; a message that was misread may be put
// right by changing it.

import { z } from 'zod';
import type { Hearing } from '../language/hearing.ts';
import { partsTyped } from '../language/parts-in/parts-typed.ts';
import { warn } from '../messages/privately.ts';
import type { Answer } from '../talk/answer.ts';
import { answered } from './answering.ts';
import type { Desk } from './crew-desk.ts';
import type { Delivered, Inbound } from './inbound.ts';
import type { SlackParts } from './slack-parts.ts';
import { handle } from './speaking.ts';

export type TypedLine = Delivered & { readonly text: string; readonly message: string | undefined };

/** One answer a line, one message a second: more than these say nothing in time. */
const linesAtOnce = 20;

/** Of a message: how many lines it had, and which of them were misread. */
const Misread = z.object({ lines: z.number(), misread: z.array(z.number()) });

/** The answers, in order. */
export async function said(parts: SlackParts, desk: Desk, line: TypedLine): Promise<readonly Answer[]> {
  const lines = linesOf(line.text, parts.tongues.every);
  const answers = await sayEach(parts, desk, line, lines, [...lines.keys()].slice(0, linesAtOnce));
  const left = lines.length - linesAtOnce;
  if (left > 0) {
    const voice = await desk.voiceOf(line.where);
    const { replies, chat } = voice.words;
    await warn(parts, line.where, line.id, voice, replies.notRecorded, [chat.linesLeft(linesAtOnce, left)]);
  }
  return answers;
}

/** Only what was misread is said anew; what was recorded is corrected by its own words. */
export async function edited(parts: SlackParts, desk: Desk, edit: Extract<Inbound, { kind: 'edited' }>): Promise<void> {
  const note = parts.postbox.note(noteOf(edit));
  const before = note === undefined ? undefined : Misread.parse(JSON.parse(note));
  const lines = linesOf(edit.text, parts.tongues.every);
  if (before?.lines === lines.length) {
    await sayEach(parts, desk, edit, lines, before.misread);
    return;
  }
  const voice = await desk.voiceOf(edit.where);
  const { replies, chat } = voice.words;
  await warn(parts, edit.where, edit.id, voice, replies.nothingRecorded, [chat.editNotRead]);
}

async function sayEach(
  parts: SlackParts,
  desk: Desk,
  line: TypedLine,
  lines: readonly string[],
  which: readonly number[],
) {
  const answers: Answer[] = [];
  const misread: number[] = [];
  for (const i of which) {
    const id = lines.length === 1 ? line.id : `${line.id}:${i + 1}`;
    const { where, saidAt } = line;
    const answer = await handle(parts, desk, { text: lines[i] ?? '', where, id, saidAt });
    if (answer === undefined) continue;
    if (answer.kind === 'misread') {
      misread.push(i);
      // There before anybody can read of it.
      noteMisread(parts, line, lines.length, misread);
    }
    await answered(parts, desk, answer, where, id);
    answers.push(answer);
  }
  noteMisread(parts, line, lines.length, misread);
  return answers;
}

function noteMisread({ postbox }: SlackParts, line: TypedLine, lines: number, misread: readonly number[]): void {
  if (line.message === undefined) return;
  const key = noteOf(line);
  if (misread.length > 0) postbox.setNote(key, JSON.stringify({ lines, misread }));
  else if (postbox.note(key) !== undefined) postbox.setNote(key, undefined);
}

const noteOf = ({ where, message }: TypedLine): string =>
  `misread/${where.team}/${where.channel ?? ''}/${message ?? ''}`;

/** A pasted list of parts is one act; nothing typed asks for help. */
function linesOf(text: string, hearing: Hearing): readonly string[] {
  if (partsTyped(text, hearing) !== undefined) return [text];
  const lines = text
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '');
  return lines.length === 0 ? ['help'] : lines;
}
