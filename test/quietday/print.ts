// The quiet day's figures as lines for whoever runs it.

import type { Counted } from './count.ts';
import type { LineHeard } from './play-lines.ts';
import type { Heard } from './play-shift.ts';
import { crew } from './shift.ts';

/** So many examples of each; the counts are of all. */
const shown = 20;
const batches = 3;

export function shiftLines(counted: Counted): readonly string[] {
  const { lines, parts, objections, questions, questionsBy, stepsAsked, holds, alarms, kinds, rings, pushes } = counted;
  return [
    `A faultless shift: ${lines} lines, ${batches} batches, ${parts} parts, ${crew.people.length} people`,
    `  objections  ${objections.length}`,
    ...objections.slice(0, shown).map(told),
    `  holds       ${holds}`,
    `  alarms      ${alarms}`,
    `  questions   ${questions.length} (${(questions.length / batches).toFixed(1)} a batch)${ofEach(questionsBy)}`,
    ...questions.slice(0, shown).map(told),
    `  steps asked on cards  ${stepsAsked.length}: ${stepsAsked.join(', ')}`,
    `  bells      ${ofEach(kinds)}`,
    '  by person: bells in the record, pushes in Slack (mentions in new messages, direct messages)',
    ...crew.people.map(
      ({ name, role }) =>
        `    ${name.padEnd(5)} ${role.padEnd(11)} ${figure(rings.get(name))} ${figure(pushes.get(name))}`,
    ),
  ];
}

export function ordinaryLines(heard: readonly LineHeard[]): readonly string[] {
  const rang = heard.filter(({ called }) => called.length > 0);
  const offers = heard.filter(({ offersCall }) => offersCall);
  return [
    `${heard.length} ordinary lines that hold a word of need`,
    `  called somebody   ${rang.length}`,
    ...rang.slice(0, shown).map(({ line, called }) => `    ${line}  ->  ${called.join(', ')}`),
    `  asked, with a tap that would call   ${offers.length}`,
  ];
}

const figure = (count = 0): string => String(count).padStart(4);
const ofEach = (counts: ReadonlyMap<string, number>): string =>
  [...counts].map(([name, count]) => ` ${name}: ${count}`).join(',');

function told({ said, answer }: Heard): string {
  return `    ${said.at} ${said.as}: ${said.line.slice(0, 60)}  ->  ${answer.code}: ${answer.card.lines[0] ?? ''}`;
}
