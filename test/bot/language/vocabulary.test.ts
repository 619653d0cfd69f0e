// The table of what can be typed holds together: every word leads to its row, every example reads as its row.

import { describe, expect, it } from 'vitest';
import { meaningsOf } from '../../../bot/language/hearing.ts';
import { readLine } from '../../../bot/language/read-line.ts';
import { slots } from '../../../bot/language/slots.ts';
import { nearestVerbs } from '../../../bot/language/suggestions.ts';
import { englishVerbs } from '../../../bot/language/tongues/english/verbs.ts';
import { verbNamed } from '../../../bot/language/verbs-typed.ts';
import { verbRows, verbs } from '../../../core/commands.ts';
import { settingNames } from '../../../core/settings.ts';
import { isStateQuestion } from '../../../core/verbs/question-rows.ts';
import { shopAtTen, tallerALasDiez } from './shop-at-ten.ts';
import { vocabularyNames } from './vocabulary-names.ts';

describe('the vocabulary', () => {
  it.each(vocabularyNames)('given the example of %s, then it reads as that', (name) => {
    const reading = readLine(englishVerbs[name].example, shopAtTen);
    const read =
      reading.kind === 'command'
        ? reading.command.verb
        : reading.kind === 'question'
          ? reading.question.ask
          : reading.kind;
    expect(read).toBe(name);
  });

  it.each(vocabularyNames)('given any word for %s, then no other row has it', (name) => {
    for (const word of englishVerbs[name].words) expect(verbNamed(word, shopAtTen.hearing)?.row.name).toBe(name);
  });

  it('given the printed words, then a swapped pair of letters in any finds its verb again', () => {
    const missed = vocabularyNames.filter((name) => {
      const [word = ''] = englishVerbs[name].words;
      if (word.length < 4 || isStateQuestion(name)) return false;
      const swapped = `${word.slice(0, 1)}${word[2]}${word[1]}${word.slice(3)}`;
      return swapped !== word && !nearestVerbs(swapped, shopAtTen.hearing).some(({ row }) => row.name === name);
    });
    expect(missed).toEqual([]);
  });

  it.each(settingNames)('given a bare set %s, then the example is of that setting, and reads', (name) => {
    for (const shop of [shopAtTen, tallerALasDiez]) {
      const reading = readLine(`set ${name}`, shop);
      const example = reading.kind === 'misread' ? reading.misread.example : undefined;
      const read = readLine(example ?? '', shop);
      expect(read).toMatchObject({ kind: 'command', command: { verb: 'set', setting: { name } } });
    }
  });

  it('given every slot, then what is a number has a unit or counts something', () => {
    const unitless = Object.entries(slots).filter(
      ([, { kinds, units }]) => units.length === 0 && !kinds.includes('word') && !kinds.includes('number'),
    );
    expect(unitless).toEqual([]);
  });

  it('given a figure behind a word of its own, then a Spanish speaker has one word for it, in the labels or the lexicon', () => {
    const spanish = tallerALasDiez.hearing.tongues.slice(1);
    const heard = new Set(
      spanish.flatMap((tongue) =>
        Object.entries(tongue.slots).flatMap(([slot, label]) => (label.includes(' ') ? [] : [slot])),
      ),
    );
    const meant = new Set(spanish.flatMap(meaningsOf).map(([, meaning]) => meaning));
    const behindWords = verbs.flatMap((verb) =>
      Object.values(verbRows[verb].fields).flatMap(({ slots: [slot], options }) =>
        slot === undefined || options?.behind === undefined ? [] : [{ slot: slot.name, word: options.behind }],
      ),
    );
    expect(behindWords.length).toBeGreaterThan(5);
    const unheard = behindWords.filter(({ slot, word }) => !heard.has(slot) && !meant.has(word));
    expect(unheard).toEqual([]);
  });

  it('given the words, then none promises anything', () => {
    // Whoever ends an alarm says that all is clear; the bot never does.
    const said = [...shopAtTen.hearing.verbs].filter(([, { row }]) => row.name !== 'alarm-over');
    expect(said.map(([word]) => word).filter((word) => /safe|clear|good to go/.test(word))).toEqual([]);
  });
});
