// Somebody typing: a prompt, and bells that ring by themselves between the lines.

import { createInterface } from 'node:readline/promises';
import type { Readable, Writable } from 'node:stream';
import type { Clock } from '../../core/ports.ts';
import type { Ringer } from '../../core/reminders/run.ts';
import { isMovable } from '../time/clocks.ts';
import type { Ticker } from '../time/ticker.ts';
import { listsJoined } from './lists-joined.ts';
import type { Print } from './output.ts';
import { ringUntil } from './script.ts';
import type { Terminal } from './terminal.ts';

export interface InteractiveDeps {
  readonly input: Readable;
  readonly output: Writable;
  readonly terminal: Terminal;
  readonly ticker: Ticker;
  readonly ringer: Ringer;
  readonly clock: Clock;
  readonly print: Print;
}

/** Until the input ends. */
export async function converse(deps: InteractiveDeps): Promise<void> {
  const { terminal, ticker, ringer, clock, print } = deps;
  const { replies } = terminal.words;
  const prompt = createInterface({ input: deps.input, output: deps.output, prompt: '› ' });
  deps.output.write(`${[replies.greeting, ...replies.greetingLines, replies.caution].join('\n')}\n`);
  // What runs, what rings next, and what the shop has still to set.
  const { answer: standing } = await terminal.say('now', 0);
  if (standing !== undefined) await print(standing);
  prompt.prompt();
  for await (const { text, number } of listsJoined(prompt, terminal.hearing)) {
    const { answer, waitUntil } = await terminal.say(text, number);
    if (waitUntil !== undefined && !isMovable(clock)) deps.output.write(`${replies.cannotWait}\n`);
    else if (answer !== undefined) await print(answer);
    if (isMovable(clock)) await ringUntil(waitUntil ?? clock.now(), ringer, clock);
    else ticker.wake();
    prompt.prompt();
  }
}
