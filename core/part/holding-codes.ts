// Which deviations of a coat or a cure hold the part by themselves, until a lead releases it: what they do to the film
// shows late or never.

export const holdingCodes = [
  'past-pot-life',
  'pot-dead',
  'pot-empty',
  'not-weighed',
  'ratio-out',
  'blend-not-done',
  'not-filtered',
  'caught-not-filtered',
  'recoat-forbidden',
  'recoat-too-early',
  'recoat-too-late',
  'film-drying',
  'dip-once',
  'surface-life-over',
  'surface-outside',
  'not-prepared',
  'air-outside',
  'flash-off-not-over',
  'not-dry',
  'hotter-than-part-bears',
  'oven-outside-sheet',
  'no-such-cure',
  'film-outside',
  'adhesion-failed',
  'rubbed-through',
  'test-failed',
  'overheated',
  'lot-recalled',
  'instrument-failed',
  'not-released',
  'disposed',
] as const;
export type HoldingCode = (typeof holdingCodes)[number];

/** Under which of them a failed reading holds its part. */
export const codeOfFailed = {
  film: 'film-outside',
  adhesion: 'adhesion-failed',
  rub: 'rubbed-through',
  wet: 'test-failed',
  'pull-off': 'test-failed',
  gloss: 'test-failed',
  hardness: 'test-failed',
  holidays: 'test-failed',
  visual: 'test-failed',
  heat: 'overheated',
} as const satisfies Readonly<Record<string, HoldingCode>>;
