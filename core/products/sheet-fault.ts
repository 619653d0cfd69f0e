// What is wrong with a sheet's file, as data: which field, and what it would have to be. Each tongue has the words.

import type { z } from 'zod';

/** Comparisons between the figures of a sheet, each named where it is made. */
export const sheetRules = [
  'lowest-below-highest',
  'lowest-not-above-highest',
  'opens-below-closes',
  'least-not-above-most',
  'at-not-above-highest',
  'temperatures-rise',
  'masses-rise-factors-fall',
  'ring-lead-doubtful',
  'ring-not-above-most',
  'above-0',
  'solvents-to-100',
  'something-left',
  'oven-or-room',
  'file-or-address',
] as const;
export type SheetRule = (typeof sheetRules)[number];

/** For the schema, which carries it as the issue's message. */
export const rule = (name: SheetRule): SheetRule => name;

export const valueKinds = ['number', 'string', 'boolean', 'array', 'object'] as const;
export type ValueKind = (typeof valueKinds)[number];
const isValueKind = (name: string): name is ValueKind => valueKinds.some((kind) => kind === name);

export type SheetProblem =
  | { readonly is: 'no-files' }
  | { readonly is: 'not-json'; readonly said: string }
  | { readonly is: 'not-files-id'; readonly id: string }
  | { readonly is: 'demos-own'; readonly what: 'id' | 'name'; readonly value: string }
  | { readonly is: 'broken'; readonly rule: SheetRule }
  | { readonly is: 'missing' }
  | { readonly is: 'other-kind'; readonly wanted: ValueKind | undefined }
  | { readonly is: 'one-of'; readonly known: readonly string[] }
  | { readonly is: 'unknown-fields'; readonly fields: readonly string[] }
  /** A figure, or how long a text or a list is. */
  | {
      readonly is: 'too-low' | 'too-high';
      readonly limit: number;
      readonly itself: boolean;
      readonly of: ValueKind | undefined;
    }
  | { readonly is: 'wrong' };

export interface SheetFault {
  readonly file: string;
  /** `ratio.partsB`; empty where the file itself cannot be read. */
  readonly field: string;
  readonly problem: SheetProblem;
}

/** `sheet`: as it was read, for what is not there at all. */
export function problemOf(issue: z.core.$ZodIssue, sheet: unknown): SheetProblem {
  if (valueAt(sheet, issue.path) === undefined) return { is: 'missing' };
  switch (issue.code) {
    case 'invalid_type':
      return { is: 'other-kind', wanted: kindOf(issue.expected) };
    case 'too_small':
      return {
        is: 'too-low',
        limit: Number(issue.minimum),
        itself: issue.inclusive !== false,
        of: kindOf(issue.origin),
      };
    case 'too_big':
      return {
        is: 'too-high',
        limit: Number(issue.maximum),
        itself: issue.inclusive !== false,
        of: kindOf(issue.origin),
      };
    case 'unrecognized_keys':
      return { is: 'unknown-fields', fields: issue.keys };
    case 'invalid_value':
      return { is: 'one-of', known: issue.values.map(String) };
    case 'custom': {
      const broken = sheetRules.find((name) => name === issue.message);
      return broken === undefined ? { is: 'wrong' } : { is: 'broken', rule: broken };
    }
    case 'invalid_union':
    case 'invalid_format':
    case 'invalid_key':
    case 'invalid_element':
    case 'not_multiple_of':
      return { is: 'wrong' };
  }
}

const kindOf = (name: string): ValueKind | undefined => (isValueKind(name) ? name : undefined);

function valueAt(sheet: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null ? Object.getOwnPropertyDescriptor(value, key)?.value : undefined,
    sheet,
  );
}
