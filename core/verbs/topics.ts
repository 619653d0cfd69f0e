// What of a thing, of the people or of the sheet a question may ask for by itself, beside when, who, where, how hot and how much.

export const topics = [
  /** How it stands: where a question was understood as one, and what it asks for was not. */
  'standing',
  'next-ring',
  'last-ring',
  'watch',
  'in-charge',
  'emergency',
  'may-spray',
  'worn',
  'fan',
  'to-coat',
  'on-hold',
  'counted',
  'coats',
  'from-batch',
  'details',
  'bears',
  /** Of what a job asks, and what of it nobody gave or failed. */
  'lacking',
  'expiry',
  'lot',
  'lid',
  'ratio',
  'enough',
  'sheet-air',
  'sheet-surface',
  'sheet-blend',
  'sheet-pot-life',
  'sheet-film',
  'sheet-flash',
  'sheet-recoat',
  'sheet-cure',
  'sheet-flush',
] as const;
export type Topic = (typeof topics)[number];
