// How people say it, as it is written in a tongue's lists.

/** By meaning: how people say it, parted by line ends or by ` / `. */
export type Sayings<Meaning extends string> = Readonly<Partial<Record<Meaning, string>>>;

export const sayingsIn = (text: string): readonly string[] =>
  text
    .split('\n')
    .flatMap((row) => row.split(' / '))
    .map((saying) => saying.trim())
    .filter((saying) => saying !== '');
