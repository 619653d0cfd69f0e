// Whose rule it is that speaks against an act, in English.

import type { RuleSource } from '../../../../core/rules.ts';

export const englishRuleSources: Readonly<Record<Exclude<RuleSource, 'regulation'>, string>> = {
  sheet: "the product's sheet",
  job: 'what is written on the part',
  'asked by the job': 'the job',
  'sheet or job': "the product's sheet or the job",
  employer: "the employer's spray programme",
  label: 'what is written on the can',
  'common practice, no source': 'common practice, no source',
  'the order of the work': 'the order of the work',
};

/** `law`: of spraying, in the crew's country. */
export const englishRuleSource = (source: RuleSource, law: string): string =>
  source === 'regulation' ? law : englishRuleSources[source];
