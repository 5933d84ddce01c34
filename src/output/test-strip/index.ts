export { drawStrip, MEASURE, type StripPen, stripSize } from './strip';
