// The papers that a product's maker gives with it: instructions and the safety data sheets of both parts, each with its own
// revision, as a file in the folder of the sheet's id, beside the sheet, or where the shop keeps it on the net.

import { z } from 'zod';
import { rule } from './sheet-fault.ts';

export const paperKinds = ['instructions', 'safety-a', 'safety-b'] as const;
export type PaperKind = (typeof paperKinds)[number];

/** No path: what a sheet names lies in its own folder, and nothing above it. */
const plainName = /^[a-z0-9][a-z0-9_-]{0,59}\.(pdf|txt|png|jpg)$/;

export const MakerPaper = z
  .strictObject({
    of: z.enum(paperKinds),
    title: z.string().min(1).max(80),
    revision: z.string().min(1).max(20),
    file: z.string().regex(plainName).optional(),
    address: z
      .string()
      .regex(/^https:\/\/[a-z0-9][^\s"<>]*$/i)
      .max(500)
      .optional(),
  })
  .refine(({ file, address }) => (file === undefined) !== (address === undefined), rule('file-or-address'));
export type MakerPaper = z.infer<typeof MakerPaper>;

interface OfPapers {
  readonly revision: string;
  readonly steps?: { readonly papers?: { readonly named?: readonly MakerPaper[] | undefined } | undefined } | undefined;
}

/**
 * The revision that somebody has read: of the papers where the sheet names them, else its own. What is mended in a sheet
 * beside them is no new paper.
 */
export function papersRevision({ revision, steps }: OfPapers): string {
  const named = steps?.papers?.named?.map((paper) => `${paper.of} ${paper.revision}`);
  return named === undefined ? revision : named.toSorted().join(', ');
}
