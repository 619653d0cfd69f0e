// How English speakers ask how things stand: matched in lower case, without accents. The first row that fits counts.

import type { QuestionsTyped } from '../typed.ts';

export const englishQuestions: QuestionsTyped = {
  leadIns:
    /^(?:(?:hey|hi|hello|yo|(?:ok|okay|right|now)(?! (?:to|for|if)\b)|so|and|but|well|um+|uh+|er|quick question|question|just checking|just wondering|wondering|please|pls|sorry|guys|team|all|bot|boss|mate|any idea|any clue|no idea|tell (?:me|us)|remind (?:me|us)|let (?:me|us) know|(?:does |do )?(?:any(?:one|body)|some(?:one|body)|you|we) know|(?:can|could|would|will) (?:you|u|ya)(?: please| pls)? (?:tell|show|remind)(?: (?:me|us))?|(?:i|we) (?:need|want|have|wanted) to know|i wonder|what about|how about)[ ,.:;!-]+)+/,
  others:
    /^(?:why|how come|how (?:do|does|should|would) (?:i|we|you|one|it)\b|how to|what does|what do you|(?:can|could|will|would) (?:you|u|ya|some(?:one|body)|any(?:one|body))\b)/,
  modal:
    /^(?:when |how soon |what time |from when |how long (?:until|till|before) )?(?:can|could|may|should|shall|must)\b/,
  notActs: 'on off',
  kinds: [
    {
      asks: 'can-i',
      said: /(?:when |how (?:soon|late) |what time |(?:from|till|until) when |how long (?:until|till|before) )?(?:can|could|may|should|shall|must) (?:i|we|they|it|this|that|these|those|somebody|someone|anybody|anyone|the [a-z]+|[a-z]+[- ]\d+|\d+(?= (?:be|go|come|get|have|already|still|now)\b)|[a-z]+(?= be\b))\b/,
    },
    { asks: 'mask', said: /(?:what|which) (?:mask|respirator|cartridge)/ },
    { asks: 'day', said: /how (?:much|many)\b.{0,30}\b(?:today|so far|this morning|this shift|yet today)\b/ },
    { asks: 'can-i', said: /how long (?:until|till|before) (?:i|we|it|they|\S+|the \S+) can\b/, anywhere: true },
    {
      asks: 'can-i',
      said: /(?:(?:is|are|am|would|will)(?: it| this| that| we| i| they| the [a-z]+| [a-z]+[- ]?\d+| \d+)?(?: all)?(?: be)? )?(?:ok|okay|fine|alright|all right|good|clear|safe|ready|time|possible|allowed|too (?:late|early|soon|hot|cold|warm|humid|damp|wet|dry|windy)) (?:for|to|if)\b/,
    },
    {
      asks: 'went-wrong',
      said: /(?:what|anything|something|did (?:anything|something)|has anything)(?:'?s| has| have| is| was| else)* (?:go|gone|went|going|been going)? ?wrong|what(?:'?s|s| is| was| were) the (?:problems?|damage|trouble)|any (?:problems?|trouble|issues?|deviations?|mistakes?)|what happened|what did (?:we|i|they) (?:mess|screw|get wrong)|how did (?:today|it|the day) go/,
    },
    {
      asks: 'what-late',
      said: /(?:what|which|who|anything|something|are we|is anything|are any|is any)\b.{0,25}\b(?:late|overdue|behind|past due|missed|unanswered)\b|running (?:late|behind)/,
    },
    {
      asks: 'at-risk',
      said: /(?:what|how much|which|is anything|anything|are we)\b.{0,30}\b(?:at risk|los(?:e|es|ing)|lost|wast(?:e|ed|ing)|goes? off|going off|go(?:es)? bad)\b|(?:which|what) (?:pot|batch|mix|one)s?\b.{0,30}\b(?:first|soonest|oldest|dies|expires)\b/,
    },
    {
      asks: 'lot',
      said: /what (?:went|goes|did we put|is|was) on\b|(?:which|what) (?:product|paint|coating|material)\b|(?:which|what) (?:lots?|batch(?: number)?|can)\b.{0,40}\b(?:on|for|in|into)\b|(?:which|what) lots?\b|lot (?:number|no)\b/,
    },
    {
      asks: 'how-hot',
      said: /how (?:hot|warm|cold|cool|humid|damp)\b|(?:what|whats)(?:'s| is| was)? (?:the |our |its )?(?:current |latest |last )?(?:part |oven |room |air |booth |metal )?(?:temp|temps|temperature|humidity|rh|dew ?point|spread|air|weather)\b|temp(?:erature)? (?:of|on|in|at)\b/,
      anywhere: true,
    },
    {
      asks: 'how-long',
      said: /how much (?:more )?(?:longer|time)\b|how much left (?:until|till|before)\b|how long\b(?! ago)|how soon\b|how many (?:more )?(?:min|mins|minutes|hours)\b/,
      anywhere: true,
    },
    {
      asks: 'who-did',
      said: /how many (?:people|of us|guys|hands)\b|how thick\b|(?:what(?:'?s| is| was) )?the (?:ratio|thickness|film)\b|how far off\b|when (?:did|was|were|has|have|had)\b|what time (?:did|was|were)\b|how long ago\b|how old (?:is|are|was)\b|(?:has|have|did|had) (?:any(?:one|body)|some(?:one|body)|we|i|they|you|he|she|[a-z]+) |who(?:se|m|'s|s)?\b|(?:is|are) (?:any(?:one|body)|some(?:one|body)) (?:in|on|at|spraying|using)\b|what did\b|when'd\b/,
    },
    {
      asks: 'where-is',
      said: /(?:what|which) (?:parts?|ones?|pots?|batch(?:es)?|pieces?)?(?:'?s|s| is| are|'re) (?:still |all |now |the )*(?:wet|dry|cured|done|ready|bare|coated|open|on hold|held|cooking|open batches|curing)\b|(?:any|what(?:'?s| is)) (?:holds?|on hold|held|cooking)\b|what (?:do|have) we (?:have |got )+in\b|where(?:'?s|s|re|'re)?\b|(?:what|which(?: parts?| ones?)?|anything|how many(?: parts?)?)(?:'?s|s| is| are|'re)?(?: still| left| now)* (?:curing|baking|(?:in|inside|out) (?:of )?(?:the )?(?:oven|booth|room|cure|bay|shop|store))|(?:is|are)\b.{0,30}\b(?:in|inside) the (?:oven|booth)/,
    },
    {
      asks: 'how-much',
      said: /(?:do we have |have we got |got |is there )?any (?:part |more )?[ab](?: left)?\b|(?:what|which|how many) (?:cans?|tins?)\b|how (?:much|many)\b|what(?:'?s| is) (?:left|in)\b(?= (?:in|of|on)?\b ?(?:the |my |our )?(?:pot|batch|mix|can|tin|a\b|b\b|part [ab]|stock|\d))|(?:do|have) (?:we|i) (?:have |got )?enough|is there enough/,
      anywhere: true,
    },
    { asks: 'what-now', said: /what (?:do|should|must) (?:i|we) do(?: (?:now|next|first|here))?(?= |$)|what now\b/ },
    {
      asks: 'to-do',
      said: /anything (?:for me|i (?:need|have|should))\b|what(?:'?s|s| is) the plan\b|what(?:'?s|s| is| comes)? (?:is )?(?:next|after that|left to do|still to do|to do|to be done|outstanding|pending|waiting|remaining|left)\b|what(?:'?s| is) (?:there )?(?:left )?to do|what (?:do|should|must|can) (?:i|we) do\b|what (?:still |else )?needs|next step|what are we waiting|anything (?:left |else )?to do|(?:which|what) parts? (?:are|is) (?:left|next|waiting)/,
    },
    {
      asks: 'how-long',
      said: /when(?:'?s|s|'ll)?\b|what time\b|(?:what(?:'?s| is) )?(?:the |its )?(?:time|minutes|mins|pot life) (?:left|remaining|to go|on|of|for|in)\b|any time left|till when|until when/,
    },
    {
      asks: 'how-long',
      said: /(?:what(?:'?s|s| is) )?(?:the )?(?:status|state|deal|story|news|up)\b(?: (?:on|of|with|for))?|how(?:'?s|s| is| are)? (?:we|it|things|everything)\b.{0,12}\b(?:doing|going|looking)|(?:do|have) (?:i|we) (?:still )?(?:have|got) (?:enough )?time|(?:is there|any) (?:still )?time/,
    },
    {
      asks: 'how-long',
      said: /(?:is|are|isn't|aren't|isnt|arent|has|have|hasn't|does|do (?:we|i|they|the)|was|were|will|did|how(?:'?s|s| is| are))\b/,
    },
  ],
  acts: [
    { act: 'door', said: /\boven door\b/ },
    { act: 'cure', said: /\b(?:(?:in(?:to)?|to) the oven|cured|bake[ds]?|in(?:to)? cure)\b/ },
    {
      act: 'out',
      said: /\b(?:come out|comes out|coming out|take .{1,20} out|pull|pulled|out of (?:the )?(?:oven|cure))\b/,
    },
    { act: 'release', said: /\b(?:ship|shipped|go out the door|leave|handed over to the customer)\b/ },
    {
      act: 'coat',
      said: /\b(?:recoat|re-coat|second coat|next coat|another coat|apply|use (?:the |this |that )?(?:pot|batch|mix|\d)|used|touch ?up)\b/,
    },
    { act: 'weigh', said: /\b(?:pour|poured)\b/ },
    { act: 'stir', said: /\bstirrer\b/ },
    { act: 'weigh', said: /\b(?:ratio|far off)\b/ },
    { act: 'film', said: /\b(?:how thick|thickness)\b/ },
    { act: 'flush', said: /\b(?:flush|rins|wash)(?:ed|ing)?\b/ },
    { act: 'shut', said: /\b(?:can|tin|lid)\b.{0,20}\b(?:closed|shut|back on)\b/ },
    { act: 'gel', said: /\b(?:gone off|going off|set up|kicked)\b/ },
  ],
  spray: /\b(?:spray|sprayed|spraying)\b/,
  component: /(?<=[a-z] )([ab])(?= (?:is|are|do|left|we|have)\b|$)/,
  ofAll: /^(?:how|when|what|any|time|till|until)\b/,
  isDone: /(?:ed|dry|empty|out|thick|shut|held|wet)$/,
  ordinals: { first: 1, second: 2, third: 3, fourth: 4, '1st': 1, '2nd': 2, '3rd': 3, '4th': 4 },
};
