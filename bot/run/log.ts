// Structured logs on standard error: names of events and figures, never what people typed.

import type { Log } from '../../core/ports.ts';

export const stderrLog: Log = {
  info: (event, details) => write('info', event, details),
  error: (event, details) => write('error', event, details),
};

function write(level: string, event: string, details: Readonly<Record<string, unknown>> = {}): void {
  process.stderr.write(`${JSON.stringify({ level, event, ...details })}\n`);
}
