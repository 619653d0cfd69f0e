// The one way to say that something could not be done: in place of what was asked for comes why not, and one question
// tells the two apart. What was asked for stands bare, so that nothing is wrapped where all goes well.

export interface Failed<Why> {
  readonly failed: Why;
}

export const failed = <const Why>(why: Why): Failed<Why> => ({ failed: why });

export function isFailed<T>(result: T): result is Extract<T, { readonly failed: unknown }> {
  return typeof result === 'object' && result !== null && 'failed' in result;
}
