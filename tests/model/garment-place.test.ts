import { describe, expect, it } from 'vitest';
import { garmentPlaceOf } from '../../src/model';

describe('a place on a garment', () => {
  it.each([
    ['front', 'front'],
    ['Delantera', 'front'],
    ['full back', 'back'],
    ['espalda', 'back'],
    ['back of the neck', 'off-body'],
    ['left chest', 'left-chest'],
    ['pecho izquierdo', 'left-chest'],
    ['Right chest', 'right-chest'],
    ['pecho derecho', 'right-chest'],
    ['bolsillo', 'chest'],
    ['left sleeve', 'off-body'],
    ['hood', 'off-body'],
    ['gorro', 'off-body'],
    ['neck tag', 'off-body'],
    ['hem', 'other'],
    ['', 'other'],
  ] as const)('called %o is %s', (name, place) => {
    expect(garmentPlaceOf(name)).toBe(place);
  });
});
