// A small form for a tap that asks for figures: it opens empty at once, since Slack gives 3 s, and is filled then.

import type { InputBlock, KnownBlock, ModalView } from '@slack/types';
import { z } from 'zod';
import { ownValue } from '../../core/own-key.ts';
import type { TapField } from '../cards/tap-fields.ts';
import type { Words } from '../language/tongues/tongues.ts';
import type { Where } from '../messages/platform.ts';
import type { TapPlace } from './inbound.ts';
import { limits } from './limits.ts';
import { plain } from './slack-text.ts';

export const formCallback = 'tap-form';

/** What a form carries through Slack and back: the line to fill in, and where its answer belongs. */
export interface Carried {
  readonly line: string;
  readonly label: string;
  /** Whose tap it was. */
  readonly crew?: string | undefined;
  readonly where: Where;
  /** The message on which it was tapped. */
  readonly message?: string | undefined;
  /** Where on it, and when, as the tap said. */
  readonly place?: TapPlace | undefined;
  readonly tappedAt?: number | undefined;
  /** On a message that only its reader saw. */
  readonly alone?: boolean | undefined;
  /** The last act on what the form shows. */
  readonly lastAct?: number | undefined;
}

const via = z.enum(['command', 'mention', 'direct', 'button', 'home', 'form']);
const Stored = z.object({
  line: z.string(),
  label: z.string(),
  crew: z.string().optional(),
  message: z.string().optional(),
  place: z.object({ block: z.string(), button: z.number().optional(), hash: z.string().optional() }).optional(),
  tappedAt: z.number().optional(),
  alone: z.boolean().optional(),
  lastAct: z.number().optional(),
  where: z.object({
    team: z.string(),
    user: z.string(),
    channel: z.string().optional(),
    thread: z.string().optional(),
    via,
  }),
});

export function readCarried(text: string): Carried | undefined {
  try {
    const read = Stored.parse(JSON.parse(text));
    const { channel, thread, ...where } = read.where;
    return { ...read, where: { ...where, channel, thread, responseUrl: undefined } };
  } catch {
    return undefined;
  }
}

/** Of a form that opens empty: what it is of, and how to close it. */
export const formFrame = (callback: string, title: string, words: Words) => ({
  type: 'modal' as const,
  callback_id: callback,
  title: plain(title, limits.view.title),
  close: plain(words.chat.form.close, limits.view.button),
});

export function loadingView(title: string, words: Words, callback = formCallback): ModalView {
  const text = plain(words.chat.form.loading, limits.section.text);
  return { ...formFrame(callback, title, words), blocks: [{ type: 'section', text }] };
}

/** `context`: what stood on the card, to weigh against. */
export function formView(
  carried: Carried,
  fields: readonly TapField[],
  context: readonly string[],
  words: Words,
): ModalView {
  const told: KnownBlock[] =
    context.length === 0 ? [] : [{ type: 'section', text: plain(context.join('\n'), limits.section.text) }];
  return {
    ...formFrame(formCallback, carried.label, words),
    submit: plain(words.chat.form.submit, limits.view.button),
    private_metadata: JSON.stringify({ ...carried, where: { ...carried.where, responseUrl: undefined } }),
    blocks: [...told, ...fields.map((field, i) => inputOf(field, i === 0))],
  };
}

/** Its block id is the field's, so that an error finds its place and what was typed stays. */
function inputOf(field: TapField, first: boolean): InputBlock {
  const unit = field.unit === '' ? '' : ` (${shownUnit(field.unit)})`;
  return {
    type: 'input',
    block_id: field.id,
    label: plain(`${field.label}${unit}`, limits.input.label),
    element: elementOf(field, first),
  };
}

function elementOf(field: TapField, first: boolean): InputBlock['element'] {
  const focus = first ? { focus_on_load: true } : {};
  switch (field.holds) {
    case 'number':
      return { type: 'number_input', action_id: 'typed', is_decimal_allowed: true, ...focus };
    case 'figures':
    case 'words':
      return { type: 'plain_text_input', action_id: 'typed', max_length: 200, ...focus };
    case 'choice':
      return {
        type: 'static_select',
        action_id: 'chosen',
        options: field.choices
          .slice(0, limits.selectOptions)
          .map((choice) => ({ text: plain(choice, limits.option.text), value: choice.slice(0, limits.option.value) })),
      };
    default: {
      const never: never = field.holds;
      return never;
    }
  }
}

const shownUnit = (unit: string): string => (unit === 'C' || unit === 'F' ? `°${unit}` : unit);

/** Wrong before anybody reads the line: by field. */
export function fieldFaults(
  fields: readonly TapField[],
  values: Readonly<Record<string, string>>,
  words: Words,
): Readonly<Record<string, string>> {
  const wrong = fields.filter(
    ({ id, holds }) => holds === 'number' && !/^\s*[-+]?\d+(?:[.,]\d+)?\s*$/.test(ownValue(values, id) ?? ''),
  );
  return Object.fromEntries(wrong.map(({ id }) => [id, words.chat.numberWanted]));
}

/** What the reader did not understand, beside the field in which it stands; beside the first where it names none. */
export function faultOf(
  said: readonly string[],
  fields: readonly TapField[],
  values: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> {
  const text = said.slice(0, 2).join(' ');
  const named = fields.find(
    ({ id }) => (ownValue(values, id) ?? '') !== '' && text.includes(ownValue(values, id) ?? ''),
  );
  const id = (named ?? fields[0])?.id;
  return id === undefined ? {} : { [id]: text };
}
