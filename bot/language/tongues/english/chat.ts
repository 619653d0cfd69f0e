// What only a chat platform needs to say, in English: a batch's one message, the home tab, who and where.

import type { Role } from '../../../../core/crew/crew-commands.ts';
import type { PersonName } from '../../../../core/ids.ts';
import type { EpochMs } from '../../../../core/units.ts';
import type { Figures } from '../../figures.ts';

const roles: Readonly<Record<Role, string>> = { crew: 'crew', lead: 'lead', supervisor: 'supervisor' };

/** Where nobody's own figures are at hand. */
const listed = (names: readonly string[]): string => names.join(', ');

export const englishChat = {
  standing: (batch: number, sheet: string, state: string) => `Batch ${batch} ${sheet}: ${state}`,
  finished: 'finished',
  takenBack: (batch: number) => `Batch ${batch}: taken back`,
  briefTakenBack: 'taken back',
  act: (at: EpochMs, who: PersonName, what: string, figures: Figures) => `${figures.timeDown(at)} ${who}: ${what}`,
  earlierActs: (count: number) => `${count} earlier, in the thread and in the record`,
  /** On the closed list of taps. */
  moreTaps: 'More…',
  /** Under an answer: who said it. */
  by: (who: string) => `Said by ${who}`,
  /** Of a bell whose person has no Slack id. */
  notInSlack: (names: readonly string[]) => `For ${listed(names)}, whom Slack does not know here: pass it on.`,
  /** Of whom a card calls: who got it, and who did not. */
  told: (names: readonly PersonName[]) => `Told: ${listed(names)}`,
  notReached: (names: readonly PersonName[]) => `Not reached: ${listed(names)}. Call them by voice or phone.`,
  tapped: (who: string, label: string, time: string) => `${who}: ${label}, ${time}`,
  more: (count: number) => `${count} more lines; the record has them all.`,
  takenTo: (title: string) => `${title}. It stands in its thread.`,
  form: {
    submit: 'Say it',
    close: 'Leave it',
    loading: 'One moment …',
    fill: 'Fill this in',
    notOpened: 'Slack did not open the form',
    typeInstead: (line: string) => `Tap it once more, or type: ${line}`,
    tapAgain: 'Tap it once more.',
  },
  /** Of a message of many lines. */
  linesLeft: (most: number, left: number) =>
    `${most} lines of one message are taken at most. ${left} more are not recorded: send them again.`,
  editNotRead:
    'Changing a message changes nothing in the record. Correct it with amend or undo; say what is new in a new message.',
  numberWanted: 'A number is wanted here.',
  homeTitle: 'Now',
  airTitle: 'Air',
  startTitle: 'Start',
  ringsTitle: 'Rings next',
  ring: (time: string, what: string, to: readonly string[]) =>
    `${time} ${what}${to.length === 0 ? '' : ` (${listed(to)})`}`,
  settingsTitle: 'Settings',
  you: (you: PersonName, role: Role) => `You are ${you}, ${roles[role]}.`,
  whoSets: {
    crew: 'Anybody sets:',
    lead: 'A lead or a supervisor sets:',
    supervisor: 'A supervisor sets:',
  },
  notSet: 'not set',
  noUsualSheet: 'none is the usual one',
  cansTitle: 'Cans that need somebody',
  roles,
  setTaps: {
    metric: 'Metric units',
    us: 'US units',
  },
  setUp: {
    crewButton: 'Set up the crew…',
    mineButton: 'My settings…',
    crewTitle: 'The crew',
    mineTitle: 'My settings',
    submit: 'Set',
    channel: 'Channel for the batches',
    channelHint: 'Invite Batchbell there first: /invite @batchbell.',
    leads: 'Leads',
    leadsHint: 'They are told what nobody answers, and may allow what the sheet leaves to a lead.',
    supervisors: 'Supervisors',
    supervisorsHint: 'They get the day’s card, and may allow what a lead may not.',
    forLead: (who: string) => `That is for a lead to set: ${who}.`,
    channelFaults: {
      taken: 'That is another crew’s channel.',
      'not-invited': 'Batchbell is not in that channel. Invite it there, then set it again: /invite @batchbell.',
      'not-asked': 'Slack did not say whether Batchbell is in that channel. Set it again in a minute.',
    },
    nobodyLeads: 'Nobody leads this crew yet: what nobody answers goes no further.',
    noChannel: 'No channel yet: bells go to each person directly.',
  },
  welcomeTitle: 'Welcome',
  welcome: [
    'I remember, do the sums and keep the record of a coating batch. Each batch has one message in the crew’s channel; what happens to it stands in its thread.',
    'Type /bell with what happened, mention me in a thread, or write to me here without any prefix. Most steps are one tap.',
    'First look at how the crew is set up, and at your own settings: each is one tap, here below.',
  ],
  joined: [
    'I keep the crew’s batches here: one message for each, changed in place.',
    'Start with /bell air 24C 48%, then /bell mix 2.4kg. Help: /bell help.',
  ],
  noCrewHere: (channel: string) =>
    `This channel is no crew’s. Its id is ${channel}: it belongs under slackChannels in the crew’s file.`,
  noCrewOfYours: 'I do not know your crew. Speak in its channel, or have your Slack id put into its file.',
  /** A paper that was asked for comes as a file after its card. */
  paperHere: (file: string) => `${file} follows here.`,
  paperAlone: (file: string) => `${file} follows as a direct message, to you alone.`,
  paperMissing: (file: string) => `${file} did not arrive`,
  paperMissingLine: 'It could not be brought into Slack. Ask for it once more.',
  paperUnsure: (file: string) => `${file} may not have arrived`,
  paperUnsureLine: 'Slack gave no answer. If it is not here, ask for it once more.',
  pictureNotFiled: 'Picture not filed',
  pictureWhere: 'Drop it in the thread of its batch: there it is filed with it.',
  /** Beside a picture stood a line that could be read. */
  captionNotRecorded: (line: string) => `Not recorded, only kept with the picture: ${line}`,
  recordCaption: 'Record these words',
  pictureFiled: (subject: string) => `Picture filed with ${subject}`,
};
