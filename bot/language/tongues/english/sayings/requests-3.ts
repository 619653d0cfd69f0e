// How English speakers say it, in further words: undo, help, greeting. Invented lines, each as somebody would type it.

import type { Sayings } from '../../../sayings/sayings.ts';
import type { SaidMeaning } from '../../sayings-typed.ts';

export const englishSayingsOfRequests3: Sayings<SaidMeaning> = {
  undo: `
    undo what I just said / undo this / undo, wrong pot / undo, sorry / undo again / undo last step
    kindly undo the last / I need to undo that / I'd like to undo that / need to undo / let me undo that
    take back what I said / take the last one off / take it off again / take it out of the record / taking it back
    I'm taking that back / I want to take that back / can I take that back / cancel this / cancel what I said
    could you cancel that / kindly cancel the last / I want to cancel that / delete this / please delete the last
    remove it please / could you remove that / please remove the last entry / erase it / please erase that
    can you erase that / wipe that off the log / wipe my last entry / scratch that please / scrub the last
    scrub that entry / strike it / strike that from the log / cross out the last / cross that one out
    cross off the last entry / bin that entry / chuck that entry / drop it / void it / void my last / nullify that
    annul that / annul the last / revoke that / revoke the last / rescind that / withdraw it / withdraw my last
    retract it / retract my last / revert please / roll back the last / roll it back / back up one / go back one step
    go one back / rewind one / forget my last line / forget about that last one / ignore my last message
    ignore what I just typed / disregard that one / disregard my last line / disregard please / never mind the last
    nevermind, undo / nvm take it back / didn't mean it, undo / didn't mean to say that / didn't mean to tap that
    didn't mean to press that / I didn't mean to send that / I didn't mean to tap that
    I did not mean that, take it back / I pressed it by mistake / I tapped it by mistake / I tapped the wrong button
    I hit send by mistake / I sent that by mistake / I typed that by mistake / I made a mistake, undo
    I made a mistake there, take it back / my mistake, take it back / my bad, take it back / my fault, undo
    that was a slip, undo / that was an accident, undo / that was by accident / that was the wrong part, take it back
    that's a mistake, undo / that's wrong, undo / that's wrong, remove it / that's not right, take it out
    that's not what I meant, undo / that one's a mistake, remove it / that was in error / that was entered in error
    entered in error / entered by mistake / sent in error / sent by accident / pressed by mistake / tapped by mistake
    wrong tap, undo / wrong part, cancel that / wrong pot, undo / wrong pot, cancel that / wrong can, undo
    wrong can, take it back / wrong line, undo / wrong entry, delete / wrong button pressed / oops, cancel
    oops, delete that / oops, wrong part, undo / oops, didn't mean that / whoops, undo / whoops, wrong one
    ah no, undo / oh no, take it back / argh undo / damn, undo / shit, undo that / crap, take it back / bugger, undo
    sorry, wrong one, undo / sorry, delete that / no wait, undo / no wait, take it back / hang on, undo
    hold on, undo that / unod / udno / undo taht / delte that / remvoe that
  `,
  help: `
    help page / help text / show me how it works / show the list of commands / list of things to say / list your words
    give me a list of words / give me examples / examples please / example lines / tell me what you can do
    explain yourself / teach me how to use this / how do I enter a pour / how do I record a coat
    how do I put in a reading / how do I put in a batch / how do I put things in / how do I say a can is open
    how do I say I've coated / how do I start with this / how do you want it typed / how does the bot work
    how is this used / how should I type it / how to log a mix / how's this thing work / what are you able to do
    what can you do for me / what commands do you have / what is this for / what's this app for
    which commands are there / can you help me out / can I get some help here / can I have the commands
    could you explain how this works / please show me the commands / kindly help me use this / I need help with typing
    I need some help here / I don't know how to say it / I don't understand this bot / I don't get how to use it
    I can't work this / I can't figure this out / I can't figure out how to use this / I'm confused by this
    I'm stuck with this thing / I'm new to this thing, what do I do / I've never used this
    I've no idea how this works / no idea what to say here / no clue what to type / never used this before
    never used this, how does it go / not sure what to write here / first time here, what do I type
    first time using this / stuck here, how does this go / user manual / user guide / guide please / hepl me
    help!!! with the app / hlp with this bot / wee hand wi this thing
  `,
  greeting: `
    hello again bot / hello from nights / hi bell / hi team / hiya lads / howdy partner / howdy y'all
    good morning, how are you / good morning sir / good day all / good afternoon everyone / good night everyone
    bye for now / bye now / cheers pal / cheers, boss / ciao / see you monday / see you in the morning / see ya later
    see ya tomorrow / catch you later all / so long / take care all / take it easy / have a good weekend
    have a good shift / have a nice day / have a nice evening / enjoy your weekend / happy friday / happy monday lol
    thanks a bunch / thanks a million / thanks so much / thank you kindly / thank you very much / thx lads / tnx
    ta very much / many thanks all / much obliged / I appreciate it / nice one lads / good job bot / good work bot
    great job bot / great work bot / well done bot / you rock / you're a legend / brilliant, thanks / perfect, thanks
    super, thanks / ok cheers / alright lads / how are you bot / how are you today / how's it going mate
    how you doing / how do / g'day mate / yo lads / wassup / what's up bot / welcome Lia / oga good morning
    well hi there / salutations / greetings all / aye aye / hola amigos / buenos dias / guten morgen / bonjour / helo
    hllo / tahnks bot
  `,
};
