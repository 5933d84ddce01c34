export { drawStrip, MEASURE, stripSize } from './strip';
