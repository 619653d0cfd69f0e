// How English speakers ask to practise, where nothing counts. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfPractice: Sayings<SaidMeaning> = {
  'practice on': `
    let me practise / I want to practise / I'd like to practise first / can I practise a little / may I practise / practise please
    can I practise on this without it being written down / I want to practise a batch / let me practise a batch before I do a real one
    can we do a trial run / a dry run please / let me do a dry run / can I do a dummy run first / dummy run / trial run first please
    can I rehearse it first / I want to rehearse / rehearsal please / can we pretend for a bit / let's pretend / just pretend for now
    can I play with it first / let me play around a bit / I want to play about with it before it's real / can I mess about without breaking anything
    can I have a try without it counting / have a go where it doesn't count / let me try it where it does not count / I want to try things out first
    is there a sandbox / sandbox please / is there a test mode / put it in test mode / test mode please / training mode / switch to training mode
    switch on the practice mode / turn practice on / start practice / practice mode please / go into practice / practice for the new lad
    the new lad wants to practise / the apprentice should practise first / show me on a pretend batch / can I use a made up batch to learn
    can I try without it going on the record / try it off the record / off the record please, I just want to learn / without anything being saved
    nothing of this should be saved, I'm learning / don't save what I do now, I'm just trying it out / not for real, just trying
    I only want to see how it goes, not for real / can I experiment first / let me experiment / warm up first, nothing real / let me get the hang of it first
    a few goes before it counts please / before we do it for real can I try / can I do one for practice / one for practice first
    just for practice / this one is just practice / is there a practice mode / how do I practise / where can I practise this
  `,
};
