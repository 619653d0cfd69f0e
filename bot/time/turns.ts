// Work in turn: in each queue one after the other, in the order of asking, whatever became of the one before.

export interface Turns<Queue> {
  readonly take: <T>(queue: Queue, work: () => Promise<T>) => Promise<T>;
  /** Whoever asks now waits for nobody. */
  readonly isFree: (queue: Queue) => boolean;
  /** Nothing is left in any queue. */
  readonly idle: () => Promise<void>;
}

export function createTurns<Queue>(): Turns<Queue> {
  const last = new Map<Queue, Promise<void>>();
  return {
    take: (queue, work) => {
      const turn = (last.get(queue) ?? Promise.resolve()).then(work);
      const ended = turn.then(
        () => undefined,
        () => undefined,
      );
      last.set(queue, ended);
      // The last one out leaves nothing behind.
      void ended.then(() => last.get(queue) === ended && last.delete(queue));
      return turn;
    },
    isFree: (queue) => !last.has(queue),
    idle: async () => {
      while (last.size > 0) await Promise.all(last.values());
    },
  };
}
