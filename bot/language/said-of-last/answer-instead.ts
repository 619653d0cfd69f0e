// Two lines that read by themselves and may be meant as an answer: `ok`, where no bell waits for it, and a temperature alone, which
// else is of the air. They are the answer where what was asked is of that very kind and nothing else is open that it may answer.

import { fieldsOf } from '../line-fields.ts';
import type { LineContext, Reading } from '../reading.ts';
import type { Strictly } from '../understood.ts';
import { bareAnswer } from './bare-answer.ts';

type Act = Extract<Reading, { kind: 'command' }>;

export function answerInstead(read: Act, context: LineContext, reads: Strictly): Act | undefined {
  const line = answering(read, context);
  if (line === undefined) return undefined;
  const found = bareAnswer(line, context, reads);
  const taken = found?.is === 'sure' ? reads(found.line) : undefined;
  return found?.is === 'sure' && taken?.kind === 'command'
    ? { ...taken, line: read.line, takenAs: found.line }
    : undefined;
}

function answering({ command, stance, line }: Act, { last }: LineContext): string | undefined {
  if (last === undefined || stance.is !== 'asked') return undefined;
  if (command.verb === 'ok' && command.key === undefined) return last().rings() ? undefined : 'yes';
  const isTemperature = command.verb === 'air' && /^-?\d[\d.,]* ?\p{L}+$/u.test(line) && isOnlyAsAir(command.air);
  return isTemperature && last().open.some(asksTemperature) ? line : undefined;
}

const isOnlyAsAir = (air: { readonly relativeHumidityPercent?: number }): boolean =>
  air.relativeHumidityPercent === undefined;

const asksTemperature = ({ line, isAsked }: { readonly line: string; readonly isAsked: boolean }): boolean =>
  isAsked && fieldsOf(line).some(({ unit }) => unit === 'C' || unit === 'F');
