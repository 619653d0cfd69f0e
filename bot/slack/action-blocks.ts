// Taps as buttons: the first few shown, the rest in a menu where it takes them. A button's value is the line that it says.

import type { ActionsBlock, ActionsBlockElement, Button } from '@slack/types';
import type { CardAction } from '../cards/card.ts';
import { buttonsShown, limits } from './limits.ts';
import { plain } from './slack-text.ts';

export const tapPrefix = 'tap:';
export const menuAction = 'tap-menu';

/** Taps whose line is longer than Slack's button holds are left out of the buttons; the text still names them. */
export function actionBlocks(actions: readonly CardAction[], showing: string): ActionsBlock[] {
  const fitting = actions.filter((action) => action.line.length <= limits.button.value);
  if (fitting.length === 0) return [];
  const shown = fitting.slice(0, buttonsShown);
  const others = fitting.slice(buttonsShown);
  // A menu of one is a button more.
  const inMenu =
    others.length > 1 &&
    others.length <= limits.overflow &&
    others.every((action) => action.line.length <= limits.option.value);
  const elements: ActionsBlockElement[] = inMenu
    ? [...shown.map(button), menu(others)]
    : fitting.map((action, i) => button(action, i));
  return blocksOf(elements, showing);
}

function button(action: CardAction, index: number): Button {
  return {
    type: 'button',
    action_id: `${tapPrefix}${index}:${action.id}`.slice(0, limits.id),
    text: plain(action.label, limits.button.text),
    value: action.line,
    ...(index === 0 ? { style: 'primary' } : {}),
  };
}

function menu(actions: readonly CardAction[]): ActionsBlockElement {
  const options = actions.map((action) => ({ text: plain(action.label, limits.option.text), value: action.line }));
  return { type: 'overflow', action_id: menuAction, options };
}

function blocksOf(elements: readonly ActionsBlockElement[], showing: string): ActionsBlock[] {
  const blocks: ActionsBlock[] = [];
  for (let i = 0; i < elements.length; i += limits.actions) {
    const part = elements.slice(i, i + limits.actions);
    blocks.push({ type: 'actions', block_id: `${showing}.${i}`.slice(0, limits.id), elements: part });
  }
  return blocks;
}
