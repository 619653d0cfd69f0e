// Units as people type them in English and on labels everywhere. A spelling of two words has one `_`.

export const englishUnits = {
  kg: 'kg kgs kilo kilos kilogram kilograms kilogramme kilogrammes',
  g: 'g gr grs gm gms gram grams gramme grammes',
  lb: 'lb lbs pound pounds',
  oz: 'oz ounce ounces',
  L: 'l lt ltr ltrs litre litres liter liters',
  mL: 'ml mls cc millilitre millilitres milliliter milliliters',
  gal: 'gal gals gallon gallons',
  qt: 'qt qts quart quarts',
  'fl oz': 'floz fl_oz fl_ounce fl_ounces fluid_oz fluid_ounce fluid_ounces',
  C: 'c °c degc deg_c degrees_c °_c celsius centigrade degrees_celsius',
  F: 'f °f degf deg_f degrees_f °_f fahrenheit degrees_fahrenheit',
  '%': '% %rh rh% %_rh rh pct percent per_cent humidity %_humidity',
  mm: 'mm',
  cm: 'cm',
  in: '" in inch inches',
  m2: 'm2 m^2 sqm sq_m sq_metre sq_metres sq_meter sq_meters square_metres square_meters',
  cm2: 'cm2 cm^2 sqcm sq_cm',
  ft2: 'ft2 ft^2 sqft sq_ft sf sq_feet sq_foot square_feet',
  um: 'um µm μm u µ μ mic mics micron microns micrometre mu mus',
  mil: 'mil mils thou',
  h: 'h hr hrs hour hours',
  min: 'm min mins minute minutes',
  /** A temperature without its scale, so still a number that wants a unit. */
  degree: '° deg degs degree degrees',
};

export type UnitSpellings = Readonly<Record<keyof typeof englishUnits, string>>;
