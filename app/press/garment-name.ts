import type { Garment } from '../../src/model';
import type { Words } from '../words';
import { fabricName } from './recipe-line';

/** Garments of a line as they are taken from the store, and what they are made of. */
export const garmentName = (
  { style, colour, size, fabric }: Pick<Garment, 'style' | 'colour' | 'size' | 'fabric'>,
  press: Words['press'],
): string => [style, colour, size, fabricName(fabric, press)].filter(Boolean).join(', ');
