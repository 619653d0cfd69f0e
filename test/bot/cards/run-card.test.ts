// The run card: where a pot or a part stands, what was done, what comes; and what the maker's paper asks is said before the
// act. The ways of the methods: common practice, no source.

import { describe, expect, it } from 'vitest';
import { sessionTalk, sprayCrew } from './session-talk.ts';

async function talkAfter(...lines: readonly string[]) {
  const { say } = sessionTalk();
  for (const line of lines) await say(line);
  return async (line: string) => (await say(line)).card;
}

const weighed = ['air 22C 50%', 'confirm equipment yes', 'wait 1m', 'mix 2.4kg in stainless 5L', 'weigh 1 1201g 1198g'];
const stirred = [...weighed, 'wait 110m', 'stop 1'];

describe('the run card', () => {
  it('given a pot that is stirred, then it says what is next, what was done, what nobody has said, what comes', async () => {
    const { title, lines, actions } = await (await talkAfter(...stirred))('card 1');
    expect(title).toBe('Run of batch 1');
    expect(lines.slice(0, 2)).toEqual(['Batch 1 Demo Clear: stirrer off', 'Next: filtered']);
    expect(lines).toContainEqual(expect.stringMatching(/^\d\d:\d\d weighed A 1201 g, B 1198 g/));
    expect(lines).toContain('Kept: equipment rated for flammable liquids, vessel and tools of what the sheet allows');
    expect(lines).toContainEqual(expect.stringMatching(/^Nobody has said: vessels bonded and earthed/));
    expect(lines).toContain('To come: coated');
    expect(actions.map(({ line }) => line)).toContain('confirm 1 bonding yes');
  });

  it('given a part, then its run goes through its pot to its release', async () => {
    const say = await talkAfter(...stirred, 'filter 1', 'coat new impeller-7 1 brush');
    const { title, lines } = await say('card impeller-7');
    expect(title).toBe('Run of impeller-7');
    expect(lines.slice(0, 2)).toEqual(['impeller-7: flash-off', 'Next: dry to the touch']);
    expect(lines).toContain('Not recorded: surface prepared, surface temperature read');
    expect(lines).toContain('To come: cure begun, taken out of cure, film measured, released');
  });

  it('given a part that is dry after a full pot, then its card is short enough for a phone, without what is over or of the pot', async () => {
    const say = await talkAfter(
      ...['part impeller-7 serial 4411', 'prep impeller-7 sa2.5 55um', 'surface impeller-7 21C', ...stirred],
      ...['filter 1 1um glass fibre second vessel', 'coat impeller-7 1 brush', 'wait 12m', 'dry impeller-7'],
    );
    const { facts, lines } = await say('card impeller-7');
    expect(facts).toEqual([]);
    expect(lines.slice(0, 2)).toEqual(['impeller-7: dry, waits for its cure', 'Next: cure begun']);
    expect(lines.slice(-2)).toEqual([
      'Nobody has said: a clean oven, a clean place to cure in',
      'To come: taken out of cure, film measured, released',
    ]);
    expect(lines.length).toBeLessThanOrEqual(14);
  });

  it('given what the crew lacks, then it stands before all else of its run and the card warns', async () => {
    const { tone, lines } = await (await talkAfter('air 22C 50%', 'mix 1kg', 'confirm bonding no'))('card 1');
    expect([tone, lines[1]]).toEqual(['warn', 'Lacking: vessels bonded and earthed']);
  });

  it('given surface, coats and a second filtering, then all of it stands as it happened', async () => {
    const say = await talkAfter(
      ...['part rail-1', 'surface rail-1 22C', ...stirred, 'filter 1', 'wait 1m', 'coat new impeller-7 1 flow'],
      ...['wait 1m', 'catch 1 100g', 'wait 1m', 'filter 1', 'wait 1m', 'coat rail-1 1 flow'],
    );
    const acts = ({ lines }: { readonly lines: readonly string[] }) =>
      lines.flatMap((line) => /^\d\d:\d\d (\S+)/.exec(line)?.[1] ?? []);
    expect(acts(await say('card 1'))).toEqual([
      'air',
      'batch',
      'weighed',
      'stirrer',
      'filtered',
      'impeller-7',
      'caught',
      'filtered',
      'rail-1',
    ]);
    expect(acts(await say('card rail-1'))).toEqual([
      'surface',
      'air',
      'batch',
      'weighed',
      'stirrer',
      'filtered',
      'caught',
      'filtered',
      'rail-1',
    ]);
  });

  it('given ten parts from one pot, then the last coats stand and the rest are counted', async () => {
    const parts = Array.from({ length: 10 }, (_, i) => `rail-${i + 1}`);
    const say = await talkAfter(...stirred, 'filter 1', `coat new ${parts.join(', ')} 1 dip`);
    const { lines } = await say('card 1');
    expect(lines.filter((line) => line.includes('coated'))).toHaveLength(4);
    expect(lines).toContain('Earlier coats: 6 more');
  });

  it('given what nobody has said, then each is a tap that says what it says', async () => {
    const say = await talkAfter(...weighed);
    const { actions } = await say('card 1');
    expect(actions).toContainEqual(
      expect.objectContaining({ label: 'A clean place to cure in', line: 'confirm 1 clean-room yes' }),
    );
    expect((await say('tap step-yes-clean-room')).title).toBe('Noted: a clean place to cure in');
    expect((await say('card 1')).actions.map(({ id }) => id)).not.toContain('step-yes-clean-room');
  });

  it('given an answer about the mixing after the pot was emptied, then that pot does not count as kept', async () => {
    const say = await talkAfter(...stirred, 'filter 1', 'empty 1', 'wait 5m', 'mix 1kg', 'confirm 2 papers yes');
    const { lines, actions } = await say('card 1');
    expect(lines).toContainEqual(expect.stringMatching(/^Nobody has said: .*instructions and safety data sheets read/));
    expect(actions.map(({ id }) => id)).not.toContain('step-yes-papers');
  });
});

describe('what a run card must not say', () => {
  it('given only Part A in the vessel, then weighing is next, not the filter', async () => {
    const { lines } = await (await talkAfter('air 22C 50%', 'mix 2.4kg', 'weigh 1 A 1201g'))('card 1');
    expect(lines).toContain('Next: A and B weighed');
  });

  it('given a stirrer that was stopped too early, then stirring is next', async () => {
    const { lines } = await (await talkAfter(...weighed, 'wait 20m', 'stop 1'))('card 1');
    expect(lines).toContain('Next: stirred');
    expect(lines).toContain('08:21 stirrer off (omar)');
  });

  it('given a pot filtered while its stirrer ran, then nobody is told that its stirring is not recorded', async () => {
    const say = await talkAfter(...weighed, 'wait 110m', 'filter 1', 'coat new impeller-7 1 brush');
    for (const line of ['card 1', 'card impeller-7']) {
      expect((await say(line)).lines.join(' ')).not.toMatch(/Not recorded: [^.]*stirred/);
    }
  });

  it('given B weighed after A, then both stand there', async () => {
    const say = await talkAfter('air 22C 50%', 'mix 2.4kg', 'weigh 1 A 1201g', 'weigh 1 B 1198g');
    const { lines } = await say('card 1');
    expect(lines).toContainEqual(expect.stringContaining('weighed Part A 1201 g'));
    expect(lines).toContainEqual(expect.stringContaining('weighed Part B 1198 g'));
  });

  it('given a pot that gelled, then nothing is next or to come, and it says what is to be done with it', async () => {
    const { tone, lines } = await (await talkAfter(...weighed, 'gel 1'))('card 1');
    expect(lines.filter((line) => /^(Next|To come)/.test(line))).toEqual([]);
    expect(lines[0]).toContain('thick, gelled or hot: waste');
    expect(lines.join(' ')).toContain('gelled');
    expect(tone).toBe('stop');
  });

  it('given a pot past its life, then nothing is next', async () => {
    const { lines } = await (await talkAfter(...weighed, 'wait 8h'))('card 1');
    expect(lines.filter((line) => /^(Next|To come)/.test(line))).toEqual([]);
  });

  it('given a second coat on a dry first one, then the film is not dry and not measured', async () => {
    const say = await talkAfter(
      ...['air 25C 48%', 'mix 6.45kg demo-build', 'weigh 1 5400g 1050g', 'wait 20m', 'coat new rail-2 1 brush'],
      ...['wet rail-2 200um', 'wait 4h', 'dry rail-2', 'coat rail-2 1 brush already'],
    );
    const { lines } = await say('card rail-2');
    expect(lines).toContainEqual(expect.stringMatching(/^Next: dry to the touch/));
    expect(lines.join(' ')).toContain('film measured, released');
  });

  it('given a part that is held, then that stands first', async () => {
    const { tone, lines } = await (
      await talkAfter(...stirred, 'filter 1', 'coat new impeller-7 1 brush', 'hold impeller-7 orange peel')
    )('card impeller-7');
    expect([tone, lines[0]]).toEqual(['warn', expect.stringContaining('orange peel')]);
  });

  it('given a night read after the air, then the air still counts as read', async () => {
    const { lines } = await (await talkAfter('air 22C 50%', 'surface 21C', 'mix 2.4kg'))('card 1');
    expect(lines).toContainEqual(expect.stringContaining('air 22 °C 50 %'));
  });
});

describe('what the paper asks, said before the act', () => {
  it('given a mix, then its card says what to wear and how fast to stir, once, and asks one thing', async () => {
    const say = await talkAfter('air 22C 50%');
    const { lines, actions } = await say('mix 2.4kg');
    expect(lines).toContain('Mixing: wear gloves, goggles.');
    expect(lines.filter((line) => line.includes('vortex'))).toHaveLength(1);
    expect(lines.filter((line) => line.endsWith('?'))).toHaveLength(1);
    expect(actions.map(({ label }) => label)).toEqual(expect.arrayContaining(['Rated', 'Not rated']));
  });

  it('given enough stirring, then it says through what to filter, and into what', async () => {
    const { lines } = await (await talkAfter(...weighed, 'wait 110m'))('stop 1');
    expect(lines).toContainEqual(expect.stringContaining('Filter through 1 µm glass fibre into a second clean vessel'));
  });

  it('given a crew that measures in mils, then a filter is of micrometres all the same', async () => {
    const inMils = { ...sprayCrew, people: sprayCrew.people.map((person) => ({ ...person, units: 'us' as const })) };
    const { say, close } = sessionTalk(':memory:', inMils);
    for (const line of [...weighed, 'wait 110m']) await say(line);
    expect((await say('stop 1')).card.lines).toContainEqual(expect.stringContaining('Filter through 1 µm glass fibre'));
    close();
  });

  it('given a filtered pot, then each way is a tap before the coat; after one, only its own stands there', async () => {
    const say = await talkAfter(...stirred);
    const { lines: first, actions } = await say('filter 1');
    expect(first).toContain('Before the coat tap its method: it says how that goes on, and what to wear.');
    expect(first.join(' ')).not.toMatch(/Dip:|Brush:/);
    const ways = actions.filter(({ id }) => id.startsWith('way-'));
    expect(ways.map(({ label }) => label)).toEqual([
      'How: flow',
      'How: dip',
      'How: brush',
      'How: roller',
      'How: spray',
    ]);
    const way = await say('tap way-dip');
    expect(way.lines.slice(0, 2)).toEqual(['Dip: once, and slowly.', 'Dip: wear gloves, goggles, an apron.']);
    expect(way.actions.map(({ line }) => line)).toEqual(['coat {part} 1 dip']);
    await say('coat new impeller-7 1 dip');
    for (const line of ['mix 1kg', 'weigh 2 500g 500g', 'wait 110m']) await say(line);
    const { lines } = await say('filter 2');
    expect(lines).toContain('Dip: once, and slowly.');
    expect(lines).toContain('Dip: wear gloves, goggles, an apron.');
    expect(lines.join(' ')).not.toContain('Brush:');
  });

  it('given a spray coat, then what its film is expected to look like stands after it', async () => {
    const { lines } = await (await talkAfter(...stirred, 'filter 1'))('coat new impeller-7 1 spray already');
    expect(lines).toContain('Sprayed: a fine orange peel or mottle is to be expected.');
  });
});

describe('stirring on', () => {
  it('given it was filtered, then its card says when, and that the coat is next', async () => {
    const say = await talkAfter(...stirred, 'filter 1', 'wait 5m');
    const { lines } = await say('stir 1');
    expect(lines).toEqual(['Filtered already, at 09:51.', 'The stir time is given. Next: coat.']);
  });

  it('given a coat and no filter told, then it asks to have that said, and does not send the pot to the filter', async () => {
    const say = await talkAfter(...stirred, 'coat new lid-1 1 brush already');
    expect((await say('stir 1')).lines.at(-1)).toMatch(/nobody said that it was filtered: say filter 1 already\.$/);
    expect((await say('filter 1 already')).title).toContain('filtered');
  });
});

describe('the speed of the stirrer', () => {
  const faster =
    '450 rpm is faster than the sheet’s 100 to 400 rpm: air beaten in shortens the pot life, the sheet does not say by how much.';

  it('given a mix, then its range stands with the vortex before the stir', async () => {
    const { lines } = await (await talkAfter('air 22C 50%'))('mix 2.4kg');
    expect(lines).toContainEqual(expect.stringContaining('slight vortex (100 to 400 rpm) and no faster'));
  });

  it('given it is told, then its card and the trace have it, with a remark where it is outside', async () => {
    const say = await talkAfter(...weighed);
    const within = await say('stir 1 300rpm');
    expect(within.facts.find(({ id }) => id === 'stirrer-speed')?.shown).toBe('300 rpm');
    expect(within.lines.join(' ')).not.toContain('rpm');
    expect((await say('stir 1 450rpm')).lines).toContain(faster);
    expect((await say('stir 1 350rpm')).lines.join(' ')).not.toContain('faster');
    const { lines } = await say('trace 1');
    expect(lines).toContain(faster);
    expect(lines.join(' ')).toContain('stirrer on, speed of the stirrer 450 rpm');
    for (const line of ['wait 110m', 'filter 1']) await say(line);
    await say('coat new impeller-7 1 brush');
    expect((await say('trace impeller-7')).lines).toContain(faster);
    expect((await say('traveller impeller-7')).lines.join(' ')).not.toContain('undefined');
  });
});

describe('a part that warms in an oven', () => {
  it('given two readings on it, then its card says that the time goes by their pace', async () => {
    const say = await talkAfter(...stirred, 'filter 1', 'coat new impeller-7 1 brush', 'wait 12m', 'dry impeller-7');
    for (const line of ['cure impeller-7 oven 95C', 'wait 10m', 'temp impeller-7 35C', 'wait 10m']) await say(line);
    const { lines } = await say('temp impeller-7 65C');
    expect(lines).toContain(
      'Estimate by the reading of 10:23 and its pace since the one before, in an oven of 95 °C. Read the part.',
    );
  });
});

describe('the lid of a pot', () => {
  it('given it is off, then its card says the sheet’s most; past it, that it was too long, in the trace too', async () => {
    const say = await talkAfter(...weighed);
    expect((await say('uncover 1')).lines).toContain('By the sheet the lid may be off for 30 min in all.');
    await say('wait 35m');
    const { tone, facts, lines } = await say('cover 1');
    const tooLong = 'Since B met A it stood uncovered for 35 min; the sheet allows 30 min in all.';
    expect(lines).toContain(tooLong);
    expect([tone, facts.find(({ id }) => id === 'uncovered')?.value]).toEqual(['warn', 35]);
    const trace = await say('trace 1');
    expect(trace.facts.find(({ id }) => id === 'uncovered')?.value).toBe(35);
    expect(trace.lines).toContainEqual(expect.stringContaining(tooLong));
  });
});
