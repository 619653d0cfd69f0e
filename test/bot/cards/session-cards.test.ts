// What the cards of a spray session say, and what they offer with one tap: typed into the real thing.

import { describe, expect, it } from 'vitest';
import { shipped } from '../../../bot/language/tongues/tongues.ts';
import { linesFor } from '../../../core/session/brief-lines.ts';
import { sessionTalk, talkAfter, taps, value } from './session-talk.ts';

const english = shipped.wordsIn('en');

// Stirred by 9:42 at 24 degC (common practice, no source; the temperatures invented).
const filtered = ['air 24C 48%', 'mix 2.4kg', 'weigh 1 1200g 1200g', 'wait 102m', 'filter 1'];
const booth = 'set booth booth-2 4m2 30m3';

describe('the brief', () => {
  it('given two sprayers and one near, then it says who, what nobody has said, and where each line comes from', async () => {
    const { say } = await talkAfter(...filtered, booth);
    const card = await say('brief 1 in booth-2 spray kari omar near lia outside rosa 1.2kg');
    expect(card.card.title).toBe('Session 2: brief recorded');
    expect(card.text).toContain('Sprays: kari, omar');
    expect(card.text).toContain('Stays near, exposed: lia');
    expect(card.text).toContain('Extraction: nobody has said.');
    expect(card.text).toContain('Not acknowledged yet: kari, omar, lia.');
    expect(card.text).toContain('The shop’s emergency numbers are not set.');
    expect(card.to).toEqual(['omar', 'kari', 'lia', 'rosa']);
    expect(taps(card)).toMatchObject({ ack: 'ack 2', 'fan-off': 'fan 2 off', 'supplied-yes': 'supplied 2 yes' });
    // 1200 g with 28 % n-butyl acetate (0.8809 kg/L) and 12 % xylene (0.8799 kg/L), shares invented: 0.381 + 0.164 L.
    expect(value(await say(taps(card).vent ?? ''), 'solvent-per-hour')).toBeCloseTo(0.3814 + 0.1637, 3);
  });

  it('given a fit test past its last day and no medical, then the brief shows both', async () => {
    const { say } = await talkAfter(...filtered, 'fit kari 2026-03-01', 'training kari 2026-03-02');
    const { text, card } = await say('brief 1 spray kari');
    expect(text).toContain('Out of date: fit test of kari, Sun 1 Mar');
    expect(text).toContain('No date known: medical of kari');
    expect(text).not.toContain('spray training of kari');
    expect(card.tone).toBe('warn');
  });

  it('given the flush of the sheet, then its flash points below the coating’s own are shown as a conflict with the code', async () => {
    const { say } = await talkAfter(...filtered);
    const { card } = await say('brief 1 spray kari');
    const conflict = card.hazards.find(({ source }) => source === '29 CFR 1910.107(g)(5)');
    expect(conflict?.text).toContain('acetone −20 °C');
    expect(conflict?.text).toContain('isopropyl alcohol 11.7 °C');
  });

  it('given a vessel, then the card stops and names the confined-space permit', async () => {
    const { say } = await talkAfter(...filtered);
    const { card, text } = await say('brief 1 spray kari vessel');
    expect(card.tone).toBe('stop');
    expect(text).toContain("Use the employer's confined-space permit.");
  });

  it('given a person with US units, then air in cubic feet a minute and velocity in feet', async () => {
    const { say } = await talkAfter(...filtered, booth, 'set units us', 'brief 1 in booth-2 spray kari');
    const { text } = await say('fan on 120fpm');
    expect(text).toContain('Face velocity: 120 ft/min');
    expect(text).toMatch(/Fan gives: \d+ ft³\/min/);
  });
});

describe('the brief on a phone', () => {
  it('given it, then what is read before spraying fits, and the other hazards and the sums are one tap away', async () => {
    const { say } = await talkAfter(...filtered, booth);
    const brief = await say('brief 1 in booth-2 spray kari omar near lia outside rosa 1.2kg');
    const { card } = brief;
    expect(1 + card.facts.length + card.lines.length + card.hazards.length).toBeLessThanOrEqual(27);
    const others = await say(taps(brief)['brief-rest'] ?? '');
    const everywhere = new Set([...card.hazards, ...others.card.hazards].map(({ text }) => text));
    for (const { id } of linesFor('spray')) expect(everywhere).toContain(english.session.lines[id]);
    expect((await say(taps(brief).vent ?? '')).text).toContain('Air for breathing');
  });

  it.each(['en', 'es-ES', 'es-MX', 'es-US'])('given the caution in %s, then it has 25 words at most', (language) => {
    expect(shipped.wordsIn(language).replies.caution.split(' ').length).toBeLessThanOrEqual(25);
  });
});

describe('its taps', () => {
  it('given only taps, then a session goes from brief to closing', async () => {
    const { say } = await talkAfter(...filtered, booth, 'brief 1 in booth-2 spray omar out lia');
    await say('tap ack');
    await say('tap fan-on 0.6');
    const ready = await say('tap supplied-yes');
    expect(taps(ready)).toHaveProperty('spray-on', 'spray on 2');
    await say('tap spray-on');
    const stopped = await say('tap spray-off');
    expect(taps(stopped)).toMatchObject({ 'flush-step': 'flush 2 gun acetone {flush-volume}mL' });
    const next = await say('tap flush-step 300');
    expect(taps(next)).toMatchObject({ 'flush-step': 'flush 2 gun isopropyl-alcohol {flush-volume}mL' });
    const flushed = await say('tap flush-step 250');
    expect(value(flushed, 'solvent-logged')).toBeCloseTo(0.55, 9);
    await say('tap vessels');
    await say('tap rags');
    const closed = await say('tap close');
    expect(closed.card.title).toBe('Session 2: closed');
    expect(value(closed, 'fan-until')).toBe('2026-03-02T10:12:00Z');
  });

  it('given no brief, then the objection offers one, and what already happened', async () => {
    const { say } = await talkAfter(...filtered, 'set brief on');
    const { card, code } = await say('coat new impeller-7 1 spray');
    expect(code).toBe('no-brief');
    expect(card.actions.map(({ id }) => id)).toEqual(['happened', 'brief']);
  });

  it('given a fan not measured, then the objection offers to measure, supplied air and the sums', async () => {
    const { say } = await talkAfter(...filtered, booth, 'brief 1 in booth-2 spray omar', 'ack', 'fan on');
    expect(taps(await say('spray on'))).toMatchObject({
      'fan-on': 'fan 2 on {face-velocity}mps',
      'supplied-yes': 'supplied 2 yes',
      vent: 'vent 2',
    });
  });
});

describe('other work', () => {
  it('given a crew that briefs, then mixing and dipping carry their own short lines; given one that does not, none', async () => {
    const briefs = await talkAfter('set brief on', 'air 24C 48%');
    const mixed = await briefs.say('mix 2.4kg');
    expect(mixed.text).toContain('Containers stay covered when not in use. (29 CFR 1910.106(e)(2)(iv)(a))');
    const plain = await talkAfter('air 24C 48%');
    expect((await plain.say('mix 2.4kg')).card.hazards).toEqual([]);
    const dipping = await talkAfter(...filtered, 'set brief on');
    const dipped = await dipping.say('coat new lid-1 1 dip');
    expect(dipped.card.hazards.map(({ source }) => source)).toContain('29 CFR 1910.124');
  });

  it('given wiping, then its lines ask for the rags’ can and the flash point', async () => {
    const { say } = sessionTalk();
    const sources = (await say('hazards wipe')).card.hazards.map(({ source }) => source);
    expect(sources).toEqual(
      expect.arrayContaining(['29 CFR 1910.106(e)(9)(iii)', '29 CFR 1910.107(g)(5), written for spraying']),
    );
  });
});

describe('the sums', () => {
  it('given 2 m3 of argon in 30 m3, then 19.55 % of oxygen; 1 m3 in 12 m3 is 19.23 %, and deficient (1910.146(b))', async () => {
    const { say } = sessionTalk();
    const roomy = await say('vent purge argon 2m3 30m3');
    expect(value(roomy, 'oxygen-left')).toBeCloseTo(19.55, 2);
    expect(roomy.card.tone).toBe('plain');
    const small = await say('vent purge argon 1m3 12m3');
    expect(value(small, 'oxygen-left')).toBeCloseTo(19.23, 2);
    expect(small.card.tone).toBe('stop');
    expect(small.text).toContain('oxygen-deficient');
  });

  it('given the area of the oven’s door in place of its duct’s, then it is not counted, and the duct’s is asked for', async () => {
    const { say } = await talkAfter('set booth oven 4m2');
    const card = await say('vent oven 2.5kg 90C 0.3m/s');
    expect(value(card, 'fan-over-oven')).toBeUndefined();
    expect(card.card.tone).toBe('warn');
    expect(card.text).toContain("4 m² is a door's area rather than a duct's: it is not counted.");
    expect(card.text).toContain('Set the area of its exhaust duct');
  });

  it('given an oven load and its exhaust, then the air, what the fan gives, and what was assumed', async () => {
    const { say } = await talkAfter('set booth oven 0.05m2');
    const card = await say('vent oven 800g 90C 2m/s');
    // 800 g of mix: 0.254 + 0.109 L of solvent; 440 ft3/min a US gallon (from memory of NFPA 86) are 3.29 m3/min a litre.
    expect(value(card, 'solvent-in-load')).toBeCloseTo(0.3634, 3);
    expect(value(card, 'oven-air')).toBeGreaterThan(0.3634 * 3.29 * 60 - 0.1);
    // 0.05 m2 x 2 m/s x 3600.
    expect(value(card, 'fan-gives')).toBeCloseTo(360, 6);
    expect(card.text).toContain('A sum that passes is not a check that was made.');
  });

  it('given 2.5 kg at 150 degC and a duct of 0.05 m2 at 1.9 m/s, then the need is of hot air too: it does not suffice', async () => {
    const { say } = await talkAfter('set booth oven 0.05m2');
    const card = await say('vent oven 2.5kg 150C 1.9m/s');
    // Cold by hot flow it was 1.03; by 423.15 K / 294.26 K more it is 0.72.
    expect(value(card, 'fan-over-oven')).toBeCloseTo(0.72, 2);
    expect(card.card.tone).toBe('warn');
  });

  it('given no fan is known, then the exhaust duct is asked for, never the door', async () => {
    const { say } = sessionTalk();
    const { lines } = (await say('vent oven 800g 90C')).card;
    expect(lines.join(' ')).toContain('the area of its exhaust duct, not of the door');
    expect(lines.join(' ')).not.toContain('open face');
  });

  it('given nothing is published for such heat, then it says that, and not that the sheet gives no solvents', async () => {
    const { say } = sessionTalk();
    const { lines, tone } = (await say('vent oven 800g 300C')).card;
    expect(lines[0]).toBe('No sum: its source gives no figure above 260 °C.');
    expect(tone).toBe('warn');
    await say('set sheet demo-build');
    expect((await say('vent oven 800g 90C')).card.lines[0]).toContain('gives no solvents');
  });

  it('given parts of two pots go into the oven, then each card has vapour, purge and fan, and the loads are added up', async () => {
    const pot = (batch: number, part: string) => [
      ...[`mix 1.2kg`, `weigh ${batch} 600g 600g`, 'wait 103m', `filter ${batch}`],
      ...[`coat new ${part} ${batch} brush`, 'wait 12m', `dry ${part}`],
    ];
    const { say } = await talkAfter('air 24C 48%', ...pot(1, 'lid-1'), ...pot(2, 'lid-2'));
    const first = await say('cure lid-1 oven 90C');
    expect(first.text).toContain('the solvent of at most 1200 g of mix: its fan must move 141 m³/h at 90 °C.');
    expect(first.card.hazards.map(({ text }) => text).join(' ')).toContain('its fan blows four volumes of fresh air');
    const second = await say('cure lid-2 oven 90C');
    expect(second.text).toContain('the solvent of at most 2400 g of mix: its fan must move 281 m³/h at 90 °C.');
    expect(second.card.actions.at(-1)).toMatchObject({ id: 'vent', line: 'vent oven 2400g 90C {face-velocity}mps' });
  });
});

it('given the day, then its sessions, what they were flushed with and the near misses stand on its card', async () => {
  const lines = [
    'brief 1 spray omar',
    'ack',
    'spray on already',
    'spray off',
    'flush gun acetone 300ml',
    'near miss hose burst',
  ];
  const { say } = await talkAfter(...filtered, ...lines);
  const { text } = await say('day');
  expect(text).toContain('Session 2: exposed omar; flushed with 0.3 L; still to do: flush the gun');
  expect(text).toContain('09:42 omar: near miss: hose burst');
});
