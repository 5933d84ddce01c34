/** What a garment is made of, as far as heat is concerned. */
export const FABRICS = [
  'cotton',
  'blend',
  'polyester',
  'nylon',
  'rayon',
  'canvas',
  'leather',
  'acrylic',
  'elastane',
  'non-woven',
  'shell',
  'other',
] as const;

export type Fabric = (typeof FABRICS)[number];
