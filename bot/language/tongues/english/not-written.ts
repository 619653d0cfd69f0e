// What could not be written, or does not read any more, in English.

export const englishNotWritten = {
  notRecorded: 'Not recorded',
  storeFailed: 'The record could not be written. Say it again; nobody must rely on it until it says recorded.',
  unreadTitle: 'Part of the record does not read',
  unread: (seq: number, type: string, stream: string) => `Event ${seq} (${type}, ${stream}) does not read any more.`,
  unreadFollows: {
    bell: 'A bell may ring once more than it should.',
    place: (place: string) => `What was read of ${place} before it counts as not read: read it now.`,
    crew: 'What it settled counts as never said: look through the crew settings.',
    rest: (stream: string) =>
      `Nothing more can be recorded on ${stream}: keep it on paper. Its bells ring as they were last planned.`,
  },
  unreadMore: (count: number) => `${count} more do not read either: the log names them.`,
  unreadProve: 'Everything else is recorded and rings. "verify" goes through the whole record.',
  lineBroke:
    'Batchbell has a fault of its own with this line; its log names it. Say it in another way. The bells ring on.',
  failed: 'Something went wrong inside. Nothing is recorded; please say it again.',
  recordFails: 'The record cannot be written',
  storeFailedNotice: 'Bells ring from memory until the record can be written again.',
};
