// How English speakers put right what they have just said. Invented lines, each as somebody would type it.

export const englishCorrections = `
  typed it backwards its 48 / typed it backwards, should be 48 / typed that wrong, its 195
  wrong wire, that reading was 7 / wrong probe, it was on 8 / wrong sensor, that was for the 3
  read it upside down, its 16 / read the wrong line, 88 / read the scale wrong, it says 602
  read the dial wrong, it was 61 / misread the screen, it's 91 / misread it, 46 percent
  I misread the gauge, it shows 21 / looked at the wrong number, it's 1198 / looked at the wrong part, it was valve 2
  had the digits swapped, it's 1189 / swapped the digits, 54 not 45 / swapped them around, A is 1201 and B 1198
  got them the wrong way round, it was 6 not 9 / got the pots mixed up, that was batch 2
  mixed up the parts, it was the 4 / mixed up my pots, it went on from pot 1 / said the wrong one, I meant 5
  said 7, meant 8 / said brush, meant roller / put the wrong number in, it's 2.1
  put in the wrong part, should be the housing / put 300 down but it was 200 / wrote 98 but it is 89
  wrote 7 where it should be 8 / hit the wrong key, 26 / hit the wrong digit, 1.8 / slipped, meant 1.8
  thumb slipped, 89 / fat fingered it, its 89 / gloves, it was 89 / autocorrect, I meant roller / typo, 1.6
  typo there, 58 not 48 / meant to say 46 / meant to put pot 2 / I should have said 9:40 / should've been 22
  should have read 48 / should say 1198 / supposed to be 1.6 / that should have been number 8
  that was rolled not brushed / that one was sprayed, not brushed / that was dipped, not brushed
  I dunked that in pot 2, not 1 / I did that with the roller, not the brush / it came from pot 1, not 2
  that came out of batch 2 / that one went on from the other pot, 2 / that was done at 9:40, not now
  I did that one ten minutes ago / that was a while back, more like 9:30 / was 5, not 6 / it's 5 I did
  5 is the one I did, not 6 / not the 7, the 8 / the other one, 8 / other pot, 2 / other flange, the 3
  on second thought 1.5 / on second thoughts make it 2 kilos / changed my mind, 1.2 / make it 1.6 after all
  better make that 2 / better do 1.5 / let's do 1.4 instead / lets go with 1.8 instead / reduce that to 1.2
  bump that up to 3 / drop that to 1.5 / change the B to 1198 / change that to 48 / change the humidity to 58
  fix that, 48 / fix the last one, it was 91 / fix humidity 58 / correct the last one, 91 / correct that to 1198
  correcting myself, 46 / correction on that, 22 / let me correct that, 195 / let me redo that, 48 percent
  let me fix that: 602 / update that to 91 / update my last to 22 / scale says 1198, not 1189 / checked again, it's 47
  checked it again and its 91 / double checked, 1198 / looked again, 89 / looked again and it's really 46
  second look, it's 16 / re-read it, 88 / remeasured, 17 / actually its showing 91 / actually reads 88
  sorry my eyes, 16 / my eyes are going, 46 not 40 / lia tells me it was 8 / kari says it was the 3, not the 2
  no wait that's the 4 / hold up, 1.6 / hang on, its 46 / whoa, 48 not 84 / argh, 91 / darn, 1.8 I meant
  shoot, pot 2
  flipped the numbers, it's 48 / the numbers got flipped, 54 / numbers backwards, 61 not 16 / silly me, it was the 8
  silly me, that probe sits on the 4 / daft of me, 1198 / dumb mistake, 2.1 / brain fart, it was 8
  brain's fried, I meant the roller / come to think of it, that was pot 2
  come to think of it that went on from pot 1 / now that I think of it, 5 / on reflection 1.8
  on reflection I only want 2 kilos / 2 kilos is plenty, change it / 1.5 is enough, change that
  less than that, 1.2 kg / a bit more, make it 3 / I overdid it, 1.6 will do / more like 250 g
  more like 250 in the drum actually / closer to 200, not 300 / actually it was 250 that I tossed / in fact it was 22
  the second figure is off, 1198 / the first number is off, 1201 / that figure's off, 91 / that number isn't right, 48
  that's not right, it's 22 / not right, 602 / gauge was upside down, 16 / held the gauge upside down, it's 16
  the meter was on the wrong scale, 61 / decimal in the wrong place, 2.4 / missed a digit, 1198
  one zero too many, 200 / dropped a zero, 200 / that was for the 3 / that one goes to number 8
  that temp was the other part, 8 / that reading belongs to the 8 / that's the reading for 4 / meant the 4 there
  sry, roller / sorry, 46 / sorry, the 3 / no sorry, 1.2 / oops, 602 / oops, number 4 / whoops, the B was 602
  no no, 2.2 / nah, 1.7 / nope, 46 / nah make it 3 pounds / no I said 1.4 / I said two kilos / pardon, 89
  I meant 89 there / roller, I mean / pot 2 I mean / I didn't wipe it, I blasted it / didn't brush that, rolled it
  wasn't me, it was Lia
  hold on, its 52 / hold on that's 1.9 / hold on a sec, 87 / hold on, it's 23 in here / hold on, that was the tank
  hold up, it says 61 / hold up, that's the other valve / wait, 57 / wait, its 23 / wait no, 57 percent
  wait no, it's 23 in the hall / wait a sec, that says 602 / wait up, it was bracket 3 / hang on, that's 23
  hang on a minute, 1.4 / hang on, that was the roller / stop, it's 1.4 / stop, that was the other one, 5
  nope, 57 / nope, 23 now I look at it / nope, that was bracket 3 / nope it's the 4 / nah, 87
  naw, 1.4 / naw, it was bracket 3 / naw that was the 4 / naw it went on from pot 2 / nuh uh, 87 / uh no, the 4
  aw no, 1.4 / aw man, 57 / aw heck, it was 3 pounds / ah crap, 602 / ah shoot, the roller / ah hell, bracket 3
  oh hell, 1.4 / oh hell no, 2 kilos / hell no, 2 kilos / hell, 57 / heck no, 1.4 kilos / god no, 1.4
  jeez, 23 / jeez no, 602 / gah, 57 / gosh no, 1.4 / dang, that was the 4 / dang, 57 / damn, it was the 4 / damn, 1.4
  dammit, 602 / bugger, 23 / bloody hell, 1.4 / blimey no, 87 / crikey, 1.4 / argh no, the 4 / ugh, 57 / ugh no, 602
  ugh, wet gloves, 87 / d'oh, the 4 / doh, bracket 3 / duh, 57 / hmm no, 23 / hmm, that was pot 2 / hm no, bracket 3
  whoa no, 1.4 / whoops no, 57 / lol no, 1.4 / lol that was the 4 / haha no, 57 / yikes, 602 / yeah no, 1.4
  yeah no, the 4 / eh no, 23 / er no, 57 / er, that was with the roller / um no, bracket 3 / um, 57 / erm, 1.4 not 4.1
  no brain today, 1.4 / not awake yet, 57 / need more coffee, its 57 / I can't read, 87 / cant read today, 602
  I can't type, 57 / can't spell, roller / cant count today, 1.4 / I'm blind, its 87 / going blind, 87
  my glasses are fogged, its 57 / glasses fogged up, 23 / put my glasses on, 87 / now with my glasses on, 87
  mask's fogged, it says 57 / visor's steamed up, its 57 / sun on the screen, 87 / shaky hands, 57
  half asleep, bracket 3 / wrong glasses, 57 / sleepy, it was the 4 / been a long day, 602
  thats not it, 57 / that's a lie, it was 57 / lies, it was the roller / I lied, 1.4 / I lied, it was the 4
  strike that, 57 / strike that, it was bracket 3 / scratch that, 57 / scratch that, it's 23
  scratch that, it reads 57 / scrap that, 1.4 kilos / forget that, 2 kilos / not that one, the 4
  that's too much, 1.4 / that's too much, we only need 1.4 / too much, make it 1.4 / way too much, 2 kilos is enough
  we only need 1.4 / only need 2 kilos / we don't need that much, 1.4 / don't need that much, 1.4 kilos
  need a bit less, 1.4 / that's not enough, make it 3 / not enough, 3 kilos / need more than that, 3 kilos
  that won't do, 3 kilos / less, 1.4 / more, 3 kilos / nearer 250 / nearer 250 than 300 / more like 57
  it was more like 250 / it's more 57 than 75 / call it 250 / call it 1.4 / that's 250 with the drum, 200 without
  tare was on, 250 / forgot the tare, 602 / forgot to zero it, 602 / the bucket was wet, 250
  that came from pot 2 / that came out of pot 2 / that was from pot 2 / it was from pot 2 / it's from batch 1
  got it from pot 2 / used pot 2 for that / pot 2 on that one / wrong pot, it was 2 / wrong pot number, 2 it was
  had the wrong pot, 2 / that pot was number 2 / I poured from pot 2 / took it from batch 1
  that weighing was pot 2 / those weights are for pot 2 / the weights were for batch 1
  used the roller on that / I used the roller on that / used a brush for that one / roller on that one
  did it with the brush / it was done with the roller / rolled that one / brushed that one, not rolled
  went at it with the roller / that one got dipped / dipped it, not brushed
  I did the 4 not the 5 / I did 4, not 5 / was bracket 3 I did / it was the 4 I did / the one I did was the 4
  the 4 is what I did / it's the 4 that's done / that's for bracket 3 / meant bracket 3 / bracket 3 I meant
  I meant the other one, bracket 3 / hell I meant 3 / heck I meant the roller / shoot I meant 57
  that probe is on 4 / that probe's on the 4 / the probe is in bracket 3 / the wire's on bracket 3
  that sensor was in the 4 / that thermocouple is on the 4 / the reading was off the 4
  I finished that ten minutes ago / finished that one ten minutes back / did that ten minutes ago
  I did that at 9:20 / that was at 9:20 / that was at twenty past nine / did it at 9:20, not now
  that was ten minutes ago, not now / not just now, ten minutes ago / it was a quarter of an hour ago
  it was already done at 9:20 / it happened at 9:20 / time's wrong, 9:20 / wrong time, it was 9:20
  the time should be 9:20 / typed it late, it was 9:20 / late with that one, it was 9:20 / was done by 9:20
  oven's at 85 not 90 / oven is at 85 / set to 85, not 90 / the dial says 85 / we turned it down to 85
  it was Jo who did that / Jo did that one, not me / Jo did it / that was Jo / Jo's work, not mine / not me, Jo
  I got that wrong, it was pot 2 / I gave you the wrong figure, it's 1198 / I gave the wrong part, it was the cover
  I read you the wrong one, 46 it is / I called it 7 but it's 8 / I called out the wrong tin, it was can 4
  I must have read it wrong, it's 22 / I have mistyped, it is 48 / I have written the wrong number, it should be 602
  I have taken the wrong pot, it was batch 2 / excuse me, it was 46 / excuse me, I meant the casing
  apologies, it's 1198 not 1189 / apologies, wrong part, the hub / forgive me, it was the roller / beg pardon, 89
  pardon me, I meant can 4 / begging your pardon, it was the other gate / so sorry, the right figure is 91
  the right number is 1198 / the right one is 8 / the right part is the cover / the correct figure is 48
  the correct part is 4 / the true reading is 22 / the real figure's 46 / the proper number is 89
  should be 48, not 84 / should be the casing, not the cover / should be pot 2, not pot 1 / should be grams not kilos
  should be fahrenheit, that one / should have been the brush / should've said the hub / should've put 602
  ought to be 46 / ought to say roller / was meant to be 1.6 / was meant for pot 2 / was meant for the cover
  it's meant to be 22 / make that 1.4 / make that the hub / make that pot 2 / make that 46 percent
  make it the roller / make it can 4 not 3 / call it 1.6 / call it 46 then / say 1.4 instead / put 602 instead
  put the cover instead / put pot 2 in place of pot 1 / take 48 instead of 84 / use 1198 rather than 1189
  swap 7 for 8 / swap that to pot 2 / swap brush for roller / replace that with 46 / replace 84 by 48
  turn that into 1.6 / amend that to 22 / amend the last, 602 / adjust that to 1198 / adjust the B to 903
  alter that to 48 / edit that, it's 91 / edit the last one, pot 2 / set that right, it was the hub
  put that right: 46 / set it straight, it was can 4 / for the record it was 8 not 7 / to correct myself, 602
  to put it right, it was sprayed / let me put that right, 46 / let me rephrase, pot 2
  let me take that again, 22 and 48 / let me try that again, 1.6 kilos / I'll correct that, 91
  I'll say it again, A 905 / once more, it's 46 / again, but right this time: 602 / try again, 48 percent
  take two, 1198 / second try, it's 89 / not 84, 48 / not 1189 but 1198 / not pot 1, pot 2 / not the cover, the casing
  not can 3, can 4 / not brushed, rolled / not 7 but 8 / not grams, ounces / not this morning, yesterday
  not now, at 9:40 / not me, Ola did it / not 90, 88 on the probe / not in the oven, on the rack / not A, B
  not the base, the hub / 8, not 7 / 48, not 84 / 602 rather than 620 / pot 2, not pot 1 / can 4 it was, not can 3
  rolled, not brushed / sprayed it was / it was Ola, not me / it was ounces / it was at 9:40 / it was yesterday
  it was the other can / it was the other brush / it was the hub / it was less, 250 / it was more, 310
  it's really 46 / it's the hub I meant / it's can 4 I opened / it's pot 2 I filtered
  it's the cover that's dry, not the casing / that's 48, sorry / that's the hub, sorry / that's can 4, my mistake
  that's wrong, it's 46 / that's wrong, it was the roller / that's the wrong pot, it was 2
  that's the wrong can, I meant 4 / that's off, should be 22 / that was meant for can 4 / that was the hub actually
  that was pot 2 actually / that was ounces, not grams / that was Ola's, mine is 8 / that film was on the cover
  that was before lunch, 11:40 / that was an hour ago really / that was with the roller / that was by dip
  the coat was on 8, not 7 / the coat was from pot 2 / the can was 4 / the pot was 2 / the reading was 46
  the time was 9:40 / the brush was a roller lol / the second number should be 903 / the first one should read 905
  A and B the other way about / A and B swapped, A is 903 / other way round, 48 and 22 / vice versa
  numbers swapped, 22 and 48 / transposed the digits, 1198 / transposed, it's 46 / wrong digit, 46 / wrong figure, 602
  wrong number, it's 89 / wrong unit, ounces / wrong hub, it's number 4 / wrong cover, 8 / wrong time, 9:40
  wrong method, roller / wrong tin, 4 / wrong lot, 2302 / wrong name, it's base-8 / wrong column, 22
  wrong gate, the small one / gloves again, 46 / fat thumb, 602 / thumb, it's 89 / key stuck, 1198
  phone changed it, it's roller / the phone wrote cover, I said casing / dictation got it wrong, 48
  it heard wrong, I said fifteen / misheard, fifteen not fifty / I said fifteen, not fifty
  I said casing, not castings / spelled wrong, hub / slip of the thumb, 46 / miscounted, it's 8
  miscounted, five not six / misspoke, pot 2 / misspoke there, the hub / mislabelled, it's can 4
  mistook it for 7, it's 8 / mixed them up, it was the cover / muddled, it's 48 / I muddled the pots, 2 it is
  confused the two, it was the hub / had the wrong one in mind, 8 / was looking at yesterday's, it's 22
  read yesterday's line, it's 46 / scale hadn't settled, 1198 / scale settled at 602 / scale wasn't zeroed, it's 598
  forgot to tare, 655 / tare was in it, really 902 / meter settled, it's 46 / waited a bit, it's 22
  looked closer, 89 / had my reading glasses off, 46 / put my specs on, it's 48 / measured again, 22
  counted again, 8 / checked the label, lot 2302 / checked with Ola, it was pot 2 / Ola says it was the hub
  Jo reckons it was 4 and he's right / boss says it was can 4 / bugger, 46 / damn, I meant the hub / crap, pot 2
  oh wait, 48 / oh hang on, the cover / wait no, 602 / wait, it was the roller / er, 46 / um, make that 8
  ah sorry, can 4 / ach, it was the hub / hmm no, 22 / doh, 1198
  I am afraid I misread it, the display says 88 / I am sorry, I read the wrong line, it should be 87 degrees / I read it wrong, it is 86 and not 89
  we decided to make 3 kilos instead / we decided to make 5 pounds instead as there are more parts / on reflection we only need 900 grams / we agreed on 2 kilos instead
  it was the roller that I used and not the brush / it was the brush that I used / it was batch 2 that I took it from / it was panel 5 that I meant
  that should have been panel 5, I read the wrong tag / that should have been 87 / that should have read 601 / that ought to be batch 2
  please ignore what I just said / please ignore my last line / please disregard that / please disregard what I wrote / please forget what I wrote
  please take that back, I touched the wrong one / I have to take that back because it still sticks / I take back what I said about it / I would like to take that back
  please change that to 3 kilos because the customer sent more / please change it to the roller / please make it batch 2 instead / please put 87 there instead
  the humidity was 55 percent and not 50 / the weight of B was 599 and not 601 / I mixed up the two figures, A was 598 and B was 600 / I swapped the two figures by mistake
  it was half an hour ago, I forgot to write it down / it was already at nine, I forgot / that was an hour ago already / that happened at half past eight and not now
  that was not panel 1, it was panel 2 / that was not me, it was Omar / I said the brush but it was the roller / I wrote 89 but it was 98
  the scale was not at zero, so it is 12 grams less / on second thoughts make it 1.4 kilos / second thoughts, we need 2 pounds only
`;
