export { type CameraProblem, isFacing, openCamera, watchCodes } from './camera';
export { type CodeReader, openReader } from './reader';
