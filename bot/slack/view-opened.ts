// Opens a form. A trigger lives 3 s: it opens empty first, and is filled when all is known that stands in it.

import type { ModalView } from '@slack/types';
import { z } from 'zod';
import type { Call } from './slack-client.ts';

const Opened = z.object({ view: z.object({ id: z.string().min(1) }) });

/** Its id, for filling it; `undefined` where it did not open. */
export async function openedView(call: Call, trigger: string, view: ModalView): Promise<string | undefined> {
  const opened = await call('views.open', { trigger_id: trigger, view });
  return opened.kind === 'done' ? Opened.safeParse(opened.result).data?.view.id : undefined;
}
