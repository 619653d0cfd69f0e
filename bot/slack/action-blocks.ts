// Taps as buttons: the first few shown, the rest in a menu or a list where it takes them. A tap's value is the line that
// it says. What finds no place can still be typed, and the text names it.

import type { ActionsBlock, ActionsBlockElement, Button } from '@slack/types';
import type { CardAction } from '../cards/card.ts';
import { buttonsShown, limits, tapCharacters } from './limits.ts';
import { plain } from './slack-text.ts';

export const tapPrefix = 'tap:';
export const menuAction = 'tap-menu';

/** `more`: stands on the closed list of the other taps. */
export function actionBlocks(actions: readonly CardAction[], showing: string, more = '…'): ActionsBlock[] {
  const fitting = actions.filter((action) => action.line.length <= limits.button.value);
  if (fitting.length === 0) return [];
  const shown = fitting.slice(0, buttonsShown);
  const others = fitting.slice(buttonsShown);
  const listed = others.filter((action) => action.line.length <= limits.option.value);
  // A menu takes no long line, and a menu of one is a button more.
  const buttons = listed.length > 1 ? others.filter((action) => !listed.includes(action)) : others;
  const elements: ActionsBlockElement[] = [
    ...[...shown, ...buttons.slice(0, buttonsShown)].map(button),
    ...(listed.length > 1 ? [menuOf(listed, more)] : []),
  ];
  return [{ type: 'actions', block_id: `${showing}.0`.slice(0, limits.id), elements: withinRoom(elements) }];
}

/** Which button of its row an action's id names; none of a menu. */
export function buttonAt(actionId: string): number | undefined {
  const [, index] = /^tap:(\d+):/.exec(actionId) ?? [];
  return index === undefined ? undefined : Number(index);
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

function menuOf(actions: readonly CardAction[], more: string): ActionsBlockElement {
  const options = actions.map((action) => ({ text: plain(action.label, limits.option.text), value: action.line }));
  return options.length <= limits.overflow
    ? { type: 'overflow', action_id: menuAction, options }
    : {
        type: 'static_select',
        action_id: menuAction,
        placeholder: plain(more, limits.placeholder),
        options: options.slice(0, limits.selectOptions),
      };
}

/** The list loses its last options, then the row its last buttons. */
function withinRoom(elements: readonly ActionsBlockElement[]): ActionsBlockElement[] {
  let room = tapCharacters;
  return elements.flatMap((element): ActionsBlockElement[] => {
    if (element.type === 'static_select') {
      const options = (element.options ?? []).filter((option) => {
        room -= JSON.stringify(option).length + 1;
        return room > 0;
      });
      return options.length === 0 ? [] : [{ ...element, options }];
    }
    room -= JSON.stringify(element).length + 1;
    return room > 0 ? [element] : [];
  });
}
