// What the cards say of surfaces, estimates, loads, leave given beforehand, handovers and bells that are put off: through
// the whole bot, on a clock of its own, over a real record. The crew and all figures are invented.

import { describe, expect, it } from 'vitest';
import type { Card } from '../../../bot/cards/card.ts';
import { wire } from '../../../bot/run/wiring.ts';
import type { Answer } from '../../../bot/talk/answer.ts';
import { ringUntil } from '../../../bot/terminal/script.ts';
import { virtualClock } from '../../../bot/time/clocks.ts';
import type { CrewFile } from '../../../core/crew/crew.ts';
import type { Log } from '../../../core/ports.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs } from '../../../core/units.ts';
import { demoCrew, demoShelf } from '../../core/given.ts';

const crewFile: CrewFile = {
  ...demoCrew,
  people: [...demoCrew.people, { name: 'lena', role: 'lead', language: 'en', units: 'metric' }],
};
const silence: Log = { info: () => undefined, error: () => undefined };

/** `08:00 @omar: line`; each answer in turn, and what rang. */
async function told(...lines: readonly string[]) {
  const clock = virtualClock(epochMs(Date.UTC(2026, 2, 2)));
  const rings: Answer[] = [];
  const { host, ringer } = wire({
    ...{ store: openSqliteStore(':memory:'), clock, log: silence, crewFile, shelf: demoShelf },
    frontEnd: {
      tell: async (answer) => {
        rings.push(answer);
        return 'posted';
      },
      wasTold: async () => 'no',
    },
  });
  const answers: Answer[] = [];
  for (const line of lines) {
    const [, hour = '0', minute = '0', as = 'kari', text = ''] =
      /^(\d\d):(\d\d) (?:@(\w+): )?([\s\S]*)$/.exec(line) ?? [];
    await ringUntil(epochMs(Date.UTC(2026, 2, 2, Number(hour), Number(minute))), ringer, clock);
    const answer = await host.handle({ text, as, in: String(answers.length), id: undefined });
    if (answer !== undefined) answers.push(answer);
    await ringer.ringDue();
  }
  const last = answers.at(-1);
  if (last === undefined) throw new Error('nothing was answered');
  return { last, card: last.card, rings };
}

const fact = (card: Card, id: string) => card.facts.find((each) => each.id === id);
const ring = (rings: readonly Answer[], key: string) => rings.find((each) => each.key === key)?.card;

const filtered = ['08:00 air 24C 48%', '08:00 mix 2.4kg', '08:00 weigh 1 1200g 1200g', '09:42 filter 1'];
const dry = [...filtered, '10:00 coat new impeller-7 1 brush', '10:12 dry impeller-7'];

describe('the cure of a part that nobody has read', () => {
  it('given no metal and no wall, then its time is called not measured, in the figure and in a line', async () => {
    const { card } = await told(...dry, '10:15 cure impeller-7 oven 90C');
    expect(fact(card, 'cure-done-at')).toMatchObject({ value: '2026-03-02T11:15:00Z' });
    expect(fact(card, 'cure-done-at')?.label).toContain('not measured');
    expect(card.lines.join(' ')).toContain('Not measured');
  });

  it('given metal and wall, then it is an estimate with what it rests on, and a time to read the part', async () => {
    const { card } = await told('08:00 part impeller-7 cast-iron 12mm', ...dry, '10:15 cure impeller-7 oven 100C');
    expect(fact(card, 'cure-done-at')?.label).toContain('estimate, not measured');
    expect(fact(card, 'temp-due-at')).toBeDefined();
    expect(card.lines.find((line) => line.startsWith('Estimate, not measured'))).toContain('from memory, no source');
  });

  it('given a reading that shows the temperature, then nothing is estimated any more', async () => {
    const { card } = await told(...dry, '10:15 cure impeller-7 oven 90C', '10:30 temp impeller-7 91C');
    expect(fact(card, 'cure-done-at')?.label).toBe('Cure time given at');
    expect(card.lines.join(' ')).not.toMatch(/measured/i);
  });

  it('given it rings without a reading, then the bell says not proved and asks for one', async () => {
    const { rings } = await told(...dry, '10:15 cure impeller-7 oven 90C', '11:16 now');
    const card = ring(rings, 'part/impeller-7/cure-done');
    expect(card?.title).toContain('not proved');
    expect(card && fact(card, 'cure-done-at')?.label).toContain('not measured');
    expect(card?.lines.join(' ')).toContain('Say temp');
  });
});

describe('a part that came out', () => {
  it('given no reading proves its cure, then the card does not call it given', async () => {
    const { card } = await told(...dry, '10:15 cure impeller-7 oven 90C', '11:30 out impeller-7 already');
    expect(card.lines.join(' ')).toContain('not proved');
    expect(card.lines.join(' ')).not.toContain('Cure time given.');
  });
});

describe('parts and surfaces', () => {
  it('given a pasted list, then one answer tells what is known of each and what is missing', async () => {
    const { last } = await told('08:00 part impeller-7 cast-iron 12mm 0.8m2 max 120C\npart lid-1 steel');
    expect(last).toMatchObject({ kind: 'reply', recorded: true, card: { title: '2 parts: noted' } });
    expect(last.text).toContain('impeller-7: cast-iron, 12 mm, 0.8 m², bears 120 °C');
    expect(last.text).toContain('Not known of lid-1: wall, area, the heat it bears.');
  });

  it('given two faulty lines in it, then both are named and nothing is recorded', async () => {
    const { last } = await told('08:00 part lid-1 6\npart lid-2 steel\nair 24C');
    expect(last).toMatchObject({ kind: 'misread', recorded: false });
    expect(last.text).toContain('Line 1, part lid-1 6:');
    expect(last.text).toContain('Line 3, air 24C:');
  });

  it('given nobody has read the steel, then filter and coat say so in a line, with a tap, and nothing is objected to', async () => {
    const filter = await told('08:00 part impeller-7', ...filtered);
    expect(filter.card.lines.join(' ')).toContain('Nobody has read the surface of impeller-7');
    expect(filter.card.actions.map(({ id }) => id)).toContain('surface');
    const coat = await told(...filtered, '09:50 coat new impeller-7 1 brush');
    expect(coat.last.kind).toBe('reply');
    expect(coat.card.lines.join(' ')).toContain('Nobody has read the surface of impeller-7');
  });

  it('given it was read, then they do not', async () => {
    const { card } = await told(...filtered, '09:45 surface new impeller-7 19C', '09:50 coat new impeller-7 1 brush');
    expect(card.lines.join(' ')).not.toContain('Nobody has read the surface');
  });

  it('given a wet film, then the card says until when it may be touched up, with the tap; a dip has none', async () => {
    const spray = await told(...filtered, '10:00 coat new impeller-7 1 brush');
    expect(fact(spray.card, 'open-until')?.shown).toBe('10:06');
    expect(spray.card.actions.map(({ line }) => line)).toContain('coat impeller-7 1 brush touch-up');
    const dip = await told(...filtered, '10:00 coat new lid-1 1 dip');
    expect(dip.card.actions.map(({ id }) => id)).not.toContain('touch-up');
  });

  it('given a load, then a bare reading says whose it is, and one tap each reads and takes it out', async () => {
    const { card } = await told(
      '08:00 part impeller-7 cast-iron 12mm; part lid-1 steel 6mm',
      ...filtered,
      '10:00 coat new impeller-7 lid-1 1 brush',
      '10:12 dry impeller-7 lid-1',
      '10:15 cure impeller-7 lid-1 oven 100C',
      '11:00 temp 91C',
    );
    expect(card.lines.join(' ')).toContain('Read on impeller-7, which warms last; it counts for lid-1 too');
  });
});

describe('leave given beforehand', () => {
  const touchUp = 'coat impeller-7 1 brush touch-up';

  it('given the supervisor lifts it, then the answer says first who, in which role, and why', async () => {
    const { card } = await told(
      ...filtered,
      '10:00 coat new impeller-7 1 brush',
      `10:10 @rosa: ${touchUp} permit the customer agreed`,
    );
    expect(card.tone).toBe('warn');
    expect(card.lines[0]).toMatch(/^! Lifted beforehand by rosa \(supervisor\): the customer agreed\./);
  });

  it('given it was lifted, then the day and the release have it too', async () => {
    const lines = [
      ...filtered,
      '10:00 coat new impeller-7 1 brush',
      `10:10 @rosa: ${touchUp} permit the customer agreed`,
      '10:30 dry impeller-7',
      '10:30 cure impeller-7 oven 90C',
      '10:30 temp impeller-7 91C',
      '11:31 temp impeller-7 90C',
      '11:31 out impeller-7',
    ];
    const day = await told(...lines, '11:32 day');
    expect(day.card.lines.find((line) => line.startsWith('!'))).toContain('the customer agreed');
    const release = await told(...lines, '11:32 release impeller-7');
    expect(release.card.lines.find((line) => line.startsWith('!'))).toContain('lifted beforehand: the customer agreed');
    expect(release.card.lines).toContain('Nobody has read its dry film.');
  });
});

describe('people and bells', () => {
  it('given a handover, then it lists what is alive, and its bell offers to take over', async () => {
    const { card, rings } = await told(...filtered, '10:00 @omar: handover lena');
    expect(card).toMatchObject({ title: 'Handed over to lena', ping: ['lena'] });
    expect(card.lines.join(' ')).toContain('1 Demo Clear: in use');
    expect(ring(rings, 'crew/handover')?.actions.map(({ line }) => line)).toContain('take over');
  });

  it('given somebody goes whose bells still ring, then the card asks for a handover', async () => {
    const { card } = await told(...filtered, '10:00 shift off');
    expect(card.lines.join(' ')).toContain('still ring for you');
    expect(card.actions.map(({ id }) => id)).toEqual(['handover']);
  });

  it('given bells, then those that may be put off have a tap for it that names them, and the pot’s end has none', async () => {
    const { rings } = await told(...filtered, '12:40 now');
    expect(ring(rings, 'batch/1/stir-done')?.actions.map(({ line }) => line)).toContain('snooze 5m batch/1/stir-done');
    expect(ring(rings, 'batch/1/pot-end')?.actions.map(({ id }) => id)).not.toContain('snooze');
  });

  it('given somebody puts off the pot’s end, then the answer says why not', async () => {
    const { last } = await told(...filtered, '12:34 snooze 5m');
    expect(last).toMatchObject({ kind: 'misread', code: 'not-snoozed', recorded: false });
    expect(last.text).toContain('batch/1/pot-end cannot be put off');
  });

  it('given it rings again after it was put off, then it says that and not that nobody answered', async () => {
    const { rings } = await told(...filtered.slice(0, 3), '09:43 snooze 5m', '09:50 now');
    const lines = ring(rings, 'batch/1/stir-done/2')?.lines.join(' ');
    expect(lines).toContain('put off');
    expect(lines).not.toContain('nobody has answered');
  });
});

describe('films by their rule', () => {
  it('given readings outside the sheet’s own rule (invented), then the card names the rule and warns', async () => {
    const { card } = await told(...dry, '10:20 film impeller-7 6 12 13um');
    expect(card.tone).toBe('warn');
    expect(card.lines.join(' ')).toMatch(/Outside the rule: the sheet's own, 8 µm to 20 µm/);
  });

  it('given a rub that does nothing, then the card says that this alone is no cure', async () => {
    const { card } = await told(...dry, '10:20 rub impeller-7 50 ok');
    expect(card.lines.join(' ')).toContain('not by that alone fully cured');
  });
});

describe('a part of which not every word is known', () => {
  it('given a metal that nobody knows here, then the rest is noted, and the card says which word was not and what is known', async () => {
    const { last, card } = await told('08:00 part rail-9 zamak job 88 3mm');
    expect(last.recorded).toBe(true);
    expect(card.lines[0]).toMatch(/^Not read, and not noted: zamak\. Metals known here: steel, .*cast iron/);
    expect(card.lines).toContain('rail-9: job 88, 3 mm');
  });

  it('given a list of parts, then it says so of each of its lines', async () => {
    const { last, card } = await told('08:00 part lid-1 6mm zamak; part lid-2 wo 12 3mm');
    expect(last.recorded).toBe(true);
    expect(card.lines[0]).toMatch(/^Not read, and not noted: zamak, wo, 12\./);
  });
});
