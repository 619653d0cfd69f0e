// The terminal's own part of a conversation, the same for a script and for somebody typing: who speaks, taps, waits.

import type { CrewFile } from '../../core/crew/crew.ts';
import { personNamed } from '../../core/person-named.ts';
import type { Clock } from '../../core/ports.ts';
import type { EpochMs } from '../../core/units.ts';
import { makeCard } from '../cards/card.ts';
import { inUnitsOf } from '../cards/card-context.ts';
import { misreadCard } from '../cards/misread-card.ts';
import { figuresFor } from '../language/figures.ts';
import type { Hearing } from '../language/hearing.ts';
import { fillInOrder } from '../language/line-fields.ts';
import type { Misread } from '../language/reading.ts';
import type { Profile } from '../language/tongues/profile.ts';
import type { Tongues, Words } from '../language/tongues/tongues.ts';
import { type Answer, makeAnswer } from '../talk/answer.ts';
import type { Host } from '../talk/host.ts';
import type { Overview } from '../talk/overview.ts';
import { createSpeakers, type Speakers } from './speakers.ts';
import { readTerminalLine, type TerminalLine } from './terminal-input.ts';

export interface TerminalDeps {
  readonly host: Host;
  readonly overview: Pick<Overview, 'crew'>;
  readonly clock: Clock;
  readonly crewFile: CrewFile;
  readonly tongues: Tongues;
  readonly as: string;
}

export interface Terminal {
  readonly speakers: Speakers;
  readonly words: Words;
  readonly profile: Profile;
  /** All that may be typed, whoever types it. */
  readonly hearing: Hearing;
  /** The answer to one line; `waitUntil` where the virtual clock is to move. */
  readonly say: (raw: string, lineNumber: number) => Promise<{ answer?: Answer; waitUntil?: EpochMs }>;
}

/** What an answer at this terminal is made of. */
interface AtTerminal extends TerminalDeps, Pick<CrewFile, 'language' | 'units'> {
  readonly speakers: Speakers;
  readonly words: Words;
}

export function createTerminal(deps: TerminalDeps): Terminal {
  const { crewFile, tongues, as } = deps;
  const speakers = createSpeakers();
  const { language, units, words } = voiceOf(tongues, crewFile, as);
  const at: AtTerminal = { ...deps, speakers, language, units, words };
  return {
    speakers,
    words,
    profile: tongues.profileOf(language, units),
    hearing: tongues.every,
    say: (raw, lineNumber) => say(at, raw, lineNumber),
  };
}

/** Whoever speaks may have set their own language since. */
function voiceOf(tongues: Tongues, crew: CrewFile, name: string): Pick<AtTerminal, 'language' | 'units' | 'words'> {
  const { language, units } = crew.people.find((person) => person.name === name) ?? crew;
  return { language, units, words: tongues.wordsIn(language, units) };
}

async function say(terminal: AtTerminal, raw: string, lineNumber: number) {
  const { host, overview, clock, crewFile, as, speakers, tongues } = terminal;
  // Where the record cannot be read, the crew's file is all that is known.
  const crew: CrewFile = await overview.crew().catch(() => crewFile);
  const practises = (typed: string) => host.practises(asWritten(crew, typed));
  const line = readTerminalLine(raw, { as, now: clock.now(), zone: crew.zone, hearing: tongues.every, practises });
  if (line.kind === 'silence') return {};
  const speaker = asWritten(crew, line.as);
  const at: AtTerminal = { ...terminal, ...voiceOf(tongues, crew, speaker) };
  if (line.kind === 'wait')
    return { answer: waiting(at, crew, speaker, line.until, lineNumber), waitUntil: line.until };
  const id = line.id ?? String(lineNumber);
  if (line.kind === 'leave') return { answer: leaving(at, crew, speaker, id) };
  if (line.kind === 'wait-bare')
    return { answer: incomplete(at, crew, speaker, id, { example: 'wait 90m', suggestions: [] }) };
  const text = textOf(at, crew, line, speaker);
  if (text === undefined) {
    // Delivered again, a tap has its answer already, though the card that it was on is gone.
    const before = await host.handle({ text: '', as: speaker, in: id, id: line.id });
    return { answer: before ?? noSuchTap(at, crew, line, speaker, id) };
  }
  const pressed = pressedBy(speakers, line, speaker);
  const given = await host.handle({ text, as: speaker, in: id, id: line.id, atConsole: true, ...pressed });
  if (given === undefined)
    return isEmpty(line) ? { answer: incomplete(at, crew, speaker, id, { suggestions: ['help'] }) } : {};
  speakers.saw(given);
  return { answer: given };
}

/** A tap acts on the last card that its speaker saw, as it was then. */
function pressedBy(speakers: Speakers, line: Extract<TerminalLine, { kind: 'say' | 'tap' }>, speaker: string) {
  const action = line.kind === 'tap' ? speakers.tapsOf(speaker).find(({ id }) => id === line.tap) : undefined;
  return action === undefined ? {} : { pressed: { label: action.label, moved: speakers.movedFor(speaker) } };
}

function textOf(
  { speakers, tongues }: AtTerminal,
  crew: CrewFile,
  line: Extract<TerminalLine, { kind: 'say' | 'tap' }>,
  speaker: string,
): string | undefined {
  if (line.kind === 'say') return line.text;
  const tapped = speakers.tapsOf(speaker).find(({ id }) => id === line.tap)?.line;
  const units = crew.people.find(({ name }) => name === speaker)?.units ?? crew.units;
  return tapped === undefined ? undefined : fillInOrder(inUnitsOf(tapped, units), line.fill, tongues.every);
}

/** A name or a delivery without a word is no silence: its sender waits for an answer. */
function incomplete(
  at: AtTerminal,
  crew: CrewFile,
  speaker: string,
  id: string,
  shown: Pick<Misread, 'example' | 'suggestions'>,
): Answer {
  const nowhere = { token: '', from: 0, to: 0, needs: [], couldBe: [] };
  const misread: Misread = { code: 'incomplete', ...nowhere, exampleOf: 'help', ...shown };
  const { answer } = head(at, crew, speaker, id);
  const given = makeAnswer({
    ...answer,
    kind: 'misread',
    code: misread.code,
    card: misreadCard({ words: at.words }, misread),
  });
  at.speakers.saw(given);
  return given;
}

function leaving(at: AtTerminal, crew: CrewFile, speaker: string, id: string): Answer {
  const { replies } = at.words;
  const card = makeCard(replies.howToLeave, 'plain', { lines: replies.howToLeaveLines });
  return makeAnswer({ ...head(at, crew, speaker, id).answer, kind: 'reply', code: null, card });
}

function head({ language, units, tongues, clock }: AtTerminal, crew: CrewFile, speaker: string, id: string) {
  const figures = figuresFor({ profile: tongues.profileOf(language, units), units, zone: crew.zone, now: clock.now() });
  return {
    figures,
    answer: { at: figures.iso(clock.now()), in: id, as: speaker, to: [speaker], key: null, recorded: false },
  };
}

function waiting(at: AtTerminal, crew: CrewFile, speaker: string, until: EpochMs, lineNumber: number): Answer {
  const { figures, answer } = head(at, crew, speaker, String(lineNumber));
  return makeAnswer({
    ...answer,
    kind: 'reply',
    code: null,
    card: makeCard(at.words.replies.waiting(until, figures), 'plain'),
  });
}

function noSuchTap(at: AtTerminal, crew: CrewFile, line: TerminalLine, speaker: string, id: string): Answer {
  const { answer } = head(at, crew, speaker, id);
  const { words, speakers } = at;
  const ids = speakers.tapsOf(speaker).map((tap) => tap.id);
  const tap = line.kind === 'tap' ? line.tap : '';
  const card = makeCard(words.replies.notClear, 'warn', { lines: [words.replies.noSuchTap(tap, ids)] });
  return makeAnswer({ ...answer, kind: 'misread', code: 'no-such-tap', card });
}

/** As the crew writes the name, whatever the thumb made of its capitals and accents. */
function asWritten({ people }: CrewFile, typed: string): string {
  return personNamed(people, typed) ?? typed;
}

function isEmpty(line: TerminalLine): boolean {
  return line.kind === 'say' && line.text.trim() === '';
}
