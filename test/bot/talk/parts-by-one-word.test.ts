// Many parts by one word, the same for others, and several acts in one line: what is sure is recorded, the rest is one tap that says all that it
// does. Through the whole bot, on a clock of its own. All figures are invented.

import { describe, expect, it, onTestFinished } from 'vitest';
import { sessionTalk, sprayCrew } from '../cards/session-talk.ts';

const spanish = { ...sprayCrew, people: sprayCrew.people.map((person) => ({ ...person, language: 'es' as const })) };

async function talkBehind(lines: readonly string[], crew: typeof sprayCrew = sprayCrew) {
  const talk = sessionTalk(':memory:', crew);
  onTestFinished(talk.close);
  for (const line of lines) await talk.say(line);
  return talk;
}

const parts = [1, 2, 3, 4].map((n) => `part impeller-${n} job 87`);
const weighed = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1201g 1198g', ...parts, 'part pump-housing-3 job 90'];
const coated = [...weighed, 'coat impeller-1 impeller-2 1 brush already', 'wait 20m'];

describe('many parts by one word', () => {
  it.each([
    ['they are all dry', sprayCrew, 'Impeller-1, impeller-2: dry to the touch'],
    ['both are dry', sprayCrew, 'Impeller-1, impeller-2: dry to the touch'],
    ['the impellers are dry', sprayCrew, 'Impeller-1, impeller-2: dry to the touch'],
    ['ya están secas todas', spanish, 'Impeller-1 e impeller-2: película seca al tacto'],
    ['las dos secas', spanish, 'Impeller-1 e impeller-2: película seca al tacto'],
  ] as const)(
    'given two that are wet, when "%s" is said, then one tap names them, and nothing is recorded',
    async (said, crew, label) => {
      const talk = await talkBehind(coated, crew);
      const answer = await talk.say(said);
      expect(answer.recorded).toBe(false);
      expect(answer.card.actions.map((action) => [action.label, action.line])).toEqual([
        [label, 'dry impeller-1 impeller-2'],
      ]);
      expect((await talk.say(`tap ${answer.card.actions[0]?.id}`)).recorded).toBe(true);
    },
  );

  const three = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1201g 1198g', 'part hub-1 hub-2 hub-3'];
  const wet = [...three, 'coat hub-1 hub-2 hub-3 1 brush already', 'wait 20m'];

  it.each([
    ['all three touch dry', wet, sprayCrew, 'hub-1: dry to the touch'],
    ['ya secaron las tres', wet, spanish, 'hub-1: película seca al tacto'],
    ['put all three in the oven', [...wet, 'dry hub-1 hub-2 hub-3'], sprayCrew, 'hub-1: in cure'],
    ['I degreased all three', three, sprayCrew, 'hub-1: prepared'],
  ] as const)(
    'given there are three in all and no other part, when "%s" is said, then it is taken',
    async (said, lines, crew, told) => {
      const answer = await (await talkBehind(lines, crew)).say(said);
      expect(answer.recorded).toBe(true);
      expect(answer.card.title).toContain(told);
      expect(answer.card.title).toContain('hub-3');
    },
  );

  it.each(['all four are dry', 'are all three dry', 'all three should be dry', 'not all three are dry'])(
    'given there are three in all, when "%s" is said, then nothing is recorded',
    async (said) => {
      expect((await (await talkBehind(wet)).say(said)).recorded).toBe(false);
    },
  );

  it('given a part by its order behind two that were coated, then it is the one tap', async () => {
    const talk = await talkBehind([...three, 'wait 103m', 'filter 1', 'brushed hub-1', 'hub-2 brushed as well']);
    const { card, recorded } = await talk.say('3rd one done too');
    expect(recorded).toBe(false);
    expect(card.actions.map(({ line }) => line)).toEqual(['coat hub-3 1 brush']);
  });

  it('given two of three are coated, when the last one is said to be as well, then it is the one tap, and no undo', async () => {
    const talk = await talkBehind([...three, 'wait 103m', 'filter 1', 'brushed hub-1', 'same for hub-2']);
    const { card } = await talk.say('and the last one');
    expect(card.actions.map(({ line }) => line)).toEqual(['coat hub-3 brush']);
  });

  it('given the last act was objected to, then the same for another is no act before it', async () => {
    const talk = await talkBehind([
      'air 24C 48%',
      'mix 2.4kg',
      'part hub-1 hub-2',
      'surface hub-1 22C',
      'brushed hub-1',
    ]);
    expect((await talk.say('same for hub-2')).recorded).toBe(false);
  });

  it('given only one is in the oven, when both are said to read 90, then none of them is taken for two', async () => {
    const talk = await talkBehind([...coated, 'dry impeller-1 already', 'cure impeller-1 oven 90C already']);
    const answer = await talk.say('both in the oven are at 90');
    expect(answer).toMatchObject({ recorded: false });
    expect(answer.card.actions.filter(({ line }) => line.startsWith('temp'))).toEqual([]);
  });

  it('given two are in the oven, when both are said to read 90, then one tap says it of each', async () => {
    const inOven = ['dry impeller-1 impeller-2 already', 'cure impeller-1 impeller-2 oven 90C already'];
    const talk = await talkBehind([...coated, ...inOven]);
    const answer = await talk.say('both in the oven are at 90');
    expect(answer.recorded).toBe(false);
    expect(answer.card.actions.map(({ line }) => line)).toEqual(['temp impeller-1 90C; temp impeller-2 90C']);
  });

  it('given a word for those that are left, then it is what can be done now', async () => {
    const talk = await talkBehind(coated);
    const { card } = await talk.say('coated the rest of job 87 with the brush from batch 1');
    expect(card.actions.map(({ line }) => line)).toEqual(['coat impeller-3 impeller-4 1 brush']);
  });

  it.each([
    ['brushed all of 87 from batch 1 except 3', sprayCrew],
    ['all but 3 of job 87 are brushed, batch 1', sprayCrew],
    ['pintadas a brocha todas las del 87 menos la 3, mezcla 1', spanish],
  ] as const)('given "%s", then the tap leaves that one out', async (said, crew) => {
    const talk = await talkBehind(weighed, crew);
    const { card, recorded } = await talk.say(said);
    expect(recorded).toBe(false);
    expect(card.actions.map(({ line }) => line)).toEqual(['coat impeller-1 impeller-2 impeller-4 1 brush']);
  });

  it.each(['all but 3 are not wiped', 'all but 3 still to be wiped'])(
    'given "%s", then no tap does it',
    async (said) => {
      const { card } = await (await talkBehind(weighed)).say(said);
      expect(card.actions.filter(({ line }) => /^(?:prep|coat)/.test(line))).toEqual([]);
    },
  );

  it.each([
    ['the steel one is 20 C', sprayCrew],
    ['la de acero está a 20 grados', spanish],
  ] as const)('given "%s", then it is read of the only part of that metal, and not of the room', async (said, crew) => {
    const talk = await talkBehind([...weighed, 'part pump-housing-3 steel'], crew);
    const { card, recorded } = await talk.say(said);
    const told = recorded ? card.title : (card.actions[0]?.line ?? '');
    expect(told).toContain('pump-housing-3');
  });

  it('given a figure of several by one word, then one tap says it of each', async () => {
    const talk = await talkBehind(coated);
    const { card, recorded } = await talk.say('wet film on both is 60 um');
    expect(recorded).toBe(false);
    expect(card.actions[0]?.line).toBe('wet impeller-1 60 um; wet impeller-2 60 um');
  });
});

describe('the same for others', () => {
  const first = [...weighed, 'prep impeller-1 wiping'];

  it.each([
    ['same for 2 and 4', sprayCrew],
    ['ditto impeller-2, impeller-4', sprayCrew],
    ['2 and 4 too', sprayCrew],
    ['lo mismo con la 2 y la 4', spanish],
    ['la 2 y la 4 igual', spanish],
    ['2 and 4, same pot', sprayCrew],
    ['la 2 y la 4 también, misma mezcla', spanish],
  ] as const)('given "%s", then the latest act is recorded of them', async (said, crew) => {
    const talk = await talkBehind(first, crew);
    const { recorded, card } = await talk.say(said);
    expect(recorded).toBe(true);
    expect(card.lines.join(' ')).toMatch(/impeller-2 impeller-4 (?:wiping|trapo)/);
  });

  it('given the rest, then it is a tap that names them', async () => {
    const talk = await talkBehind(first);
    const { recorded, card } = await talk.say('same for the rest of job 87');
    expect(recorded).toBe(false);
    expect(card.actions.map(({ line }) => line)).toEqual(['prep impeller-2 impeller-3 impeller-4 wiping']);
  });

  it.each([
    ['and impeller-2', sprayCrew],
    ['y la 2', spanish],
  ] as const)('given no more than "%s", then it is a tap that goes on with the latest act', async (said, crew) => {
    const talk = await talkBehind(first, crew);
    const { recorded, card } = await talk.say(said);
    expect([recorded, card.actions.map(({ line }) => line)]).toEqual([false, ['prep impeller-2 wiping']]);
  });

  it.each([
    ['the other three as well', sprayCrew, ['prep impeller-2 impeller-3 impeller-4 wiping']],
    ['las otras tres igual', spanish, ['prep impeller-2 impeller-3 impeller-4 wiping']],
    [
      'the others too, same pot',
      sprayCrew,
      ['prep impeller-2 impeller-3 impeller-4 wiping', 'prep impeller-2 impeller-3 impeller-4 pump-housing-3 wiping'],
    ],
  ] as const)('given "%s", then a tap for each way that it may be meant', async (said, crew, taps) => {
    const talk = await talkBehind(first, crew);
    const { recorded, card } = await talk.say(said);
    expect(recorded).toBe(false);
    expect(card.actions.map(({ line }) => line)).toEqual(taps);
  });

  it('given it was long ago, then nothing is recorded at once', async () => {
    const talk = await talkBehind([...first, 'wait 11m']);
    expect((await talk.say('same for 2')).recorded).toBe(false);
  });

  it('given a number that two parts have, then it is the one of the same kind', async () => {
    const talk = await talkBehind(first);
    expect((await talk.say('same for 3')).card.title).toContain('impeller-3');
  });
});

describe('several acts in one line', () => {
  it('given all of them sure, then each is recorded', async () => {
    const talk = await talkBehind(coated);
    const { recorded, card } = await talk.say('1 is dry, 4 is wiped down');
    expect([recorded, card.title]).toEqual([true, expect.stringMatching(/impeller-1.*impeller-4/)]);
  });

  it('given one that is not sure, then one tap does all, and nothing is recorded before', async () => {
    const talk = await talkBehind(coated);
    const { recorded, card } = await talk.say('impeller-1 is dry and impeller-4 wiped down qwxv');
    expect(recorded).toBe(false);
    expect(card.actions[0]).toMatchObject({
      label: 'Impeller-1: dry to the touch; impeller-4: prepared wiped',
      line: 'dry impeller-1; prep impeller-4 wiping',
    });
    expect(card.actions.slice(1).map(({ line }) => line)).toEqual(['dry impeller-1', 'prep impeller-4 wiping']);
  });

  it('given one that nobody can make out, then the card says which was left out', async () => {
    const talk = await talkBehind(coated);
    const { card } = await talk.say('impeller-1 is dry, released batch 7');
    expect(card.actions.map(({ line }) => line)).toEqual(['dry impeller-1']);
    expect(card.lines.join(' ')).toContain('released batch 7');
  });

  it('given one that lacks how it was done, then the card says that it was left out', async () => {
    const talk = await talkBehind(coated);
    const { card } = await talk.say('impeller-1 is dry and put a coat on impeller-4');
    expect(card.lines.join(' ')).toContain('coat impeller-4');
  });

  it('given acts parted by a semicolon, then each is said', async () => {
    const talk = await talkBehind(coated);
    expect((await talk.say('dry impeller-1; dry impeller-2')).recorded).toBe(true);
  });

  it('given a lid that goes on behind gas, then no pot is covered', async () => {
    const talk = await talkBehind([...weighed, 'open A lot A42 2.5kg gas'], spanish);
    const { card } = await talk.say('le eché argón a la lata 2 y la tapé');
    expect(card.title).not.toMatch(/Mezcla/);
  });
});
