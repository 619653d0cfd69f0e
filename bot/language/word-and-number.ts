// `wet imp 6 60 65um`, `hold housing 3 runs`: verb first, it reads as of a new part called `imp`, and its number as a figure or a word
// more. Where the two together name a part that the shop has, it is of that one.

import type { Command } from '../../core/commands.ts';
import type { PartName } from '../../core/ids.ts';
import { whichActOf } from './acts-meant.ts';
import type { Heard } from './as-said/heard.ts';
import { partsListed } from './as-said/parts-listed.ts';
import type { LineContext, Reading } from './reading.ts';
import type { Strictly } from './understood.ts';

type Act = Extract<Reading, { kind: 'command' }>;

export function ofPartInTwo(act: Act, context: LineContext, strictly: Strictly): Reading | undefined {
  const isNew = (name: PartName): boolean => !context.parts.includes(name);
  const word = namedIn(act.command).find((name) => isNew(name) && !/\d/.test(name));
  if (word === undefined) return undefined;
  const { line } = act;
  const [listed = joined(word, act)] = partsListed(line, context);
  const taken = listed && strictly(listed.line);
  if (listed === undefined || taken?.kind !== 'command' || namedIn(taken.command).includes(word)) return undefined;
  // `coat imp 1 brush`: the number may be the pot, and is asked about.
  if (batchOf(act.command) !== batchOf(taken.command)) return undefined;
  return listed.isSure
    ? { ...taken, line, takenAs: listed.line }
    : { kind: 'misread', misread: whichActOf([{ line: listed.line, acts: [taken] }]), line };
}

/** `wet housing 4 60 65um`, of no part that is known: nobody reads a film of 4 on a part without a number. Behind a coat it is the batch. */
function joined(word: PartName, { command, line }: Act): Heard | undefined {
  if ('batch' in command) return undefined;
  const name = line.toLowerCase().indexOf(` ${word} `);
  const behind = name === -1 ? '' : line.slice(name + word.length + 2);
  return /^\d{1,4} /.test(behind) ? { line: `${line.slice(0, name + 1)}${word}-${behind}`, isSure: true } : undefined;
}

const batchOf = (command: Command) => ('batch' in command ? command.batch : undefined);

function namedIn(command: Command): readonly PartName[] {
  if ('parts' in command) return command.parts ?? [];
  return 'part' in command && command.part !== undefined ? [command.part] : [];
}
