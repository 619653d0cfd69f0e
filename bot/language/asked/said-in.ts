// What a question names, with the act that it is asked of: the things, the places, the part of the product.

import type { BatchPhase } from '../../../core/batch/batch.ts';
import type { Verb } from '../../../core/commands.ts';
import { methodRows } from '../../../core/methods.ts';
import type { PartPhase } from '../../../core/part/part.ts';
import type { LineContext } from '../reading.ts';
import type { QuestionsTyped } from '../tongues/questions-typed.ts';
import { tokenize } from '../typed/tokens.ts';
import type { Asking } from './asking.ts';
import { endsIn } from './parts-gone.ts';
import { mostAtOnce, type ThingsSaid, thingsSaid } from './things-said.ts';

export interface Said extends ThingsSaid {
  readonly act: Verb | undefined;
  /** Of what kinds the things are, as far as the words alone tell. */
  readonly named: readonly ('part' | 'batch' | 'can' | 'person' | 'number')[];
  /** A part by its whole name: a bare number is a pot's in a trace. */
  readonly traced: string | undefined;
  /** A bare number is one that a part ends in. */
  readonly endsPart: boolean;
  /** Pots that are stirred now. */
  readonly stirring: readonly string[];
  /** A pot is there whose coats come next. */
  readonly isPotMixed: boolean;
  /** What is in cure now. */
  readonly curing: readonly string[];
  /** `a` or `b`. */
  readonly component: string | undefined;
}

const mixed: ReadonlySet<string> = new Set<BatchPhase['is']>(['blending', 'paused', 'filtered']);

/** An act that is said in other words than its own counts before those that only look like one. */
export function saidIn(
  { asked, aside }: Pick<Asking, 'asked' | 'aside'>,
  typed: QuestionsTyped,
  context: LineContext,
): Said {
  const heard = heardIn(
    partsByPlace(asked, typed, context).replace(typed.modal, '').replace(typed.usesPot.said, typed.usesPot.as),
    typed,
    context,
  );
  // `the bell went for 7, do I stick it in the oven`: what was named before.
  const isOfBefore = heard.things.length === 0 && asked.split(' ').length >= fewestOfQuestion;
  const before = isOfBefore && aside !== undefined ? heardIn(aside, typed, context) : undefined;
  const all = {
    ...heard,
    things: named([...heard.things, ...(before?.things ?? [])], context),
    figures: heard.figures.length > 0 ? heard.figures : (before?.figures ?? []),
  };
  const spray: Verb = all.things.some((thing) => /[a-z]-?\d|^\d+$/.test(thing)) ? 'coat' : 'spray-on';
  const isSprayed =
    typed.spray.test(asked) || (all.acts.length === 0 && all.method !== undefined && methodRows[all.method].atomised);
  const act = typed.acts.find((each) => each.said.test(asked))?.act ?? (isSprayed ? spray : all.acts[0]);
  const method = all.method ?? (isSprayed && act === 'coat' ? 'spray' : undefined);
  const [first] = all.things;
  return {
    ...all,
    act,
    named: all.things.map((thing) => kindOf(thing, context)),
    endsPart: all.things.some((thing) => context.parts.some((part) => endsIn(part, thing))),
    isPotMixed: context.live?.().batches.some(({ phase }) => mixed.has(phase)) === true,
    curing: curingNow(context),
    stirring: stirringNow(context),
    traced: onlyEnding(first, context.parts) ?? first,
    component: typed.component.exec(asked)?.[1],
    method,
  };
}

/** `isn't it` asks nothing of its own. */
const fewestOfQuestion = 4;

const heardIn = (text: string, typed: QuestionsTyped, context: LineContext): ThingsSaid =>
  thingsSaid(tokenize(text, context.hearing), typed, context);

/** The only part that ends in this number. */
function onlyEnding(number: string | undefined, parts: readonly string[]): string | undefined {
  return onlyOne(parts.filter((part) => endsIn(part, number)));
}

const onlyOne = ([only, other]: readonly string[]): string | undefined => (other === undefined ? only : undefined);

/** `la 7 puede ir al horno a 90`: beside what is here, a number that is only a job's is a figure. */
function named(things: readonly string[], context: LineContext): readonly string[] {
  const all = things.map((thing) => numberedElse(thing, context));
  const isJob = (_: string, i: number): boolean => all[i]?.startsWith('job ') === true && /^\d+$/.test(things[i] ?? '');
  return all.some((each, i) => !isJob(each, i)) ? all.filter((each, i) => !isJob(each, i)) : all;
}

/** `how many of 87 are to do`, `what went on 7`, where nothing that is here has this number: a job's, or of those that went out. */
function numberedElse(thing: string, { parts, batches, gone, live }: LineContext): string {
  const isHere = parts.some((part) => endsIn(part, thing)) || batches.some((number) => String(number) === thing);
  if (isHere || !/^\d+$/.test(thing)) return thing;
  const isJob = live?.().parts.some(({ job }) => job === thing) === true;
  return isJob ? `job ${thing}` : (onlyOne(gone?.ending(thing) ?? []) ?? thing);
}

const curingNow = (context: LineContext): readonly string[] => partsThatAre('curing', context);

function partsThatAre(phase: PartPhase['is'], { live }: LineContext): readonly string[] {
  const parts = live?.().parts.filter((part) => part.phase === phase) ?? [];
  return parts.length > mostAtOnce ? [] : parts.map(({ name }) => name);
}

/** `when do the two in the oven come out`, by their names; `the 8 in the oven` is that part. */
const partsByPlace = (asked: string, { whereParts }: QuestionsTyped, context: LineContext): string =>
  whereParts.reduce((text, { are, said }) => {
    const [found, ...counted] = said.exec(text) ?? [];
    if (found === undefined) return text;
    const names = partsThatAre(are, context);
    const isNamed = counted.some((count) => count !== undefined && Number(count) !== names.length);
    // Where there are none, its own words name nothing: `the wet one` is no wet film.
    return isNamed ? text : text.replace(found, names.join(', ')).trim();
  }, asked);

const stirringNow = ({ live }: LineContext): readonly string[] =>
  (live?.().batches ?? []).filter(({ phase }) => phase === 'blending').map(({ number }) => `batch ${number}`);

export function canI(said: Said): string | undefined {
  const { act, things, places, figures, component } = said;
  if (act === undefined) return undefined;
  const method = act === 'coat' ? said.method : undefined;
  const where = act === 'cure' ? places : [];
  const which = act === 'open' && component !== undefined ? [component] : [];
  return ['can-i', act, ...which, ...things, ...where, ...(method === undefined ? [] : [method]), ...figures].join(' ');
}

function kindOf(thing: string, { parts, people = [] }: LineContext): Said['named'][number] {
  if (/^\d+$/.test(thing)) return 'number';
  if (people.some((name) => name.toLowerCase() === thing.toLowerCase())) return 'person';
  if (thing.startsWith('batch ')) return 'batch';
  if (thing.startsWith('can ')) return 'can';
  return parts.includes(thing) || /[a-z]/.test(thing) ? 'part' : 'number';
}
