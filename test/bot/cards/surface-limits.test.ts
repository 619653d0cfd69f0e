// What the sheet asks of the steel before its coat: told as a reading is typed, held against the coat, marked in the trace.
// The demo clear asks for Sa 2½ or SP 10, 25 to 75 um, 20 mg/m2 and dust 2: invented.

import { describe, expect, it, onTestFinished } from 'vitest';
import { askedSteps } from '../../../core/steps/step-rows.ts';
import { sessionTalk, sprayCrew, talkAfter, taps } from './session-talk.ts';

const pot = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 110m', 'filter 1 already'];
const outside = [
  'Prepared to Sa 2: Demo Clear asks for Sa 2½ or SP 10.',
  'Profile 90 µm: Demo Clear asks for 25 µm to 75 µm.',
  'Salts 30 mg/m²: Demo Clear allows 20 mg/m² at most.',
  'Dust 3: Demo Clear allows 2 at most.',
];

describe('a surface outside what the sheet asks', () => {
  it('given it is typed, then its card says so of each figure', async () => {
    const { say } = await talkAfter('part lid-6');
    const { card } = await say('prep lid-6 sa2 90um salts 30mg/m2 dust 3');
    expect(card.tone).toBe('warn');
    expect(card.lines).toEqual(expect.arrayContaining(outside));
  });

  it('given a coat on it, then it objects, and whoever went ahead stands in the trace and holds the part', async () => {
    const { say } = await talkAfter(...pot, 'part lid-6', 'prep lid-6 sa2 90um salts 30mg/m2 dust 3');
    const { card } = await say('coat lid-6 1 brush');
    expect(card.title).toBe('Not yet');
    expect(card.lines[0]).toContain(outside.join(' '));
    await say('coat lid-6 1 brush already');
    const { text } = await say('trace lid-6');
    expect(text).toContain('On hold: coated on a surface outside what is asked');
    expect(text).toContain(outside[1]);
  });

  it('given it was worked again and measured, then the coat goes on', async () => {
    const { say } = await talkAfter(...pot, 'part lid-6', 'prep lid-6 sa2 90um', 'prep lid-6 sa3 60um');
    expect((await say('coat lid-6 1 brush')).card.title).toBe('lid-6: coated (brush, batch 1)');
  });

  it('given a wrong figure that is put right, then nothing stands against it', async () => {
    const { say } = await talkAfter(...pot, 'part lid-6', 'prep lid-6 sa2.5 90um');
    await say('amend lid-6 prep 70um misread');
    expect((await say('coat lid-6 1 brush')).card.title).toBe('lid-6: coated (brush, batch 1)');
  });

  it('given a cleaner grade of the same series, then it serves; one of another series does not', async () => {
    const { say } = await talkAfter('part lid-6', 'part lid-7');
    expect((await say('prep lid-6 sp5')).card.tone).toBe('plain');
    expect((await say('prep lid-7 st3')).card.lines[0]).toBe('Prepared to St 3: Demo Clear asks for Sa 2½ or SP 10.');
  });

  it('given whoever types Spanish, then it is told in it', async () => {
    const people = sprayCrew.people.map((person) => ({ ...person, language: 'es' }));
    const talk = sessionTalk(':memory:', { ...sprayCrew, language: 'es', people });
    onTestFinished(talk.close);
    await talk.say('pieza tapa-6');
    const { card } = await talk.say('prep tapa-6 sa2.5 90um');
    expect(card.lines[0]).toBe('Perfil de rugosidad 90 µm: Demo Clear pide de 25 µm a 75 µm.');
  });
});

describe('what a job asks of the steel', () => {
  const asked = 'job 88 asks profile 40-75um, salts 10mg/m2, grade Sa 3, dust 1';

  it('given a lead says it, then it stands, a later line adds to it, and it is taken back', async () => {
    const { say } = await talkAfter();
    const first = await say(asked);
    expect(first.card.lines).toEqual([
      'Asked by job: 88: Sa 3, profile 40 µm to 75 µm, salts at most 10 mg/m², dust at most 1',
    ]);
    expect((await say('job 88 asks dust 2')).card.lines[0]).toContain('salts at most 10 mg/m², dust at most 2');
    await say('undo');
    await say('part lid-6 job 88');
    expect((await say('prep lid-6 sa3 dust 2')).card.lines[0]).toBe('Dust 2: job 88 allows 1 at most.');
  });

  it('given a crew hand says it, then it is the lead’s', async () => {
    const { say } = await talkAfter();
    expect((await say('@kari: job 88 asks dust 1')).recorded).toBe(false);
  });

  it('given a part of the job outside it, then it objects, and only a part of another job goes on', async () => {
    const { say } = await talkAfter(
      ...pot,
      asked,
      'part lid-6 job 88',
      'part lid-7 job 89',
      'prep lid-6, lid-7 sa3 30um',
    );
    expect((await say('coat lid-6 1 brush')).text).toContain('Profile 30 µm: job 88 asks for 40 µm to 75 µm.');
    expect((await say('coat lid-7 1 brush')).recorded).toBe(true);
  });

  it('given it is asked after the coat, then the coat stands as it was', async () => {
    const { say } = await talkAfter(
      ...pot,
      'part lid-6 job 88',
      'prep lid-6 sa3 30um',
      'coat lid-6 1 brush',
      'wait 5m',
    );
    await say(asked);
    expect((await say('trace lid-6')).text).toContain('Deviations: 0');
  });

  it('given a job that asks no more, then only the sheet does', async () => {
    const { say } = await talkAfter(asked, 'part lid-6 job 88', 'set job 88 off');
    expect((await say('prep lid-6 sa2.5 30um dust 2')).card.tone).toBe('plain');
  });

  it('given one figure of two, then it is asked for both', async () => {
    const { say } = await talkAfter();
    expect((await say('job 88 asks profile 40um')).recorded).toBe(false);
  });
});

const answered = askedSteps.map((step) => `confirm ${step} yes`);

describe('what the sheet wants off the steel', () => {
  it('given the first part, then it is said before it is prepared, and of later ones no more', async () => {
    const { say } = await talkAfter();
    const told = 'Before its coat, off it by Demo Clear: oil, grease, dust, rust, the old coat.';
    expect((await say('part lid-6')).card.lines).toContain(told);
    expect((await say('part lid-7')).card.lines).not.toContain(told);
  });

  it('given parts of several jobs, then the first of each hears it, and the first after the next batch was opened', async () => {
    const { card } = await talkAfter();
    const told = 'Before its coat, off it by Demo Clear: oil, grease, dust, rust, the old coat.';
    const heard = async (line: string) => (await card(line)).lines.includes(told);
    expect([await heard('part lid-6'), await heard('part lid-6 steel 6mm'), await heard('part lid-7')]).toEqual([
      true,
      false,
      false,
    ]);
    expect([await heard('part valve-1 job 88'), await heard('part valve-2 job 88')]).toEqual([true, false]);
    expect(await heard('part valve-3 job 89')).toBe(true);
    for (const line of ['air 24C 48%', 'mix 1kg']) await card(line);
    expect([await heard('part valve-4 job 88'), await heard('part valve-5 job 88')]).toEqual([true, false]);
    expect(await heard('part lid-8')).toBe(true);
  });

  it('given a part that was cleaned already, then only what is still on it is said, and of a coated one nothing', async () => {
    const { card } = await talkAfter('prep new lid-6 degreased acetone, rust off', ...pot);
    expect((await card('part lid-6')).lines).toContain('Before its coat, off it by Demo Clear: dust, the old coat.');
    await card('coat lid-6 1 brush');
    await card('mix 1kg');
    expect((await card('part lid-6 steel')).lines.join(' ')).not.toContain('off it by');
  });

  it('given a preparation that names less, then the rest is one tap, asked once until the next batch', async () => {
    const { say } = await talkAfter(...answered, 'part lid-6', 'part lid-7');
    const asked = await say('prep lid-6 degreased acetone');
    expect(asked.card.lines).toContain('Dust, rust, the old coat off too? Demo Clear asks for it.');
    expect(taps(asked)['off-too']).toBe('prep lid-6 dust-off rust-off old-coat-off');
    expect((await say('tap off-too')).card.title).toBe(
      'lid-6: prepared, oil, grease, dust, rust, the old coat off, with acetone',
    );
    expect(taps(await say('prep lid-7 degreased acetone'))).not.toHaveProperty('off-too');
    for (const line of ['air 24C 48%', 'mix 1kg']) await say(line);
    expect(taps(await say('prep lid-7 wiped'))).toHaveProperty('off-too');
  });

  it('given a step of the paper that still waits for its answer, then that comes first', async () => {
    const { say } = await talkAfter('air 24C 48%', 'mix 1kg', 'part lid-6');
    expect(taps(await say('prep lid-6 degreased acetone'))).not.toHaveProperty('off-too');
  });

  it('given a grade that says it, then nothing is asked', async () => {
    const { say } = await talkAfter(...answered, 'part lid-6');
    expect(taps(await say('prep lid-6 sa2.5'))).not.toHaveProperty('off-too');
  });

  it('given several parts at once, then the tap is for all of them', async () => {
    const { say } = await talkAfter(...answered, 'part lid-1', 'part lid-2');
    expect(taps(await say('prep lid-1..lid-2 sp1'))['off-too']).toBe('prep lid-1 lid-2 dust-off rust-off old-coat-off');
  });
});

describe('a surface of which nobody said how it was prepared', () => {
  it('given a crew that never says it, then nothing objects, and the paper says not given', async () => {
    const { say } = await talkAfter(...pot, 'part lid-6', 'coat lid-6 1 brush');
    const { text } = await say('trace lid-6');
    expect(text).toContain('Deviations: 0');
    expect(text).toContain(
      'Surface: not given: oil, grease, dust, rust, the old coat, grade, profile, salts, dust left',
    );
  });

  it('given a crew that says it of others, then it objects with a tap, and does no more once it is taken back', async () => {
    const { say } = await talkAfter(...pot, 'part lid-6', 'part lid-7', 'prep lid-7 sa2.5 60um');
    const { card } = await say('coat lid-6 1 brush');
    expect(card.lines[0]).toContain(
      'Nobody has said how it was prepared. Demo Clear asks for Sa 2½ or SP 10, profile 25 µm',
    );
    expect(card.actions.map(({ line }) => line)).toContain('prep lid-6 {grade}');
    await say('undo');
    expect((await say('coat lid-6 1 brush')).recorded).toBe(true);
  });

  it('given it is first kept after a coat, then that coat stands as it was', async () => {
    const { say } = await talkAfter(...pot, 'part lid-6', 'part lid-7', 'coat lid-6 1 brush', 'prep lid-7 sa2.5 60um');
    expect((await say('trace lid-6')).text).toContain('Deviations: 0');
  });

  it('given it is set, then it objects from the first part on; put off, it does not', async () => {
    const { say } = await talkAfter(...pot, 'set prep on');
    expect((await say('coat new lid-6 1 brush')).card.title).toBe('Not yet');
    for (const line of ['set prep off', 'part lid-7', 'prep lid-7 sa2.5']) await say(line);
    expect((await say('coat new lid-6 1 brush')).recorded).toBe(true);
  });

  it('given what was measured, then the trace has it and what is missing', async () => {
    const { say } = await talkAfter(...pot, 'part lid-6', 'prep lid-6 sa2.5 60um', 'coat lid-6 1 brush');
    expect((await say('trace lid-6')).text).toContain('Surface: Sa 2½; not given: salts, dust left');
  });
});
