// Under whose law a crew works: as it was set, else as its zone says, else as its language names a country. A zone that names
// no place (UTC) says nothing; then the rules of the United States stand, which are the ones that were read whole, and the cards
// ask which hold.

import type { LegalFrame } from '../calc/legal-frame.ts';
import { lastSaid, type Settled } from '../settled.ts';

export interface CrewLaw {
  readonly frame: LegalFrame;
  /** Nobody has said, and nothing tells. */
  readonly assumed: boolean;
}

interface LawAsked {
  readonly zone: string;
  readonly language: string;
  readonly settled: Settled;
}

export function crewLaw({ zone, language, settled }: LawAsked): CrewLaw {
  const frame = lastSaid({ settled }, 'law')?.law ?? lawOfZone(zone) ?? lawOfLanguage(language);
  return frame === undefined ? { frame: 'us', assumed: true } : { frame, assumed: false };
}

const britain = ['Europe/London', 'Europe/Belfast', 'GB'];

/** In Europe, and of neither the Union nor the European Economic Area, where its directives hold too. */
const ownLawInEurope = [
  ...['Andorra', 'Belgrade', 'Chisinau', 'Gibraltar', 'Guernsey', 'Isle_of_Man', 'Istanbul', 'Jersey', 'Kaliningrad'],
  ...['Kiev', 'Kirov', 'Kyiv', 'Minsk', 'Monaco', 'Moscow', 'Podgorica', 'Samara', 'San_Marino', 'Sarajevo', 'Saratov'],
  ...['Simferopol', 'Skopje', 'Tirane', 'Tiraspol', 'Ulyanovsk', 'Uzhgorod', 'Vatican', 'Volgograd', 'Zaporozhye'],
  ...['Zurich', 'Astrakhan'],
].map((city) => `Europe/${city}`);

const unionOutsideEurope = ['Atlantic/Canary', 'Atlantic/Madeira', 'Atlantic/Azores', 'Asia/Nicosia', 'Africa/Ceuta'];

const mexico = [
  ...['Bahia_Banderas', 'Cancun', 'Chihuahua', 'Ciudad_Juarez', 'Ensenada', 'Hermosillo', 'Matamoros', 'Mazatlan'],
  ...['Merida', 'Mexico_City', 'Monterrey', 'Ojinaga', 'Santa_Isabel', 'Tijuana'],
].map((city) => `America/${city}`);

const unitedStates = [
  ...['Adak', 'Anchorage', 'Atka', 'Boise', 'Chicago', 'Denver', 'Detroit', 'Fort_Wayne', 'Indianapolis', 'Juneau'],
  ...['Los_Angeles', 'Louisville', 'Menominee', 'Metlakatla', 'New_York', 'Nome', 'Phoenix', 'Puerto_Rico', 'Shiprock'],
  ...['Sitka', 'Yakutat'],
].map((city) => `America/${city}`);

/** `undefined`: it names no place. */
function lawOfZone(zone: string): LegalFrame | undefined {
  if (zone.startsWith('US/') || /^America\/(?:Indiana|Kentucky|North_Dakota)\//.test(zone)) return 'us';
  if (unitedStates.includes(zone) || zone === 'Pacific/Honolulu') return 'us';
  if (zone.startsWith('Mexico/') || mexico.includes(zone)) return 'mexico';
  if (britain.includes(zone)) return 'uk';
  if (unionOutsideEurope.includes(zone)) return 'eu';
  if (zone.startsWith('Europe/')) return ownLawInEurope.includes(zone) ? 'elsewhere' : 'eu';
  return zone.startsWith('Etc/') || !zone.includes('/') ? undefined : 'elsewhere';
}

/** As a language names its country (ISO 3166). */
const byCountry: ReadonlyMap<string, LegalFrame> = new Map([
  ['US', 'us'],
  ['GB', 'uk'],
  ['MX', 'mexico'],
  ['ES', 'eu'],
]);

const lawOfLanguage = (language: string): LegalFrame | undefined => byCountry.get(language.split('-')[1] ?? '');
