// The shares of a measured corpus, by language and by kind.

import type { Became, Understanding } from './understanding.ts';

export interface Shares {
  readonly lines: number;
  readonly atOnce: number;
  readonly orOneTap: number;
  readonly nothing: number;
  readonly otherwise: number;
  readonly harmful: number;
}

/** Lines of which rightly nothing comes are counted apart. */
export function sharesOf(understood: readonly Understanding[]): Shares {
  const count = (became: Became) => understood.filter((each) => each.became === became).length;
  const nothing = count('nothing');
  const lines = understood.length - nothing;
  const share = (n: number) => (lines === 0 ? 1 : n / lines);
  return {
    ...{ lines, nothing, otherwise: count('recorded otherwise') },
    atOnce: share(count('at once')),
    orOneTap: share(count('at once') + count('one tap')),
    harmful: understood.filter(({ harmful }) => harmful.length > 0).length,
  };
}

const percent = (share: number): string => `${Math.round(share * 100)} %`.padStart(5);

export const sharesLine = (name: string, { lines, atOnce, orOneTap, nothing, otherwise, harmful }: Shares): string =>
  `${name.padEnd(22)} ${String(lines).padStart(4)} lines  at once ${percent(atOnce)}  or one tap ${percent(orOneTap)}  nothing, rightly ${nothing}  recorded otherwise ${otherwise}  harmful taps ${harmful}`;
