// Questions about the past, as they can be asked. They only read; a traveller and a backup leave a file behind.

import type { BatchNumber, CanNumber, PartName, PersonName, SheetId } from '../ids.ts';

/** ISO, `2026-03-02`. */
export type IsoDate = string;

export type SpanAsked =
  | { readonly kind: 'day'; readonly day: 'today' | 'yesterday' | { readonly date: IsoDate } }
  | { readonly kind: 'week' | 'month'; readonly which: 'this' | 'last' }
  /** Both days included. */
  | { readonly kind: 'range'; readonly from: IsoDate; readonly to: IsoDate }
  /** The twelve months that end with today. */
  | { readonly kind: 'year' };

export type TraceAsked =
  | { readonly part: PartName }
  | { readonly batch: BatchNumber }
  | { readonly can: CanNumber }
  | { readonly lot: string };

/** `any`: a number or name that may be a serial, a job, a customer, a lot or a part. */
export type FindKey = 'serial' | 'job' | 'customer' | 'lot' | 'date' | 'any';

export type ExportForm = 'csv' | 'jsonl';

export type RecordQuestion =
  | { readonly ask: 'week' | 'month' | 'from'; readonly span: SpanAsked }
  /** `card`: where it stands in its run. */
  | { readonly ask: 'trace' | 'card'; readonly of: TraceAsked }
  | { readonly ask: 'find'; readonly key: FindKey; readonly value: string }
  | { readonly ask: 'traveller'; readonly of: { readonly part: PartName } | { readonly job: string } }
  | { readonly ask: 'export'; readonly span: SpanAsked; readonly form: ExportForm }
  | { readonly ask: 'voc'; readonly span: SpanAsked }
  /** What people breathed, all of them or one. */
  | { readonly ask: 'exposures'; readonly span: SpanAsked; readonly person?: PersonName }
  /** `hash`: as it stands on a digest or a traveller, or its beginning. */
  | { readonly ask: 'verify'; readonly hash?: string }
  | { readonly ask: 'backup'; readonly file: string }
  | { readonly ask: 'keep' }
  /** Of the maker; `paper`: one of them, by its place in the sheet. */
  | { readonly ask: 'papers'; readonly sheet?: SheetId; readonly paper?: number };
