// What Slack takes: lengths and counts, in one place. Values from the reference pages of Block Kit and of the methods, and
// from the comments of @slack/types 3.2; where two sources differ the smaller stands.

export const limits = {
  message: {
    blocks: 50,
    /** chat.update refuses more (`msg_too_long`); chat.postMessage advises no more. */
    text: 4_000,
    /** Undocumented: about 13,200 characters of blocks end in `msg_blocks_too_long`. */
    blockCharacters: 12_000,
  },
  view: { blocks: 100, title: 24, button: 24, privateMetadata: 3_000, callbackId: 255 },
  id: 255,
  header: 150,
  section: { text: 3_000, fields: 10, field: 2_000 },
  context: { elements: 10, text: 3_000 },
  actions: 25,
  /** Of an overflow menu or a select: the types say 75, other sources 150. */
  option: { text: 75, value: 75 },
  overflow: 5,
  selectOptions: 100,
  placeholder: 150,
  button: { text: 75, value: 2_000 },
  input: { label: 2_000, hint: 2_000, text: 3_000 },
  /** More than 1,000 is `alt_txt_too_large`. The title's is ours, no source. */
  file: { alternative: 1_000, title: 250 },
} as const;

/** Chat pushes several buttons off the screen of a phone; the rest goes into a menu. */
export const buttonsShown = 4;

/** Characters of blocks that a message's taps may take: the words need the rest. */
export const tapCharacters = 6_000;

/** Taps named at the end of a text; of more than these it says how many. */
export const tapsNamed = 12;

/** One message a second in a channel: chat.postMessage's own rule. */
export const channelSpacingMs = 1_000;

/** A trigger lives 3 s, an acknowledgement as long: what takes longer than this is told afterwards. */
export const answerWithinMs = 800;

/** The bytes of a file over a workshop's line: nothing waits for them but the end of the program. */
export const uploadTimeoutMs = 30_000;
