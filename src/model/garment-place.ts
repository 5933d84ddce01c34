/**
 * Where on a garment a print lies, as far as pressing and its widest size ask: on the body's front or back, on the chest to one side
 * or in its middle, off the body (sleeves, collars, hoods, caps), or a place that no name tells, on the body all the same.
 */
export const garmentPlaces = [
  'front',
  'back',
  'chest',
  'left-chest',
  'right-chest',
  'off-body',
  'other',
] as const;

export type GarmentPlace = (typeof garmentPlaces)[number];

/** Reads a place's name, in English or Spanish. */
export function garmentPlaceOf(name: string): GarmentPlace {
  if (/sleeve|neck|tag|label|hood|cap|hat|manga|cuello|etiqueta|capucha|gorr/i.test(name)) return 'off-body';
  if (/back|espalda/i.test(name)) return 'back';
  if (/chest|pecho|pocket|bolsillo/i.test(name)) {
    if (/left|izq/i.test(name)) return 'left-chest';
    return /right|der/i.test(name) ? 'right-chest' : 'chest';
  }
  return /front|frente|delanter/i.test(name) ? 'front' : 'other';
}
