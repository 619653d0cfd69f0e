// A tap on a card that had moved: what was pressed, what stands there, what each would say. Nothing is recorded on a guess
// of which of them was meant.

import { type Command, isDecision, type Stance } from '../../core/commands.ts';
import type { PartName } from '../../core/ids.ts';
import { partStatus } from '../../core/part/part-status.ts';
import { alarmNamed } from '../../core/session/session-commands.ts';
import type { Words } from '../language/tongues/tongues.ts';
import type { Pressed, Said } from '../talk/pressed.ts';
import { type Card, makeCard } from './card.ts';
import type { Telling } from './card-context.ts';
import { partLine } from './part-cards.ts';
import { blankLine } from './tap-fields.ts';

/** Whether to ask before it is done. */
export function isInDoubt({ moved }: Pressed, command: Command, stance: Stance): boolean {
  // A cry for help waits for no question.
  if (isCry(command)) return false;
  switch (moved.is) {
    case 'not':
      return false;
    case 'under-the-thumb':
      return true;
    case 'older':
      return moved.now !== undefined || restsOnTheCard(command, stance);
  }
}

const isCry = ({ verb }: Command): boolean => alarmNamed(verb) !== undefined;

/** What is decided is decided on what the card said; and what an undo takes back is whatever came last. */
function restsOnTheCard(command: Command, stance: Stance): boolean {
  const { verb } = command;
  return stance.is === 'permitted' || isDecision(command) || verb === 'spray-on' || verb === 'undo';
}

export function movedCard(telling: Telling, { label, moved }: Pressed, command: Command, line: string): Card {
  const { words } = telling;
  const { replies } = words;
  const others: readonly Said[] =
    moved.is === 'under-the-thumb' && moved.offered
      ? [moved.before]
      : moved.is === 'older' && moved.now
        ? [moved.now]
        : [];
  const offered = [{ label, line }, ...others];
  return makeCard(replies.notClear, 'warn', {
    lines: [
      sentence(words, label, moved),
      ...(command.verb === 'release' ? partsNow(telling, command.parts) : []),
      ...offered.map((each) =>
        replies.tapSays(each.label, blankLine(words.lineShown(each.line, telling.figures), words)),
      ),
      replies.nothingRecorded,
    ],
    actions: offered.map((each, i) => ({ id: i === 0 ? 'pressed' : 'instead', ...each })),
  });
}

/** What there is to read before it is pressed once more. */
function partsNow(telling: Telling, names: readonly PartName[]): readonly string[] {
  return names.flatMap((name) => {
    const part = telling.shop.parts.get(name);
    return part === undefined ? [] : [partLine(telling, partStatus(telling, part))];
  });
}

function sentence({ replies }: Words, label: string, moved: Pressed['moved']): string {
  if (moved.is === 'under-the-thumb') return replies.movedUnderThumb(label, moved.before.label);
  return moved.is === 'older' && moved.now !== undefined
    ? replies.pressedOlder(label, moved.now.label)
    : replies.pressedOlderMovedOn(label);
}
