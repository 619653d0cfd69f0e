// How English speakers ask for one thing of the shop, its people or its sheet: matched in lower case, without accents, anywhere in
// a line that asks. Of a person it says `somebody`. The first row that fits counts.

import type { QuestionsTyped } from '../questions-typed.ts';

export const englishTopicsAsked: QuestionsTyped['topics'] = [
  {
    asks: 'emergency',
    said: /\b(?:emergency (?:number|phone|contact|line)s?|numbers? (?:for|in) (?:an |the )?(?:emergenc\w+|ambulance)|poison (?:line|center|centre))\b/,
  },
  {
    asks: 'next-ring',
    said: /\b(?:what|which|when|whats)\b.{0,20}\b(?:rings?|bells?|timers?|beeps?|buzz\w*|reminders?)\b|\bnext (?:alarm|bell|ring|timer|reminder|beep)\b|\b(?:can|could|may|is it ok for|have) (?:i|we|somebody) (?:got )?(?:time )?(?:to )?(?:go|leave|take a break|break|step (?:out|away)|grab|get (?:a )?(?:coffee|lunch))\b(?!.{0,12}\b(?:in|into|inside|near)\b)/,
  },
  {
    asks: 'watch',
    said: /\bwho\b.{0,30}\b(?:outside|watch(?:es|ing)?|standing? (?:by|guard)|stands? (?:by|guard)|attend(?:ant|s|ing)?|spott?er|minding|on the door|(?:stays?|staying|waits?|waiting|keeps?) (?:out|clear|back))\b|\bwho (?:gets|has|holds) the timers?\b|^am i\b.{0,25}\b(?:outside|inside|in the booth|out of the booth)\b|^(?:is|are) (?:somebody|someone|anyone|anybody|there (?:someone|somebody|anyone)) (?:outside|watching|standing by)\b/,
  },
  {
    asks: 'in-charge',
    said: /\bwho(?:m)? (?:do|should|can|must|would|shall|could) (?:i|we|one) (?:ask|call|tell|talk to|speak to|speak with|see|report to|go to|turn to|get|bother)\b|\bwho(?:'?s|s| is| are)?(?: the| our| my)? (?:boss|leads?|supervisors?|foreman|forewoman|in charge|on duty|responsible|running (?:the|this))\b|\bwho (?:can|may|could) (?:release|sign|lift|ok|approve|allow|permit)\b|\b(?:is|are) (?:there )?(?:a |the |any |our )?(?:leads?|supervisors?|boss|foreman) (?:here|in|on|around|about|there)\b/,
  },
  {
    asks: 'may-spray',
    said: /\bwho (?:can|may|could|is allowed to|is qualified to|are allowed to) spray\b|\bsomebody'?s? (?:fit ?test|fit|medical|training|brief|mask|qualifi\w+)\b|\bsomebody\b.{0,25}\b(?:to spray|spray|trained|certified|qualified|fit.?tested|briefed|cleared|allowed (?:in|to))\b(?!ing)/,
    ofPerson: true,
  },
  {
    asks: 'worn',
    said: /\bwhat\b.{0,25}\b(?:wear|put on(?! ?\S)|have on(?! ?\S)|ppe)\b|\bwhat (?:ppe|gloves|goggles|protection)\b|\b(?:which|what kind of) (?:gloves|goggles|ppe|suit)\b|\b(?:need|have to|must|should|got to|gotta)\b.{0,12}\b(?:wear|gloves|goggles|mask|respirator|apron|ppe|glasses|coverall|suit)\b|\b(?:without|w\/o|with no) (?:a |the |my |any )?(?:mask|respirator|gloves|goggles|glasses|ppe)\b/,
  },
  {
    asks: 'fan',
    said: /^(?:is|are|isnt|was|does|did|has|have|hows?)\b.{0,25}\b(?:fans?|extraction|extractor|exhaust|ventilation)\b|\b(?:fan|extraction|exhaust) (?:on|running|going|up)$/,
  },
  {
    asks: 'lid',
    said: /^(?!(?:can|may|should|could|shall) (?:i|we)\b).*\blids?\b|\b(?:how long|since when)\b.{0,25}\b(?:can|tin|[ab])\b.{0,12}\b(?:open|uncovered)\b|^(?:is|are)\b.{0,12}\b(?:can|tin)s?\b.{0,12}\b(?:open|closed|shut|sealed|covered)\b|\b(?:how long|since when)\b.{0,25}\b(?:breathing|uncovered|in the open|without a lid)\b/,
  },
  {
    asks: 'expiry',
    said: /(?!.*\b(?:pot|batch|mix)\b(?!.*\b(?:expir|shelf)))\b(?:expir\w*|shelf life|out of date|best before|use.by)\b|\b(?:can|tin|lot)\b.{0,12}\b(?:good (?:until|till|for)|still (?:good|ok))\b/,
  },
  {
    asks: 'ratio',
    said: /\bhow (?:much|many)\b.{0,16}\b(?:[ab]|each|both|either)\b.{0,16}\b(?:weigh\w*|pour\w*|put in|goes? in|add\w*|mix in)\b|\bhow (?:much|many)\b.{0,16}\b(?:[ab]|hardener|base)\b.{0,16}\b(?:for|to|with|per|against|do i add)\b.{0,12}\d|\bratio\b(?!.{0,20}\b(?:was|weighed|did|came|come)\b)(?<!was the ratio)|\bhow much (?:hardener|base)\b|\bhow (?:much|many)\b.{0,12}\b[ab] (?:goes?|do i|does it|per)\b|\ba to b\b/,
  },
  {
    asks: 'enough',
    said: /\benough\b.{0,20}\b(?:for|to (?:do|coat|paint|spray|finish))\b.{0,20}(?:\d|\b(?:parts?|pieces?|more|rest|all|them|these|those)\b)|\bhow many (?:more )?(?:parts?|pieces?|of (?:them|these|those))? ?(?:can|could|will|would|does|do) (?:i|we|it|that|this|the)\b.{0,25}|\bhow far will\b/,
  },
  {
    asks: 'sheet-recoat',
    said: /\b(?:second|another|next|two|2|more than one) coats?\b.{0,25}\b(?:allowed|need\w*|ok|forbid\w*|possible|at all)\b|\b(?:does it|do they|does this|do we) (?:need|take|want|get|give it)\b.{0,12}\bcoats?\b|\brecoat (?:window|time)\b|\bbetween coats\b/,
    notOf: 'part',
  },
  {
    asks: 'to-coat',
    said: /\b(?:still|left|have|has|need(?:s|ing)?|waiting|yet|remain\w*|got)\b.{0,12}\bto (?:be )?(?:coat|paint|spray|brush)\w*|\b(?:still|left|need(?:s|ing)?|waiting|remain\w*)\b.{0,12}\b(?:(?:a |their |its |first )?coat(?:ing|ed)?|painting|paint)\b|\b(?:not coated|uncoated|unpainted|bare|naked|untouched|raw|undone|without (?:a )?coat|havent been (?:coated|painted|sprayed)|not (?:yet )?(?:coated|painted|sprayed))\b|\b(?:which|what|how many)\b.{0,15}\bto coat\b/,
    notOf: 'part',
  },
  {
    asks: 'lacking',
    said: /\b(?:what(?:'?s| is| does| do| did| has| else| still)?|which|anything|whats)\b.{0,24}\b(?:missing|lacking|outstanding|fail(?:ed|s)?|not passed|(?:left|still) to (?:test|measure|check|read|give))\b|\bwhat does (?:job|order) \S+ (?:ask|want|need|require)|\bwhat (?:does|do) .{1,20} (?:still|yet) (?:need|ask|want)|\bwhat (?:tests?|readings?) (?:does|do|are|is)\b.{0,25}\b(?:need\w*|ask\w*|missing|left|due)\b|\bwhy (?:can'?t|cant) (?:i|we) release\b/,
  },
  {
    asks: 'on-hold',
    said: /^(?:any\w*|what|whats|which|is|are|do we have|how many|got any\w*)\b.{0,25}\b(?:on hold|held|quarantin\w*|blocked|holds?)\b/,
  },
  { asks: 'coats', said: /\bhow many (?:coats?|layers?|passes|times)\b|\bnumber of coats\b/ },
  {
    asks: 'details',
    said: /\b(?:made (?:of|from)|what (?:metal|material|alloy|steel)|(?:stamped|engraved|etched|marked) on|belongs? to|(?:which|what|whats)\b.{0,8}\b(?:serial|jobs?|order|customer|size|area|wall|weight)|how (?:big|large|heavy|thick is the wall)|whose\b.{0,12}\b(?:part|piece|job)|who(?:'?s|s| is) (?:the )?(?:customer|owner|it for)|for which (?:job|customer))\b/,
  },
  {
    asks: 'from-batch',
    said: /\b(?:which|what) (?:batch|mix|pot)\b.{0,30}\b(?:on|onto|for|used?|go|goes|went|coat\w*|did|done|with|from|is|was)\b|\bwhat (?:went|goes|did we put|is|was|got put)\b.{0,8} on\b|\b(?:which|what) (?:product|paint|coating|material|stuff)\b|\b(?:which|what) (?:lots?|can)\b.{0,40}\b(?:on|in|for|into)\b/,
    ofPart: true,
  },
  {
    asks: 'lot',
    said: /\b(?:which|what|whats|from)\b.{0,20}\b(?:lots?|batch numbers?)\b|\blot (?:number|no)\b|\blots? (?:of|for|in)\b/,
  },
  {
    asks: 'bears',
    said: /\bwhat (?:temp\w* |heat |degrees )?(?:does|do|should|must|has|have|will) (?:it|they|that|this|the [a-z]+|number \d+|[a-z-]*[- ]?\d+) (?:(?:got |have |need |needs )to )?(?:hit|reach|get (?:up )?to|come (?:up )?to|climb to|make it to)\b|\b(?:max\w*|highest|hottest|top|limit)\b.{0,25}\b(?:temp\w*|oven|heat|degrees|bake)\b|\bhow hot (?:can|may|could|should) (?!it get in)|\b(?:temp\w*|heat) limit\b|\b(?:what|how much) (?:heat|temp\w*) (?:can|may|will|does)\b/,
  },
  {
    asks: 'counted',
    said: /\bhow many (?:parts?|pieces?|of (?:them|these|those)|ones?|have|are|did|got|were)\b(?!.{0,25}\b(?:oven|booth|room|people|us)\b)|\bhow far (?:along )?(?:are|have) we\b|\bwhat(?:'?s| is| are| have| has| parts?)?\b.{0,12}\b(?:been |they |we |you )*(?:coated|painted|sprayed)\b.{0,12}(?:so far|today|already|$)/,
    notOf: 'part',
  },
  {
    asks: 'sheet-air',
    said: /\bhow (?:humid|damp|cold|hot|warm)\b.{0,16}\b(?:can it|may it|is too|allowed|before we)\b|\b(?:max\w*|limits?|highest|lowest|min\w*|allowed)\b.{0,25}\b(?:humid\w*|rh|air|dew|spread)\b|\bwhat (?:air|humidity|temp\w*|weather)\b.{0,20}\b(?:need|want|ask\w*|allow\w*|ok to|must)\b/,
    notOf: 'part',
  },
  {
    asks: 'sheet-blend',
    said: /\bhow long\b.{0,25}\b(?:to stir|stir(?:ring|red)?|mix(?:ing|ed)?|blend\w*)\b(?! in\b)|\b(?:stir|mix)(?:ring|ing)? time\b/,
    notOf: 'batch',
  },
  {
    asks: 'sheet-pot-life',
    said: /\bpot life\b.{0,25}\b(?:usual\w*|normal\w*|supposed|should|sheet|this stuff|for this|at \d)|\b(?:usual|normal|sheet'?s?) pot life\b|\bhow long does (?:a|the|this) (?:pot|mix|batch|stuff) (?:usually |normally )?(?:last|live)/,
    notOf: 'batch',
  },
  {
    asks: 'sheet-film',
    said: /\bhow thick\b.{0,16}\b(?:should|must|do|does|supposed|want|need|to)\b|\b(?:target|wanted|right|aim\w*|max\w*|min\w*)\b.{0,12}\b(?:film|thickness|dft|microns|mils)\b|\b(?:film|thickness|dft|microns|mils)\b.{0,25}\b(?:should|supposed|want|need|aim\w*|target|ask\w*|allow\w*)\b|\bhow many (?:microns|mils|um)\b/,
    notOf: 'part',
  },
  {
    asks: 'sheet-flash',
    said: /\bhow long\b.{0,25}\bflash.?off\b.{0,20}\b(?:supposed|should|usual\w*|normal\w*|need|by the sheet)\b|\bhow long (?:do|does|must|should)\b.{0,30}\bflash\b|\bflash.?off time\b|\bhow long (?:do|does|should|must) (?:it|they|a part|parts) (?:need to )?(?:dry|flash|air)\b/,
    notOf: 'part',
  },
  {
    asks: 'sheet-cure',
    said: /\bhow long (?:do|does|must|should|at|in)\b.{0,25}\b(?:cur(?:e|es|ing)|bak(?:e|es|ing)|oven)\b|\bcure (?:time|temp\w*|schedule)\b|\b(?:what|which|how hot)\b.{0,16}\b(?:temp\w*|degrees|hot)?\b.{0,16}\b(?:to cure|to bake|do (?:i|we) (?:cure|bake)|set the oven|oven (?:to be )?set|should the oven)\b|\bhow hot (?:should|must) the oven\b/,
    notOf: 'part',
  },
  {
    asks: 'sheet-flush',
    said: /\b(?:what|which|how)\b.{0,16}\b(?:do|should|must|can|to)\b.{0,8}\b(?:flush|clean|rinse|wash)\b(?!.{0,20}\b(?:part|impeller|steel)\b)|\b(?:what|which) solvent\b|\b(?:flush|clean|rinse|wash)\w*\b.{0,16}\bwith (?:what|which)\b/,
    notOf: 'part',
  },
  {
    asks: 'sheet-surface',
    said: /\b(?:what|which)\b.{0,12}\b(?:grade|profile|blast|prep\w*)\b|\bhow (?:clean|rough)\b.{0,16}\b(?:must|should|does|do|has)\b/,
    notOf: 'part',
  },
];
