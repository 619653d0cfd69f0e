// `instrument gauge-2 gauge due 2027-03-01`, `calibrated gauge-2 failed`: its name, then what is said of it. Days stand behind words
// of their own, and are off the line by now.

import { type CommandOf, verbRows } from '../../../core/commands.ts';
import { isFailed } from '../../../core/failed.ts';
import type { Fault } from '../reading.ts';
import { fillers } from '../tongues/english/line-words.ts';
import { type Token, wordIn } from '../typed/token.ts';
import { type ActLine, leftOver, type Said } from './act-line.ts';
import { choiceAt, choicesOf } from './choices-on-line.ts';
import { commandOf } from './read-fields.ts';

export const readInstrument = (act: ActLine, labelled: Readonly<Said>): CommandOf<'instrument'> | Fault => {
  const read = nameAndChoices('instrument', act);
  if (isFailed(read)) return read;
  const command = commandOf('instrument', { ...labelled, ...read });
  return command.verb === 'instrument' ? command : { failed: 'incomplete', needs: ['instrument'] };
};

export const readCalibrated = (act: ActLine, labelled: Readonly<Said>): CommandOf<'calibrated'> | Fault => {
  const read = nameAndChoices('calibrated', act);
  if (isFailed(read)) return read;
  if (read.result === undefined) {
    return {
      failed: 'incomplete',
      needs: ['check-result'],
      tries: [...(verbRows.calibrated.fields.result?.words.values() ?? [])].map((said) => `${act.line} ${said}`),
    };
  }
  const command = commandOf('calibrated', { ...labelled, ...read });
  return command.verb === 'calibrated' ? command : { failed: 'incomplete', needs: ['instrument'] };
};

const choices = {
  instrument: choicesOf(Object.entries(verbRows.instrument.fields).filter(([, { told }]) => told === 'choice')),
  calibrated: choicesOf(Object.entries(verbRows.calibrated.fields).filter(([, { told }]) => told === 'choice')),
};

function nameAndChoices(verb: keyof typeof choices, { tokens }: ActLine): Said | Fault {
  const said: Said = {};
  const isName = (token: Token | undefined): boolean => token?.kind === 'quoted' || token?.kind === 'word';
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i];
    if (token === undefined || fillers.has(wordIn(token))) continue;
    const chosen = choiceAt(tokens, i, choices[verb]);
    if (chosen !== undefined && said[chosen.name] === undefined) {
      said[chosen.name] = chosen.value;
      i = chosen.to - 1;
    } else if (said.name === undefined && isName(token)) {
      said.name = (token.kind === 'quoted' ? token.words : token.text).toLowerCase();
    } else return leftOver(token);
  }
  return said.name === undefined ? { failed: 'incomplete', needs: ['instrument'] } : said;
}
