// What we ask of the reference library, which brings no types of its own.

declare module 'psychrolib' {
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
  const psychrolib: Psychrometrics;
  export = psychrolib;
}
