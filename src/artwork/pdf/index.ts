export { contentsOf, type Matrix, type PageStep } from './contents';
export { chosenPage, isPdf, withPage } from './page-note';
export { inMetres, rasterOf } from './raster';
