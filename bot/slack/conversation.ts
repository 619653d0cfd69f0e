// Takes what was said, tapped, filled in or dropped to the crew that it concerns.

import { joined, noCrew } from './arrivals.ts';
import type { Desk } from './crew-desk.ts';
import { dropped } from './dropped-pictures.ts';
import type { Submitted } from './form-answer.ts';
import { type Form, openTapForm, submitTapForm } from './forms.ts';
import type { Inbound } from './inbound.ts';
import { edited, said } from './lines.ts';
import { openSetUp, submitSetUp } from './set-up-form.ts';
import { setUpCallback } from './set-up-view.ts';
import type { SlackParts } from './slack-parts.ts';
import { pressed } from './taps.ts';
import { touchedBy } from './which-crew.ts';

/** Ends when it has been answered; what it moved is shown after that. */
export async function work(parts: SlackParts, inbound: Inbound): Promise<void> {
  // A form says itself whose it is.
  if (inbound.kind === 'form') return submit(parts, inbound, true).done;
  const desk = parts.which.deskAt(inbound.where, touchedBy(inbound));
  return desk === undefined ? noCrew(parts, inbound) : workOf(parts, desk, inbound);
}

/** `resumed`: taken in by an earlier life. */
export function submit(parts: SlackParts, form: Form, resumed: boolean): Submitted {
  return form.callback === setUpCallback ? submitSetUp(parts, form, resumed) : submitTapForm(parts, form, resumed);
}

async function workOf(parts: SlackParts, desk: Desk, inbound: Exclude<Inbound, Form>): Promise<void> {
  switch (inbound.kind) {
    case 'line':
      await said(parts, desk, inbound);
      return;
    case 'edited':
      return edited(parts, desk, inbound);
    case 'tap':
      return /\{[\w-]+\}/.test(inbound.line) ? openTapForm(parts, desk, inbound) : pressed(parts, desk, inbound);
    case 'set-up':
      return openSetUp(parts, desk, inbound);
    case 'home':
      return parts.homes.show(desk, inbound.where);
    case 'picture':
      return dropped(parts, desk, inbound);
    case 'joined':
      return joined(parts, desk, inbound.where);
  }
}
