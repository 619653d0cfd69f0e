// What Slack would refuse, said before it does: every message and view that any test sends goes through here. The shape is
// held at compile time by @slack/types; lengths and counts by the table of limits.

import type { HomeView, KnownBlock, ModalView } from '@slack/types';
import { limits } from '../../../../bot/slack/limits.ts';

export interface SlackMessage {
  readonly text: string;
  readonly blocks: readonly KnownBlock[];
}

/** Each complaint names the place and both lengths; none: sound. */
export function complaintsAbout({ text, blocks }: SlackMessage): readonly string[] {
  return [
    ...(text.trim() === '' ? ['text is empty: a screen reader and a push read only that'] : []),
    ...most('text', text, limits.message.text),
    ...atMost('blocks', blocks.length, limits.message.blocks),
    ...atMost('characters of blocks', JSON.stringify(blocks).length, limits.message.blockCharacters + 1_200),
    ...liveMarkup(text),
    ...blockComplaints(blocks, ['header', 'rich_text', 'section', 'context', 'actions']),
  ];
}

export function viewComplaints(view: ModalView | HomeView): readonly string[] {
  const modal = view.type === 'modal' ? view : undefined;
  return [
    ...atMost('blocks', view.blocks.length, limits.view.blocks),
    ...most('title', modal?.title.text ?? '', limits.view.title),
    ...most('submit', modal?.submit?.text ?? '', limits.view.button),
    ...most('close', modal?.close?.text ?? '', limits.view.button),
    ...most('private_metadata', view.private_metadata ?? '', limits.view.privateMetadata),
    ...most('callback_id', view.callback_id ?? '', limits.view.callbackId),
    ...(modal !== undefined && view.blocks.some(({ type }) => type === 'input') && modal.submit === undefined
      ? ['a modal with inputs needs submit']
      : []),
    ...blockComplaints(view.blocks as readonly KnownBlock[], [
      'header',
      'section',
      'rich_text',
      'input',
      'actions',
      'context',
    ]),
  ];
}

export function assertSlackMessage(message: SlackMessage): void {
  const complaints = complaintsAbout(message);
  if (complaints.length > 0) throw new Error(`Slack would refuse it: ${complaints.join('; ')}`);
}

const atMost = (what: string, count: number, allowed: number): readonly string[] =>
  count > allowed ? [`${what}: ${count}, allowed ${allowed}`] : [];
const most = (what: string, text: string, allowed: number): readonly string[] => atMost(what, text.length, allowed);

/** In text only mentions of people are ours; everything else between angle brackets came from outside. */
function liveMarkup(text: string): readonly string[] {
  const found = [...text.matchAll(/<[^>]*>?/g)].map(([markup]) => markup);
  const others = found.filter((markup) => !/^<@[UW][A-Z0-9]+>$/.test(markup));
  const bare = text.replaceAll(/&(?:amp|lt|gt);/g, '').includes('&') ? ['a bare & in text'] : [];
  return [...others.map((markup) => `live markup in text: ${markup}`), ...bare];
}

function blockComplaints(blocks: readonly KnownBlock[], types: readonly KnownBlock['type'][]): readonly string[] {
  const ids = blocks.flatMap(({ block_id }) => block_id ?? []);
  return [
    ...(new Set(ids).size < ids.length ? [`a block_id twice: ${ids.join(' ')}`] : []),
    ...ids.flatMap((id) => most('block_id', id, limits.id)),
    ...blocks.flatMap((block, i) =>
      types.includes(block.type) ? [] : [`block ${i}: ${block.type} has no place here`],
    ),
    ...blocks.flatMap((block, i) => ofBlock(block).map((complaint) => `block ${i} ${block.type}: ${complaint}`)),
  ];
}

function ofBlock(block: KnownBlock): readonly string[] {
  switch (block.type) {
    case 'header':
      return [...most('text', block.text.text, limits.header), ...empty(block.text.text), ...mustBePlain(block.text)];
    case 'section': {
      const { text, fields = [] } = block;
      return [
        ...(text === undefined
          ? []
          : [...most('text', text.text, limits.section.text), ...empty(text.text), ...mustBePlain(text)]),
        ...atMost('fields', fields.length, limits.section.fields),
        ...fields.flatMap((field) => most('field', field.text, limits.section.field)),
      ];
    }
    case 'context':
      return [
        ...atMost('elements', block.elements.length, limits.context.elements),
        ...block.elements.flatMap((element) =>
          element.type === 'image' ? [] : [...most('text', element.text, limits.context.text), ...mustBePlain(element)],
        ),
      ];
    case 'actions':
      return actionComplaints(block);
    case 'input':
      return [
        ...most('label', block.label.text, limits.input.label),
        ...empty(block.label.text),
        ...most('hint', block.hint?.text ?? '', limits.input.hint),
        ...inputComplaints(block),
      ];
    case 'rich_text':
      return block.elements.flatMap((element) =>
        'elements' in element
          ? element.elements.flatMap((piece) =>
              'text' in piece && piece.text === '' ? ['an empty piece of text'] : [],
            )
          : [],
      );
    default:
      return [];
  }
}

const empty = (text: string): readonly string[] => (text === '' ? ['empty text'] : []);
const mustBePlain = (text: { readonly type: string }): readonly string[] =>
  text.type === 'plain_text' ? [] : ['words that Slack would parse'];

function actionComplaints(block: Extract<KnownBlock, { type: 'actions' }>): readonly string[] {
  const ids = block.elements.map((element) => ('action_id' in element ? (element.action_id ?? '') : ''));
  return [
    ...atMost('elements', block.elements.length, limits.actions),
    ...(block.elements.length === 0 ? ['no elements'] : []),
    ...(new Set(ids).size < ids.length ? ['an action_id twice'] : []),
    ...ids.flatMap((id) => most('action_id', id, limits.id)),
    ...block.elements.flatMap((element): readonly string[] => {
      if (element.type === 'button') {
        return [
          ...most('button', element.text.text, limits.button.text),
          ...most('value', element.value ?? '', limits.button.value),
          ...empty(element.text.text),
        ];
      }
      if (element.type === 'static_select') {
        return [
          ...optionComplaints(element.options ?? [], limits.selectOptions),
          ...most('placeholder', element.placeholder?.text ?? '', limits.placeholder),
        ];
      }
      if (element.type !== 'overflow') return [`${element.type} has no place here`];
      return optionComplaints(element.options, limits.overflow);
    }),
  ];
}

interface OptionShown {
  readonly text: { readonly text: string };
  readonly value?: string;
}

function optionComplaints(options: readonly OptionShown[], allowed: number): readonly string[] {
  return [
    ...(options.length === 0 ? ['no options'] : []),
    ...atMost('options', options.length, allowed),
    ...options.flatMap(({ text, value = '' }) => [
      ...most('option', text.text, limits.option.text),
      ...empty(text.text),
      ...most('option value', value, limits.option.value),
    ]),
  ];
}

function inputComplaints({ element }: Extract<KnownBlock, { type: 'input' }>): readonly string[] {
  switch (element.type) {
    case 'number_input':
      return element.is_decimal_allowed === undefined ? ['is_decimal_allowed is required'] : [];
    case 'plain_text_input':
      return atMost('max_length', element.max_length ?? 0, limits.input.text);
    case 'conversations_select':
    case 'multi_users_select':
      return [];
    case 'static_select':
      return optionComplaints(element.options ?? [], limits.selectOptions);
    default:
      return [`${element.type} is not used here`];
  }
}
