export { type CoverageOf, proposeClosing, runCoverage } from './proposal';
