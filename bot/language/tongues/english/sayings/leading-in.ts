// What leads in to what is told, with no mark between: `forgot to tell you 8 was at 87`. Invented lines.

export const englishLeadingIn = `
  forgot to tell you / forgot to tell you that / I forgot to tell you / I forgot to tell you that / forgot to mention / forgot to mention that
  I forgot to mention / I forgot to mention that / forgot to say that / I forgot to say / I forgot to say that / forgot to let you know
  I forgot to let you know / forgot to note / forgot to note that / forgot to write down that / forgot to log that / forgot to put in that
  totally forgot to say / completely forgot to mention / clean forgot to tell you / never told you / never told you that / I never told you
  never mentioned / never wrote it down but / never wrote down that / I never wrote down that / sorry I never wrote it down but
  didn't tell you / didn't tell you that / I didn't tell you / didn't mention / didn't say but / didn't get round to logging it
  didn't get round to logging that / didn't get round to telling you / didn't get around to typing that / hadn't said / hadn't told you yet
  should have told you / should have told you sooner / should have told you earlier / should have mentioned / should have mentioned that
  should have logged that / should have let you know / meant to tell you that / meant to mention / meant to let you know / been meaning to tell you
  been meaning to say / wanted to tell you / wanted to tell you that / just wanted to say / just wanted to say that / just wanted to let you know
  just wanted to let you know that / wanted to let you know / wanted to let you know that / just to let you know / just to let you know that
  just letting you know / just letting you know that / letting you know that / I'd like to report that / happy to report / happy to report that
  pleased to report / pleased to say / pleased to say that / glad to say / glad to say that / glad to report / I can tell you / I can tell you that
  I can report / I can report that / this is to say that / this is to let you know that / you should know / you should know that
  you might want to know that / thought you should know / thought you'd like to know / thought I'd tell you / thought I'd mention
  thought I'd say / thought I'd let you know / for your information / before I forget to say / by the way forgot to say / oh forgot to say
  oh and I forgot to say / oh I forgot to tell you / sorry forgot to say / sorry forgot to tell you / sorry I forgot to mention / late but
  just so you know / just so you know that / for the record / before I forget / by the way / in case you wonder / in case anyone wonders / for what it's worth
`;
