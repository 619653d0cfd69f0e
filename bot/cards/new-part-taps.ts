// A name that nobody has used: the known parts that it may be, each as the act that its tap makes, then the new part as such.

import type { Command, CommandOf } from '../../core/commands.ts';
import type { PartName } from '../../core/ids.ts';
import type { Unclear } from '../../core/objections.ts';
import { type FewParts, type NamingVerb, namingVerbs } from '../language/tongues/english/new-parts.ts';
import type { CardAction } from './card.ts';
import type { Telling } from './card-context.ts';
import { inPlaceOf } from './did-you-mean-part.ts';

/** The acts that may name a new part. */
type Naming = CommandOf<NamingVerb>;

const mostNamed = 3;

/** `line`: what a command is typed as. */
export function newPartTaps(
  telling: Telling,
  command: Command,
  { unknown }: Extract<Unclear, { code: 'new-part' }>,
  line: (changed: Command) => string,
): readonly CardAction[] {
  if (!isNaming(command)) return [];
  const { meant } = telling.words.parts;
  const known = nearOnes(command, unknown).map((changed, i) => ({
    id: `part-${i + 1}`,
    label: actOn(telling, changed),
    line: line(changed),
  }));
  const some = someNear(command, unknown);
  const partly = some === undefined ? [] : [{ id: 'part-1', label: someTold(telling, some), line: line(some.command) }];
  const names = unknown.map(({ part }) => part);
  const asNew = {
    id: 'new-part',
    label: meant.asNew[command.verb](fewOf(names), telling.figures),
    line: line({ ...command, asNew: true }),
    bare: ['yes', 'new'],
  };
  const [name = ''] = names;
  const place: Command[] =
    command.verb === 'surface' ? [{ verb: 'surface', asNew: true, place: name, celsius: command.celsius }] : [];
  return [
    ...known,
    ...partly,
    asNew,
    ...place.map((changed) => ({ id: 'place', label: meant.place(name), line: line(changed) })),
  ];
}

function isNaming(command: Command): command is Naming {
  return namingVerbs.some((verb) => verb === command.verb);
}

type Unknown = Extract<Unclear, { code: 'new-part' }>['unknown'];

interface SomeNear {
  readonly command: Naming;
  readonly pairs: readonly (readonly [typed: PartName, near: PartName])[];
  readonly others: number;
}

/** Of several some of which are like a known one: those as meant so, the others new. */
function someNear(command: Naming, unknown: Unknown): SomeNear | undefined {
  const pairs = unknown.flatMap(({ part, near: [nearest] }) =>
    nearest === undefined ? [] : [[part, nearest] as const],
  );
  const isSome = pairs.length > 0 && pairs.length < unknown.length;
  if (!isSome || new Set(pairs.map(([, near]) => near)).size < pairs.length) return undefined;
  const meant = pairs.reduce<Naming>((changed, [typed, near]) => named(changed, typed, near), command);
  return { command: { ...meant, asNew: true }, pairs, others: unknown.length - pairs.length };
}

const someTold = ({ words, figures }: Telling, { pairs, others }: SomeNear): string =>
  words.parts.meant.someNear(pairs.slice(0, mostNamed), others, figures);

/** One unknown name may be any of those near it; several are meant together, each as its nearest. */
function nearOnes(command: Naming, unknown: Unknown): readonly Naming[] {
  const [one, ...others] = unknown;
  if (one === undefined) return [];
  const sets =
    others.length === 0
      ? one.near.map((near) => [[one.part, near] as const])
      : [unknown.flatMap(({ part, near: [nearest] }) => (nearest === undefined ? [] : [[part, nearest] as const]))];
  return sets
    .filter((pairs) => pairs.length === unknown.length && new Set(pairs.map(([, near]) => near)).size === pairs.length)
    .map((pairs) => pairs.reduce<Naming>((changed, [typed, near]) => named(changed, typed, near), command));
}

function named(command: Naming, typed: PartName, near: PartName): Naming {
  const [meant] = inPlaceOf(command, typed, near);
  return meant !== undefined && isNaming(meant.command) ? meant.command : command;
}

function actOn(telling: Telling, command: Naming): string {
  const { meant } = telling.words.parts;
  switch (command.verb) {
    case 'coat':
      return meant.coat(fewOf(command.parts), command.method, command.batch, telling.figures);
    case 'prep':
      return meant.prep(fewOf(command.parts), telling.figures);
    case 'surface':
      return meant.surface(command.part ?? '');
    case 'dry':
    case 'cure':
    case 'shipped':
    case 'hold':
      return `${telling.words.buttons.meant} ${meant.few(fewOf(command.parts), telling.figures)}`;
    case 'temp':
    case 'wet':
    case 'film':
    case 'adhesion':
    case 'rub':
    case 'pull-off':
    case 'gloss':
    case 'hardness':
    case 'holidays':
    case 'visual':
      return `${telling.words.buttons.meant} ${command.part ?? ''}`;
  }
}

/** A button has room for a few names. */
const fewOf = (names: readonly PartName[]): FewParts => ({
  shown: names.slice(0, mostNamed),
  more: Math.max(0, names.length - mostNamed),
});
