// What the ledger tells solvent apart by.

/** What a solvent was used for. */
export const solventUses = ['thinning', 'gun-cleaning', 'vessel-cleaning', 'wiping', 'other'] as const;
export type SolventUse = (typeof solventUses)[number];
