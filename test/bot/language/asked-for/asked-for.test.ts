// What is asked to be shown, set or taken back in the speaker's own words (invented lines; common practice, no source).

import { describe, expect, it } from 'vitest';
import { readLine } from '../../../../bot/language/read-line.ts';
import type { LineContext } from '../../../../bot/language/reading.ts';
import { shopAtTen, tallerALasDiez } from '../shop-at-ten.ts';

const withParts = (context: LineContext): LineContext => ({ ...context, parts: ['flange-4', 'flange-5'] });
const english = withParts(shopAtTen);
const spanish = withParts(tallerALasDiez);

function read(line: string, context: LineContext) {
  const reading = readLine(line, context);
  if (reading.kind === 'misread') return { taps: reading.misread.suggestions };
  return reading.kind === 'question' ? { asked: reading.question } : { kind: reading.kind };
}

describe('practice that is asked for in other words', () => {
  it.each([
    ['can I have a go without it being recorded', english],
    ['is there somewhere I can mess about first, not for real', english],
    ['quiero hacer una prueba que no cuente', spanish],
    ['déjame ensayar un rato antes de hacerlo de verdad', spanish],
  ])('given %s, then it is practice, and nothing else', (line, context) => {
    expect(read(line, context)).toEqual({ asked: { ask: 'practice' } });
  });
});

describe('what is only to be shown', () => {
  it.each([
    ['throw the details for pot 2 up on the screen', { ask: 'card', of: { batch: 2 } }],
    ['let me take a gander at what we have on the 5', { ask: 'card', of: { part: 'flange-5' } }],
    ['pull up the rundown on pot two', { ask: 'card', of: { batch: 2 } }],
    ['run off the paperwork that travels with flange 4', { ask: 'traveller', of: { part: 'flange-4' } }],
    [
      "shoot the office last week's log in a csv",
      { ask: 'export', span: { kind: 'week', which: 'last' }, form: 'csv' },
    ],
    ['dig through the log for serial 9127', { ask: 'find', key: 'serial', value: '9127' }],
    ['bring up whatever is under job 41', { ask: 'find', key: 'job', value: '41' }],
    ['just got in, what all have we got going', { ask: 'now' }],
    ['have we got the sds somewhere', { ask: 'papers' }],
  ])('given %s, then it is shown', (line, asked) => {
    expect(read(line, english)).toMatchObject({ asked });
  });

  it.each([
    ['échame acá los datos de la mezcla 2', { ask: 'card', of: { batch: 2 } }],
    ['imprímeme el papel que acompaña a la 5, ya viene el camión', { ask: 'traveller', of: { part: 'flange-5' } }],
    ['lo de este mes me lo sacas en un csv', { ask: 'export', span: { kind: 'month', which: 'this' }, form: 'csv' }],
    ['rebusca en los registros la serie 9127', { ask: 'find', key: 'serial', value: '9127' }],
    ['tráeme los papeles del fabricante', { ask: 'papers' }],
  ])('given %s in Spanish, then it is shown', (line, asked) => {
    expect(read(line, spanish)).toMatchObject({ asked });
  });
});

describe('what would be set', () => {
  it.each([
    ['could everything come in pounds and fahrenheit for me', english, 'set units us'],
    ['a mí mejor háblame en inglés', spanish, 'set language en'],
    ['bells in a private message to me only', english, 'set rings direct'],
    ['los avisos que me lleguen por privado', spanish, 'set rings direct'],
  ])('given %s, then one tap sets it', (line, context, tap) => {
    expect(read(line, context)).toEqual({ taps: [tap] });
  });

  it.each([
    ['switch me over to kilos and celsius', english, 'set units metric'],
    ['I prefer to see pounds and fahrenheit', english, 'set units us'],
    ['yo todo lo quiero en libras y fahrenheit', spanish, 'set units us'],
    ['would you mind writing to me in spanish', english, 'set language es'],
  ])('given %s, which is clear and only of how the speaker is told, then it is set', (line, context, set) => {
    expect(readLine(line, context)).toMatchObject({ kind: 'command', command: { verb: 'set' }, takenAs: set });
  });

  it.each([
    ['not in pounds please', english],
    ["don't switch me to pounds and fahrenheit", english],
    ['should I switch over to pounds and fahrenheit', english],
    ['I think we use pounds and fahrenheit', english],
    ['no me lo pongas en libras y fahrenheit', spanish],
    ['¿me lo pones en libras y fahrenheit?', spanish],
  ])('given %s, then nothing is set without a tap', (line, context) => {
    expect(readLine(line, context).kind).not.toBe('command');
  });
});

describe('what somebody else wants, or nobody', () => {
  it.each([
    ['Omar wants everything in pounds and fahrenheit', { ...english, people: ['Omar'] }],
    ['not in pounds and fahrenheit please', english],
    ['are we in pounds and fahrenheit', english],
    ['no me lo pongas en libras y fahrenheit', spanish],
  ])('given %s, then no tap sets it', (line, context) => {
    const found = readLine(line, context);
    expect(found.kind === 'misread' ? found.misread.suggestions.join() : found.kind).not.toMatch(/^set |command/);
  });
});

describe('what only sounds like it', () => {
  it.each([
    ['how is pot 2 doing', english],
    ['show me where pot 2 is at', english],
    ['enséñame cómo va la mezcla 2', spanish],
  ])('given %s, which asks, then it is answered as a question', (line, context) => {
    expect(read(line, context)).not.toMatchObject({ asked: { ask: 'card' } });
  });

  it.each([
    'my gloves are stuck to the phone again',
    'brushed flange 4 from pot 1',
    'the customer wants the 5 by noon',
    'kilos of work left today',
    'the spanish crew comes in on monday',
  ])('given %s, then nothing is set, and no paper made', (line) => {
    const { taps = [], asked } = { taps: undefined, asked: undefined, ...read(line, english) };
    expect(taps.filter((tap) => tap.startsWith('set '))).toEqual([]);
    expect(['traveller', 'export']).not.toContain(asked?.ask);
  });
});
