// Which instrument may have been meant, or what a new one is, as taps.

import type { Command } from '../../core/commands.ts';
import { instrumentKinds } from '../../core/instrument-kinds.ts';
import type { Unclear } from '../../core/objections.ts';
import type { CardAction } from './card.ts';
import type { Telling } from './card-context.ts';

type AboutInstrument = Extract<Unclear, { code: 'no-such-instrument' | 'which-kind' }>;

export function instrumentsMeant(
  { words }: Telling,
  command: Command,
  unclear: AboutInstrument,
  line: (changed: Command) => string,
): readonly CardAction[] {
  if (unclear.code === 'which-kind') {
    if (command.verb !== 'instrument') return [];
    return instrumentKinds.map((kind) => ({
      id: `kind-${kind}`,
      label: words.parts.instruments.kinds[kind],
      line: line({ ...command, kind }),
    }));
  }
  return unclear.kept.slice(0, mostOffered).flatMap((name, i) => {
    const meant = withInstrument(command, name);
    return meant === undefined
      ? []
      : [{ id: `instrument-${i + 1}`, label: `${words.buttons.meant} ${name}`, line: line(meant) }];
  });
}
const mostOffered = 3;

function withInstrument(command: Command, name: string): Command | undefined {
  if (command.verb === 'calibrated') return { ...command, name };
  if (command.verb === 'amend') return { ...command, change: { ...command.change, instrument: name } };
  return 'instrument' in command ? { ...command, instrument: name } : undefined;
}
