export { readSvgHeader, type SvgHeader } from './header';
export { outsideNeeds } from './outside';
export type { WeightProblem } from './refusal';
export { weighSvg } from './weigh';
