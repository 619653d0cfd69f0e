// The README's first batch is what the program says. Run with UPDATE_README=1 to write it anew after a change of words.

import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const lines = [
  'air 24C 48%',
  'part impeller-7 serial 4411 job 88',
  'mix 2.4kg',
  'weigh 1 1201g 1198g',
  'wait 102m',
  'filter 1',
  'coat impeller-7 1 brush',
  'wait 10m',
  'dry impeller-7',
  'cure impeller-7 oven 90C',
  'wait 15m',
  'temp impeller-7 91C',
  'wait 1h',
  'temp impeller-7 92C',
  'out impeller-7',
];

function transcript(): string {
  const said = lines.map((line) => JSON.stringify({ text: line }));
  const out = execFileSync('node', ['dist/bot/main.js', '--json', '--clock', '2026-03-02T08:00'], {
    input: said.join('\n'),
    encoding: 'utf8',
  });
  const answers = out
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as { in: string | null; at: string; text: string });
  const shown = answers.map((answer) => {
    const typed = answer.in === null ? '' : `> ${lines[Number(answer.in) - 1]}\n`;
    const told = answer.text.split('\n').filter((line) => !line.startsWith('  > '));
    // A pause says nothing of its own.
    if (typed.startsWith('> wait')) return typed.trim();
    return `${typed}${answer.at.slice(11, 16)} ${answer.in === null ? '🔔 ' : ''}${told.join('\n')}`;
  });
  return shown.join('\n');
}

test('the first batch in the README is what the program answers', () => {
  const file = readFileSync('README.md', 'utf8');
  const real = `<!-- transcript -->\n\`\`\`text\n${transcript()}\n\`\`\`\n<!-- /transcript -->`;
  const updated = file.replace(/<!-- transcript -->[\s\S]*<!-- \/transcript -->/, () => real);
  if (process.env.UPDATE_README === '1') writeFileSync('README.md', updated);
  expect(readFileSync('README.md', 'utf8')).toBe(updated);
});
