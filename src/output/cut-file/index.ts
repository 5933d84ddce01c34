export { zipped } from './archive';
export { cutDxf } from './dxf';
export { type CutFile, type CutRing, cutFiles } from './lines';
export { cutSvg, LAYERS } from './svg';
