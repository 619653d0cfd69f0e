// What phones do to a typed line, undone: curly quotes, long dashes, odd spaces, pictures, a mention in front.

import { ownValue } from '../../../core/own-key.ts';

const beyondKeyboard = /[^\x20-\x7e]/;

const plainFor: Readonly<Record<string, string>> = {
  '“': '"',
  '”': '"',
  '„': '"',
  '″': '"',
  '‘': "'",
  '’': "'",
  '‚': "'",
  '′': "'",
  '…': '.',
  '×': 'x',
  '²': '^2',
  '³': '^3',
  '℃': '°C',
  '℉': '°F',
  // The ordinal mark of Spanish keyboards and the ring accent stand in for the degree sign.
  º: '°',
  '˚': '°',
  '㎏': 'kg',
  '⁄': '/',
};

// A long dash before a digit is a minus and between words a hyphen: both are `-`, the number reader tells.
const dashes = /[\u2010-\u2015\u2212\uFE58\uFE63\uFF0D]/g;
const pictures = /\p{Extended_Pictographic}|\p{Emoji_Modifier}|\p{Regional_Indicator}/gu;
const invisible = /[\u00AD\u200B-\u200F\u202A-\u202E\u2060\uFEFF]|\u20E3|\uFE0E|\uFE0F/g;
/** Spanish opens with them; no meaning is lost. */
const openingMarks = /[¿¡]/g;
const oddSpaces = /\p{White_Space}|\p{Cc}/gu;
const vulgarFraction = /(\d?)\s?([¼½¾])/g;
const quarters: Readonly<Record<string, string>> = { '¼': '.25', '½': '.5', '¾': '.75' };
const pictureNames = /(^|\s):[a-z_+-][a-z0-9_+-]*:(?=\s|$)/gi;
const opening = /^(?:\s*(?:<@[^>\s]+>|@batchbell\b|@bell\b)[:,]?)+\s*|^\/(?=[a-z?])|^[-*>•]\s+(?=[a-z])/i;
const closing = /\s*@batchbell[.!]*$|[\s.!;,]+$/i;
// One look at the ends spares most lines the two searches above.
const mayOpen = /^[^a-z0-9]/i;
const mayClose = /[^a-z0-9%]$|@batchbell$/i;

/** Without a mention, a slash or a bullet in front; else as it was typed. */
export const withoutOpening = (typed: string): string => typed.trim().replace(opening, '');

/** The line as the reader takes it: one space between words, keyboard characters where there is one for the purpose. */
export function cleanLine(typed: string): string {
  let line = beyondKeyboard.test(typed) ? fromPhone(typed) : typed;
  // `in the oven @90`
  if (line.includes('@')) line = line.replace(/(?<=^|\s)@\s?(?=\d)/g, 'at ');
  // `No. 8: 195 F`; a small one may deny.
  if (line.includes('No. ')) line = line.replace(/\bNo\. (?=\d)/g, '#');
  if (line.includes(':')) line = line.replace(pictureNames, '$1');
  line = line.trim();
  if (mayOpen.test(line)) line = line.replace(opening, '');
  if (mayClose.test(line)) line = line.replace(closing, '');
  return line.includes('  ') ? line.replace(/ {2,}/g, ' ') : line;
}

function fromPhone(typed: string): string {
  return (
    typed
      .normalize('NFC')
      // A thin space inside 1 201 is a thousands mark or a slip; as a comma it is asked about.
      .replace(/(?<=\d)[\u2009\u202F](?=\d{3}(?!\d))/g, ',')
      .replace(
        vulgarFraction,
        (_, before: string, sign: string) => `${before === '' ? '0' : before}${ownValue(quarters, sign)}`,
      )
      .replace(dashes, '-')
      .replace(invisible, '')
      .replace(pictures, ' ')
      .replace(oddSpaces, ' ')
      .replace(openingMarks, '')
      .replace(/[\uFF01-\uFF5D]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
      .replace(/[“”„″‘’‚′…×²³℃℉º˚㎏⁄]/g, (sign) => ownValue(plainFor, sign) ?? sign)
  );
}
