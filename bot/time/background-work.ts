// Work in the background: whoever typed does not wait for it, only the end of the program does.

import type { Log } from '../../core/ports.ts';

export interface BackgroundWork {
  /** Begins at once. What it breaks on is logged as `broken`, and nowhere else. */
  readonly run: (broken: string, id: string, work: () => Promise<unknown>) => Promise<void>;
  readonly idle: () => Promise<void>;
}

export function createBackgroundWork(log: Log): BackgroundWork {
  const running = new Set<Promise<void>>();
  return {
    run: (broken, id, work) => {
      const done = work().then(
        () => undefined,
        (error: unknown) => log.error(broken, { id, error: String(error) }),
      );
      running.add(done);
      return done.finally(() => running.delete(done));
    },
    idle: async () => {
      while (running.size > 0) await Promise.all(running);
    },
  };
}
