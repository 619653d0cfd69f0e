// What English speakers say round an act, and no part of it: why so late, what kept them, where they stand. Invented lines.

export const englishAsides = `
  couldn't get my gloves off / couldnt get my glove off / could not get the gloves off in time / had my gloves on
  I had gloves on and could not type / my hands were full / hands full sorry / had my hands full / hands were busy
  forgot to say / forgot to say so / forgot to type it / forgot to put it in / forgot to tell you / forgot to log it
  I forgot to write it down / just forgot to mention it / should have said / should have said sooner / meant to say earlier
  meant to tell you / been meaning to type that / only typing it now / only now got to the phone / only just got to my phone
  only getting to this now / just getting round to typing it / didn't get round to typing it / didn't have time to type
  did not have time to write it / no time to write it down / had no time to log it / haven't had a minute / haven't had a second to type
  couldn't type before / couldn't find my phone / couldn't find the phone / phone was dead / my phone died / the phone was in the locker
  phone was in my pocket / no signal in there / had no signal / wifi was down again / the screen was covered in dust
  sorry I'm late with this / sorry for the late entry / sorry this is late / late entry sorry / sorry for the delay / bit late typing this
  sorry it took me so long / sorry about the wait / was busy / I was busy / was busy with the customer / had a visitor / got called away
  got sidetracked / got interrupted / the boss was talking to me / boss was on the phone / somebody was talking my ear off
  was at lunch / went for a coffee / grabbed a coffee first / had to run to the gate / had to answer the door / was on the phone
  was on the other side of the shop / I was over at the bench / I'm over by the rack / I'm standing at the oven / walking past the oven
  just walked past the oven / I walked past it / so I walked over there / on my way to the store / on my way back
  on my way out / before I head home / before I go on break / before I forget / while I remember / while I think of it
  while I'm here / while I am at it / since you ask / in case you wonder / in case anyone wonders / if anybody asks / if anyone wants to know
  for what it's worth / for the record / just so you know / so everybody knows / so it is in the book / so we have it on paper
  just for the log / so it's written down / so nobody asks later / as you asked / like you said / as agreed this morning / as we said
  as usual / same as always / same as every day / nothing special / nothing fancy / all by the book / went like clockwork / went smooth
  no trouble at all / no problems / no drama / no surprises there / easy enough / easy peasy / piece of cake / took me long enough
  took a while / took longer than I thought / finally got there / about time too / at long last / thank god / thank goodness
  what a morning / what a day / long day / long morning / busy one today / it's a busy day / hot as hell in here / it is cold in here today
  my back is killing me / my feet hurt / my glasses were off / I had my glasses off / I can't see without my glasses / can't see a thing
  my eyes are going / eyes are tired / my eyes aren't what they were / need new glasses / I can't count / can't count today
  can't type to save my life / can't spell today / can't type with gloves / sorry for the typing / excuse my typing / fat fingers today
  brain is off today / my brain is fried / not awake yet / still half asleep / had no coffee yet / need a coffee / I need more coffee
  I'm no good with phones / I'm new here / still learning / first time I do this / hope that's right to say here / hope I did this right
  hope you got that / did you get that / you hear me / you there / are you listening / over and out / that's all / that's all for now
  that is all from me / that's it from me / nothing else / nothing else to report / nothing more for now / carry on / back to work
  going for lunch now / off to lunch / going on break / heading home / heading home now / see you tomorrow / see you monday
  talk later / more later / will tell you more later / got to run / gotta go / I have to run / have to go now / duty calls
  the radio is on / with the radio on / loud in here / it's loud in here / can hardly hear myself / the compressor is roaring
  lol not me / just kidding / only joking / haha / no kidding / believe it or not / would you believe it / I swear / honest
  you know how it is / you know what I mean / if you know what I mean / know what I mean / what else is new / there you have it
  so there / so there you go / happy now / hope you're happy / tell the boss / tell him I said so / pass it on / let the others know
  let them know please / write that down please / please write it down / put it down please / please note it down / make a note please
  note it for me / log that for me / if you'd be so good / if you would be so kind / thanks in advance / thank you kindly / many thanks for that
  cheers for that / much obliged to you / good man / good girl / good lad / bless you / god bless
  Dave was asking / the new guy helped me / the lad held it for me / the apprentice watched / with a bit of help / all by myself / did it myself
  customer is waiting for it / the customer is in a hurry / they want it today / it's for the big order / it's a rush job / it is urgent
  checked both of them / checked them both with the probe / just measured them all / measured both / probed the two of them / took a reading of each
  went round with the probe / went over them with the thermometer / had the probe on both / just read them both
  probe has been on both / put the probe to both of them / checked the two with the probe / checked all three of them / have just checked them all
  been at it since six / been here since five / been a long night / night shift signing off / shift change in a bit
  gonna be a long one / it's gonna be a long one / going to be a long day / gonna be a big one today / this will take a while
  morning sunshine / good morning sunshine / morning everybody / hello lovely people / hey gorgeous / evening all
  happy with it / very happy with it / I'm happy with that one / quite pleased with it / had a good look at it
  nothing wrong with it / nothing wrong with that one / no faults on it / can't fault it / could not fault it / nothing to complain about
  I guess we're off / guess we're under way / guess that's us starting / I suppose we're on our way / looks like we're getting going
  I guess we are going / so I guess we're beginning / might as well get going / might as well make a start / may as well get started
  may as well crack on / here goes nothing / here we go again / let's get this show on the road / guess it's time to start
  I guess we can start then / guess we should start / suppose we'd better get started / well we're starting then
  hiya bot / what's up bot / sup bot / yo bot how's it hanging / how's it going bot
  have checked both of them with the probe / went over both with the probe / checked the pair of them with the probe / tried both of them with the probe
  put the probe on both of them / went to both with the probe / I need it for the file / I need the name for the file / I need that for the label / I need it for the report / I need it for the invoice / it is for the paperwork
  I have to put it on the traveller / I have to write it down / I have to write the report / I am filling in the paperwork / I am filling in the form
  I am writing the label / I am writing it up / the boss wants to know / the owner is asking / the customer is asking / the customer wants to know
  the customer is on the line / they are asking at the office / the office wants it / the auditor is here / the inspector is here / the inspector wants it
  somebody from the office asked me / my foreman is asking / the driver is waiting / the truck is waiting outside / they are waiting for it / they are waiting for me
  I am new here / I am new at this / this is all new to me / I have never done this before / it is my first week / I only started on Monday / I do not know my way round yet
  I have just arrived / I have only just arrived / I have just come in / I was away for an hour / I was away all morning / I was on my break / I was off yesterday
  I have nothing to do / I have my hands free / I am standing about / I am waiting here / I want to finish the rack / I want to plan my break / I want to go home on time
  we are behind today / we are short of people / we are short of racks / we are short of time / we are in a hurry / we have a lot to do today / there is a lot to do
  we have the whole rack to do / the whole rack has to be done today / they have to be done today / it has to go out today / it goes out tonight / it has to be ready tonight
  it is not on the rack / it is not where it was / I cannot find my glasses / I had my glasses off / I did not have my glasses on / I forgot my glasses
  I only got to the phone now / I was too busy to type / I was too busy to write it down / I had no time to write it down / I did not have the phone with me / I was on the phone
  the phone was on the other bench / I had both hands full / I have paint on my gloves / my gloves were off / my gloves are sticky / sorry that I am late with it
  sorry to bother you / sorry to bother you again / excuse me for asking / I hope that is all right / I hope that is enough / I hope that helps / that is all I know
  that is what we wanted / that is how we always do it / that is what it says / as the sheet says / as the sheet asks / as it should be / as they should be / as you can see
  they look the same / they all look the same / the glass was fogged / the display was fogged / the light is bad here / the light was bad / the print is very small / the tag was dirty
  I read the wrong line / I read the wrong tag / I looked at the wrong one / I picked up the wrong one / I was looking at the wrong one / somebody swapped the tags
  I touched the wrong one / my mistake / that was my mistake / that was my fault / I am afraid I was wrong there / I mixed them up / I got them mixed up
  the tank is big / the order is small / the order is bigger than we thought / there are more parts than we thought / there are only a few parts left / we only have a few left
  the customer sent more parts / the customer is in a hurry today / the rest of the order comes later / that will cover it / that will cover them / that should be enough / that should do
  that will do for today / it is for the big ones / it is for the small ones / they are urgent / it is a rush order / the door was open all night / somebody left the door open
  the heating is on / the heating was off / the sun is on the window / it rained all night / it is a nice day / have a nice day / have a good day everyone / have a good one
  good morning everybody / good morning from the shop / hello from the booth / good news at last / here is some good news / thank you very much / thanks a lot / thank you all
  we can go on / we can go on now / we can carry on / so we can go on / so we can carry on with the next / it is the next one's turn / nobody touched it before / nobody else has touched it
  nobody needs it before tomorrow / nobody needs it until later / we needed the shelf / we needed the room / we needed the rack for something else / somebody had to make room
  the brush was lost / the brush was no good / the brush shed hairs / the brush lost its hairs / the roller was worn out / the roller was too wide / the big brush was too wide
  it was next in the row / it was its turn / it was nearly noon / it is nearly noon / it is nearly time to go / it was lying there / it was in the way
  you asked me to tell you / you wanted to know / you asked for it / as you wanted / as I was told / as I was shown / as we agreed / I was told to say so
  going for coffee / off for a coffee / off to lunch / going for lunch / back in a few / back in ten / nipping out for a smoke / popping to the store room
  going for more gloves / off to get another brush / we have six of them to do / there are five more of them / but my hands were full / but I had gloves on
  slipped my mind / it had slipped my mind / that is that / and that is that / job done / happy days
`;
