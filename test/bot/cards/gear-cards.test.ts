// Gear of every method on cards: what waits and with what it is cleaned, and what a late cleaning may have cost. The minutes are
// invented for the demo; the solvents and that late gear may be scrap: common practice, no source.

import { describe, expect, it } from 'vitest';
import { talkAfter } from './session-talk.ts';

const filtered = ['air 22C 50%', 'mix 2.4kg', 'weigh 1 1201g 1198g', 'wait 110m', 'stop 1', 'filter 1'];
const brushed = [...filtered, 'coat new impeller-7 1 brush'];
const late = 'Cleaned 45 min after its last use: brush. The sheet allows 30 min. It may be scrap.';

describe('gear after its last coat', () => {
  it('given an empty pot, then its card says what is to be cleaned and with what, and the taps say it', async () => {
    const { card } = await talkAfter(...brushed);
    const { lines, actions } = await card('empty 1');
    expect(lines).toContain('To clean at once: brush.');
    expect(lines).toContainEqual(expect.stringMatching(/^Flush with acetone, isopropyl alcohol 99 %/));
    expect(actions.map(({ line }) => line)).toContain('flush 1 brush acetone {flush-volume}mL');
    const first = await card('tap flush-step 100');
    expect(first.lines).toContain('Still for the brush: isopropyl alcohol.');
    expect((await card('tap flush-step 100')).tone).toBe('good');
  });

  it('given what the sheet has worn for cleaning, then it stands once before it: with the bell, or the empty pot', async () => {
    const worn = 'Cleaning: wear gloves, goggles.';
    const { say, heard } = await talkAfter(...brushed, 'wait 21m');
    expect(heard.find(({ key }) => key === 'batch/1/gear/brush')?.card.lines).toContain(worn);
    for (const line of ['flush brush acetone', 'empty 1']) expect((await say(line)).card.lines).not.toContain(worn);
    const { card } = await talkAfter(...brushed);
    expect((await card('empty 1')).lines).toContain(worn);
    expect((await card('hazards wipe')).lines).toContain(worn);
  });

  it('given a flush with alcohol, then how strong it is is asked by tap; less is said before the next, and marked', async () => {
    const steps = ['equipment', 'bonding', 'papers', 'vessel', 'clean-oven', 'clean-room'];
    const { card } = await talkAfter(
      ...[...filtered.slice(0, 1), ...steps.map((step) => `confirm ${step} yes`), 'wait 1m', ...filtered.slice(1)],
      ...['coat new impeller-7 1 brush', 'wait 1m', 'flush brush acetone', 'wait 1m'],
    );
    const { lines, actions } = await card('flush brush ipa');
    expect(lines).toContain('Is the isopropyl alcohol in use 99 %? Asked once a bottle.');
    expect(actions.slice(0, 2).map(({ label }) => label)).toEqual(['It is', 'Less, or not known']);
    const weak = /lacking: flush solvent as strong as the sheet asks\. Take a bottle that is as strong/;
    expect((await card('tap step-no')).title).toBe('Lacking: flush solvent as strong as the sheet asks');
    for (const line of ['wait 1m', 'coat new lid-2 1 brush', 'wait 1m']) await card(line);
    expect((await card('empty 1')).lines).toContainEqual(expect.stringMatching(weak));
    await card('flush brush 1 acetone');
    expect((await card('flush brush 1 ipa')).lines[0]).toMatch(weak);
    for (const line of ['trace 1', 'day']) expect((await card(line)).lines).toContainEqual(expect.stringMatching(weak));
    expect((await card('new ipa 99%')).title).toBe('Noted: flush solvent as strong as the sheet asks');
    expect((await card('card 1')).lines).toContainEqual(expect.stringMatching(/^Kept: .*as strong as the sheet asks/));
  });

  it('given a batch that was asked which can it came from, then it is not asked of the bottle too', async () => {
    const steps = ['equipment', 'bonding', 'papers', 'vessel', 'clean-oven', 'clean-room'];
    const { card } = await talkAfter(
      ...[
        'air 22C 50%',
        ...steps.map((step) => `confirm ${step}`),
        'open A lot 7731 5kg gas',
        'open A lot 7732 5kg gas',
      ],
      ...['wait 1m', 'mix 2.4kg', 'weigh 3 1201g 1198g already', 'wait 110m', 'filter 3'],
      ...['coat new impeller-7 3 brush already', 'flush brush acetone'],
    );
    expect((await card('flush brush ipa')).lines.join()).not.toContain('Asked once a bottle');
  });

  it('given spraying that stops, then what is worn for the flush stands with its sequence', async () => {
    const { card } = await talkAfter(...filtered, 'brief 1 spray kari', '@kari: ack', 'fan on 0.6m/s already');
    for (const line of ['supplied yes', 'spray on already']) await card(line);
    const worn = 'Cleaning: wear gloves, goggles.';
    expect((await card('spray off')).lines).toContain(worn);
    for (const line of ['flush gun acetone', 'spray on already']) await card(line);
    expect((await card('spray off')).lines).not.toContain(worn);
  });

  it('given it is cleaned late, then the card says what it may have cost, and so do trace, day and run card', async () => {
    const { card } = await talkAfter(...brushed, 'wait 45m');
    const { tone, lines } = await card('clean brush 1 acetone');
    expect([tone, lines[0]]).toEqual(['warn', `Recorded, marked as a deviation: ${late}`]);
    expect((await card('trace 1')).lines).toContainEqual(expect.stringContaining(late));
    expect((await card('day')).lines).toContainEqual(expect.stringContaining(late));
    expect((await card('card 1')).lines).toContainEqual(expect.stringContaining('brush flushed with acetone'));
  });

  it('given an empty pot whose gear nobody cleaned, then the run card says that it is not recorded', async () => {
    const { card } = await talkAfter(...brushed, 'empty 1');
    expect((await card('card 1')).lines).toContainEqual(expect.stringMatching(/^Not recorded: .*gear cleaned/));
  });
});
