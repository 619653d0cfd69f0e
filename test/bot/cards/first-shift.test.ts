// A first shift over the real thing: a newcomer who knows nothing does only what the bot says, from sealed cans to three
// parts in cure. Whoever plays them presses the first tap, or types the line that the card shows. Invented throughout.

import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../bot/talk/answer.ts';
import { sessionTalk, talkAfter } from './session-talk.ts';

const barOfLines = 45;

/** What the card says to tap or type, and nothing else that they might know. */
function nextLine({ card }: Answer): string | undefined {
  const typed = (card.leadsOn ?? []).map(
    (line) => /^(?:Tap it, or type|Type, with your own names and figures): (.+)$/.exec(line)?.[1],
  );
  return typed.find((line) => line !== undefined);
}

interface Led {
  readonly said: readonly string[];
  readonly answers: readonly Answer[];
}

/** Until there is nothing to do but wait for a countersign. Their parts are three. */
async function ledThrough(talk: ReturnType<typeof sessionTalk>, begins: string): Promise<Led> {
  const said: string[] = [];
  const answers: Answer[] = [];
  const says = async (line: string) => {
    said.push(line);
    answers.push(await talk.say(`@ola: ${line}`));
  };
  const parts = ['rail-1', 'rail-2', 'rail-3'];
  await says(begins);
  while (said.length < 2 * barOfLines) {
    const last = talk.heard.at(-1);
    if (last === undefined) break;
    const names = last.card.leads?.includes('name the parts') ?? false;
    if (names) for (const part of parts) await says(`part ${part}`);
    else if (last.card.leads?.includes('countersign')) break;
    else {
      const line = nextLine(last);
      if (line === undefined) await talk.say('@rosa: wait 5m');
      else await says(line);
    }
  }
  return { said, answers };
}

describe('a first shift', () => {
  it('given a newcomer who does only what the cards say, then three parts are in cure after 45 lines and taps at most', async () => {
    const talk = sessionTalk();
    const { said, answers } = await ledThrough(talk, "I'm new");

    expect(answers.filter(({ recorded }) => !recorded).map(({ text }) => text)).toEqual([]);
    expect(said.filter((line) => line.startsWith('cure'))).toHaveLength(3);
    expect(said.length).toBeLessThanOrEqual(barOfLines);
    const board = await talk.say('now');
    for (const part of ['rail-1', 'rail-2', 'rail-3']) expect(board.card.lines.join()).toContain(`${part}: in cure`);
    talk.close();
  });

  it('given they are through, then the lead sees it, countersigns, and nobody is led any more', async () => {
    const talk = sessionTalk();
    await ledThrough(talk, 'first shift');
    const calling = talk.heard.filter(({ card }) => card.actions.some(({ id }) => id === 'countersign-ola'));
    // Once, with what ended it, and everybody who may.
    expect(calling.map(({ as, recorded, to, card }) => [as, recorded, to.includes('omar'), card.ping])).toEqual([
      ['ola', true, true, ['omar', 'rosa']],
    ]);
    const now = await talk.say('now');
    expect(now.card.lines).toContain('First shift of ola: waits for a countersign.');
    const done = await talk.say(now.card.actions.find(({ id }) => id === 'countersign-ola')?.line ?? '');
    expect([done.recorded, done.card.title]).toEqual([true, 'First shift of ola: countersigned']);
    expect((await talk.say('@ola: what now')).card.leadsOn).toBeUndefined();
    expect((await talk.say('day')).card.lines.filter((line) => line.includes('first shift'))).toEqual([
      '08:00 ola: first shift begun',
      expect.stringMatching(/omar: first shift of ola countersigned$/),
    ]);
    talk.close();
  });

  it('given they are not through yet, then the lead sees that it is on, and is offered no countersign', async () => {
    const { say } = await talkAfter('@ola: first shift');
    const { card } = await say('now');
    expect(card.lines).toContain('First shift of ola: on since 08:00.');
    expect(card.actions.filter(({ id }) => id.startsWith('countersign'))).toEqual([]);
    expect((await say('week')).card.lines).toContain('08:00 ola: first shift begun');
  });

  it.each(["hi, I'm new here", 'hey, first day here', 'hola, es mi primer día aquí'])(
    'given "%s" behind a greeting, then it begins',
    async (line) => {
      const { say } = await talkAfter('@ola: set language es');
      expect((await say(`@ola: ${line}`)).card.leadsOn).toBeDefined();
    },
  );

  it('given each answer, then it ends with what, how, why and what not', async () => {
    const { say } = await talkAfter('@ola: first shift');
    const { card } = await say('@ola: air 24C 48%');
    expect([card.leads, ...(card.leadsOn ?? [])].map((line) => line?.split(/[: ]/)[0])).toEqual([
      'Next',
      'How',
      'Why',
      'Do',
      'Type,',
    ]);
  });

  it('given three parts named one after the other, then how and why to go on are taught once', async () => {
    const { say } = await talkAfter('@ola: first shift', '@ola: air 24C 48%');
    const named = [];
    for (const part of ['rail-1', 'rail-2', 'rail-3']) named.push(await say(`@ola: part ${part}`));
    const taught = named.map(({ card }) => (card.leadsOn ?? []).filter((line) => /^(How|Why): /.test(line)).length);
    expect(taught).toEqual([2, 0, 0]);
    expect((await say('@ola: what now')).card.leadsOn?.filter((line) => /^(How|Why): /.test(line))).toHaveLength(2);
  });

  it('given they ask what to do, then the step is told once', async () => {
    const { say } = await talkAfter('@ola: first shift');
    const { text } = await say('@ola: what now');
    expect(text.match(/Read the air/g)).toHaveLength(1);
    expect(text).toContain('A reading serves for 4 h.');
  });

  it('given what the bot asks back, then its taps come first and the step stays', async () => {
    const { say } = await talkAfter('@ola: first shift', '@ola: air 24C 48%', '@ola: part rail-1', '@ola: mix 0.4kg');
    const asked = await say('@ola: open A lot 7731 5kg');
    expect(asked.kind).toBe('objection');
    expect(asked.card.actions.map(({ id }) => id)).toEqual(['happened', 'gas', 'whole', 'open-one']);
    expect(asked.card.leads).toContain('open a can of Part A');
  });

  it('given another’s pot that runs, then who is led is led by what is in their own hands', async () => {
    const { say } = await talkAfter('air 24C 48%', 'mix 2.4kg', 'weigh 1 1201g 1198g', '@ola: part rail-1');
    expect((await say('@ola: first shift')).card.leads).toBe('Next: rail-1: prepare the surface.');
  });

  it('given an alarm, then who is led is led nowhere but out', async () => {
    const { say } = await talkAfter('@ola: first shift');
    expect((await say('@kari: fire in the booth')).card.leadsOn).toBeUndefined();
    expect((await say('@ola: what now')).card.leads).toContain('stay out');
  });

  it('given somebody else, then their cards are as ever', async () => {
    const { say } = await talkAfter('@ola: first shift');
    expect((await say('air 24C 48%')).card.leadsOn).toBeUndefined();
  });

  it('given Spanish, then it is led in Spanish', async () => {
    const { say } = await talkAfter('@ola: set language es');
    const { card } = await say('@ola: soy nueva');
    expect([card.leads, ...(card.leadsOn ?? [])].map((line) => line?.split(':')[0])).toEqual([
      'Ahora',
      'Cómo',
      'Por qué',
      'Una lectura sirve durante 4 h.',
      'No mezcle ni aplique con un aire que nadie ha medido.',
      'Escriba, con sus propios datos',
    ]);
  });
});

describe('the offer to be led', () => {
  const offers = ({ card }: Answer) => card.actions.some(({ id }) => id === 'first-shift');

  it('given who has said nothing yet, then it stands on their first answer, once', async () => {
    const { say } = await talkAfter();
    expect(offers(await say('@ola: help'))).toBe(true);
    expect(offers(await say('@ola: help'))).toBe(false);
  });

  it('given who stands in the record, then nothing is offered', async () => {
    const { say } = await talkAfter('@ola: air 24C 48%');
    expect(offers(await say('@ola: help'))).toBe(false);
  });

  it('given who only left out a unit, then they are asked for that alone, and are offered it later', async () => {
    const { say } = await talkAfter();
    expect(offers(await say('@ola: mix 24'))).toBe(false);
    expect(offers(await say('@ola: what now'))).toBe(true);
  });

  it('given what may be a cry, then nothing else is offered with it', async () => {
    const { say } = await talkAfter();
    expect(offers(await say('@ola: fire extinguisher checked'))).toBe(false);
  });
});
