// Numbers as thumbs type them. A comma or a dot before exactly three digits can be a decimal or a thousands mark:
// that is handed on as a doubt, with both values.

export interface TypedNumber {
  readonly value: number;
  /** The other value it may have, where there is one. */
  readonly other?: number;
  /**
   * comma: `1,201`, always asked. dot: `1.201`, asked where nobody weighs or measures that finely (g, mL, um).
   * list: `12,14`, a decimal comma except in a list of readings.
   */
  readonly doubt?: 'comma' | 'dot' | 'list';
  readonly whole: boolean;
}

/** `00g`, `08`: half of a number that came apart, or a time of day. */
const leadingZero = /^[+-]?0\d/;
const plainDigits = /^[+-]?\d+$/;
const groups = /^[+-]?[1-9]\d{0,2}(?:([.,'])\d{3})(?:\1\d{3})*$/;
const threeAfter = /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/;
const decimal = /^[+-]?\d*[.,]\d+$/;
/** `1,201.5` and `1.201,5`: the last mark is the decimal. */
const both = /^[+-]?[1-9]\d{0,2}(?:,\d{3})+\.\d+$|^[+-]?[1-9]\d{0,2}(?:\.\d{3})+,\d+$/;

/** Refuses (undefined) what is no number or has more digits before the point than anything in a shop. */
export function readNumber(text: string): TypedNumber | undefined {
  if (text.length > 32 || leadingZero.test(text)) return undefined;
  if (plainDigits.test(text)) return text.length > 10 ? undefined : { value: Number(text) + 0, whole: true };
  if (threeAfter.test(text)) {
    const value = Number(text.replace(',', '.'));
    const other = Number(text.replace(/[.,]/, ''));
    return { value, other, doubt: text.includes(',') ? 'comma' : 'dot', whole: false };
  }
  if (decimal.test(text)) {
    const mark = text.indexOf(',');
    const value = Number(text.replace(',', '.')) + 0;
    const equalSides = mark > 0 && digitsBefore(text, mark) === text.length - mark - 1;
    if (Math.abs(value) >= 1e10) return undefined;
    return equalSides ? { value, doubt: 'list', whole: false } : { value, whole: false };
  }
  if (groups.test(text)) return { value: Number(text.replace(/[.,']/g, '')), whole: true };
  if (both.test(text)) {
    const thousands = text.lastIndexOf(',') > text.lastIndexOf('.') ? /\./g : /,/g;
    return { value: Number(text.replace(thousands, '').replace(',', '.')), whole: false };
  }
  return undefined;
}

function digitsBefore(text: string, mark: number): number {
  return text.startsWith('-') || text.startsWith('+') ? mark - 1 : mark;
}
