// Formatters of numbers and lists, one a language and number of digits, made once.

export interface NumberFormat {
  readonly format: (value: number) => string;
}

/** One sign for less than nothing, the long one; a hyphen is none. */
const withMinus = (format: Intl.NumberFormat): NumberFormat => ({
  format: (value) => format.format(value).replace('-', '−'),
});

export const numberFormat = kept((locale: string, digits: number) =>
  withMinus(new Intl.NumberFormat(locale, { maximumFractionDigits: digits, useGrouping: false })),
);

export const toDigits = kept(
  (locale: string, digits: number) =>
    new Intl.NumberFormat(locale, {
      ...{ minimumFractionDigits: digits, maximumFractionDigits: digits },
      useGrouping: false,
    }),
);

export const signed = kept((locale: string) =>
  withMinus(new Intl.NumberFormat(locale, { maximumFractionDigits: 2, useGrouping: false, signDisplay: 'exceptZero' })),
);

export const listFormat = kept(
  (locale: string, options: Intl.ListFormatOptions) => new Intl.ListFormat(locale, options),
);

/** Building a formatter costs more than a hundred uses of it. */
function kept<Keys extends readonly unknown[], Format>(make: (...keys: Keys) => Format): (...keys: Keys) => Format {
  const made = new Map<string, Format>();
  return (...keys) => {
    const key = JSON.stringify(keys);
    const known = made.get(key) ?? make(...keys);
    made.set(key, known);
    return known;
  };
}

/** Side by side: a decimal comma would run into one between them. */
export const dotted = (values: readonly number[], { format }: NumberFormat): string =>
  values.map((value) => format(value)).join(' · ');
