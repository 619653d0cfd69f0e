// What is printed on a can, read off or pasted: it opens the can, or is offered, and which of A and B it is nobody guesses.

import { describe, expect, it, onTestFinished } from 'vitest';
import { sessionTalk, sprayCrew } from '../../cards/session-talk.ts';

async function answerTo(line: string, language: 'en' | 'es' = 'en') {
  const people = sprayCrew.people.map((person) => ({ ...person, language }));
  const talk = sessionTalk(':memory:', { ...sprayCrew, people });
  onTestFinished(talk.close);
  const answer = await talk.say(line);
  return { ...answer, lines: answer.card.actions.map((action) => action.line) };
}

describe('a label alone', () => {
  it.each<[string, 'en' | 'es', string]>([
    ['Part A lot 7731 5 kg exp December 2026', 'en', 'A lot 7731 5kg exp 2026-12-31'],
    ['LOT: 8820-B / EXP 12.2026 / NET 5 KG / COMPONENT B', 'en', 'B lot 8820-B 5kg exp 2026-12-31'],
    ['COMPONENT A LOT NO. 7731 NET WT 11 LB EXP 12/2026', 'en', 'A lot 7731 11lb exp 2026-12-31'],
    ['PART A\nLOT 7731\nNET 5 KG\nUSE BY 31.12.2026', 'en', 'A lot 7731 5kg exp 2026-12-31'],
    ['PART A BATCH 7731 NET 5 KG BEST BEFORE 12/26', 'en', 'A lot 7731 5kg exp 2026-12-31'],
    ['COMPONENTE A LOTE 7731 5 KG CAD DIC 2026', 'es', 'A lot 7731 5kg exp 2026-12-31'],
    ['PARTE B / LOTE 8820 / PESO NETO 5 KG / VENCE 12.2026', 'es', 'B lot 8820 5kg exp 2026-12-31'],
  ])('given %j, then one tap opens the can and another books it in', async (line, language, told) => {
    const answer = await answerTo(line, language);
    const [, amount = ''] = / (\d+(?:kg|lb)) /.exec(told) ?? [];
    expect(answer.recorded).toBe(false);
    expect(answer.lines).toEqual([`open ${told}`, `received ${amount} ${told.replace(` ${amount}`, '')}`]);
  });
});

describe('a label read off of a can that was opened', () => {
  it.each<[string, 'en' | 'es', string]>([
    ['opened this one: PART B / LOT 8831 / 5 KG / EXP 03-2027', 'en', 'open B lot 8831 5kg exp 2027-03-31'],
    ['A-7742 5.0 kg 12/26 just opened it', 'en', 'open A lot 7742 5.0kg exp 2026-12-31'],
    ['Opened under argon: PART A / LOT 7740 / NET 5 KG', 'en', 'open A lot 7740 5kg gas'],
    [
      'he abierto un bote nuevo de B, lote 8831, 5 kilos, caduca en marzo de 2027',
      'es',
      'open B lot 8831 5kg exp 2027-03-31',
    ],
  ])('given %j, then it is taken', async (line, language, as) => {
    const answer = await answerTo(line, language);
    const strict = await answerTo(as, language);
    expect([answer.code, answer.recorded]).toEqual([strict.code, strict.recorded]);
    expect(answer.text).toMatch(/^.*\n(?:.*\n)*.*(?:Taken as|Entendido como): /);
  });

  it('given its lot was dictated digit by digit, then one tap opens it', async () => {
    const answer = await answerTo(
      'opened another can of part a it says lot seven seven four zero eleven pounds and we have gas',
    );
    expect(answer.lines).toEqual(['open A lot 7740 11lb gas']);
  });
});

describe('a label with talk round it', () => {
  it.each<[string, 'en' | 'es', string]>([
    [
      "PART A LOT 7731 NET 5 KG EXP 2027-01 <- just cracked this one, argon's right here",
      'en',
      'open A lot 7731 5kg exp 2027-01-31 gas',
    ],
    ['cracked a tin of part B. sticker on it shows LOT 8841 / 5 kg', 'en', 'open B lot 8841 5kg'],
    ['COMP. B · LOTE 8841 · 5 KG · CAD. 2026-11 · recién abierto', 'es', 'open B lot 8841 5kg exp 2026-11-30'],
    [
      'just cracked a new tin of A, lot 7731, 5 kg, good til end of dec 26, argon on',
      'en',
      'open A lot 7731 5kg exp 2026-12-31 gas',
    ],
    [
      'just opened PART A LOT 7740 NET 5 KG EXP 2026-12, argon bottle is right here',
      'en',
      'open A lot 7740 5kg exp 2026-12-31 gas',
    ],
    ['cracked a fresh can of B, lot 8850, five kilos, expires 3/31/27', 'en', 'open B lot 8850 5kg exp 2027-03-31'],
    [
      'abrí un bote nuevo del B, lote 8850, un kilo, caduca a finales de marzo del 27',
      'es',
      'open B lot 8850 1kg exp 2027-03-31',
    ],
    ['PART A LOT 7731 NET 5 KG just cracked this one open, gas is here', 'en', 'open A lot 7731 5kg gas'],
    ['abro una lata nueva de A, lote 7755, 5 kilos, y le pongo argón', 'es', 'open A lot 7755 5kg gas'],
    ['cracked A ten minutes ago, lot 7740, 5 kg, argon on', 'en', 'open A lot 7740 5kg gas 10m ago'],
    ['cracked part B at 7:40, lot 8850, 5 kg, exp 12/26', 'en', 'open B lot 8850 5kg exp 2026-12-31 at 7:40'],
  ])('given %j, then it opens the can', async (line, language, as) => {
    const answer = await answerTo(line, language);
    const strict = await answerTo(as, language);
    expect([answer.code, answer.recorded]).toEqual([strict.code, strict.recorded]);
    expect(answer.text).toMatch(/^.*\n(?:.*\n)*.*(?:Taken as|Entendido como): /);
    // When it was, what is in it and until when it lasts is told by the card.
    const told = (text: string): readonly string[] =>
      text.split('\n').filter((row) => !/Taken as|Entendido como|^ +>/.test(row));
    expect(told(answer.text)).toEqual(told(strict.text));
  });

  it.each(['out of gas', 'the gas is gone', 'low on argon', 'no gas', 'no argon here', 'argon bottle is empty'])(
    'given %s with it, then no gas is told',
    async (said) => {
      const answer = await answerTo(`opened part A lot 7731 5 kg, ${said}`);
      expect([answer.recorded, answer.lines]).toEqual([false, ['open A lot 7731 5kg']]);
    },
  );

  it.each(['se acabó el argón', 'sin argón', 'no hay gas'])('given %s with it, then no gas is told', async (said) => {
    const answer = await answerTo(`abierta la parte A, lote 7731, 5 kg, ${said}`, 'es');
    expect([answer.recorded, answer.lines]).toEqual([false, ['open A lot 7731 5kg']]);
  });

  it.each<[string, 'en' | 'es', string]>([
    ['two tins of A came in, lot 7750, 1 kg a piece', 'en', 'received 2 x 1kg A lot 7750'],
    ['llegaron dos cubetas de B, lote 8874, 5 kg cada una', 'es', 'received 2 x 5kg B lot 8874'],
  ])('given %j, then as many as were said are booked in', async (line, language, as) => {
    const answer = await answerTo(line, language);
    const strict = await answerTo(as, language);
    expect(answer.recorded).toBe(true);
    expect(answer.text.split('\n')[0]).toBe(strict.text.split('\n')[0]);
  });

  it.each<[string, 'en' | 'es', string]>([
    ['got 4 cans of A in, 5kg each, lot 7745 exp 2026-12', 'en', 'received 4 x 5kg A lot 7745 exp 2026-12-31'],
    ['B lot 8841 2 x 5 kg on the shelf', 'en', 'received 2 x 5kg B lot 8841'],
    ['4 botes de A de 5kg cada uno, lote 7745', 'es', 'received 4 x 5kg A lot 7745'],
  ])('given %j, then one tap books in as many', async (line, language, as) => {
    const answer = await answerTo(line, language);
    expect([answer.recorded, answer.lines]).toEqual([false, [as]]);
  });
});

describe('what is no label', () => {
  it.each([
    'lot 7731 5kg exp 2026-12',
    'part A and part B lot 7731 5kg',
    'do not open part A lot 7731 5kg yet',
    'is part A lot 7731 5kg open?',
    'part A 5 kg',
    'is A lot 7731 open',
    'who opened A lot 7731',
    'we never opened A lot 7731',
    'opened 4 cans of A lot 7731 5kg',
    'new can of part A lot 7731 5kg exp 6 december',
    'new can of part A lot 7731 5kg exp soon',
    'about to open part B lot 8850 5kg',
    'voy a abrir un bote de B, lote 8850, 1 kg',
    'hay que abrir la parte B, lote 8850, 5 kg',
    'vamos a abrir la parte B, lote 8850, 5 kg',
  ])('given %j, then no can is opened or offered', async (line) => {
    const answer = await answerTo(line, /^[vh]/.test(line) ? 'es' : 'en');
    expect(answer.recorded).toBe(false);
    expect(answer.lines.filter((each) => /^(open|received)/.test(each))).toEqual([]);
  });
});

it('given a can whose size nobody has told, when the size is asked and said alone, then it opens', async () => {
  const talk = sessionTalk(':memory:', sprayCrew);
  onTestFinished(talk.close);
  await talk.say('open B lot 8820');
  expect((await talk.say('5 kilos')).card.lines.join()).toMatch(/Taken as: open B lot 8820 5 kilos/);
});
