// Whose law a crew works under, as far as the project keeps its figures. Data: which country it is, the crew says or its
// zone does.

/** `elsewhere`: of that country nothing is kept. */
export const legalFrames = ['us', 'eu', 'uk', 'mexico', 'elsewhere'] as const;
export type LegalFrame = (typeof legalFrames)[number];
