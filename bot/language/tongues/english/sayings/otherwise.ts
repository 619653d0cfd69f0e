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
`;
