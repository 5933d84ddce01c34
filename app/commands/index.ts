export {
  alignAcrossCommand,
  alignAlongCommand,
  cutMapCommand,
  layOutCommand,
  pinCommand,
  placeWaitingCommand,
  selectOrderCommand,
  stopCommand,
  takeOffCommand,
  turnCommand,
  wholeRunCommand,
  wholeWidthCommand,
  zoomInCommand,
  zoomOutCommand,
  zoomToSelectionCommand,
} from './film';
export { redoCommand, undoCommand } from './history';
