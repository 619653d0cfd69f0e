// Each limit of Slack, crossed by one: what is shown stays within it, and says what is missing. And the check that stands
// in front of every message of every test finds each crossing by itself.

import type { KnownBlock, ModalView } from '@slack/types';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Card, makeCard } from '../../../bot/cards/card.ts';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import type { Where } from '../../../bot/messages/platform.ts';
import { cardMessage } from '../../../bot/slack/card-blocks.ts';
import { formView, loadingView } from '../../../bot/slack/form-view.ts';
import { homeView } from '../../../bot/slack/home-view.ts';
import { limits } from '../../../bot/slack/limits.ts';
import { cut, escaped, plain } from '../../../bot/slack/slack-text.ts';
import { batchStream } from '../../../core/ids.ts';
import { complaintsAbout, viewComplaints } from './fake/assert-slack-message.ts';

const words = shipped.wordsIn('en');
const long = (length: number): string => 'x'.repeat(length);
const show = (card: Card, more: { mention?: readonly string[]; under?: readonly string[] } = {}) =>
  cardMessage(card, { words, showing: 'batch/1.1', ...more });
const tap = (i: number, line = `stir ${i}`) => ({ id: `stir-${i}`, label: `Stir ${i}`, line });
const taps = (count: number) => Array.from({ length: count }, (_, i) => tap(i));
const sound = (card: Card) => expect(complaintsAbout(show(card))).toEqual([]);

describe('what is shown, one past each limit', () => {
  test('a title of 151 characters is cut in the header, and whole in the text', () => {
    const card = makeCard(long(limits.header + 1), 'plain');
    sound(card);
    expect(show(card).text).toBe(card.title);
    expect(JSON.stringify(show(card).blocks[0])).toContain(`${long(limits.header - 1)}…`);
  });

  test('a text of 4,001 characters loses its last lines and says how many', () => {
    const lines = Array.from({ length: 60 }, (_, i) => `${i} ${long(70)}`);
    const { text } = show(makeCard('Day', 'plain', { lines }));
    expect(text.length).toBeLessThanOrEqual(limits.message.text);
    const missing = Number(/(\d+) more lines; the record has them all/.exec(text)?.[1]);
    expect(text.split('\n').length - 2 + missing).toBe(60);
  });

  test('a text of exactly 4,000 characters is whole', () => {
    const { text } = show(makeCard('Day', 'plain', { lines: [long(limits.message.text - 4)] }));
    expect(text).toHaveLength(limits.message.text);
    expect(text).not.toContain('more lines');
  });

  test('one line longer than a whole message is cut and marked', () => {
    const card = makeCard('Day', 'plain', { lines: [long(20_000), 'last'] });
    sound(card);
    expect(show(card).text).toContain('…');
  });

  test('blocks of more than 12,000 characters lose lines, and say how many', () => {
    const card = makeCard('Day', 'plain', { lines: Array.from({ length: 300 }, (_, i) => `${i} ${long(60)}`) });
    sound(card);
    expect(JSON.stringify(show(card).blocks)).toMatch(/\d+ more lines; the record has them all/);
  });

  test('a label of 76 characters and a line of 2,000 fit a button; a line of 2,001 stays in the text alone', () => {
    const label = long(limits.button.text + 1);
    const card = makeCard('Batch 1', 'plain', {
      actions: [
        { id: 'a', label, line: long(limits.button.value) },
        { id: 'b', label: 'Too long', line: long(limits.button.value + 1) },
      ],
    });
    sound(card);
    expect(JSON.stringify(show(card).blocks)).toContain(long(limits.button.value));
    expect(JSON.stringify(show(card).blocks)).not.toContain('Too long');
    expect(show(card).text).toContain('[Too long]');
  });

  test('a text that is too long keeps its hazards and its taps, and loses lines from its middle', () => {
    const hazards = [{ text: 'No flame near it', source: 'sheet' }];
    const lines = Array.from({ length: 80 }, (_, i) => `${i} ${long(70)}`);
    const card = makeCard('Session 4', 'plain', { lines, hazards, actions: taps(1) });
    const { text, blocks } = show(card, { under: ['Said by jo'] });
    expect(text.split('\n').slice(-3)).toEqual(['! No flame near it (sheet)', 'Said by jo', '[Stir 0]']);
    expect(text).toMatch(/\d+ more lines; the record has them all/);
    expect(JSON.stringify(blocks)).toContain('No flame near it');
    sound(card);
  });

  test('eleven lines under a card are ten', () => {
    const under = Array.from({ length: limits.context.elements + 1 }, (_, i) => `line ${i}`);
    const { blocks } = show(makeCard('Batch 1', 'plain'), { under });
    expect(blocks.filter(({ type }) => type === 'context')).toHaveLength(10);
  });

  test('a form’s title of 25 characters is cut, and what it carries stays under 3,000', () => {
    const where: Where = {
      team: 'T1',
      user: 'U1',
      channel: 'C1',
      thread: '1.1',
      via: 'button',
      responseUrl: undefined,
    };
    const carried = {
      line: `coat {part} ${long(200)}`,
      label: long(limits.view.title + 1),
      crew: 'crew',
      where,
      message: '1.1',
    };
    const fields = [
      { id: 'method', label: 'Method', unit: '', holds: 'choice' as const, choices: taps(101).map(({ id }) => id) },
    ];
    const view = formView(carried, fields, [long(limits.section.text + 1)], words);
    expect(viewComplaints(view)).toEqual([]);
    expect(viewComplaints(loadingView(long(25), words))).toEqual([]);
  });

  test('a home tab with 60 batches stays under 100 blocks and says how many are not shown', () => {
    const item = (i: number) => ({
      ...{ id: batchStream(i), name: String(i), what: 'Demo', phase: 'in use', tone: 'plain' as const, clocks: [] },
      urgency: { is: 'runs' as const },
      taps: taps(6),
    });
    const board = {
      ...{ crew: 'crew', at: '', clock: '08:00', air: [], rings: [], quick: taps(5) },
      items: Array.from({ length: 60 }, (_, i) => item(i)),
    };
    const settings = makeCard('Settings', 'plain', { actions: taps(6) });
    const setUp = {
      ...{ crew: [], personal: [], who: [], leads: [], supervisors: [] },
      mayCrew: true,
      nobodyLeads: true,
    };
    const shown = { board: { ...emptyBoard, ...board }, settings, cans: settings, setUp, channel: 'C1' };
    const view = homeView({ ...shown, crew: 'crew', words, firstTime: true });
    expect(viewComplaints(view)).toEqual([]);
    expect(JSON.stringify(view)).toContain('48 more lines');
  });
});

const emptyBoard = { items: [], alarms: [] } as unknown as Parameters<typeof homeView>[0]['board'];

describe('the check in front of every message', () => {
  const block = (one: KnownBlock, text = 'x') => complaintsAbout({ text, blocks: [one] });
  const actions = (elements: Extract<KnownBlock, { type: 'actions' }>['elements']): KnownBlock => ({
    type: 'actions',
    elements,
  });
  const button = (over: object = {}) => ({
    type: 'button' as const,
    action_id: 'a',
    text: plain('x', 75),
    value: 'v',
    ...over,
  });
  const words75 = (length: number) => ({ type: 'plain_text' as const, text: long(length) });
  const option = (text: number, value: number) => ({ text: words75(text), value: long(value) });
  const menu = (options: ReturnType<typeof option>[]) => actions([{ type: 'overflow', action_id: 'm', options }]);
  const list = (options: ReturnType<typeof option>[], placeholder: number) =>
    actions([{ type: 'static_select', action_id: 'm', options, placeholder: words75(placeholder) }]);
  const modal = (over: object): ModalView => ({ type: 'modal', title: words75(5), blocks: [], ...over }) as ModalView;

  const crossings: readonly (readonly [string, (over: number) => readonly string[]])[] = [
    ['text', (n) => complaintsAbout({ text: long(limits.message.text + n), blocks: [] })],
    [
      'blocks of a message',
      (n) =>
        complaintsAbout({
          text: 'x',
          blocks: Array.from({ length: limits.message.blocks + n }, () => ({ type: 'header', text: plain('x', 9) })),
        }),
    ],
    ['header', (n) => block({ type: 'header', text: words75(limits.header + n) })],
    ['section text', (n) => block({ type: 'section', text: words75(limits.section.text + n) })],
    [
      'section fields',
      (n) => block({ type: 'section', fields: Array.from({ length: limits.section.fields + n }, () => words75(1)) }),
    ],
    ['section field', (n) => block({ type: 'section', fields: [words75(limits.section.field + n)] })],
    [
      'context elements',
      (n) =>
        block({ type: 'context', elements: Array.from({ length: limits.context.elements + n }, () => words75(1)) }),
    ],
    ['block_id', (n) => block({ type: 'header', text: plain('x', 9), block_id: long(limits.id + n) })],
    ['action_id', (n) => block(actions([button({ action_id: long(limits.id + n) })]))],
    [
      'buttons in a row',
      (n) => block(actions(Array.from({ length: limits.actions + n }, (_, i) => button({ action_id: `a${i}` })))),
    ],
    ['button text', (n) => block(actions([button({ text: words75(limits.button.text + n) })]))],
    ['button value', (n) => block(actions([button({ value: long(limits.button.value + n) })]))],
    [
      'options of a list',
      (n) =>
        block(
          list(
            Array.from({ length: limits.selectOptions + n }, () => option(1, 1)),
            1,
          ),
        ),
    ],
    ['words on a closed list', (n) => block(list([option(1, 1)], limits.placeholder + n))],
    ['options of a menu', (n) => block(menu(Array.from({ length: limits.overflow + n }, () => option(1, 1))))],
    ['option text', (n) => block(menu([option(limits.option.text + n, 1)]))],
    ['option value', (n) => block(menu([option(1, limits.option.value + n)]))],
    ['modal title', (n) => viewComplaints(modal({ title: words75(limits.view.title + n) }))],
    ['modal submit', (n) => viewComplaints(modal({ submit: words75(limits.view.button + n) }))],
    ['private_metadata', (n) => viewComplaints(modal({ private_metadata: long(limits.view.privateMetadata + n) }))],
    ['callback_id', (n) => viewComplaints(modal({ callback_id: long(limits.view.callbackId + n) }))],
    [
      'blocks of a view',
      (n) =>
        viewComplaints(
          modal({
            blocks: Array.from({ length: limits.view.blocks + n }, () => ({ type: 'header', text: plain('x', 9) })),
          }),
        ),
    ],
  ];

  test.each(crossings)('%s: at the limit sound, one past it a complaint', (_, at) => {
    expect(at(0)).toEqual([]);
    expect(at(1).length).toBeGreaterThan(0);
  });

  test('finds empty text, live markup, a bare ampersand, parsed words and ids given twice', () => {
    const header: KnownBlock = { type: 'header', text: plain('x', 9), block_id: 'one' };
    expect(complaintsAbout({ text: ' ', blocks: [] })).toHaveLength(1);
    expect(complaintsAbout({ text: 'a <!here> b', blocks: [] })).toHaveLength(1);
    expect(complaintsAbout({ text: 'a & b', blocks: [] })).toHaveLength(1);
    expect(complaintsAbout({ text: 'x', blocks: [header, header] })).toHaveLength(1);
    expect(block({ type: 'section', text: { type: 'mrkdwn', text: 'x' } })).toHaveLength(1);
  });
});

describe('any words at all', () => {
  test('make a message that Slack takes, with nothing in it that Slack would act on', () => {
    let withMarkup = 0;
    let cutSomewhere = 0;
    const piece = fc.oneof(
      fc.string({ maxLength: 300, unit: 'grapheme', size: 'max' }),
      fc.constantFrom('<!channel>', '<@U1>', '&lt;', 'a & b', '<https://x|y>', '😀'.repeat(90)),
    );
    const card = fc.record({
      title: fc.string({ minLength: 1, maxLength: 200 }).map((text) => `x${text}`),
      lines: fc.array(piece, { maxLength: 80, size: 'max' }),
      labels: fc.array(piece, { maxLength: 12, size: 'max' }),
    });
    fc.assert(
      fc.property(card, ({ title, lines, labels }) => {
        const actions = labels.map((label, i) => ({ id: `a${i}`, label: label || 'x', line: `hold p ${label}` }));
        const message = show(makeCard(title, 'warn', { lines, actions }), { mention: ['U1'] });
        expect(complaintsAbout(message)).toEqual([]);
        if (lines.some((line) => line.includes('<!'))) withMarkup += 1;
        if (message.text.includes('more lines')) cutSomewhere += 1;
      }),
      { numRuns: 300, seed: 6 },
    );
    console.log({ withMarkup, cutSomewhere });
    expect(withMarkup).toBeGreaterThan(20);
    expect(cutSomewhere).toBeGreaterThan(20);
  });

  test('are escaped once and no more, and cut between characters', () => {
    expect(escaped('<&>')).toBe('&lt;&amp;&gt;');
    expect(cut('a😀', 2)).toBe('a…');
    expect(cut('abc', 3)).toBe('abc');
  });
});
