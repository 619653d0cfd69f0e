// The voice: what was said, by whom, what was not, and what the source asks for. Never a verdict, in any language.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { english } from '../../../bot/language/tongues/english/sentences.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { type Substance, substances } from '../../../core/calc/exposure-limits.ts';
import { legalFrames } from '../../../core/calc/legal-frame.ts';
import { retentionUnder } from '../../../core/records/retention.ts';
import { briefLines, commonPractice, linesFor } from '../../../core/session/brief-lines.ts';
import { figureLaws, figureSourceIds, sprayLaws } from '../../../core/session/figure-sources.ts';
import { works } from '../../../core/session/session-commands.ts';
import { demoShelf } from '../../core/given.ts';
import { sessionTalk } from './session-talk.ts';

/** Verdicts by any name; "safety data sheet" is a document, and vapour may be cleared away. */
const verdict =
  /\bsafe(?:ly|r|st)?\b|\bunsafe\b|\bsegur[oa]s?\b|\ba salvo\b|\bOK to\b|\bgood to go\b|\bcleared\b|\ball[- ]clear\b|\bclear to\b|\bclearance\b|\bgo ahead\b|\bluz verde\b|\bv[ií]a libre\b|\bvisto bueno\b|\bsin peligro\b|\bsin riesgo\b|\bharmless\b|\bno danger\b|\bno risk\b/i;

const folder = 'bot/language/tongues';
/** What stands between quotes or in a template, without the comments. */
function sentencesIn(file: string): readonly string[] {
  const code = readFileSync(file, 'utf8')
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/^\s*\/\/.*$/gm, '');
  return code.split('\n').filter((line) => /['"`]/.test(line));
}

describe('the catalogues', () => {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
    // What people cry and type is theirs to word: `no danger`, `listo` are heard, and never said.
    (name) =>
      name.endsWith('.ts') &&
      // Types alone say nothing.
      sentencesIn(join(folder, name)).length > 0 &&
      !/\b(?:cries|said-(?:acts|roots|of-pots|of-parts|of-work)|said-words|said-otherwise|topics-asked|sayings)/.test(
        name,
      ),
  );

  it('are many', () => {
    expect(files.length).toBeGreaterThan(100);
  });

  it.each(files)('given %s, then no sentence passes a verdict', (file) => {
    const sentences = sentencesIn(join(folder, file));
    expect(sentences.length).toBeGreaterThan(0);
    // What people say to end an alarm; the bot says that it is over.
    const told = sentences.filter((line) => !line.includes("'alarm-over': verbWords("));
    expect(told.filter((sentence) => verdict.test(sentence))).toEqual([]);
  });

  it('given the test itself, then it would find each verdict', () => {
    const verdicts = ['it is safe', 'Es seguro', 'OK to spray', 'good to go', 'cleared by kari', 'all clear'];
    expect(verdicts.filter((sentence) => !verdict.test(sentence))).toEqual([]);
    expect(verdict.test('the safety data sheets of both parts')).toBe(false);
  });

  it.each([...shipped.languages.keys()])(
    'given %s, then every line of the brief has its words and none is another’s',
    (language) => {
      const { lines } = shipped.wordsIn(language).session;
      expect(new Set(briefLines.map(({ id }) => lines[id])).size).toBe(briefLines.length);
    },
  );

  it('given the demo sheets, then none of their sources passes a verdict', () => {
    expect([...demoShelf.values()].filter((found) => verdict.test(JSON.stringify(found)))).toEqual([]);
  });
});

describe('the sources', () => {
  it('given every line of the brief, then its source is a paragraph or common practice', () => {
    const sourced = briefLines.filter(({ source: { us } }) => us === commonPractice || us.startsWith('29 CFR 1910.'));
    expect(sourced).toHaveLength(briefLines.length);
  });

  it.each(legalFrames.filter((frame) => frame !== 'us'))(
    'given a crew under the law of %s, then no paragraph of the United States stands first or unnamed',
    (frame) => {
      const quoted = briefLines.map(({ source }) => source[frame]);
      const figures = figureSourceIds.map((id) => figureLaws[id]?.[frame] ?? '');
      const first = [...quoted, ...figures, sprayLaws[frame]].filter((law) => /^(?:29 CFR|NFPA|NIOSH)/.test(law));
      expect(first).toEqual([]);
      const unnamed = [...quoted, ...figures].filter((law) => law.includes('CFR') && !law.includes('USA'));
      expect(unnamed).toEqual([]);
    },
  );

  it.each(['eu', 'uk', 'mexico'] as const)(
    'given a crew under the law of %s, then its own law stands first, and what is known by heart says so',
    (frame) => {
      const own = /^(?:Directive|Confined Spaces|EN |DSEAR|COSHH|NOM-\d{3}-STPS|EH40|the lists under|the employer's)/;
      const quoted = briefLines.map(({ source }) => source[frame]).filter((source) => source !== commonPractice);
      expect(quoted.filter((source) => !own.test(source) || !source.includes('from memory'))).toEqual([]);
      expect(own.test(sprayLaws[frame])).toBe(true);
      const figures = figureSourceIds.flatMap((id) => figureLaws[id]?.[frame] ?? []);
      expect(figures.filter((source) => !own.test(source))).toEqual([]);
    },
  );

  it.each(['es-ES', 'es-MX', 'es-US'])(
    'given %s, then whose rule it is is told in Spanish, standards by their names',
    (language) => {
      const { source } = shipped.wordsIn(language).names;
      const laws = legalFrames.flatMap((frame) => [
        ...briefLines.map((line) => line.source[frame]),
        ...figureSourceIds.flatMap((id) => figureLaws[id]?.[frame] ?? []),
        sprayLaws[frame],
        ...retentionUnder(frame).map((row) => row.source),
      ]);
      const limits = Object.values<Substance>(substances).flatMap((each) => each.limits.map((limit) => limit.source));
      const english =
        /\b(?:from|the|of|and|which|whose|what|small|written|in its|kept|until|law|rule|fourth|USA|log form)\b/;
      const told = [...new Set([...laws, ...limits])].map((each) => source(each));
      // Great Britain's regulations go by their English names.
      expect(told.filter((each) => english.test(each.replaceAll('Confined Spaces Regulations', '')))).toEqual([]);
    },
  );

  it.each(works)('given %s, then there are lines, of vapour, ignition and gloves or their like among them', (work) => {
    expect(linesFor(work).length).toBeGreaterThanOrEqual(5);
  });

  it.each([...shipped.languages.keys()])(
    'given %s, then every figure says where it comes from, and none says another’s',
    (language) => {
      const { figureSource } = shipped.wordsIn(language).names;
      const said = figureSourceIds.map((id) => figureSource(id, figureLaws[id]?.us ?? ''));
      expect(said.filter((source) => source.length <= 5)).toEqual([]);
      expect(new Set(said).size).toBe(figureSourceIds.length);
    },
  );
});

describe('the cards', () => {
  it('given a day with a session, trouble and questions, then no answer or ring passes a verdict, each hazard is sourced', async () => {
    const { say, heard } = sessionTalk();
    for (const line of [
      'set brief on',
      'air 24C 48%',
      'mix 2.4kg',
      'weigh 1 1200g 1200g',
      'wait 102m',
      'filter 1',
      'coat new lid-1 1 dip',
      'coat new impeller-7 1 spray',
      'set booth booth-2 4m2 30m3',
      'fit kari 2026-02-01',
      'brief 1 in booth-2 10:30 spray kari near lia outside omar',
      'hazards spray',
      'vent 2',
      'wait until 10:16',
      'spray on',
      'fan on',
      'fan on 0.3m/s',
      'spray on',
      'supplied yes',
      'near lia out',
      '@kari: ack',
      '@rosa: spray on permit written assessment VA-2026-3',
      'wait 61m',
      'coat new rail-2 1 spray',
      'spray off',
      'close',
      'flush gun acetone 300ml',
      'flush gun ipa 300ml',
      'flush vessels',
      'rags',
      'close',
      'wait 31m',
      'eyes',
      'spill',
      'fire',
      'down',
      'hot pot',
      '@rosa: alarm over all',
      'near miss hose lay across the walkway',
      'bell',
      'brief vessel',
      'vent',
      'vent oven 800g 90C',
      'vent purge argon 2m3 30m3',
      ...works.map((work) => `hazards ${work}`),
      'help',
      'help brief',
      'day',
    ]) {
      await say(line);
    }
    expect(heard.length).toBeGreaterThan(60);
    expect(heard.filter(({ text }) => verdict.test(text)).map(({ text }) => text)).toEqual([]);
    const hazards = heard.flatMap(({ card }) => card.hazards);
    expect(hazards.length).toBeGreaterThan(100);
    expect(hazards.filter(({ source }) => source.trim().length < 5)).toEqual([]);
  });

  it('given the brief, its figures and a fan that is too weak, then each carries the caution', async () => {
    const { say } = sessionTalk();
    const caution = english.replies.caution;
    const lines = [
      'mix 2.4kg already',
      'weigh 1 1200g 1200g',
      'set booth 1m2',
      'brief 1 spray omar',
      'ack',
      'fan on 0.3m/s',
    ];
    for (const line of lines) await say(line);
    const told = [
      await say('spray on'),
      await say('vent'),
      await say('brief 1 spray omar'),
      await say('vent purge argon 1m3 12m3'),
    ];
    expect(told.map(({ card }) => card.lines.includes(caution))).toEqual([true, true, true, true]);
  });
});
