export { type InksToLab, readInks } from './profile';
export { inksToRgba, srgbOf } from './srgb';
