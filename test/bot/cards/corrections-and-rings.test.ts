// What cards say of corrections, bells that ring again, nights and the dew point, and what the terminal itself answers.
// Through the whole bot, on a clock of its own, over a real record. The crew and all figures are invented.

import { describe, expect, it } from 'vitest';
import { figuresFor } from '../../../bot/language/figures.ts';
import { readLine } from '../../../bot/language/read-line.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { wire } from '../../../bot/run/wiring.ts';
import type { Answer } from '../../../bot/talk/answer.ts';
import { ringUntil } from '../../../bot/terminal/script.ts';
import { createTerminal } from '../../../bot/terminal/terminal.ts';
import { virtualClock } from '../../../bot/time/clocks.ts';
import type { CrewFile } from '../../../core/crew/crew.ts';
import type { Log } from '../../../core/ports.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs, minutes } from '../../../core/units.ts';
import { demoShelf } from '../../core/given.ts';
import { shopAtTen } from '../language/shop-at-ten.ts';

const crewFile: CrewFile = {
  name: 'Invented crew',
  zone: 'UTC',
  language: 'en',
  units: 'metric',
  people: [
    { name: 'ada', role: 'lead', language: 'en', units: 'metric' },
    { name: 'bo', role: 'crew', language: 'en', units: 'us' },
  ],
  digestHour: 17,
  escalationMinutes: minutes(10),
};
const silence: Log = { info: () => undefined, error: () => undefined };

/** Each line's answer, and what rang. Monday, 08:00. */
async function said(...lines: readonly string[]) {
  const clock = virtualClock(epochMs(Date.UTC(2026, 2, 2, 8)));
  const rings: Answer[] = [];
  const { host, overview, ringer } = wire({
    ...{ store: openSqliteStore(':memory:'), clock, log: silence, crewFile, shelf: demoShelf },
    frontEnd: {
      tell: async (answer) => {
        rings.push(answer);
        return 'posted';
      },
      wasTold: async () => 'no',
    },
  });
  const terminal = createTerminal({ host, overview, clock, tongues: shipped, crewFile, as: 'ada' });
  const answers: (Answer | undefined)[] = [];
  for (const [i, line] of lines.entries()) {
    const { answer, waitUntil } = await terminal.say(line, i + 1);
    answers.push(answer);
    await ringUntil(waitUntil ?? clock.now(), ringer, clock);
  }
  return { answers, last: answers.at(-1), rings };
}

const weighed = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g'];
const linesOf = (rings: readonly Answer[], key: string) => rings.find((ring) => ring.key === key)?.card.lines ?? [];

describe('what the terminal itself answers', () => {
  it.each(['@bo:', '@bo:   ', '{"as":"bo","text":""}', '{"id":"d-1","text":" "}'])(
    'given %s, then one answer says that the line lacks its words',
    async (line) => {
      const { last } = await said(line);
      expect(last).toMatchObject({ kind: 'misread', code: 'incomplete', recorded: false });
      expect(last?.text).toContain('For example: help');
    },
  );

  it.each(['', '  ', '# a comment', '@bo: # a comment'])('given %j, then nothing is answered', async (line) => {
    expect((await said(line)).last).toBeUndefined();
  });

  it('given exit or quit, then it says how to leave; given a bare wait, that it lacks how long', async () => {
    const { answers } = await said('exit', 'quit', 'wait');
    expect(answers[0]?.text).toContain('Ctrl-D');
    expect(answers[1]?.text).toContain('Ctrl-D');
    expect(answers[2]).toMatchObject({ kind: 'misread', code: 'incomplete', card: { actions: [] } });
    expect(answers[2]?.text).toContain('wait 90m');
  });

  it('given bo, who reads pounds and Fahrenheit, then fields carry those and a typed unit stands', async () => {
    const { answers } = await said('air 24C 48%', '@bo: mix 5lb', '@bo: tap weigh 2.5lb 2.5lb');
    // 2.5 lb: 453.59237 g each.
    expect(answers[2]?.card.facts.find(({ id }) => id === 'part-a')?.value).toBeCloseTo(2.5 * 453.59237, 6);
    const { answers: asked } = await said('@bo: mix 5lb', '@bo: tap air 75 48');
    expect(asked[0]?.card.actions).toContainEqual(
      expect.objectContaining({ line: 'air {air-temperature}F {humidity}%' }),
    );
    // 75 degF is 23.9 degC.
    expect(asked[1]?.card.facts.find(({ id }) => id === 'air-temperature')?.value).toBeCloseTo((75 - 32) / 1.8, 6);
  });
});

describe('the night', () => {
  it('given night 16C, then the card shows it, and the next air reading does not', async () => {
    const { answers } = await said('air 24C 48%', 'wait 12h', 'night 16C', 'air 18C 50%');
    expect(answers[2]?.card.facts).toContainEqual(expect.objectContaining({ id: 'night-lowest', value: 16 }));
    expect(answers[3]?.card.facts.map(({ id }) => id)).not.toContain('night-lowest');
  });
});

describe('a time that was put right', () => {
  it('given it was told late, then its step no longer says how late it was written, and the correction says who', async () => {
    const { last } = await said(...weighed, 'wait 20m', 'stir 1 12m ago', 'amend 1 stir at 8:05 wrong time', 'trace 1');
    const steps = last?.card.lines ?? [];
    expect(steps).toContain('08:05 ada: stirrer on');
    expect(steps.join()).toContain('Corrected 08:20 by ada');
  });
});

describe('a bell that rings again', () => {
  it('given nobody answered, then its second ring says so', async () => {
    const { rings } = await said('air 24C 48%', '@bo: mix 2.4kg', '@bo: weigh 1 1200g 1200g', 'wait 2h');
    expect(linesOf(rings, 'batch/1/stir-done/2')).toContain('Ring 2: nobody has answered.');
  });

  it('given it was heard and a colder room moved its time, then it says that its time moved', async () => {
    const { rings } = await said(...weighed, 'wait 103m', 'ok', 'air 18C 48% 60m ago', 'wait 60m');
    const lines = linesOf(rings, 'batch/1/stir-done/2');
    expect(lines).toContain('Rings again: its time has moved.');
    expect(lines.join()).not.toContain('nobody');
  });
});

describe('corrections', () => {
  const corrected = [...weighed, 'wait 5m', 'amend weigh 1 at 8:02 typed late'];

  it('given only the time was put right, then the words stand once and both times are said', async () => {
    const { last } = await said(...corrected);
    expect(last?.card.lines.find((line) => line.startsWith('Was:'))).toMatch(/1200.*, 08:00$/);
    expect(last?.card.lines).toContain('Is: 08:02');
  });

  it('given it is undone, then the card says that the correction went and what stands', async () => {
    const { last } = await said(...corrected, 'undo');
    expect(last?.card.lines[0]).toMatch(/^The correction is taken back.*08:02/);
    expect(last?.card.lines[1]).toMatch(/^What stands now: .*08:00$/);
  });

  it('given the day and the trace are asked for, then both show the times', async () => {
    const { answers } = await said(...corrected, 'day', 'trace batch 1');
    expect(answers.at(-2)?.text).toMatch(/was .*08:00, is 08:02 \(/);
    expect(answers.at(-1)?.text).toMatch(/was .*08:00, is 08:02 \(/);
  });
});

describe('wording', () => {
  const words = shipped.wordsIn('en');
  const figures = figuresFor({
    profile: shipped.profileOf('en', 'metric'),
    units: 'metric',
    zone: 'UTC',
    now: epochMs(0),
  });
  const spread = (given: number) =>
    words.objection(
      { code: 'air-outside', breaches: [{ limit: 'leastSpreadCelsius', given, allowed: 3, by: 3 - given }] },
      figures,
    );

  it('given steel colder than the dew point, then it is below it', () => {
    expect(spread(-2)).toContain('2 °C below the dew point');
    expect(spread(2)).toContain('2 °C above the dew point');
  });

  it('given a temperature outside the sheet, then the sentence runs on in lower case', () => {
    expect(words.replies.noFigure).toMatch(/:$/);
  });

  it('given a weighing without its weights, then what is needed is said in trade words', async () => {
    const { last } = await said('air 24C 48%', 'mix 2.4kg', 'weigh 1');
    expect(last?.text).toContain('Part A in g');
  });

  it('given a shop that once booked in a part a, then a stray digit does not suggest it', () => {
    const reading = readLine('coat impeller 7 1 dip', { ...shopAtTen, parts: ['a'] });
    expect(reading).toMatchObject({ kind: 'misread', misread: { token: '1', suggestions: [] } });
  });
});
