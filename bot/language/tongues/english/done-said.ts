// How English tells that something was done and not what is to be done, and what says when. Common practice and our own choice, no
// source.

import type { DoneWords } from '../done-words.ts';

const lead =
  '(?:(?:ok|okay|so|and|then|well|right|hi|hey|yes|yep|yeah|just|already|also|morning|sorry|later|finally)[,:]? )*';
const adverb = '(?:just|already|also|now|then|finally|all|both|only)';
/** What orders, plans or only says how it stands is no subject. */
const noSubject =
  '(?!(?:is|are|be|being|gets?|to|that|which|who|if|wish|think|thought|hope|believe|guess|suppose|say|says|said|heard|know|feel|should|would|could|must|will|may|might|can|not|needs?|wants?|stays?)\\b)';
const subject = `(?:(?:i|we|~|he|she|they|it|both|all|everything|the|my|our|this|these|can|pot|batch|mix|number|impeller|[\\p{L}-]*\\d[\\p{L}\\d-]*)(?:['’](?:ve|s|d))? (?:${noSubject}[\\p{L}\\d'’-]+ ){0,3})`;
const regular =
  '(?!(?:need|feed|seed|speed|bleed|indeed|exceed|proceed|(?:wish|hop|want|plann|tri|need|decid|intend|suppos|expect|promis|ask|believ|assum|guess|forgott)ed)\\b)\\p{L}{2,}ed\\b';
const irregular =
  '(?:gave|took|got|did|went|made|came|shot|wrote|shook|swung|hung|held|kept|left|found|brought|threw|blew|ran|drew|wore|stuck|slid|swept|dug|spun|wound|began|sprang|done|given|taken|thrown|blown)\\b';
const withHave = `(?:(?:have|has|had|ve)(?: ${adverb})* )(?:put|set|cut|let|shut|read|hit|run|been)\\b`;

/** `can 4 was standing`; not `was to be`. */
const stood = '(?:was|were)\\b(?! (?:to|going|supposed|about|meant|due)\\b)';

const told = `(?:(?:have|has|had|ve|was|were|got) )?(?:${adverb} )*(?:${regular}|${irregular}|${withHave}|${stood})`;

export const englishDone: DoneWords = {
  is: new RegExp(`^${lead}${subject}?${told}`, 'u'),
  byItself: new RegExp(`^${lead}${subject}${told}`, 'u'),
  when: 'as soon as, the moment, the minute, right after, straight after, just after, shortly after, right before, just before, by the time, before, after, once, when, while, until, till, since',
  notYet: 'yet, so far',
  which:
    'which is, which was, which has, the one that, the one which, the one in, the one on, that one in, that is the one, the big one, the small one',
  thereupon: 'later, next, soon after',
};
