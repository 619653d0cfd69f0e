// Whose rule it is that speaks against an act, in English.

import type { RuleSource } from '../../../../core/rules.ts';

export const englishRuleSources: Readonly<Record<RuleSource, string>> = {
  sheet: "the product's sheet",
  job: 'what is written on the part',
  'sheet or job': "the product's sheet or the job",
  employer: "the employer's spray programme",
  regulation: '29 CFR 1910.94 and 1910.107',
  label: 'what is written on the can',
  'common practice, no source': 'common practice, no source',
  'the order of the work': 'the order of the work',
};
