// How several parts are told in English: lists, stretches, many by one word, and the same once more.

import type { ListWords } from '../list-words.ts';

export const englishLists: ListWords = {
  plurals: ['s', 'es'],
  and: ['and', '&', '+', 'plus', 'n', 'and also', 'and then', 'as well as'],
  to: ['to', 'thru', 'through', 'till', 'until', 'up to'],
  articles: ['the', 'number', 'num', 'nr'],
  articlesOfMany: [],
  of: ['of', 'of the'],
  beside: ['next to', 'beside', 'alongside', 'right next to', 'in front of', 'behind'],
  serials: ['serial', 'sn', 's/n', 'ser'],
  jobs: ['order'],
  many: {
    all: 'all, all of them, all of those, all of these, all of the, every one, every one of them, every one of, every single one, every single one of, every last one, every last one of, every bare one, every bare one of, every bare part, each one of, each of, each and every one, each and every one of, everything, every part, every piece, the lot, the whole lot, lot of them, the whole set, them all',
    both: 'both, both of them, both of those, both of the, the pair, pair of them, the two of them, two of them',
    rest: 'rest, rest of them, rest of those, rest of the, others, other ones, the other ones, remaining, remaining ones, remainder',
    first: 'first, first of them, first ones',
    last: 'last, last of them, last ones',
  },
  nouns: {
    impeller: 'impeller',
    housing: 'housing hsg casing',
    pump: 'pump',
    valve: 'valve',
    cover: 'cover',
    plate: 'plate',
    bracket: 'bracket brkt',
    flange: 'flange',
    gear: 'gear',
    rail: 'rail',
    railing: 'railing',
    shaft: 'shaft',
    tank: 'tank',
    pipe: 'pipe',
    body: 'body',
    ring: 'ring',
    rotor: 'rotor',
    elbow: 'elbow',
    bearing: 'bearing',
    panel: 'panel',
    frame: 'frame',
    wheel: 'wheel',
  },
  sameFor: {
    before:
      'same for, same with, same on, same to, same again for, same again on, same thing for, same thing on, same thing with, same goes for, same deal for, same deal with, same deal on, ditto, ditto for, ditto on, likewise, likewise for, as well as, also, do the same for, did the same for, did the same to, did the same with, the same for, so is, so are, so did, so have, and so is, and so are, repeat for, repeat that for',
    behind:
      'too, as well, also, likewise, same, the same, ditto, same thing, same way, same again, same deal, same as before, same story, as before, too the same, the same way, got the same, gets the same, got it too, are too, is too, are as well, is as well',
  },
};
