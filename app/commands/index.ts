export {
  cutMapCommand,
  layOutCommand,
  pinCommand,
  placeWaitingCommand,
  stopCommand,
  takeOffCommand,
  turnCommand,
  wholeRunCommand,
  wholeWidthCommand,
  zoomInCommand,
  zoomOutCommand,
} from './film';
export { redoCommand, undoCommand } from './history';
