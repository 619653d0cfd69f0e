// The examples of the help in US units: each reads as its row still, and none is metric but what a scale shows.

import { describe, expect, it } from 'vitest';
import { exampleIn } from '../../../bot/language/example-units.ts';
import { readLine } from '../../../bot/language/read-line.ts';
import { englishVerbs } from '../../../bot/language/tongues/english/verbs.ts';
import { spanishVerbs } from '../../../bot/language/tongues/spanish/verbs.ts';
import { tallerALasDiez } from './shop-at-ten.ts';
import { vocabularyNames } from './vocabulary-names.ts';

const shop = { ...tallerALasDiez, parts: [...tallerALasDiez.parts, 'impulsor-7', 'impeller-7'] };

describe('an example in Houston', () => {
  it.each(vocabularyNames)('given that of %s, then it reads as the same act', (name) => {
    for (const { example } of [spanishVerbs[name], englishVerbs[name]]) {
      const told = exampleIn(example, 'us');
      const [metric, us] = [readLine(example, shop), readLine(told, shop)];
      expect(us.kind, told).toBe(metric.kind);
      if (us.kind === 'command' && metric.kind === 'command') expect(us.command.verb).toBe(metric.command.verb);
      expect(told).not.toMatch(/\d(?:C|kg|um|m2|mm|ml|m\/s)\b/);
      expect(exampleIn(example, 'metric')).toBe(example);
    }
  });

  it('given readings of one gauge, then all are turned with their one unit', () => {
    expect(exampleIn('espesor impulsor-7 12 14 13um', 'us')).toBe('espesor impulsor-7 0.5 0.6 0.5mil');
    expect(exampleIn('open A lot 7731 5kg', 'us')).toBe('open A lot 7731 11lb');
    expect(exampleIn('mezclar 2,4kg', 'us')).toBe('mezclar 5lb');
    expect(exampleIn('lavar pistola acetona 300ml', 'us')).toBe('lavar pistola acetona 10 fl oz');
    expect(exampleIn('extracción sí 0,6m/s', 'us')).toBe('extracción sí 118fpm');
    expect(exampleIn('plan 2m2 spray ready 13:00', 'us')).toBe('plan 22ft2 spray ready 1:00pm');
  });
});
