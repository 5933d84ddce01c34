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
  tightenCommand,
  turnCommand,
  wholeRunCommand,
  wholeWidthCommand,
  zoomInCommand,
  zoomOutCommand,
  zoomToSelectionCommand,
} from './film';
export { redoCommand, undoCommand } from './history';
