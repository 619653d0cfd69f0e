// How the program ends, and what it says then.

export const exitCodes = { done: 0, badFlagOrSheet: 2, cannotWrite: 3 } as const;

export function complain(fault: string): number {
  process.stderr.write(`batchbell: ${fault}\n`);
  return exitCodes.badFlagOrSheet;
}

export function untilStopped(): Promise<unknown> {
  return new Promise((resolve) => {
    process.once('SIGTERM', resolve).once('SIGINT', resolve);
  });
}
