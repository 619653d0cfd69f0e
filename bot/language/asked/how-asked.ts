// `how do I brush it`, `cómo se lava la brocha`: what the sheet says of that work where it says how, the way of a method with what to
// wear for it, and of any other act how it is told.

import type { LineContext } from '../reading.ts';
import type { QuestionsTyped } from '../tongues/questions-typed.ts';
import { tokenize } from '../typed/tokens.ts';
import type { Asking } from './asking.ts';
import { thingsSaid } from './things-said.ts';

/** The strict line; `undefined` where it asks no way of doing anything, or of nothing that is done here. */
export function howAsked({ asked }: Asking, typed: QuestionsTyped, context: LineContext): string | undefined {
  const [, work, actFirst] = typed.why.howTo.exec(asked) ?? [];
  const told = work ?? actFirst;
  if (told === undefined) return undefined;
  const { acts, method, beginsInAct } = thingsSaid(tokenize(told, context.hearing), typed, context);
  const [act = typed.acts.find(({ said }) => said.test(told))?.act] = acts;
  if (work === undefined && !beginsInAct) return undefined;
  switch (act) {
    case undefined:
      return method && `hazards ${method}`;
    case 'coat':
      return method === undefined ? `help ${act}` : `hazards ${method}`;
    case 'flush':
      return 'how-stands sheet-flush';
    case 'prep':
    case 'surface':
      return 'how-stands sheet-surface';
    default:
      return `help ${act}`;
  }
}
