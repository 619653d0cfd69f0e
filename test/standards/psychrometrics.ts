// The reference library that our sums about air are run beside, in SI units.

import psychrolib from 'psychrolib';

psychrolib.SetUnitSystem(psychrolib.SI);
export const psychrometrics = psychrolib;
