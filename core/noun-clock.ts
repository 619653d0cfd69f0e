// A clock of a batch, can, part or session as people are told of it: which way it errs, so that no layout decides which
// minute to show.

/** What must last at least so long is shown late rather than early; what may last at most so long the other way. */
export type Errs = 'at-least' | 'at-most';
