// A list or a table of parts in one message, as a crew pastes it: one card shows what would be booked, what is missing and what could
// not be read, and one tap books it. Through the whole bot, over a real record. Everything in it is invented.

import { describe, expect, it } from 'vitest';
import { wire } from '../../../bot/run/wiring.ts';
import type { Answer } from '../../../bot/talk/answer.ts';
import { virtualClock } from '../../../bot/time/clocks.ts';
import type { CrewFile } from '../../../core/crew/crew.ts';
import type { Log, Store } from '../../../core/ports.ts';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { epochMs } from '../../../core/units.ts';
import { demoCrew, demoShelf } from '../../core/given.ts';

const crewFile: CrewFile = {
  ...demoCrew,
  people: [
    ...demoCrew.people,
    { name: 'luis', role: 'crew', language: 'es', units: 'metric' },
    { name: 'dale', role: 'crew', language: 'en', units: 'us' },
  ],
};
const silence: Log = { info: () => undefined, error: () => undefined };

/** No two lines are one delivery, not even of two bots over one record. */
let deliveries = 0;

/** A bot over this record, begun anew. */
function bot(store: Store = openSqliteStore(':memory:')) {
  const clock = virtualClock(epochMs(Date.UTC(2026, 2, 2, 8)));
  const { host } = wire({
    ...{ store, clock, log: silence, crewFile, shelf: demoShelf },
    frontEnd: { tell: async () => 'posted', wasTold: async () => 'no' },
  });
  const say = async (text: string, as = 'kari'): Promise<Answer> => {
    const answer = await host.handle({ text, as, in: 'line', id: `said-${deliveries++}` });
    if (answer === undefined) throw new Error(`"${text}" was not answered`);
    return answer;
  };
  const tap = (answer: Answer, id: string, as?: string) => {
    const action = answer.card.actions.find((each) => each.id === id);
    if (action === undefined) throw new Error(`no tap ${id}: ${JSON.stringify(answer.card.actions)}`);
    return say(action.line, as);
  };
  return { say, tap };
}

const table = [
  'Pieza;Serie;Obra;Material;Espesor (mm);Área (m²);Temp. máx (°C);Notas',
  'Brida 01;4411;88;acero;6,5;0,2;120;urge',
  'Brida 02;4412;88;Zamak 5;6;0,2;;',
  ';4413;88;acero;6;0,2;;',
  '17;4414;;;;;;',
  'Brida 04;4415;88;acero;seis;0,2;;',
].join('\n');

describe('a table of parts', () => {
  it('given one in Spanish, then the card tells what each has, which rows are left out and why', async () => {
    const { say } = bot();
    const asked = await say(table, 'luis');
    expect(asked).toMatchObject({ code: 'parts-in', recorded: false });
    expect(asked.text).toContain('brida-01: serie 4411, orden 88, acero, 6,5 mm, 0,2 m², aguanta 120 °C');
    expect(asked.text).toContain('brida-02: serie 4412, orden 88, Zamak 5');
    expect(asked.text).toContain('La fila 4 queda fuera');
    expect(asked.text).toContain('La fila 5 queda fuera');
    expect(asked.text).toContain('«seis»');
    expect(asked.text).toContain('Notas');
  });

  it('given the tap, then its parts are booked, and one undo takes them back', async () => {
    const { say, tap } = bot();
    const booked = await tap(await say(table, 'luis'), 'book-in', 'luis');
    expect(booked.recorded).toBe(true);
    expect(booked.text).toContain('brida-02');
    const undone = await tap(booked, 'undo', 'luis');
    expect(undone.text).toContain('brida-01, brida-02'.replace(', ', ' y '));
    expect((await say('coat brida-01 brush', 'luis')).recorded).toBe(false);
  });

  it('given heads in English and figures without units, then they are in what its reader works in', async () => {
    const { say } = bot();
    const asked = await say(
      'Part No,Serial,Thickness,Area,Max Temp\nlug-1,"A, 12",0.25,2,250\nlug-2,A13,1/4",2.5,250 F',
      'dale',
    );
    expect(asked.text).toContain('lug-1: serial A, 12, 1/4 in, 2 ft², bears 250 °F');
    expect(asked.text).toContain('lug-2: serial A13, 1/4 in, 2.5 ft², bears 250 °F');
  });

  it('given more than a button takes, then the tap books it all the same, and after a restart too', async () => {
    const store = openSqliteStore(':memory:');
    const rows = Array.from({ length: 120 }, (_, i) => `lug-${i + 1},SN-${9000 - i * 7},88`);
    const asked = await bot(store).say(['part,serial,job', ...rows].join('\n'));
    const line = asked.card.actions.find(({ id }) => id === 'book-in')?.line ?? '';
    expect(line.length).toBeLessThan(450);
    const anew = bot(store);
    const booked = await anew.say(line);
    expect(booked.recorded).toBe(true);
    expect((await anew.say('trace lug-120')).text).toContain('SN-8167');
  });

  it('given it is answered with yes, then it is booked as with the tap', async () => {
    const { say } = bot();
    await say(
      ['part,serial,job', ...Array.from({ length: 60 }, (_, i) => `lug-${i + 1},SN-${9000 - i * 7},88`)].join('\n'),
    );
    expect((await say('yes')).recorded).toBe(true);
    expect((await say('trace lug-60')).text).toContain('SN-8587');
  });

  it('given more rows than one message takes, then it says how many it takes', async () => {
    const { say } = bot();
    const asked = await say(['part,job', ...Array.from({ length: 201 }, (_, i) => `lug-${i + 1},88`)].join('\n'));
    expect(asked).toMatchObject({ code: 'too-many-parts', recorded: false });
    expect(asked.text).toContain('200');
  });
});

describe('a list of parts', () => {
  it('given a line that opens it, then what that says is of each that has nothing of its own', async () => {
    const { say } = bot();
    const asked = await say(
      'parts in job 88 steel 6mm:\n- flange-1\n- flange-2 8mm serial 5510\n- flange-2\n- flange-3 0.3',
    );
    expect(asked.text).toContain('flange-1: job 88, steel, 6 mm');
    expect(asked.text).toContain('flange-2: serial 5510, job 88, steel, 8 mm');
    expect(asked.text).toContain('Row 4 is left out');
    expect(asked.text).toContain('Row 5 is left out: flange-3 0.3: "0.3" has no unit');
  });

  it('given names and nothing else, then they are offered, with those that are known left as they are', async () => {
    const { say } = bot();
    await say('part bolt-2 steel');
    const asked = await say('bolt-1\nbolt-2, bolt-3\nbolt-10..bolt-12');
    expect(asked.code).toBe('parts-in');
    expect(asked.text).toContain('Known already, and left as it is: bolt-2');
    expect(asked.card.actions.map(({ id }) => id)).toEqual(['book-in']);
  });

  it('given a cry among them, then it is heard before all', async () => {
    const { say } = bot();
    expect((await say('parts in job 88\nbolt-1\nfire in the booth')).card.alarm).toBe(true);
  });

  it('given other acts in several lines, then they are no list', async () => {
    const { say } = bot();
    expect((await say('bolt-1 24C\nbolt-2 dry')).code).not.toBe('parts-in');
  });
});

describe('parts that came in, told in other words', () => {
  it.each([
    ['kari', 'rails 1 to 12 came in for job 90', 'Book in 12 parts: rail-1 to rail-12, job 90'],
    ['kari', '8 rails have arrived, job 90', 'Book in 8 parts: rail-1 to rail-8, job 90'],
    ['luis', 'llegaron 12 rieles', 'Dar entrada a 12 piezas: riel-1 a riel-12'],
    ['luis', 'nos llegaron 6 bridas para el trabajo 88', 'Dar entrada a 6 piezas: brida-1 a brida-6, orden 88'],
    ['kari', 'lug-1, lug-2 and lug-3', 'Book in 3 parts: lug-1 to lug-3'],
  ])('given %s says "%s", then one tap, worded as what it does, books them', async (as, line, label) => {
    const { say, tap } = bot();
    const asked = await say(line, as);
    expect(asked.recorded).toBe(false);
    expect(asked.card.actions.map((action) => action.label)).toEqual([label]);
    expect((await tap(asked, 'meant-1', as)).recorded).toBe(true);
  });

  it.each([
    ['new part flange 2 job 91 sn 5502 steel 12mm wall', /flange-2 job 91/],
    ['me trajeron la brida 2, serie 7781 del trabajo 95', /brida-2/],
  ])('given "%s", then the number is of its name, and nothing is booked before the tap', async (line, tap) => {
    const { say } = bot();
    const answer = await say(line, line.startsWith('me') ? 'luis' : 'kari');
    expect(answer.recorded).toBe(false);
    expect(answer.card.actions[0]?.line).toMatch(tap);
  });

  it('given some of that name are there, then those that came in follow the last of them', async () => {
    const { say } = bot();
    await say('parts in rail-1..rail-12');
    expect((await say('8 rails came in')).card.actions[0]?.label).toBe('Book in 8 parts: rail-13 to rail-20');
  });

  it.each([
    'rails 1 to 12 have not come in',
    'did 12 rails come in?',
    '12 rails should have arrived tomorrow',
    '4 cans came in',
  ])('given "%s", then no part is offered', async (line) => {
    const { say } = bot();
    expect((await say(line)).card.actions.filter(({ line: each }) => /^parts? /.test(each))).toEqual([]);
  });
});
