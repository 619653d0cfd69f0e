// In which units somebody is told.

export type UnitSystem = 'metric' | 'us';
