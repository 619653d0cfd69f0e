// The forms that set up: the crew (name, channel, zone, who leads ...), and one's own (language, units, bells). All stands
// filled in as it is, so that a thumb changes only what is wrong.

import type { ActionsBlock, InputBlock, ModalView } from '@slack/types';
import type { CrewId } from '../../core/ids.ts';
import type { SetUp, SetUpField } from '../cards/set-up.ts';
import type { Words } from '../language/tongues/tongues.ts';
import { markedFor } from './crew-mark.ts';
import { formFrame, loadingView } from './form-view.ts';
import type { SetUpOf } from './inbound.ts';
import { limits } from './limits.ts';
import { plain } from './slack-text.ts';

export const setUpCallback = 'set-up';
export const setUpPrefix = 'set-up:';

export const channelBlock = 'channel';
export const leadsBlock = 'leads';
export const supervisorsBlock = 'supervisors';

export interface Chosen {
  /** `undefined`: none yet. Where the crew's file names it, it is not asked for. */
  readonly channel: string | undefined;
  readonly asksChannel: boolean;
  readonly leads: readonly string[];
  readonly supervisors: readonly string[];
}

export function setUpButtons({ mayCrew }: Pick<SetUp, 'mayCrew'>, words: Words, id: string): ActionsBlock {
  const { setUp } = words.chat;
  const button = (of: SetUpOf, text: string, primary: boolean) => ({
    type: 'button' as const,
    action_id: `${setUpPrefix}${of}`,
    text: plain(text, limits.button.text),
    value: of,
    ...(primary ? { style: 'primary' as const } : {}),
  });
  const crew = mayCrew ? [button('crew', setUp.crewButton, true)] : [];
  return { type: 'actions', block_id: id, elements: [...crew, button('mine', setUp.mineButton, false)] };
}

export function crewView(crew: CrewId, setUp: SetUp, chosen: Chosen, words: Words): ModalView {
  const { chat } = words;
  const [name, ...others] = setUp.crew;
  const channel: InputBlock = {
    type: 'input',
    block_id: channelBlock,
    optional: true,
    label: plain(chat.setUp.channel, limits.input.label),
    hint: plain(chat.setUp.channelHint, limits.input.hint),
    element: {
      type: 'conversations_select',
      action_id: 'chosen',
      filter: { include: ['public', 'private'], exclude_bot_users: true },
      ...(chosen.channel === undefined ? {} : { initial_conversation: chosen.channel }),
    },
  };
  return {
    ...frame(crew, 'crew', chat.setUp.crewTitle, words),
    blocks: [
      ...(name === undefined ? [] : [inputOf(name)]),
      ...(chosen.asksChannel ? [channel] : []),
      people(leadsBlock, chat.setUp.leads, chat.setUp.leadsHint, chosen.leads),
      people(supervisorsBlock, chat.setUp.supervisors, chat.setUp.supervisorsHint, chosen.supervisors),
      ...others.map(inputOf),
    ],
  };
}

export function mineView(crew: CrewId, setUp: SetUp, words: Words): ModalView {
  return { ...frame(crew, 'mine', words.chat.setUp.mineTitle, words), blocks: setUp.personal.map(inputOf) };
}

export function openingView(crew: CrewId, of: SetUpOf, words: Words): ModalView {
  const { crewTitle, mineTitle } = words.chat.setUp;
  const title = of === 'crew' ? crewTitle : mineTitle;
  return { ...loadingView(title, words, setUpCallback), private_metadata: markedFor(crew, of) };
}

const frame = (crew: CrewId, of: SetUpOf, title: string, words: Words) => ({
  ...formFrame(setUpCallback, title, words),
  private_metadata: markedFor(crew, of),
  submit: plain(words.chat.setUp.submit, limits.view.button),
});

/** Optional: what is left empty stays as it is. */
function inputOf(field: SetUpField): InputBlock {
  return {
    type: 'input',
    block_id: field.id,
    optional: true,
    label: plain(field.label, limits.input.label),
    ...(field.hint === undefined ? {} : { hint: plain(field.hint, limits.input.hint) }),
    element: field.choices.length === 0 ? typed(field) : chosenOf(field),
  };
}

function typed({ value }: SetUpField): InputBlock['element'] {
  const shown = value === '' ? {} : { initial_value: value };
  return { type: 'plain_text_input', action_id: 'typed', max_length: 60, ...shown };
}

function chosenOf({ value, choices }: SetUpField): InputBlock['element'] {
  const options = choices
    .filter((choice) => choice.value.length <= limits.option.value)
    .slice(0, limits.selectOptions)
    .map((choice) => ({ text: plain(choice.label, limits.option.text), value: choice.value }));
  const now = options.find((option) => option.value === value);
  return { type: 'static_select', action_id: 'chosen', options, ...(now === undefined ? {} : { initial_option: now }) };
}

function people(id: string, label: string, hint: string, users: readonly string[]): InputBlock {
  return {
    type: 'input',
    block_id: id,
    optional: true,
    label: plain(label, limits.input.label),
    hint: plain(hint, limits.input.hint),
    element: {
      type: 'multi_users_select',
      action_id: 'chosen',
      ...(users.length === 0 ? {} : { initial_users: [...users] }),
    },
  };
}
