export { Cursor } from './cursor';
export { fontsNeeded } from './fonts';
export { readSvgHeader, type SvgHeader } from './header';
export { type Piece, piecesOf } from './markup';
export { outsideNeeds } from './outside';
export type { WeightProblem } from './refusal';
export { weighSvg } from './weigh';
