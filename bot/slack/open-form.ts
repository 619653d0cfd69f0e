// Opens a form. A trigger lives 3 s: it opens empty first, and is filled when all is known that stands in it. What Slack
// does not take is tried once more, and then said: nobody waits before "One moment".

import type { ModalView } from '@slack/types';
import { z } from 'zod';
import { warn } from '../messages/privately.ts';
import type { Voice } from '../talk/overview.ts';
import type { Desk } from './crew-desk.ts';
import type { Inbound } from './inbound.ts';
import type { Called } from './slack-client.ts';
import type { SlackParts } from './slack-parts.ts';

export interface Opening {
  readonly empty: ModalView;
  readonly filled: () => Promise<ModalView>;
  /** What to do where it does not open. */
  readonly instead: (voice: Voice) => string;
}

type Opened = { readonly is: 'filled' } | { readonly is: 'not-opened' | 'not-filled'; readonly error: string };
type Opener = Pick<Extract<Inbound, { kind: 'tap' }>, 'id' | 'where' | 'trigger'>;

const View = z.object({ view: z.object({ id: z.string().min(1) }) });

const shortPauseMs = 1_000;
/** Whoever looks at an empty form for longer has closed it. */
const longestPauseMs = 15_000;

/** Slack's word for a form that its reader has closed meanwhile. */
const closedMeanwhile = 'not_found';

export async function openForm(parts: SlackParts, desk: Desk, by: Opener, opening: Opening): Promise<void> {
  const opened = await openAndFill(parts, by.trigger, opening);
  if (opened.is === 'filled') return;
  parts.log.error(`form-${opened.is}`, { id: by.id, error: opened.error });
  if (opened.error === closedMeanwhile) return;
  const voice = await desk.voiceOf(by.where);
  await warn(parts, by.where, by.id, voice, voice.words.chat.form.notOpened, [opening.instead(voice)]);
}

async function openAndFill({ call, pace }: SlackParts, trigger: string, { empty, filled }: Opening): Promise<Opened> {
  const opened = await call('views.open', { trigger_id: trigger, view: empty });
  const id = opened.kind === 'done' ? View.safeParse(opened.result).data?.view.id : undefined;
  if (id === undefined) return { is: 'not-opened', error: errorOf(opened) };
  try {
    const body = { view_id: id, view: await filled() };
    const first = await call('views.update', body);
    const pause = first.kind === 'limited' ? first.retryAfterMs : shortPauseMs;
    const isOver = first.kind === 'done' || first.kind === 'refused' || pause > longestPauseMs;
    if (!isOver) await pace.wait(pause);
    const last = isOver ? first : await call('views.update', body);
    return last.kind === 'done' ? { is: 'filled' } : { is: 'not-filled', error: errorOf(last) };
  } catch (error) {
    return { is: 'not-filled', error: String(error) };
  }
}

const errorOf = (called: Called): string => ('error' in called ? called.error : called.kind);
