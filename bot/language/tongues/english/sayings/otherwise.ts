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
`;
