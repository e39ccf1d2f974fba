/**
 * What every reader of a result must be told, in the words that all outputs share.
 * Sources: silica limit OSHA 29 CFR 1926.1153; masonry bracing OSHA 1926.706; lifting HSE CIS 37;
 * the rest common practice, no source.
 */
export const CAUTION = {
  authority:
    'Preliminary. Not a design. To be confirmed by a licensed engineer and the local building authority; local codes, snow, wind, seismic and soil values govern.',
  rings:
    'An unclosed ring can fall: nobody stands inside or below it, and centering stays until the arch has its strength.',
  lifting:
    'More than 20 kg (44 lb) lifted again and again is high risk, by one person or by two: use a hoist, or make smaller blocks.',
  cement: 'Wet cement burns skin and eyes: gloves, goggles, long sleeves, wash at once.',
  silica: 'Cutting and dry mixing raise silica dust: cut wet or with extraction, wear a respirator.',
  cubes: 'Build only after test cubes of every casting day reach the strength the engineer set.',
} as const;

/** All cautions, the most general first. */
export const CAUTIONS: readonly string[] = Object.values(CAUTION);
