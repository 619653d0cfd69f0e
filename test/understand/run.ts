// `npm run understand`: how much of what crews type is understood, by language and kind. `npm run understand -- more`: with every
// line that was not right at once; any other word: only lines of that kind, or that hold it.

import { corpus } from './corpus.ts';
import { sharesLine, sharesOf } from './shares.ts';
import { openShops } from './shop-copy.ts';
import { type Understanding, understandingOf } from './understanding.ts';

const words = process.argv.slice(2);
const filters = words.filter((word) => word !== 'more');
const print = (line: string): void => void process.stdout.write(`${line}\n`);

const shops = openShops();
const understood: (Understanding & { readonly language: string })[] = [];
try {
  for (const [language, lines] of Object.entries(corpus)) {
    for (const spoken of lines) {
      const isWanted = filters.length === 0 || filters.some((f) => spoken.kind === f || spoken.line.includes(f));
      if (isWanted) understood.push({ ...(await understandingOf(shops, spoken)), language });
    }
  }
} finally {
  shops.close();
}
for (const { language, spoken, became, harmful, answer } of understood) {
  const isWorth =
    harmful.length > 0 || became === 'recorded otherwise' || (became !== 'at once' && became !== 'nothing');
  if (!isWorth || (words.length === 0 && harmful.length === 0 && became !== 'recorded otherwise')) continue;
  print(
    `${became}${harmful.length > 0 ? `, HARM ${harmful.join(' / ')}` : ''} | ${language} ${spoken.kind} | ${spoken.state} | ${spoken.line} | ${spoken.means.map((each) => each.join(' ; ')).join(' || ')}`,
  );
  print(`    ${answer.replaceAll('\n', ' / ').slice(0, 260)}`);
}
for (const language of Object.keys(corpus)) {
  const own = understood.filter((each) => each.language === language);
  print(sharesLine(language, sharesOf(own)));
  for (const kind of new Set(own.map(({ spoken }) => spoken.kind))) {
    print(sharesLine(`  ${kind}`, sharesOf(own.filter(({ spoken }) => spoken.kind === kind))));
  }
}
