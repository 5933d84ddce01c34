export { styledPieces } from './cascade';
export { fontsNeeded } from './fonts';
export { readSvgHeader, type SvgHeader } from './header';
export { outsideNeeds } from './outside';
export type { WeightProblem } from './refusal';
export { weighSvg } from './weigh';
