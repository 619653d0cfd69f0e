// `dry impeller-7; cure impeller-7 oven 90C`: several acts in one line, one after the other.

export const actsJoint = '; ';

/** Words in quotes are the speaker's own. */
const each = /(?:"(?:[^"\\]|\\.)*"|[^";])+/gu;

/** The line by itself, where it is of one act. */
export const linesApart = (line: string): readonly string[] =>
  line.includes(';') ? (line.match(each) ?? []).map((one) => one.trim()).filter((one) => one !== '') : [line];
