/** Places that are known by name. */
export type PlaceName =
  | 'front'
  | 'back'
  | 'left chest'
  | 'sleeve'
  | 'neck tag'
  | 'right chest'
  | 'pocket'
  | 'hood'
  | 'leg'
  | 'cap'
  | 'tote';

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

/** What a place is called, in English or Spanish. Short words are whole ones: a `college` is no leg, and a hoodie's front no hood. */
const NAMES: readonly (readonly [PlaceName, RegExp])[] = [
  ['neck tag', /neck|tag\b|label|cuello|etiqueta/i],
  ['hood', /\bhood\b|capucha/i],
  ['cap', /\bcaps?\b|\bhats?\b|beanie|gorr/i],
  ['sleeve', /sleeve|\bmangas?\b/i],
  ['leg', /\blegs?\b|thigh|pierna|pernera/i],
  ['tote', /\btotes?\b|bolsas?\b/i],
  ['pocket', /pocket|bolsillo/i],
  ['right chest', /(?=.*(?:chest|pecho))(?=.*(?:right|der))/i],
  ['left chest', /(?=.*(?:chest|pecho))(?=.*(?:left|izq))/i],
  ['back', /back|espalda/i],
  ['front', /front|frente|delanter/i],
];

/** The place that a name speaks of; `null` where that is none of those known. */
export const placeNamed = (name: string): PlaceName | null =>
  NAMES.find(([, word]) => word.test(name))?.[0] ?? null;

/** Reads where a place lies from its name, in English or Spanish. */
export function garmentPlaceOf(name: string): GarmentPlace {
  const place = placeNamed(name);
  switch (place) {
    case null:
      return /chest|pecho/i.test(name) ? 'chest' : 'other';
    case 'neck tag':
    case 'hood':
    case 'cap':
    case 'sleeve':
    case 'leg':
      return 'off-body';
    case 'front':
    case 'back':
      return place;
    case 'tote':
      return 'front';
    case 'left chest':
      return 'left-chest';
    case 'right chest':
      return 'right-chest';
    case 'pocket': {
      if (/left|izq/i.test(name)) return 'left-chest';
      return /right|der/i.test(name) ? 'right-chest' : 'chest';
    }
  }
}
