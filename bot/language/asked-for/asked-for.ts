// What somebody asks to be shown, set or taken back in words of their own, by what the words speak for: `throw pot 2 up on the
// screen`, `ponme libras y fahrenheit`. What only shows is shown, and so is set how its
// speaker is told; whatever else changes something is a tap.

import type { Plainly } from '../as-said/as-said.ts';
import { shareOfQuestions } from '../asked/likeliest-asked.ts';
import { partsKnown } from '../parts-said/parts-known.ts';
import type { LineContext } from '../reading.ts';
import { mayBeOtherwise } from '../slots-heard/may-be-otherwise.ts';
import { claimed } from '../slots-heard/phrases.ts';
import { type Piece, wordOf } from '../slots-heard/piece.ts';
import { piecesOf } from '../slots-heard/pieces.ts';
import { asksFirst } from '../slots-heard/unsaid.ts';
import { type AskedForMeaning, askedForMeanings, type SaidMeaning } from '../tongues/sayings-typed.ts';
import type { Strictly, Understands, Understood } from '../understood.ts';
import { soughtIn } from './sought.ts';
import { spanIn } from './span-said.ts';

/** A sentence of more asks for more than one thing. */
const mostWords = 20;
/** So likely it is asked for. */
const leastShare = 0.55;
/** And this may be meant as well, where a tap tells them apart. */
const leastBeside = 0.2;
/** Above it the words are those of a question: `qué me tengo que poner`. */
const mostQuestion = 0.5;

/** Of these people ask questions in much the same words, which are answered as such. */
const mayBeQuestions: ReadonlySet<SaidMeaning> = new Set(['card', 'now', 'find', 'help']);

type AskedFor = (
  ...[line, context, strictly, plainly]: [...Parameters<Understands>, Plainly]
) => Understood | undefined;

export const askedFor: AskedFor = (...said) => askedForIn(said, () => true);

/** Ahead of questions, and of answers: what is hardly ever either. */
export const askedForPlainly: AskedFor = (...said) => {
  const [line, context] = said;
  if (shareOfQuestions(line, context) > mostQuestion) return undefined;
  const asks = holdsQuestion(line, context);
  return askedForIn(said, (meaning) => meaning !== 'handover' && !(asks && mayBeQuestions.has(meaning)));
};

/** `how is 8 doing`, `show me where it is at`: some word of it asks. */
function holdsQuestion(line: string, context: LineContext): boolean {
  if (line.endsWith('?')) return true;
  const { said } = context.hearing;
  const pieces = piecesOf(line, context) ?? [];
  const { claims } = claimed(pieces, said);
  return pieces.some((piece, i) => {
    const claim = claims[i]?.is;
    if (claim === 'ask') return true;
    if (claim === 'filler' || claim === 'light') return false;
    const word = wordOf(piece) ?? '';
    return said.asksFirst.some(([first, ...more]) => more.length === 0 && first === word);
  });
}

function askedForIn(
  [line, context, strictly, plainly]: Parameters<AskedFor>,
  isMeant: (meaning: AskedForMeaning) => boolean,
): Understood | undefined {
  const strict = strictly(line);
  // Where the strict reader knows better what is wrong, as of a bare `set units`, what it asks stands.
  if (strict.kind === 'unread' && !mayBeOtherwise(strict.read)) return undefined;
  if (context.mayCallOff === true || line.split(' ').length > mostWords) return undefined;
  const weighed = context.hearing.weighed.weigh(line);
  const likely = weighed.flatMap(({ meaning, share }) =>
    share > leastBeside && isAskedFor(meaning) && isMeant(meaning) ? [{ meaning, share }] : [],
  );
  const sum = likely.reduce((all, { share }) => all + share, 0);
  if (sum < leastShare || likely[0]?.meaning !== weighed[0]?.meaning) return undefined;
  const lines = likely.flatMap(({ meaning }) => {
    const said =
      lineFor(meaning, line, context, strictly) ?? lineFor(meaning, plainly()[0]?.line ?? line, context, strictly);
    return said === undefined || strictly(said).kind === 'unread' ? [] : [said];
  });
  const [first] = lines;
  if (first === undefined) return undefined;
  if (recordsNothing(first, strictly)) return { is: 'sure', line: first };
  const [most] = likely;
  if (most === undefined || !ofOneself.has(most.meaning)) return { is: 'likely', lines };
  const wish = wishIn(line, context);
  if (wish === 'none') return undefined;
  return wish === 'plain' && most.share >= certain ? { is: 'sure', line: first } : { is: 'likely', lines };
}

/** Hardly anything else is meant. */
const certain = 0.97;
/** How the bot talks to whoever says so: nothing that is recorded hangs on it. */
const ofOneself: ReadonlySet<SaidMeaning> = new Set([
  'set units us',
  'set units metric',
  'set language es',
  'set language en',
]);

/** `switch me over to metric`; of none are `Omar wants pounds`, `not in pounds` and `are we in pounds`. */
function wishIn(line: string, context: LineContext): 'plain' | 'likely' | 'none' {
  const { said } = context.hearing;
  const pieces = piecesOf(line, context) ?? [];
  const { claims } = claimed(pieces, said);
  const says = new Set(claims.map((claim) => claim?.is));
  if (says.has('denial') || pieces.some(({ is }) => is === 'person')) return 'none';
  if (asksFirst(pieces, claims, said) && !said.somebody.has(wordOf(pieces[1]) ?? '')) return 'none';
  return says.has('hedge') || says.has('ask') || /[?¿\d]/.test(line) ? 'likely' : 'plain';
}

/** A question, or a film without its readings, which are asked for. */
function recordsNothing(line: string, strictly: Strictly): boolean {
  const read = strictly(line);
  return (
    read.kind === 'question' ||
    (read.kind === 'command' && read.command.verb === 'film' && read.command.dryFilmMicrometres === undefined)
  );
}

const asked: ReadonlySet<SaidMeaning> = new Set<SaidMeaning>(askedForMeanings);
const isAskedFor = (meaning: SaidMeaning): meaning is AskedForMeaning => asked.has(meaning);

function lineFor(meaning: AskedForMeaning, line: string, context: LineContext, strictly: Strictly): string | undefined {
  const pieces = piecesOf(line, context) ?? [];
  switch (meaning) {
    case 'card':
      return withOne(
        meaning,
        pieces.flatMap((piece) => shownOf(piece, context)),
      );
    case 'traveller':
      return withOne(
        meaning,
        pieces.flatMap((piece) => partOf(piece, context)),
      );
    case 'find':
      return soughtIn(line, context);
    case 'handover':
      return withOne(
        meaning,
        pieces.flatMap((piece) => (piece.is === 'person' ? [piece.name] : [])),
      );
    case 'export':
      return spanIn(line, context, strictly);
    case 'undo': {
      const act = context.last?.().said();
      return act === undefined ? undefined : `undo entry ${act.entry}`;
    }
    case 'now':
    case 'help':
      return pieces.every(namesNothing) ? meaning : undefined;
    case 'papers':
    case 'set units us':
    case 'set units metric':
    case 'set language es':
    case 'set language en':
    case 'set rings direct':
    case 'practice on':
      return meaning;
    case 'measure film': {
      // A figure besides is one of the readings.
      const named = pieces.filter((piece) => piece.is !== 'word').map((piece) => partOf(piece, context));
      return named.every(({ length }) => length > 0) ? withOne('film', named.flat()) : undefined;
    }
    default: {
      const never: never = meaning;
      return never;
    }
  }
}

const withOne = (verb: string, things: readonly string[]): string | undefined =>
  new Set(things).size === 1 ? `${verb} ${things[0]}` : undefined;

/** `the 8`: the only one of that number. */
function partOf(piece: Piece, { parts }: LineContext): readonly string[] {
  if (piece.is === 'parts') return piece.names;
  const numbered = piece.is === 'number' ? (partsKnown(parts).numbers.get(piece.value) ?? []) : [];
  return numbered.length === 1 ? numbered : [];
}

function shownOf(piece: Piece, context: LineContext): readonly string[] {
  if (piece.is === 'batch') return [`${piece.number}`];
  return piece.is === 'can' ? [`can ${piece.number}`] : partOf(piece, context);
}

/** `what all is in the oven` asks more than what runs. */
const namesNothing = ({ is }: Piece): boolean => is === 'word';
