// What only a chat platform needs to say, in English: a batch's one message, the home tab, who and where.

export const englishChat = {
  standing: (batch: number, sheet: string, state: string) => `Batch ${batch} ${sheet}: ${state}`,
  finished: 'finished',
  takenBack: (batch: number) => `Batch ${batch}: taken back`,
  act: (time: string, who: string, what: string) => `${time} ${who}: ${what}`,
  earlierActs: (count: number) => `${count} earlier, in the thread and in the record`,
  /** Under an answer: who said it. */
  by: (who: string) => `Said by ${who}`,
  tapped: (who: string, label: string, time: string) => `${who}: ${label}, ${time}`,
  more: (count: number) => `${count} more lines; the record has them all.`,
  takenTo: (title: string) => `${title}. It stands in its thread.`,
  form: { submit: 'Say it', close: 'Leave it', loading: 'One moment …', fill: 'Fill this in' },
  numberWanted: 'A number is wanted here.',
  homeTitle: 'Now',
  airTitle: 'Air',
  startTitle: 'Start',
  ringsTitle: 'Rings next',
  ring: (time: string, what: string, who: string) => `${time} ${what}${who === '' ? '' : ` (${who})`}`,
  settingsTitle: 'Settings',
  settings: (crew: string, zone: string, you: string, role: string) => [
    `Crew: ${crew}. Time zone: ${zone}.`,
    `You are ${you}, ${role}.`,
  ],
  people: (names: string) => `People: ${names}.`,
  channel: (channel: string | undefined): string =>
    channel === undefined ? 'No channel yet: invite me into the crew’s channel.' : 'Batches go to',
  sheetNow: (sheet: string, air: string, digest: string) =>
    `Sheet: ${sheet}. Air serves for ${air}. The day comes at ${digest}.`,
  quietNow: (hours: string | undefined) => (hours === undefined ? 'Quiet hours: none.' : `Quiet hours: ${hours}.`),
  cansTitle: 'Cans that need somebody',
  roles: { crew: 'crew', lead: 'lead', supervisor: 'supervisor' },
  setTaps: {
    metric: 'Metric units',
    us: 'US units',
    sheet: (sheet: string) => `Sheet ${sheet}`,
    digest: 'Hour of the day card…',
    quiet: 'Quiet hours…',
    airLimit: 'Air serves for…',
  },
  welcomeTitle: 'Welcome',
  welcome: [
    'I remember, do the sums and keep the record of a coating batch. Each batch has one message in the crew’s channel; what happens to it stands in its thread.',
    'Type /bell with what happened, mention me in a thread, or write to me here without any prefix. Most steps are one tap.',
    'Look at the settings below first: units, sheet, hour of the day card.',
  ],
  joined: [
    'I keep the crew’s batches here: one message for each, changed in place.',
    'Start with /bell air 24C 48%, then /bell mix 2.4kg. Help: /bell help.',
  ],
  noCrewHere: (channel: string) =>
    `This channel is no crew’s. Its id is ${channel}: it belongs under slackChannels in the crew’s file.`,
  noCrewOfYours: 'I do not know your crew. Speak in its channel, or have your Slack id put into its file.',
  pictureFiled: (subject: string) => `Picture filed with ${subject}`,
};
