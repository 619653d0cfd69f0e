// How English speakers ask how things stand: matched in lower case, without accents. The first row that fits counts.

import type { QuestionsTyped } from '../questions-typed.ts';
import { englishTopicsAsked } from './topics-asked.ts';
import { englishWhyAsked } from './why-asked.ts';

export const englishQuestions: QuestionsTyped = {
  whether: /^(?:if|whether)\b /,
  tells: /\b(?:tell|show|know|idea|clue|wonder\w*|remind|send|see|pull up|print|question|checking)\b/,
  shortened:
    /\b(oven|booth|fan|lid|pot|mix|batch|gun|room|[a-z]+-\d+|\d+)'?s\b(?! (?:temp|door|setting|lot|coat|life|last|number))/g,
  nowInside:
    /\b(?:right now|right this (?:minute|second)|at the moment|at this moment|at present|currently|presently|rn)[ ,]+(?=[a-z\d])/g,
  slips: {
    ...{ wen: 'when', whn: 'when', wehn: 'when', wens: 'whens', wat: 'what', wht: 'what', waht: 'what', wats: 'whats' },
    ...{
      wot: 'what',
      wher: 'where',
      wheres: 'wheres',
      hw: 'how',
      hwo: 'how',
      hows: 'hows',
      wich: 'which',
      whcih: 'which',
    },
    ...{
      witch: 'which',
      hoo: 'who',
      whoes: 'whose',
      r: 'are',
      u: 'you',
      ur: 'your',
      til: 'till',
      cn: 'can',
      shud: 'should',
    },
    ...{
      shld: 'should',
      cud: 'could',
      enuf: 'enough',
      rdy: 'ready',
      tmp: 'temp',
      b4: 'before',
      gonna: 'going to',
      gotta: 'got to',
    },
    ...{
      flashoff: 'flash-off',
      potlife: 'pot life',
      dewpoint: 'dew point',
      howlong: 'how long',
      whens: 'whens',
      doin: 'doing',
      yt: 'yet',
      iz: 'is',
      dose: 'does',
    },
  },
  who: /^who/,
  stretch: /(?:^|\D)(\d+) ?(?:to|-|thru|through|till) ?(\d+)/,
  countedNouns:
    /^(?:parts|pieces|plates|panels|castings|items|pcs|things|jobs|bits|rails|frames|covers|housings|tubes|pipes|coats|people|kinds)$/,
  notPlaces: 'outside',
  somebody: 'somebody',
  asking:
    /^(?:what|whats|what's|which|who|whos|who's|whose|whom|when|whens|when's|where|wheres|where's|how|hows|how's|since when|till when|until when|from (?:what|which|when)|at what|by when|is|isnt|isn't|are|arent|aren't|was|were|does|doesnt|am i|(?:do|did|have|had|has|could|should|shall|must|may|would|will|can) (?:i|we|you|they|he|she|it|the|this|that|these|those|somebody|anyone|anybody|someone|any|both|[a-z]+[- ]?\d+)|any(?:thing|one|body)? |has \S+)\b|^(?:the )?(?:max\w*|min\w*|highest|lowest|least|most)\b(?!.*\d)/,
  asksAtEnd: /\b(?:yet|or not|or what|huh)$(?<!(?:not|n'?t) .*)/,
  thingFirst:
    /^(?:the |number |no )?(?:[a-z-]* ?\d+|[a-z-]+) (?:when|whens|how long|how much|who|where|what time|since when)\b|^(?:if|for|at|with|in|on) (?:[^ ?]+ ){1,6}(?:what|whats|what's|how|when|who|which|where)\b/,
  mayFirst:
    /^(?:the |number |no )?(?:[a-z-]* ?\d+|[a-z-]+) (?:al(?:l )?right|ok|okay|fine|good|clear|cleared|safe|cool|allowed|able) to\b/,
  emergencyNumber:
    /^(?=.*(?:emergenc|fire|accident|injur|ambulance))(?:(?:hey|hi|so|and|ok|please|boss|quick question)[, ]+)*(?:(?:what|which)(?:'?s|s| is)?(?: the| our)?(?: emergency)?(?: phone)? (?:number|line)(?: (?:do|should|must|would) (?:i|we|you) (?:call|ring|dial|phone))?|who(?:m)? (?:(?:do|should|must|would) (?:i|we|you)|to) (?:call|ring|dial|phone)|(?:the )?number)(?: (?:in case of|in|for|if there(?:'?s|s| is| was)|when there(?:'?s|s| is))(?: an?| the)? (?:emergenc(?:y|ies)|fire|accident|injury|ambulance))?[?. ]*$/,
  why: englishWhyAsked,
  rang: /\bwhy (?:did|has|is|was|does|do) (?:it|the|that|this|you|my|your|u) ?(?:just |phone |bell |alarm |timer |thing |bot |now )*(?:ring|rang|rung|ringing|go(?:ne|es)? off|going off|went|went off|beep\w*|buzz\w*|ding\w*|sound(?:ed|ing)?|chim\w*|call(?:ed|ing)?)\b|\bwhy the (?:bell|ring|beep|buzz\w*|ringing)\b|\b(?:what|which)(?:'?s| is| was|s)?\b.{0,14}\b(?:was|were|did|just|that|about)\b.{0,14}\b(?:bells?|rings?|ringing|alarms?|timers?|beeps?|beeping|buzz\w*|reminders?|ding\w*|noise)\b(?!.*\bnext\b)|\b(?:bells?|rings?|ringing|alarms?|timers?|beeps?|beeping|buzz\w*|reminders?|ding\w*|noise)\b.{0,14}\b(?:went|rang|rung|just|sounded|gone)\b.{0,30}\b(?:what|why|which|who)\b(?!.*\b(?:do|can|should|must|shall) (?:i|we)\b)|\b(?:rang|beeped|buzzed|went off|chimed|dinged)\b[ ,.;:-]+(?:and )?(?:what|why|which)\b(?!.*\b(?:do|can|should|must|shall) (?:i|we)\b)|\bwhat (?:just )?(?:rang|beeped|buzzed|went off|chimed|dinged)\b|\bwhat did (?:it|that|the (?:bells?|rings?|ringing|alarms?|timers?|beeps?|beeping|buzz\w*|reminders?|ding\w*|noise)) (?:just )?(?:ring|beep|buzz|go off|want|say|mean)\b/,
  topics: englishTopicsAsked,
  given: /\b(\d+(?:[.,]\d+)?) ?(kg|kilos?|g|grams?|lbs?|pounds?|oz|ounces?)?(?: of)? (?:part )?([ab])\b/,
  leadIns:
    /^(?:(?:hey|hi|hello|yo|(?:ok|okay|right|now)(?! (?:to|for|if)\b)|(?:wait|hold on|hang on)(?=,? (?:why|how|what|when|where|who|is|are|can)\b)|so|and|but|well|um+|uh+|er|quick question|question|just(?! (?:coat|spray|brush|mix|start|stop))|checking|just wondering|wondering|please|pls|sorry|guys|team|all|bot|boss|mate|any idea|any clue|no idea|tell (?:me|us)|remind (?:me|us)|let (?:me|us) know|(?:does |do )?(?:any(?:one|body)|some(?:one|body)|you|we) know|(?:can|could|would|will) (?:you|u|ya|some(?:one|body)|any(?:one|body))(?: please| pls| kindly| just| perhaps| possibly| maybe| quickly)* (?:tell|show|remind|send|give|say|explain|check|look up)(?: to)?(?: (?:me|us))?|(?:would|do) you mind (?:telling|showing|explaining|saying|checking)(?: to)?(?: (?:me|us))?|(?:might|may|can|could) i (?:just |please |quickly |kindly )*(?:ask|know|check|find out)(?: you)?|i was (?:just )?wondering|(?:i'?m |im )?(?:just )?curious|i(?:'d| would) (?:just )?(?:like|love|be glad) to (?:know|ask)|do you happen to know|good (?:morning|afternoon|evening|day)|morning|afternoon|evening|excuse me|honestly|seriously|real(?:ly)? quick|if (?:you|u) (?:could|can|would|please|don'?t mind)|(?:just |kindly |please )?(?:show|send|let)(?: (?:me|us))(?: see| know)?|just tell (?:me|us)|pull up|(?:list|work|figure|print)(?: out)?(?: me| us)?(?= )(?! \d)|(?:gimme|give me|give us|get me)(?= (?:the |a |my |our |all )?(?:whole |full |quick |short )?(?:version|cans|tins|history|paperwork|day|summary|rundown|recap|overview|status|next step|record|card|numbers))|(?:i(?:'d| would) like to|i (?:want|need) to) see|(?:i|we) (?:need|want|have|wanted) to know|i wonder|what about|how about)[ ,.:;!-]+)+/,
  others:
    /^(?:why|how come|how (?:do|does|should|would) (?:i|we|you|one|it)\b|how to|what does(?! \S+(?: \S+)? (?:belong|asks?\b|wants?\b|requires?\b|(?:still|yet) (?:need|ask|want|lack)\b|go (?:to|with)|(?:have|need|got) to\b|hit\b|reach\b))|what do you|(?:can|could|will|would) (?:you|u|ya|some(?:one|body)|any(?:one|body))\b)/,
  modal:
    /(?<=which )of the \d |^(?:when |how soon |what time |from when |how long (?:until|till|before) )?(?:can|could|may|should|shall|must)\b|\bout (?=(?:here|there)\b)|\bout of (?=(?:which|what|the)? ?(?:pot|batch|mix)\b)/,
  notActs: 'on off',
  kinds: [
    {
      asks: 'who-did',
      said: /who(?:'s|s)? (?:has |have |had |was it (?:that|who) )?(?:measured|read|checked|took|taken|weighed|opened|mixed|brushed|sprayed|rolled|dipped|coated|painted|filtered|gassed|blanketed|wiped|put)\b/,
    },
    {
      asks: 'what-now',
      said: /(?:the )?next (?:step|thing|move)\b|(?:what|whats|what's)(?: is| comes| goes)? (?:the )?(?:next|first)(?: thing| step| job)?$|next$|where do (?:i|we) (?:start|begin)$|what (?:do|should) (?:i|we) start with$/,
    },
    {
      asks: 'can-i',
      said: /what(?: do (?:i|we) need| is needed|(?:'?s| is) (?:missing|stopping (?:me|us)|left|needed)) (?:to|before|for|from)\b/,
    },
    {
      asks: 'how-long',
      said: /(?:is |are )?(?:there )?any(?:thing| clocks?| timers?) (?:still )?(?:running|going|happening|in progress|ticking|active)\b/,
    },
    {
      asks: 'how-hot',
      said: /(?:the )?(?:air |room )?(?:temp(?:erature)?|humidity|rh|dew ?point|spread|delta ?t)(?: (?:right )?(?:now|currently|at the moment))?$/,
    },
    {
      asks: 'how-hot',
      said: /how (?:much|high|low) (?:is|was) the (?:air |room )?(?:dew ?point|humidity|rh|spread)\b/,
    },
    { asks: 'how-hot', said: /what (?:did|does|do) (?:the )?(?:\d+|[a-z]+[- ]\d+) (?:read|show|say|measure)\b/ },
    {
      asks: 'can-i',
      said: /(?:when |how (?:soon|late) |what time |(?:from|till|until) when |how long (?:until|till|before) )?(?:can|could|may|should|shall|must) (?:i|we|they|it|this|that|these|those|somebody|someone|anybody|anyone|the [a-z]+|[a-z]+[- ]\d+|\d+(?= (?:be|go|come|get|have|already|still|now)\b)|[a-z]+(?= be\b))\b/,
    },
    {
      asks: 'how-long',
      said: /(?:has|have|is|are|did|will|can|whether)\b.{0,60}\b(?:gone off|gone bad|going off|usable|any good|still good|past it|past its best|had it|dead)\b/,
    },
    { asks: 'mask', said: /(?:what|which) (?:mask|respirator|cartridge)/ },
    { asks: 'traveller', said: /\b(?:travell?er|route card|job card|paperwork (?:of|for|on))\b/, anywhere: true },
    { asks: 'card', said: /(?:the )?(?:card|record|history|file) (?:of|for|on)\b/ },
    {
      asks: 'day',
      said: /(?<![a-z])(?:the |my |our )?(?:whole |full )?(?:day|shift|morning)(?:'?s)? ?(?:so far|summary|record|report|log|recap|rundown|to now|until now|up to now)?$|(?:a |the )?(?:quick |short |brief |full )?(?:summary|recap|rundown|report|overview|short version|version) (?:of|for|on) (?:the |this )?(?:day|shift|today|morning)|what(?:'?s| is| has| have)?(?: all)? (?:been )?(?:happened|happening|happens|going on|gone on|went on|got done|done)\b.{0,12}\b(?:today|so far|this morning|this shift)|what have (?:they|we|you) (?:all )?done (?:so far|today)/,
    },
    { asks: 'day', said: /how (?:much|many)\b.{0,30}\b(?:today|so far|this morning|this shift|yet today)\b/ },
    { asks: 'can-i', said: /how long (?:until|till|before) (?:i|we|it|they|\S+|the \S+) can\b/, anywhere: true },
    {
      asks: 'can-i',
      said: /(?:(?:is|are|am|would|will)(?: it| this| that| we| i| they| the [a-z]+| [a-z]+[- ]?\d+| \d+)?(?: all)?(?: be)? )?(?:ok|okay|fine|alright|all right|good|clear|safe|ready|time|possible|allowed|too (?:late|early|soon|hot|cold|warm|humid|damp|muggy|sticky|steamy|chilly|wet|dry|windy)(?: (?:in|out) here| (?:in|out) there| today| (?:in|out)side)?) (?:for|to|if)\b/,
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
      asks: 'how-long',
      said: /(?:which|who|what)\b(?!.*\b(?:pots?|batch(?:es)?|mix|cans?)\b).{0,40}\bfirst\b(?=.*\b(?:out|done|ready|finish\w*|com\w+)\b|$)/,
    },
    {
      asks: 'at-risk',
      said: /(?:what|how much|which|is anything|anything|are we)\b.{0,30}\b(?:at risk|los(?:e|es|ing)|lost|wast(?:e|ed|ing)|goes? off|going off|go(?:es)? bad)\b|(?:which|what) (?:pot|batch|mix|one)s?\b.{0,30}\b(?:first|soonest|oldest|dies|expires)\b/,
    },
    {
      asks: 'trace',
      said: /what (?:went|goes|did we put|is|was) on\b|(?:which|what) (?:product|paint|coating|material)\b|(?:which|what) (?:lots?|batch(?: number)?|can)\b.{0,40}\b(?:on|for|in|into)\b|(?:which|what) lots?\b|lot (?:number|no)\b/,
    },
    {
      asks: 'how-hot',
      said: /how (?:old|fresh|recent)\b.{0,20}\b(?:readings?|air|data|numbers?|temp\w*)\b/,
      anywhere: true,
    },
    {
      asks: 'where-is',
      said: /(?:oven|booth)\b.{0,12}\b(?:free|empty|available|in use|taken|full|busy|occupied)\b/,
      anywhere: true,
    },
    {
      asks: 'how-hot',
      said: /how high (?:is|was) (?:the )?(?:air |room )?(?:dew|humid|temp|rh)|how (?:hot|warm|cold|cool|chilly|humid|damp|muggy|sticky|steamy|clammy|moist)\b|\b(?:condens\w*|sweat(?:s|ing)?|dew forms?|fog(?:s|ging) up)\b|(?:what|whats)(?:'s| is| was)? (?:the |our |its )?(?:current |latest |last )?(?:part |oven |room |air |booth |metal )?(?:temp|temps|temperature|humidity|rh|dew ?point|spread|air|weather)\b|temp(?:erature)? (?:of|on|in|at)\b/,
      anywhere: true,
    },
    {
      asks: 'how-long',
      said: /how much (?:more )?(?:longer|time)\b|how much left (?:until|till|before)\b|how long\b(?! ago)|how soon\b|how many (?:more )?(?:min|mins|minutes|hours)\b/,
      anywhere: true,
    },
    {
      asks: 'who-did',
      said: /how many (?:people|of us|guys|hands)\b|how thick\b|(?:what(?:'?s| is| was) )?the (?:ratio|thickness|film)\b|how far off\b|when (?:did|was|were|has|have|had)\b|what time (?:did|was|were)\b|how long ago\b|how old (?:is|are|was)\b|(?<!\b(?:to|i|we|they|you|he|she|that|it) )(?:has|have|did|had) (?:any(?:one|body)|some(?:one|body)|we|i|they|you|he|she|(?!(?:a|an|the|to|in|no|not|nothing|any|some|enough|been|got|it|been|only|just|had)\b)[a-z]+) |who(?:se|m|'s|s)?\b|(?:is|are) (?:any(?:one|body)|some(?:one|body)) (?:in|on|at|spraying|using)\b|what did\b|when'd\b/,
    },
    {
      asks: 'where-is',
      said: /(?:what|which)(?: (?:parts?|ones?|pots?|batch(?:es)?|pieces?))?(?:'?s|s| is| are|'re) (?:still |all |now |the )*(?:wet|dry|drying|in flash.?off|flashing|cured|released|done|ready|bare|coated|open|on hold|held|cooking|open batches|curing)\b|(?:any|what(?:'?s| is)) (?:holds?|on hold|held|cooking)\b|what (?:do|have) we (?:have |got )+in\b|where(?:'?s|s|re|'re)?\b|(?:what|which(?: parts?| ones?)?|anything|how many(?: parts?)?)(?:'?s|s| is| are|'re)?(?: still| left| now)* (?:curing|baking|(?:in|inside|out) (?:of )?(?:the )?(?:oven|booth|room|cure|bay|shop|store))|(?:is|are)\b.{0,30}\b(?:in|inside) the (?:oven|booth)/,
    },
    {
      asks: 'how-much',
      said: /(?:do we have |have we got |got |is there )?any (?:part |more )?[ab](?: left)?\b|(?:what|which|how many|all(?: the| our)?|the|our) (?:open )?(?:cans?|tins?)\b(?= (?:we|that|there|are|is|do|have|on|in)\b|$)|(?:any(?:thing)?|much|some(?:thing)?) (?:still )?left (?:in|of|on)\b|how (?:much|many)\b|what(?:'?s| is) (?:left|in)\b(?= (?:in|of|on)?\b ?(?:the |my |our )?(?:pot|batch|mix|can|tin|a\b|b\b|part [ab]|stock|\d))|(?:do|have) (?:we|i) (?:have |got )?enough|is there enough/,
      anywhere: true,
    },
    {
      asks: 'what-now',
      said: /what (?:do|should|must) (?:i|we) (?:do|be doing)(?: (?:now|next|first|here))?(?= |$)|what now\b/,
    },
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
    {
      act: 'coat',
      said: /\b(?:get|gets|got|gotten|getting) (?:a?round )?to (?:number |no |the |#)?(?=[a-z-]*[- ]?\d)|\b(?:bare|uncoated|unpainted)\b|\bbeen at (?:number |no |the |#)?[a-z-]*[- ]?\d/,
    },
    {
      act: 'air',
      said: /\b(?:hygrometer|thermometer|(?:check|look|read|measur|test)\w*\b.{0,12}\b(?:air|room|humidity|weather))\b/,
    },
    {
      act: 'stop',
      said: /\b(?:shut|turn|switch|kill)\b.{0,20}\bstirr\w*.{0,6}\boff\b|\b(?:stop|quit|done|finish\w*) (?:the )?stirr\w*|\bstirr\w* (?:stop|done|off)\b/,
    },
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
    {
      act: 'flush',
      said: /\b(?:clean|wash|rins|flush)\w*\b.{0,12}\b(?:gun|gear|hose|vessels?|cup|brush|roller|line)\b/,
    },
    {
      act: 'prep',
      said: /\b(?:wip|degreas|clean|blast|sand|prep)\w*\b.{0,16}(?:\d|\b(?:part|steel|surface|impeller)\b)/,
    },
    { act: 'flush', said: /\b(?:flush|rins|wash)(?:ed|ing)?\b/ },
    { act: 'shut', said: /\b(?:can|tin|lid)\b.{0,20}\b(?:closed|shut|back on)\b/ },
    { act: 'gel', said: /\b(?:pot|mix|batch)\b.{0,12}\b(?:die|dies|expire|expires|run out|last)\b/ },
    { act: 'gel', said: /\b(?:set up|kicked)\b/ },
  ],
  spray: /\b(?:spray|sprayed|spraying)\b/,
  component: /(?<=[a-z] )([ab])(?= (?:is|are|do|left|we|have)\b|$)/,
  ofAll: /^(?:which\b.*\bfirst|(?:is|are) (?:there )?any\w*|how|when|what|any|time|till|until)\b/,
  isDone: /(?:ed|dry|empty|out|thick|shut|held|wet)$/,
  usesPot: { said: /\b(use|used|using) (?:up )?(?:number )?(?=\d+\b)/, as: '$1 batch ' },
  stated:
    /^(?!.*\b(?:what|whats|how|hows|when|whens|why|who|where|which|if|whether|ok|enough|too)\b)(?!(?:is|are|am|was|were|does|do|can|could|should|shall|will|would|may|must|isnt|arent|next|max\w*|min\w*|any)\b).*\d ?(?:°|º|degrees|deg\b|percent\b|%|[cf]\b|grams?\b|g\b|kg\b|kilos?\b|pounds?\b|lbs?\b|oz\b|microns\b|mils\b|um\b)|^(?:did|done|finished|got|had) (?:number )?\d|^did (?:[a-z-]*\d+[ ,]*(?:(?:and|thru|to) )?)+(?:with|by|from|out|off|using)\b|^(?:is|are|was|were) (?:now |both |all |still |only )*(?:at|on|reading|showing|up to|down to) \d|^haven'?t (?!(?:i|we|you|they)\b)/,
  mayAsk:
    /\b(?:[a-z]+-\d+|\d+|it|they|them|these|those|you|we|all|both|one|ones) (?:can|could|may|might) (?!(?:is|was|has|had|got|are|were|with|from|of|and|in|on|to|at|lid|just|that)\b)[a-z]{2,}/,
  readsNow:
    /^(?:what(?:'?s| is|s| are)|whats) (?:still |now |all )?(?:on hold|released)\b|^what(?:'?s| is|s) (?:the|our|my) (?:current |latest |last )?(?:dew ?point|humidity|rh|spread|delta ?t)\b|^what.*\b(?:now|today|this (?:morning|afternoon)|in here|at the moment|currently)$/,
  joinsAsked:
    /,? (?:so|but) (?=(?:what|when|how|can|could|do|does|did|should|where|who|which|is|are|was|has|have|will|any|just tell|tell)\b)|[;:.!] |, (?!(?:which|who) (?:is|was|are|were|has|had|reads?|shows?|says|i|we|he|she|they|the)\b(?!.*\bfirst\b))| [-–—] /g,
  unfitAir:
    /\btoo (?:damp|humid|muggy|wet|dry|cold|hot|warm|windy|sticky|steamy|chilly)\b|\b(?:in|with) (?:this|such|all this) (?:humidity|damp|heat|cold|weather|air|wind)\b/,
  whereParts: [
    {
      are: 'curing',
      said: /\b(?:the|those|these|both|all)(?: of)?(?: the| those| these)? (?:(?:one|ones|parts?|pieces?|load|lot|two|three|four|five|six|(\d+)) (?:(?:that|which)(?:'?s| is| are)? |still |now |currently )*(?:in|inside) (?:the |our |that )?oven|(?:(?:two|three|four|five|six|(\d+)) )?oven (?:ones?|parts?|pieces?|load))\b/,
    },
    {
      are: 'flashing',
      said: /\b(?:the|that|those|these) (?:wet|fresh|tacky|flashing) (?:ones?|parts?|pieces?)\b|\b(?:the|that|those|these) (?:ones?|parts?|pieces?) (?:(?:that|which)(?:'?s| is| are)? |still |now )*(?:drying|flashing(?: off)?|in flash(?:-| )?off)\b/,
    },
  ],
  ordinals: {
    ...{ first: 1, second: 2, third: 3, fourth: 4, fifth: 5, sixth: 6, seventh: 7, eighth: 8, ninth: 9, tenth: 10 },
    ...{ '1st': 1, '2nd': 2, '3rd': 3, '4th': 4, '5th': 5, '6th': 6, '7th': 7, '8th': 8, '9th': 9, '10th': 10 },
  },
};
