import { describe, expect, it } from 'vitest';
import { garmentPlaceOf, placeNamed } from '../../src/model';

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
    ['hoodie front', 'front'],
    ['leg', 'off-body'],
    ['pernera', 'off-body'],
    ['college front', 'front'],
    ['cap', 'off-body'],
    ['captain, front', 'front'],
    ['tote', 'front'],
    ['bolsa', 'front'],
    ['chest', 'chest'],
    ['right pocket', 'right-chest'],
    ['gorro', 'off-body'],
    ['neck tag', 'off-body'],
    ['hem', 'other'],
    ['', 'other'],
  ] as const)('called %o is %s', (name, place) => {
    expect(garmentPlaceOf(name)).toBe(place);
  });
});

describe('a place that the card has a measure for', () => {
  it.each([
    ['left chest', 'left chest'],
    ['pecho derecho', 'right chest'],
    ['chest', null],
    ['hood', 'hood'],
    ['capucha', 'hood'],
    ['leg', 'leg'],
    ['pierna izquierda', 'leg'],
    ['gorra', 'cap'],
    ['tote', 'tote'],
    ['pocket', 'pocket'],
    ['etiqueta de cuello', 'neck tag'],
    ['legend back', 'back'],
    ['hem', null],
  ] as const)('called %o is %s', (name, place) => expect(placeNamed(name)).toBe(place));
});
