// The number that is shown while a shop has not set its own.

/**
 * By the crew's zone: 911 in the Americas (United States: 47 U.S.C. 251(e)(3), from memory), else 112 (Directive (EU) 2018/1972,
 * article 109). Every mobile phone takes either as an emergency call wherever it is (3GPP TS 22.101, 10.1, from memory).
 */
export function usualEmergencyNumber({ zone }: { readonly zone: string }): string {
  return /^(?:America|US|Canada|Mexico)\/|^Pacific\/Honolulu$/.test(zone) ? '911' : '112';
}
