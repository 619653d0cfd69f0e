// People on a line, by whatever name they go: in quotes a name is one word, and means nobody else and nothing else.

import { describe, expect, test } from 'vitest';
import { readLine } from '../../../bot/language/read-line.ts';
import { tallerALasDiez } from './shop-at-ten.ts';

const command = (line: string) => {
  const read = readLine(line, tallerALasDiez);
  return read.kind === 'command' ? read.command : read;
};

describe.each(['Jo Invented', '12', 'Lead', 'Ana María', "O'Invented", 'Mix "Bo" Nobody', 'at 9:40'])(
  'somebody called %s',
  (name) => {
    const quoted = JSON.stringify(name);
    test.each([
      [`fit ${quoted} 2026-05-01`, { verb: 'fit', person: name }],
      [`medical ${quoted} until 2026-05-01`, { verb: 'medical', person: name }],
      [`training ${quoted} 2027-01-31`, { verb: 'training', person: name }],
      [`brief 1 in booth spray ${quoted} outside kari`, { verb: 'brief', sprayers: [name], attendant: 'kari' }],
      [`brief 1 in booth spray kari stays ${quoted} outside ${quoted}`, { stays: [name], attendant: name }],
      [`near 4 ${quoted} out`, { verb: 'near', people: [name], goes: 'out' }],
      [`ack 4 ${quoted}`, { verb: 'ack', people: [name] }],
      [`handover ${quoted}`, { verb: 'handover', to: name }],
      [`relevo a ${quoted}`, { verb: 'handover', to: name }],
      [`set sprayers ${quoted} kari`, { setting: { name: 'sprayers', people: [name, 'kari'] } }],
      [`set role ${quoted} lead`, { setting: { name: 'role', given: [{ person: name, role: 'lead' }] } }],
    ])('%s', (line, meant) => expect(command(line)).toMatchObject(meant));

    test('may open somebody’s own words', () => {
      expect(command(`near miss ${quoted} slipped on the hose`)).toMatchObject({
        verb: 'near-miss',
        text: `${quoted} slipped on the hose`,
      });
      expect(command(`hold impeller-7 ${quoted} saw a run`)).toMatchObject({
        verb: 'hold',
        why: `${quoted} saw a run`,
      });
    });
  },
);

test('words in quotes still end where they end: a time behind them is when it was said', () => {
  expect(command('hold impeller-7 "orange peel"')).toMatchObject({ why: 'orange peel' });
  expect(readLine('hold impeller-7 "orange peel" at 9:40', tallerALasDiez)).toMatchObject({
    command: { why: 'orange peel' },
    at: expect.any(Number),
  });
});
