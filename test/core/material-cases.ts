// What speaks against opening a can, weighing, adding and using again: the given and the act for each reason. The demo
// sheet's figures are invented; that Part A needs gas and a stir is common practice, no source.

const air = '08:00 air 24C 48%';
const mixed = [air, '08:00 mix 2.4kg'];
const weighed = [...mixed, '08:00 weigh 1 1200g 1200g'];
const built = ['08:00 air 25C 48%', '08:00 mix 6.45kg demo-build', '08:00 weigh 1 5400g 1050g'];

export const materialCases = {
  'no-gas': {
    given: [],
    at: '08:00',
    act: 'open A lot 7731 5kg',
    deviates: 'CanOpened 08:00 no-gas',
    liftedBy: 'lead',
  },
  'shut-without-gas': {
    given: ['08:00 open A lot 7731 5kg gas'],
    at: '08:03',
    act: 'shut 1',
    deviates: 'LidOn 08:03 shut-without-gas',
    liftedBy: 'lead',
  },
  'whole-left-over': {
    given: [air, '08:00 open A lot 7731 5kg whole', '08:00 mix 2.4kg', '08:00 prestir 1'],
    at: '08:05',
    act: 'weigh 2 1200g 1200g',
    deviates: 'PartsWeighed 08:05 whole-left-over',
    liftedBy: 'lead',
  },
  'can-open-too-long': {
    // The demo sheet lets it stand open for 30 days (invented).
    given: [air, '08:00 open B lot 8802 5kg at 2026-01-30 8:00', '08:00 mix 2.4kg'],
    at: '08:05',
    act: 'weigh 2 1200g 1200g can 1',
    deviates: 'PartsWeighed 08:05 can-open-too-long',
    liftedBy: 'supervisor',
  },
  'lot-recalled': {
    given: ['07:59 @omar: recall lot 8802 gels in the can'],
    at: '08:00',
    act: 'open B lot 8802 5kg',
    deviates: 'CanOpened 08:00 lot-recalled',
    liftedBy: 'supervisor',
  },
  'instrument-failed': {
    given: [
      ...['07:50 instrument hygro-1 hygrometer', ...weighed, '09:42 filter 1'],
      '09:50 calibrated hygro-1 failed',
    ],
    at: '10:00',
    act: 'coat new impeller-7 1 brush',
    deviates: 'CoatApplied 10:00 instrument-failed',
    liftedBy: 'lead',
  },
  'can-expired': {
    given: [],
    at: '08:00',
    act: 'open B lot 8802 5kg exp 2026-03-01',
    deviates: 'CanOpened 08:00 can-expired',
    liftedBy: 'supervisor',
  },
  'can-discarded': {
    given: [air, '08:00 open B lot 8802 5kg', '08:00 mix 2.4kg', '08:00 discard 1 stood open'],
    at: '08:05',
    act: 'weigh 2 1200g 1200g can 1',
    deviates: 'PartsWeighed 08:05 can-discarded',
    liftedBy: 'nobody',
  },
  'can-of-other-sheet': {
    given: [air, '08:00 open B lot 8802 5kg demo-build', '08:00 mix 2.4kg'],
    at: '08:05',
    act: 'weigh 2 1200g 1200g can 1',
    deviates: 'PartsWeighed 08:05 can-of-other-sheet',
    liftedBy: 'nobody',
  },
  'can-doubtful': {
    // In doubt from 8:20 on.
    given: [air, '08:00 open A lot 7731 5kg gas', '08:00 mix 2.4kg', '08:17 prestir 1'],
    at: '08:20',
    act: 'weigh 2 1200g 1200g',
    deviates: 'PartsWeighed 08:20 can-doubtful',
    liftedBy: 'lead',
  },
  'can-reacts': {
    given: [air, '08:00 open A lot 7731 5kg gas', '08:01 can 1 bulging'],
    at: '08:05',
    act: 'blanket 1',
    deviates: 'CanBlanketed 08:05 can-reacts',
    liftedBy: 'supervisor',
  },
  'more-than-can-holds': {
    given: [air, '08:00 open B lot 8802 1kg', '08:00 mix 2.4kg'],
    at: '08:05',
    act: 'weigh 2 1200g 1200g',
    deviates: 'PartsWeighed 08:05 more-than-can-holds',
    liftedBy: 'nobody',
  },
  'part-a-not-stirred': {
    given: [air, '08:00 open A lot 7731 5kg gas', '08:00 mix 2.4kg'],
    at: '08:02',
    act: 'weigh 2 1200g 1200g',
    deviates: 'PartsWeighed 08:02 part-a-not-stirred',
    liftedBy: 'lead',
  },
  'weighed-twice': {
    given: [...mixed, '08:00 weigh 1 a 1200g'],
    at: '08:05',
    act: 'weigh 1 a 1200g',
    deviates: 'PartWeighed 08:05 weighed-twice',
    liftedBy: 'nobody',
  },
  'b-before-a': {
    given: mixed,
    at: '08:05',
    act: 'weigh 1 b 1200g',
    deviates: 'PartWeighed 08:05 b-before-a',
    liftedBy: 'lead',
  },
  'adding-not-on-sheet': {
    given: built,
    at: '08:05',
    act: 'add 1 b 10g',
    deviates: 'PartAdded 08:05 adding-not-on-sheet',
    liftedBy: 'supervisor',
  },
  'added-too-late': {
    // A quarter of an hour from first contact.
    given: weighed,
    at: '08:16',
    act: 'add 1 b 1g',
    deviates: 'PartAdded 08:16 added-too-late',
    liftedBy: 'supervisor',
  },
  'adding-passes-most': {
    // The sheet's most in one pot is 10 kg (invented).
    given: [air, '08:00 mix 9kg', '08:00 weigh 1 4500g 5300g'],
    at: '08:05',
    act: 'add 1 a 800g',
    deviates: 'PartAdded 08:05 adding-passes-most',
    liftedBy: 'lead',
  },
  'vessel-too-small': {
    // 1000 / 0.95 + 1150 / 0.92 = 2303 ml, and a tenth of 2.5 l stays free.
    given: [air, '08:00 mix 2kg in 2.5l', '08:00 weigh 1 1000g 950g'],
    at: '08:05',
    act: 'add 1 b 200g',
    deviates: 'PartAdded 08:05 vessel-too-small',
    liftedBy: 'nobody',
  },
  'caught-not-filtered': {
    given: [...weighed, '09:42 filter 1', '10:00 coat new plate-1 1 flow', '10:02 catch 1 300g'],
    at: '10:05',
    act: 'coat new plate-2 1 flow',
    deviates: 'CoatApplied 10:05 caught-not-filtered',
    liftedBy: 'lead',
  },
  'caught-more-than-mixed': {
    given: [...weighed, '09:42 filter 1', '10:00 coat new plate-1 1 flow', '10:02 catch 1 2000g'],
    at: '10:05',
    act: 'catch 1 500g',
    deviates: 'MixCaught 10:05 caught-more-than-mixed',
    liftedBy: 'nobody',
  },
} as const;
