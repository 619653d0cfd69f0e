// A film measured on a phone, spot by spot, through the whole bot: what the card asks next, and what is typed into it as people type
// it and as gauges paste it. The figures are invented.

import { describe, expect, it, onTestFinished } from 'vitest';
import { openSqliteStore } from '../../../core/store/sqlite-store.ts';
import { demoShelf } from '../../core/given.ts';
import { nominal, pa2 } from '../../core/part/film-by-spots.ts';
import { sessionTalk, sprayCrew, taps } from '../cards/session-talk.ts';

const prelude = [
  ...[
    'air 24C 48%',
    'mix 2.4kg',
    'weigh 1 1200g 1200g',
    'part a1 4m2',
    'wait 102m',
    'filter 1',
    'coat a1 1 brush',
    'empty 1',
    'flush 1 brush',
  ],
  ...['wait 12m', 'dry a1', 'cure a1 oven 90C', 'temp a1 90C', 'wait 60m', 'temp a1 90C', 'out a1'],
];
const spanish = { ...sprayCrew, people: sprayCrew.people.map((person) => ({ ...person, language: 'es' as const })) };

async function measuring({
  shelf = pa2,
  crew = sprayCrew,
  lines = prelude,
  record = openSqliteStore(':memory:'),
} = {}) {
  const talk = sessionTalk(record, crew, undefined, undefined, shelf);
  onTestFinished(talk.close);
  for (const line of lines) await talk.say(line);
  const told = async (...said: readonly string[]) => {
    let answer = await talk.say(said[0] ?? '');
    for (const line of said.slice(1)) answer = await talk.say(line);
    return [answer.card.title, ...answer.card.lines].join('\n');
  };
  return { ...talk, told };
}

describe('measuring spot by spot', () => {
  it('given the film alone, then the first spot is asked for, and each answer is told with what comes next', async () => {
    const { told } = await measuring();
    expect(await told('film a1')).toContain('a1: spot 1 of 5?');
    const first = await told('95 100 105');
    expect(first).toContain('a1: spot 1 of 5\n');
    expect(first).toContain('Spot 1: 95 · 100 · 105 µm. Mean 100 µm.');
    expect(first).toContain('Spot 2 of 5?');
    const last = await told('98 99 100', '96 97 98', '90 91 92', '99 98 97');
    expect(last).toContain('All 5 spots told. Mean 97 µm.');
    expect(last).toContain('Within the rule: SSPC-PA 2, level 3.');
  });

  it('given the same in Spanish, with a decimal comma', async () => {
    const { told } = await measuring({ crew: spanish });
    expect(await told('medir a1')).toContain('a1: ¿punto 1 de 5?');
    expect(await told('espesor a1')).toContain('a1: ¿punto 1 de 5?');
    const first = await told('95,5 100 105');
    expect(first).toContain('Punto 1: 95,5 · 100 · 105 µm. Media 100,2 µm.');
    expect(first).toContain('¿Punto 2 de 5?');
  });

  it.each([
    ['apart by commas', ['95,100,105']],
    ['apart by commas and spaces', ['95, 100, 105']],
    ['one after the other', ['95', '100', '105']],
    ['with a unit', ['95 100 105 microns']],
    ['in a column', ['95\n100\n105']],
    ['with its number', ['spot 1 95 100 105']],
    ['with its number and a colon', ['1: 95 100 105']],
    ['with a hash', ['#1 95 100 105']],
    ['as the gauge names it', ['S1 95 100 105']],
    ['by tabs', ['1:\t95\t100\t105']],
  ])('given three readings %s, then they are the first spot', async (_, answers) => {
    const { told } = await measuring();
    await told('film a1');
    const last = await told(...answers);
    expect(last).toContain('Spot 1: 95 · 100 · 105 µm. Mean 100 µm.');
    expect(last).toContain('Spot 2 of 5?');
  });

  it.each([
    ['numbered rows', 'film a1\n1: 95 100 105\n2: 98 99 97'],
    ['rows of a gauge', 'film a1\nS1 95 100 105\nS2 98 99 97'],
    ['one reading a row, each with its spot', 'film a1\n#1 95\n#1 100\n#1 105\n#2 98\n#2 99\n#2 97'],
    ['a table with a head', 'film a1\nspot,r1,r2,r3\n1,95,100,105\n2,98,99,97'],
    ['a table with tabs and a head', 'film a1\nSpot\tA\tB\tC\n1\t95\t100\t105\n2\t98\t99\t97'],
    ['decimal commas and semicolons', 'film a1\nspot;a;b;c\n1;95,0;100,0;105,0\n2;98,0;99,0;97,0'],
    ['one line', 'film a1 1: 95 100 105 2: 98 99 97'],
  ])('given a paste of %s, then the numbers of spots are no readings', async (_, paste) => {
    const { told } = await measuring();
    const last = await told(paste);
    expect(last).toContain('a1: spots 1 to 2 of 5');
    expect(last).toContain('Spot 1: 95 · 100 · 105 µm. Mean 100 µm.');
    expect(last).toContain('Spot 2: 98 · 99 · 97 µm. Mean 98 µm.');
  });

  it('given a bare column of readings, then they are cut as the rule counts them', async () => {
    const { told } = await measuring();
    expect(await told('film a1\n95\n100\n105\n98\n99\n97')).toContain('Spot 2: 98 · 99 · 97 µm. Mean 98 µm.');
  });

  it.each([
    'film a1\n1 95 100 105\n2 98 99 97',
    'film a1\n1\t95\t100\t105\n2\t98\t99\t97',
    'film a1 1 95 100 105 2 98 99 97um',
  ])(
    'given %j, where 1 and 2 may be readings, then a tap each says what it records, and nothing is recorded',
    async (paste) => {
      const { say, told } = await measuring();
      const answer = await say(paste);
      expect(answer.recorded).toBe(false);
      expect(Object.values(taps(answer))).toEqual([
        'film a1 spot 1 95 100 105 spot 2 98 99 97um',
        'film a1 1um 95um 100um 105um 2um 98um 99um 97um',
      ]);
      expect(await told('film a1 spot 1 95 100 105 spot 2 98 99 97um')).toContain('a1: spots 1 to 2 of 5');
    },
  );

  it('given words among the figures of a paste, then nothing is guessed', async () => {
    const { say } = await measuring();
    expect((await say('film a1\n1: 95 100 105\nmean 100')).recorded).toBe(false);
  });

  it('given it stopped half way, then another goes on after the program was started again', async () => {
    const store = openSqliteStore(':memory:');
    const talk = await measuring({ record: store });
    await talk.told('film a1', '95 100 105', '98 99 100');
    const later = sessionTalk(store, sprayCrew, undefined, talk.now(), pa2);
    const asked = await later.say('@lia: film a1');
    expect(asked.card.title).toBe('a1: spot 3 of 5?');
    expect((await later.say('@lia: 96 97 98')).card.title).toBe('a1: spot 3 of 5');
  });

  it('given it waits at its third spot, then what now and the part say so', async () => {
    const { told } = await measuring();
    await told('film a1', '95 100 105', '98 99 100');
    expect(await told('what now')).toContain('a1: measure spot 3 of its dry film (2 of 5 told)');
    expect(await told('how is a1?')).toContain('Dry film: 2 of 5 spots told');
    expect(await told('release a1')).toContain('Its dry film is told by half: 2 of 5 spots.');
  });

  it('given next and skip, then the spot is asked again, or the one behind it', async () => {
    const { told } = await measuring();
    expect(await told('film a1', 'next')).toContain('a1: spot 1 of 5?');
    expect(await told('skip')).toContain('a1: spot 2 of 5?');
    expect(await told('95 100 105')).toContain('a1: spot 2 of 5\n');
    expect(await told('film a1')).toContain('a1: spot 1 of 5?');
  });

  it('given spots are passed over, then the card says which lack, and comes back to them', async () => {
    const { told } = await measuring();
    await told('film a1', 'skip', 'skip', '95 100 105');
    expect(await told('film a1 spot 5')).toContain('Still to tell: spots 1, 2, 4. The set is not whole without.');
    expect(await told('skip')).toContain('a1: spot 1 of 5?');
  });

  it('given only the film and the number of its part, then it is asked for, and the number is no reading', async () => {
    const lines = prelude.map((line) => line.replaceAll('a1', 'hub-7'));
    const { say, told } = await measuring({ lines });
    await told('film hub-7', '95 100 105');
    for (const line of ['dft 7', 'film 7']) expect((await say(line)).card.title).toBe('hub-7: spot 2 of 5?');
    expect(await told('measured 7: 98 99 97')).toContain('Spot 2: 98 · 99 · 97 µm.');
  });

  it('given readings far off, then they may be told again alone', async () => {
    const { say, told } = await measuring();
    await say('film a1');
    const far = await say('9500 10000 9700');
    expect(far.recorded).toBe(false);
    expect(await told('95 100 97')).toContain('Spot 1: 95 · 100 · 97 µm.');
  });

  it('given a spot was another and had not been told, then it is told', async () => {
    const { told } = await measuring();
    expect(await told('film a1', '95 100 105', 'the spot 4 was 96 97 98')).toContain('Spot 4: 96 · 97 · 98 µm.');
  });

  it('given spot 2 was another, then it is put right and the next is still asked for', async () => {
    const { told } = await measuring();
    const last = await told('film a1', '95 100 105', '60 100 105', 'spot 2 was 95 96 97');
    expect(last).toContain('Spot 2: 95 · 96 · 97 µm. Mean 96 µm.');
    expect(last).toContain('Spot 3 of 5?');
  });

  it('given a spot fails, then the card says so, asks for readings beside it, and for the next spot', async () => {
    const { say } = await measuring();
    await say('film a1');
    const answer = await say('60 62 64');
    expect(answer.card.lines).toContain('Spot 1: 60 · 62 · 64 µm. Mean 62 µm: its mean is below 64 µm, it fails.');
    expect(taps(answer)).toMatchObject({
      spot: 'film a1 spot 2 {dry-films}um',
      beside: 'film a1 beside 1 {dry-films}um',
    });
  });

  it('given one reading far from the others, then a tap leaves it out and asks for another', async () => {
    const { say, told } = await measuring();
    await say('film a1');
    expect(taps(await say('95 100 180'))).toMatchObject({ drop: 'film a1 spot 1 {dry-films}um drop 180um' });
    const last = await told('film a1 spot 1 105um drop 180um');
    expect(last).toContain('Mean 100 µm');
    expect(last).toContain('left out and kept in the record: 180 µm');
    expect(await told('trace a1')).toContain('left out 180 µm');
  });

  it('given the profile was measured and nothing is taken off, then the card says so', async () => {
    const lines = prelude.toSpliced(6, 0, 'prep a1 sa2.5 60um');
    const { told } = await measuring({ lines });
    expect(await told('film a1', '95 100 105')).toContain(
      'The profile was measured, 60 µm; nothing is taken off for it.',
    );
    expect(await told('film a1 95 100 105um base 12um')).toContain('Mean 100 µm, base metal 12 µm off: 88 µm.');
  });

  it('given ISO 19840 on rough steel, then each answer names what comes off it', async () => {
    const { told } = await measuring({
      shelf: nominal('medium'),
      lines: prelude.map((line) => line.replace('4m2', '1m2')),
    });
    expect(await told('film a1', '110')).toContain('Spot 1: 110 µm, profile 25 µm off: 85 µm.');
  });

  it('given a sheet with a rule of its own, then it asks for as many readings as that wants', async () => {
    const { told } = await measuring({ shelf: demoShelf });
    expect(await told('film a1')).toContain('a1: spot 1 of 3?');
    const last = await told('12', '13', '14');
    expect(last).toContain('Within the rule');
  });

  it.each(['measure a1', 'measuring a1', "let's measure a1", 'ready for the dft on a1', 'vamos a medir a1'])(
    'given "%s", then it asks and records nothing',
    async (line) => {
      const { say } = await measuring();
      const answer = await say(line);
      expect(answer.recorded).toBe(false);
      expect(answer.card.title).toBe('a1: spot 1 of 5?');
    },
  );
});

describe('what is told of the whole set', () => {
  it('given the base metal ahead of the first spot, then it comes off each, and off the later ones too', async () => {
    const { told } = await measuring();
    expect(await told('film a1 base 12um', '95 100 105')).toContain('Mean 100 µm, base metal 12 µm off: 88 µm.');
    expect(await told('98 99 100')).toContain('Mean 99 µm, base metal 12 µm off: 87 µm.');
  });

  it('given the job says what the gauge shows on its steel, then nobody has to', async () => {
    const lines = ['set job 88 film base 12um', ...prelude.map((line) => line.replace('4m2', 'job 88 4m2'))];
    const { told } = await measuring({ lines });
    expect(await told('film a1', '95 100 105')).toContain('base metal 12 µm off: 88 µm.');
  });

  it('given the set is measured, then traveller and trace tell each spot, what was left out, and the verdict', async () => {
    const { told } = await measuring();
    await told('film a1', '95 100 105', '98 99 100', '96 97 98', '90 91 92');
    const trace = await told('film a1 99 98 180 97 drop 180um', 'trace a1');
    expect(trace).toContain('Set 1: All 5 spots told. Mean 97 µm.');
    expect(trace).toContain('Within the rule: SSPC-PA 2, level 3.');
    expect(trace).toContain('left out 180 µm');
  });
});
