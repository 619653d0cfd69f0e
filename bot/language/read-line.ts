// A typed line to its meaning. Never throws; a wrong reading may become a misread, never a wrong record. No clock:
// the time, the zone and what the shop has come in with the line.

import { isVerb, verbRows } from '../../core/commands.ts';
import { ownValue } from '../../core/own-key.ts';
import { nothingHereFor, whichActOf } from './acts-meant.ts';
import { criedWords } from './cry.ts';
import { isWarned } from './cry-warned.ts';
import { understood } from './further-readings.ts';
import { isOfGauge } from './gauge/gauge-pasted.ts';
import { gaugeRead, gaugeTaken, withoutSpotNumbers } from './gauge/gauge-read.ts';
import { linesApart } from './lines-apart.ts';
import { neededIn, offersAlarm } from './misread-line.ts';
import { asksNumber } from './number-asked.ts';
import { onceALine } from './once-a-line.ts';
import { partsTyped } from './parts-in/parts-typed.ts';
import { readParts } from './parts-in/read-parts.ts';
import type { LineContext, Misread, Reading } from './reading.ts';
import { answerInstead } from './said-of-last/answer-instead.ts';
import { ofWhichPot } from './said-of-last/pot-not-named.ts';
import { actOfNothingHere } from './sayings/act-of-nothing-here.ts';
import { actRows } from './slots-heard/act-rows.ts';
import { isPhrased, onlyAsksOrDenies } from './slots-heard/slots-heard.ts';
import { cameTo, misreadAs, readMade, readSingle } from './strict-line.ts';
import { isTaken } from './taken.ts';
import type { Strictly, StrictReading, Unread } from './understood.ts';
import { ofPartInTwo } from './word-and-number.ts';

export function readLine(text: string, context: LineContext): Reading {
  const parts = partsIn(text, context);
  if (parts !== undefined) return parts;
  const number = asksNumber(text, context) ? readMade('how-stands emergency', context) : undefined;
  if (number?.kind === 'question') return number;
  const pasted = gaugeRead(text, context);
  if (pasted !== undefined) return pasted;
  const came = cameTo(text, context);
  if (came.kind === 'unread' && came.read.verb?.row.name === 'film' && isOfGauge(text)) {
    return gaugeTaken([came.read.line], text, context) ?? misreadAs(came, context);
  }
  if (came.kind === 'unread') {
    const further = readFurther(came, context);
    return further === undefined
      ? withoutHarm(misreadAs(came, context), context)
      : withoutSpotNumbers(further, came, text, context);
  }
  if (came.kind !== 'command') return came;
  const reads = (line: string): StrictReading => readMade(line, context);
  return (
    ofPartInTwo(came, context, reads) ?? answerInstead(came, context, reads) ?? potAsked(came, context, reads) ?? came
  );
}

/** Weights of a pot that the line does not name, right after those of another: a tap each. */
function potAsked(read: StrictReading, context: LineContext, strictly: Strictly): Reading | undefined {
  const lines = read.kind === 'command' ? ofWhichPot(read.line, read, context, strictly) : undefined;
  if (read.kind !== 'command' || lines === undefined) return undefined;
  const meant = lines.map((line) => {
    const acts = linesApart(line).flatMap((one) => {
      const taken = strictly(one);
      return isTaken(taken) ? [taken] : [];
    });
    return { line, acts };
  });
  return { kind: 'misread', misread: whichActOf(meant.slice(0, 3)), line: read.line };
}

/** Verb first, and nothing guessed. */
export function readStrictly(text: string, context: LineContext): Reading {
  return partsIn(text, context) ?? readSingle(text, context);
}

/** Many parts in one message; `undefined` where it is none. */
function partsIn(text: string, context: LineContext): Reading | undefined {
  const typed = partsTyped(text, context.hearing);
  if (typed === undefined || areActsApart(text, context)) return undefined;
  return readParts(typed, (line) => readSingle(line, context), context);
}

/** `part valve-3; mix 2.4kg`: no list of parts, but acts one after the other. */
function areActsApart(text: string, context: LineContext): boolean {
  const reads = linesApart(text).map((line) => readSingle(line, context));
  const verbs = reads.flatMap((read) => (read.kind === 'command' ? [read.command.verb] : []));
  return verbs.length > 1 && verbs.length === reads.length && verbs.some((verb) => verb !== 'part');
}

/** A line that was made of another: a list of parts too, where a card's tap would have said it. */
function readOwn(line: string, context: LineContext): StrictReading {
  const parts = partsIn(line, context);
  return parts?.kind === 'command' ? parts : readMade(line, context);
}

const readOnce = onceALine(readOwn);

/** Nobody says an act in more. */
const longestSaid = 300;

/** As it is said in other words: what is sure is taken, what is likely is offered. A cry is never read as anything else. */
function readFurther(unread: Unread, context: LineContext): Reading | undefined {
  const { line } = unread.read;
  if (line.length > longestSaid || mayCall(unread, context)) return undefined;
  const strictly = (each: string): StrictReading => (each === line ? unread : readOnce(each, context));
  const found = understood(line, context, strictly);
  if (found === undefined) return ofNothingHere(line, context, strictly);
  if (found.is === 'sure') {
    const taken = strictly(found.line);
    if (!isTaken(taken)) return undefined;
    const told = { ...taken, line, takenAs: found.line };
    return potAsked(told, context, strictly) ?? told;
  }
  // A tap, or whoever types as taps do, says each by itself.
  const areApart = linesApart(line).length > 1;
  const isPlain = (each: string): boolean => {
    const taken = strictly(each);
    return (
      isTaken(taken) &&
      potAsked({ ...taken, line, takenAs: each }, context, strictly) === undefined &&
      (areApart || namesItsParts(taken))
    );
  };
  if (found.is === 'several' && found.lines.every(isPlain)) return { kind: 'several', lines: found.lines, line };
  const each = found.lines.map((said) => ({
    line: said,
    acts: linesApart(said).map((one) => [one, strictly(one)] as const),
  }));
  const meant = each.flatMap(({ line: said, acts }) => {
    const reads = acts.map(([, read]) => read);
    return reads.length > 0 && reads.every(isTaken) ? [{ line: said, acts: reads }] : [];
  });
  // Of several acts some tap says the others, and none this one.
  const lost = each.flatMap(({ acts }) =>
    acts.length > 1 ? acts.flatMap(([one, read]) => (isTaken(read) ? [] : [one])) : [],
  );
  if (found.is === 'likely' && lacksOnlyItsEnd(unread, context, found.lines)) return undefined;
  const untaken = [...new Set([...(found.is === 'likely' ? (found.untaken ?? []) : []), ...lost])];
  return meant.length === 0
    ? undefined
    : { kind: 'misread', misread: whichActOf(meant.slice(0, 3), untaken.length === 0 ? undefined : untaken), line };
}

/** `dipped 3 out the pot`, `dipped 6, came out at quarter past`: beside another act nothing is done to parts that are not named. */
function namesItsParts(taken: StrictReading): boolean {
  if (taken.kind !== 'command') return true;
  const { command } = taken;
  const isOfParts = ownValue(actRows, command.verb)?.parts !== undefined;
  return (
    !isOfParts || ('parts' in command && command.parts.length > 0) || ('part' in command && command.part !== undefined)
  );
}

/** What is lacking is told as of the verb alone; it is never taken for a thing that the line did not name. */
function ofNothingHere(line: string, context: LineContext, strictly: Strictly): Reading | undefined {
  const told = actOfNothingHere(line, context, strictly);
  if (told === undefined) return undefined;
  if (told.is === 'alone') {
    const read = strictly(told.line);
    if (read.kind === 'unread' && read.read.failed.failed === 'incomplete')
      return { kind: 'misread', misread: nothingHereFor(misreadAs(read, context).misread, line), line };
    return isTaken(read) ? { ...read, line, takenAs: told.line } : undefined;
  }
  const meant = told.lines.flatMap((each) => {
    const read = strictly(each);
    return isTaken(read) ? [{ line: each, acts: [read] }] : [];
  });
  return meant.length === 0 ? undefined : { kind: 'misread', misread: whichActOf(meant), line };
}

/** `confirm 1 bonding`, yes or no: verb first and all but its end, it is no other act in other words. */
function lacksOnlyItsEnd(unread: Unread, context: LineContext, likely: readonly string[]): boolean {
  const goesOn = (said: string): boolean => said.startsWith(`${unread.read.line} `);
  const { suggestions } = misreadAs(unread, context).misread;
  return suggestions.length > 0 && suggestions.every(goesOn) && !likely.some(goesOn);
}

/** Whatever it would be answered with holds an alarm. */
function mayCall(unread: Unread, context: LineContext): boolean {
  const { failed } = unread.read.failed;
  // `ojo Lia, el 2 se espesa`
  const { cries } = context.hearing;
  if (failed === 'no-cry' && isWarned(criedWords(unread.read.line, cries), cries))
    return neededIn(unread.read.line, undefined, context).length > 0;
  if (failed === 'no-cry' || failed === 'which-cry') return true;
  if (!offersAlarm(unread.read, context)) return false;
  const { misread, line } = misreadAs(unread, context);
  return misread.calls !== undefined && !isPhrased(line, Object.values(misread.calls), context);
}

/** What only asks, or denies, is never offered as an act. */
function withoutHarm(read: Misreading, context: LineContext): Misreading {
  const { misread, line } = read;
  const isOpen = misread.suggestions.length > 0 && misread.calls === undefined && misread.code !== 'no-alone';
  if (!isOpen || line.length > longestSaid || holdsDay(misread.verb) || !onlyAsksOrDenies(line, context)) return read;
  const suggestions = misread.suggestions.filter((each) => {
    const offered = readMade(each, context);
    return offered.kind === 'question' || (offered.kind === 'command' && offered.command.verb === 'near-miss');
  });
  return { ...read, misread: { ...misread, suggestions } };
}

/** `assess ... until 2027-01-31`: until is the act's own word there, and puts nothing off. */
const holdsDay = (verb: Misread['verb']): boolean =>
  verb !== undefined && isVerb(verb) && Object.values(verbRows[verb].fields).some(({ told }) => told === 'day');

type Misreading = Extract<Reading, { kind: 'misread' }>;
