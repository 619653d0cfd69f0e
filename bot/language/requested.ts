// What somebody asks to be done or noted for them: `can you note 21 degrees`, `I want to mix 2 kilos`.

import { asSaid, plainlySaid } from './as-said/as-said.ts';
import { inFigures } from './in-figures.ts';
import { actsJoint, linesApart } from './lines-apart.ts';
import type { LineContext } from './reading.ts';
import { claimed } from './slots-heard/phrases.ts';
import { piecesOf } from './slots-heard/pieces.ts';
import { slotsHeard } from './slots-heard/slots-heard.ts';
import { saysNot } from './slots-heard/unsaid.ts';
import { withoutAccents } from './typed/without-accents.ts';
import { asTaps, type Strictly, type Understands, type Understood } from './understood.ts';

/** `me preparas 3 kilos?`, `puedes apuntar superficie 21 grados`: what it asks to be noted is a tap; `prepara 3 kilos` is an order. */
export const requestedOf =
  (toldFirst: Understands): Understands =>
  (line, context, strictly) => {
    const alone = requestAt(line, context, strictly);
    if (alone !== undefined) return alone;
    // `23 grados, 47 de humedad y quiero kilo y medio`: what is told first is told.
    for (const { 0: joint, index } of line.matchAll(/[,;.]+ (?:[a-z] )?| [a-z] /gi)) {
      const asked = requestAt(line.slice(index + joint.length), context, strictly);
      if (asked === undefined) continue;
      const told = line.slice(0, index);
      const before = toldFirst(told, context, strictly);
      return before === undefined ? undefined : bothDone(before, asked, strictly);
    }
    return undefined;
  };

function bothDone(before: Understood, asked: Understood, strictly: Strictly): Understood | undefined {
  if (before.is === 'sure' && asked.is === 'sure' && isDone(before.line, strictly))
    return { is: 'several', lines: [before.line, asked.line] };
  const ways = asTaps(before).lines.filter((way) => isDone(way, strictly));
  const each = ways.flatMap((way) => asTaps(asked).lines.map((request) => `${way}${actsJoint}${request}`));
  return each.length === 0 ? undefined : { is: 'likely', lines: [...new Set(each)].slice(0, mostWays) };
}

const isDone = (way: string, strictly: Strictly): boolean =>
  linesApart(way).every((each) => strictly(each).kind === 'command');

/** Three are shown. */
const mostWays = 3;

type Rests = (rest: string, context: LineContext) => readonly string[];

function requestAt(
  line: string,
  context: LineContext,
  strictly: Strictly,
  restsOf: Rests = (rest) => [rest],
): Understood | undefined {
  const typed = withoutAccents(line.toLowerCase()).replace(/^¿/, '');
  for (const { said, verb, upTo, isOrder } of context.hearing.said.requests) {
    const asked = said.exec(typed);
    if (asked === null) continue;
    const behind = line.replace(/^¿/, '').slice(asked[0].length);
    const cut = upTo === undefined ? -1 : typed.slice(asked[0].length).search(upTo);
    const rests = [...(cut < 0 ? [] : [behind.slice(0, cut)]), behind].map(
      (each) => verb + each.replace(/[?!. ]+$/, ''),
    );
    for (const rest of new Set(rests.flatMap((each) => restsOf(each, context)))) {
      const taken = strictlyTold(rest, strictly) ?? toldOf(rest, context, strictly);
      if (taken !== undefined && linesOf(taken).every((each) => linesApart(each).length === 1))
        return isOrder === true ? taken : asTaps(taken);
    }
  }
  return undefined;
}

const linesOf = (found: Understood): readonly string[] => asTaps(found).lines;

const toldOf: Understands = (rest, context, strictly) => {
  const plainly = plainlySaid(rest, context);
  return asSaid(rest, context, strictly, plainly) ?? inFigures(slotsHeard)(rest, context, strictly, plainly);
};

/** `I want to mix 2 kilos, the tank is big`: without what stands behind it. */
export const requestedMostly: Understands = (line, context, strictly) => {
  const found = requestAt(line, context, strictly, (rest) =>
    [upToMark(rest), upToPurpose(rest, context)].filter(isAllAsked(rest, context)),
  );
  return found && asTaps(found);
};

/** `2 kilos, the tank is big` */
const upToMark = (line: string): string => line.replace(/[,;:.!?](?:\s.*)?$/su, '');

/** `2 kilos for the housing`: what it is wanted for is no part of it. */
const upToPurpose = (line: string, { hearing: { said } }: LineContext): string => {
  const words = line.split(' ');
  const at = words.findIndex((word) => said.lasting.has(word.toLowerCase()));
  return at > 1 ? words.slice(0, at).join(' ') : line;
};

/** `2 kilos, but not now`: what is left out puts nothing off. */
const isAllAsked =
  (rest: string, context: LineContext) =>
  (each: string): boolean => {
    const pieces = piecesOf(rest.slice(each.length), context) ?? [];
    return each !== rest && !saysNot(claimed(pieces, context.hearing.said).claims);
  };

export function strictlyTold(told: string, strictly: Strictly): Understood | undefined {
  const came = strictly(told);
  return came.kind === 'command' ? { is: 'sure', line: told } : undefined;
}
