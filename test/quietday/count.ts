// What a faultless shift costs its people, counted.

import type { FakeMessage } from '../bot/slack/fake/fake-slack.ts';
import type { Heard, Played } from './play-shift.ts';
import { type Chapter, crew } from './shift.ts';

export interface Counted {
  readonly lines: number;
  readonly parts: number;
  readonly objections: readonly Heard[];
  readonly questions: readonly Heard[];
  /** `6 equipment`: the steps of the maker's paper that cards asked about, each once by its batch. */
  readonly stepsAsked: readonly string[];
  readonly holds: number;
  readonly alarms: number;
  readonly questionsBy: ReadonlyMap<Chapter, number>;
  /** By person: bells that the record says rang, and messages by which Slack lights up their phone. */
  readonly rings: ReadonlyMap<string, number>;
  readonly pushes: ReadonlyMap<string, number>;
  /** Bells by what rang. */
  readonly kinds: ReadonlyMap<string, number>;
}

export function countShift({ heard, record, posts }: Played): Counted {
  const of = (kind: string) => heard.filter(({ answer }) => answer.kind === kind);
  const events = (type: string) => record.filter((body) => body.type === type).length;
  const rang = record.flatMap((body) => (body.type === 'Rang' ? [body] : []));
  const questions = of('misread');
  return {
    lines: heard.length,
    parts: events('PartReceived'),
    objections: of('objection'),
    questions,
    stepsAsked: stepsAskedIn(heard),
    holds: events('PartHeld'),
    alarms: events('AlarmRaised'),
    questionsBy: tally(questions.map(({ said }) => said.of)),
    rings: tally(rang.flatMap(({ to }) => to)),
    pushes: tally(posts.flatMap(pushedTo)),
    kinds: tally(rang.map(({ key }) => kindOf(key))),
  };
}

function stepsAskedIn(heard: readonly Heard[]): readonly string[] {
  const taps = heard.flatMap(({ answer }) => answer.card.actions.filter(({ id }) => id === 'step-yes'));
  return [...new Set(taps.map(({ line }) => line.replace(/^confirm (.*) yes$/, '$1')))];
}

/** Slack lights up a phone for a mention in a new message and for every message in a direct conversation. */
function pushedTo({ channel, text, blocks }: FakeMessage): readonly string[] {
  const shown = text + JSON.stringify(blocks);
  return crew.people
    .filter(({ slack }) => channel === `D${slack}` || shown.includes(`<@${slack}>`) || shown.includes(`"${slack}"`))
    .map(({ name }) => name);
}

/** `part/plate-1/flash-least` by its end, `session/7/flush/1` without its number, `crew/digest/2026-03-02` without its day. */
function kindOf(key: string): string {
  const [of = '', kind = of, name = kind] = key.split('/');
  return of === 'crew' ? kind : name;
}

function tally<Key>(keys: readonly Key[]): ReadonlyMap<Key, number> {
  const counted = new Map<Key, number>();
  for (const key of keys) counted.set(key, (counted.get(key) ?? 0) + 1);
  return counted;
}
