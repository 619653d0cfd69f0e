// The data sheet of these tests: stirring 120 min at 15 degC and 90 at 30 degC (90 to 120 min, the colder the longer:
// common practice, no source), everything else invented.

const invented = { source: 'invented for the test' };

export const inventedSheet = {
  ...{ id: 'demo-clear', name: 'Demo Clear', revision: '1', invented: true },
  ratio: { basis: 'weight', partsA: 1, partsB: 1, tolerancePercent: 2, ...invented },
  air: {
    ...{ lowestCelsius: 10, highestCelsius: 35, highestRelativeHumidityPercent: 85, leastSpreadCelsius: 3 },
    ...invented,
  },
  blend: {
    way: 'stir',
    time: {
      kind: 'table',
      points: [
        { celsius: 15, minutes: 120 },
        { celsius: 30, minutes: 90 },
      ],
      source: '90 to 120 min: common practice, no source',
    },
  },
  potLife: { time: { kind: 'plain', minutes: 1000, ...invented }, marginMinutes: 30 },
  methods: ['spray'],
  recoat: { rule: 'forbidden', source: 'common practice, no source' },
  flashOff: { leastMinutes: 10, mostMinutes: 15, source: 'common practice, no source' },
  cure: { room: { time: { kind: 'plain', minutes: 1440, source: 'common practice, no source' } } },
};
