// Where on what Slack shows each tap stands, so that a press can be held against it.

import type { KnownBlock } from '@slack/types';
import type { Place } from '../talk/pressed.ts';
import { buttonAt } from './action-blocks.ts';

/** `rowOf`: what a row is about, by its block's id. */
export function placesIn(blocks: readonly KnownBlock[], rowOf: (block: string) => string): readonly Place[] {
  const rows = blocks.flatMap((block) => (block.type === 'actions' ? [block] : []));
  return rows.flatMap(({ block_id = '', elements }, at): readonly Place[] => {
    const row = rowOf(block_id);
    return elements.flatMap((element): readonly Place[] => {
      switch (element.type) {
        case 'button': {
          const button = buttonAt(element.action_id ?? '');
          const { value: line } = element;
          if (button === undefined || line === undefined) return [];
          return [{ row, at: { row: at, button }, label: element.text.text, line }];
        }
        case 'overflow':
        case 'static_select':
          return (element.options ?? []).map(({ text, value = '' }) => ({
            ...{ row, at: undefined, label: text.text, line: value },
          }));
        default:
          return [];
      }
    });
  });
}

/** The showing that a row of taps stands on, by its block's id. */
export const showingOf = (block: string): string => block.replace(/\.0$/, '');

/** `undefined`: it is of no standing message. */
export function versionOf(block: string): number | undefined {
  const [, version] = /\.(\d+)\.0$/.exec(block) ?? [];
  return version === undefined ? undefined : Number(version);
}
