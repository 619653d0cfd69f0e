// The reference library that our sums about air are run beside, with the types that it does not bring.

import { createRequire } from 'node:module';

interface Psychrometrics {
  readonly SI: unknown;
  SetUnitSystem(system: unknown): void;
  /** Humidity as a fraction here, temperatures in degC, pressures in Pa. */
  GetTDewPointFromRelHum(air: number, humidity: number): number;
  GetTDewPointFromVapPres(air: number, vapour: number): number;
  GetRelHumFromTWetBulb(air: number, wetBulb: number, pressure: number): number;
  GetTWetBulbFromRelHum(air: number, humidity: number, pressure: number): number;
  GetHumRatioFromRelHum(air: number, humidity: number, pressure: number): number;
  GetVapPresFromRelHum(air: number, humidity: number): number;
  GetSatVapPres(temperature: number): number;
  GetStandardAtmPressure(altitude: number): number;
}

export const psychrometrics: Psychrometrics = createRequire(import.meta.url)('psychrolib');
psychrometrics.SetUnitSystem(psychrometrics.SI);
