// Opens a form. A trigger lives 3 s: it opens empty first, and is filled when all is known that stands in it. What Slack
// does not take is tried once more, and then said: nobody waits before "One moment".

import type { ModalView } from '@slack/types';
import { z } from 'zod';
import type { Pace } from '../time/pace.ts';
import type { Call, Called } from './slack-client.ts';

export interface Opening {
  readonly trigger: string;
  readonly empty: ModalView;
  readonly filled: () => Promise<ModalView>;
}

export type Opened = { readonly is: 'filled' } | { readonly is: 'not-opened' | 'not-filled'; readonly error: string };

const View = z.object({ view: z.object({ id: z.string().min(1) }) });

const shortPauseMs = 1_000;
/** Whoever looks at an empty form for longer has closed it. */
const longestPauseMs = 15_000;

export async function openForm(call: Call, pace: Pace, { trigger, empty, filled }: Opening): Promise<Opened> {
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

/** Slack's word for a form that its reader has closed meanwhile. */
export const closedMeanwhile = 'not_found';

const errorOf = (called: Called): string => ('error' in called ? called.error : called.kind);
