// What was taken off a surface and with what: on its card, in the day, in the trace, corrected, and in both tongues; what is
// offered after a coat, and what drains from it.

import { describe, expect, it, onTestFinished } from 'vitest';
import { sessionTalk, sprayCrew, talkAfter, taps, value } from './session-talk.ts';

describe('a touch-up', () => {
  it('given a sheet that gives it a time, then it is offered of a brushed coat and never of a poured one', async () => {
    const lines = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 110m', 'filter 1 already'];
    const { say } = await talkAfter(...lines, 'part lid-6', 'part lid-7');
    expect(taps(await say('coat lid-6 1 flow already'))).not.toHaveProperty('touch-up');
    expect(taps(await say('coat lid-7 1 brush already'))).toHaveProperty('touch-up');
  });
});

describe('what drains', () => {
  it('given more said to be caught than was mixed, then the card says both figures, and whoever went ahead stands in the trace', async () => {
    const lines = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 110m', 'filter 1 already', 'part lid-6'];
    const { say } = await talkAfter(...lines, 'coat lid-6 1 flow already');
    expect((await say('catch 1 9kg')).text).toContain('9000 g would then stand caught, and 2400 g was mixed.');
    await say('catch 1 9kg already');
    expect((await say('trace 1')).text).toContain('9000 g would then stand caught');
  });
});

describe('what was taken off a surface', () => {
  it('given a part that was degreased, then its card, the day and the trace tell what went and with what', async () => {
    const { say } = await talkAfter('part lid-6');
    const { card } = await say('prep lid-6 degreased acetone, rust off');
    expect(card.title).toBe('lid-6: prepared, oil, grease, rust off, with acetone');
    const told = 'prepared oil, grease, rust off, with acetone';
    expect((await say('day')).card.lines).toContain(`lid-6: ${told}`);
    expect((await say('trace lid-6')).text).toContain(told);
  });

  it('given more is said before the coat, then the card has all of it', async () => {
    const { say } = await talkAfter('part lid-6', 'prep lid-6 degreased acetone');
    expect((await say('prep lid-6 sa2.5 rust off')).card.title).toBe(
      'lid-6: prepared, Sa 2½, oil, grease, rust off, with acetone',
    );
  });

  it('given a wrong word, then it is put right, and the trace keeps both', async () => {
    const { say } = await talkAfter('part lid-6', 'prep lid-6 sa2 rust off');
    await say('amend lid-6 prep sa2.5 old-coat-off wrong part of the list');
    const { text } = await say('trace lid-6');
    expect(text).toContain('prepared Sa 2½, the old coat off');
    expect(text).toContain('prepared Sa 2, rust off');
  });

  it('given whoever types Spanish, then it is read and told in it', async () => {
    const people = sprayCrew.people.map((person) => ({ ...person, language: 'es' }));
    const talk = sessionTalk(':memory:', { ...sprayCrew, language: 'es', people });
    onTestFinished(talk.close);
    await talk.say('part tapa-6');
    const { card } = await talk.say('desengrasada tapa-6 con acetona, sin óxido');
    expect(card.title).toBe('tapa-6: superficie preparada, sin aceite, grasa y óxido, con acetona');
  });

  it('given nothing of how, then it is asked for', async () => {
    const { say } = await talkAfter('part lid-6');
    expect((await say('prep lid-6')).card.actions[0]?.line).toBe('prep lid-6 sa2.5');
  });

  it('given steel that was blasted and later only wiped, then its life runs from the blasting', async () => {
    const { say } = await talkAfter('set sheet demo-build', 'air 20C 50%', 'part lid-6', 'prep lid-6 sa2.5', 'wait 2h');
    const wiped = await say('prep lid-6 wiped with ipa');
    expect(wiped.card.title).toBe('lid-6: prepared, Sa 2½, wiped, with isopropyl alcohol');
    expect(value(wiped, 'surface-ends-at')).toBe('2026-03-02T12:00:00Z');
  });
});
