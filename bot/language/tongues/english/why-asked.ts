// How English speakers ask why, and what a word means: matched in lower case, without accents.

import type { WhyTyped } from '../why-typed.ts';

export const englishWhyAsked: WhyTyped = {
  said: [
    /^(?:says who|who says(?: so| that)?|how so|based on what|on what basis|according to (?:what|who|whom)|on whose say|what makes you (?:say|think) (?:that|so)|how do you (?:know|figure)(?: that)?|how is that|what is that based on|since when)$/,
    /^how (?:did|do|does|would|are|is|was) (?:you|it|they|that|this|the bot|batchbell) ?(?:get|getting|got|know|knows|come up with|come to|work out|working out|figure out|figure|calculate[sd]?|arrive at|reckon|make|worked out) (?:to |that )?(.+)$/,
    /^how (?:is|was|are|were|did) (?:the )?(.+? (?:worked out|calculated|computed|figured(?: out)?|come about|derived)(?: .*)?)$/,
    /^where(?:'d| did| does| do| is|s)? (?:you get |the |that |this |it get |they get )?(.+?)(?: come| comes| came| coming)? from$/,
    /^where(?:'d| did) you get (.+)$/,
    /^what(?:'s| is|s) (?:the )?(.+?) based on$/,
    /^what(?:'s| is|s) (?:the )?(?:reason|reasoning|logic|source)(?: for| behind| of)? ?(.*)$/,
    /^(?:how come|what for|for what reason) ?(.*)$/,
    /^((?:.* )?why\b.+)$/,
    // `y` for why, which only a turned verb tells from a letter.
    /^y ((?:is|are|was|do|does|did|can|cant|has|have|isnt|wont|must|should)\b.+)$/,
    /^(.+) why$/,
  ],
  howTo:
    /^(?:how (?:do|does|should|would|shall|must|can) (?:i|we|you|u|ya|one|somebody|it|the|that|this|these|a) (?!know\b|tell\b|feel\b|look\b|get from\b)|how to (?!know\b|tell\b)|(?:what(?:'?s| is)? )?the (?:right |proper |best |correct )?way (?:to|of) )(.+)$/,
  word: /^.*\bwhy (?:is it that |do you say |exactly )?/,
  not: /^(?:can'?t|cannot|can not|couldn'?t|could not|shouldn'?t|should not|may not|mustn'?t|must not|(?:am|are) (i|we) not (?:allowed|supposed) to)(?= )/,
  may: 'can $1',
  figure: /\d{1,2}:\d{2}|[-−]?\d+(?:[.,]\d+)? ?(?:°|º|%|deg\w*|mils?|kg|g|lb|oz|min|m|um|l|c|f)(?![a-z])/gi,
  defines: [
    /^what (.+?) (?:means?|is)$/,
    /^(?:what(?:'?s| is| does| do you mean by|s meant by| is meant by| do we mean by| do they mean by)|whats|define|explain|meaning of|tell me about|what (?:even|exactly|actually|really|the heck|on earth) is|what kind of thing is) (?:a |an |the |this |that |your )?(.+?)(?: thing| mean| means| stand for| supposed to mean| again| actually| even)*$/,
    /^(?:the |a |an )?(.+?)(?: is| means)? (?:what|meaning|means what|is what|what is that|whats that|what does (?:that|it) mean)$/,
  ],
  topics: {
    'gas-needed':
      /\b(?:need\w*|want\w*|take\w*|put|have to|must|for)\b.*\b(?:gas|argon|nitrogen|blanket\w*)\b|\b(?:gas|argon|nitrogen|blanket\w*)\b.*\b(?:needed|need|for|at all)\b/,
    'oven-heat':
      /\b(?:degrees|deg|temp\w*|\d+ ?[cf])\b.*\b(?:oven|cure|bake)\b|\b(?:oven|cure|bake)\b.*\b(?:degrees|deg|temp\w*|hot|\d+ ?[cf])\b/,
    'touch-up': /\btouch\w* ?up\b|\bopen time\b/,
    recoat: /\b(?:recoat|second coat|another coat|next coat|coat\w* again)\b/,
    surface: /\b(?:surface|prep\w*|blast\w*|steel|profile|grade)\b/,
    ratio: /\b(?:ratio|off by|one to one|part [ab]|grams)\b/,
    spread: /\b(?:spread|condens\w*|delta ?t|(?:above|over|near|close|from|off)(?: to)?(?: the| its)? dew)\b/,
    'dew-point': /\bdew\b/,
    cure: /\b(?:cur(?:e|ed|es|ing)|oven|bak\w*|proved|proven)\b/,
    hour: /\b(?:hour|finished|done|count\w*|come out|take (?:it )?out|ready)\b/,
    flash: /\b(?:flash\w*|dry|dries|drying|wait\w*|tacky|wet)\b/,
    'pot-life':
      /\b(?:pot.?life|di(?:e|es|ed)|gone|gel\w*|go(?:es)? off|ends?|finish by|used? (?:up|by)|expire\w*|short|last|over by|lost|waste)\b/,
    blend: /\b(?:stir\w*|spin\w*|mix\w*|blend\w*|induction)\b/,
    film: /\b(?:film|thick\w*|dft|wft|microns|mils|um)\b/,
    air: /\b(?:air|humid\w*|room|temp\w*)\b/,
  },
};
