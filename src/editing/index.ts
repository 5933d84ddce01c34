export {
  clearMeant,
  type GivenArtwork,
  type NewArtwork,
  setArtwork,
  setMeant,
} from './artwork';
export {
  advanceRun,
  editPrinter,
  editStation,
  jobsBy,
  setPress,
  spoilCopy,
  stepRunBack,
} from './bench';
export { benchEdits } from './bench-edits';
export { mayComeFirst } from './bring-first';
export { calibrate, isInForce, leaveRunOut, takeBackCalibration } from './calibration';
export { closeRun, correctClosing } from './closing';
export { codeFlaw, type TakenCodes, takenCodes } from './codes';
export { changeCurrency } from './currency';
export { addDesign, type NewSize } from './designs';
export type { Edit } from './edit';
export { edits } from './edits';
export { filmEdits } from './film-edits';
export { addFilm, editFilm, type FilmFields, removeFilm } from './films';
export { firstFilm } from './first-film';
export {
  addGarment,
  addNames,
  addPlacement,
  editGarment,
  editPlacement,
  type PlacementFields,
  printedSizes,
  removeGarment,
  removePlacement,
} from './grid';
export {
  type AsideReason,
  asideReason,
  mayTakeIn,
  noteHandedBack,
  removeReceived,
  type TakenIn,
  takeAside,
  takeIn,
} from './hand-over';
export { forget, historyOf, remember, stepBack, stepForward } from './history';
export { nextOpenSpan } from './join';
export { drawForRun, type OtherWay } from './lay-out';
export { counterEntry, enter } from './ledger';
export { matchArtwork } from './match-artwork';
export { filmForNextRun } from './next-run';
export { addOrder, duplicateOrder, editOrder, type OrderFields, removeOrder, tellFabric } from './orders';
export { setPinned, setPlaces } from './places';
export { addQuote, editQuoteNotes, isAsPriced, signQuotes } from './quotes';
export { reconciled } from './reconcile';
export {
  addRun,
  chooseCopies,
  editRun,
  finishRun,
  lockRun,
  moveToRun,
  noteImage,
  printedTo,
  removeRun,
  reopenRun,
  spoil,
  unlockRun,
} from './runs';
export {
  type Answer,
  type Answers,
  answerKey,
  type RepeatedRow,
  repeatedRows,
  rowsToAdd,
} from './same-lines';
export { checked, redo, replaceStep, session, undo } from './session';
export { editSettings } from './settings';
export { applySettled } from './settled';
export { type Drawn, drawFromShelf, waitingFor } from './shelf';
export { type Start, startBook } from './start';
export { applyEdit, type BookDraft, type EditContext } from './step';
export {
  addSupply,
  archiveItem,
  changeBy,
  cutOffcut,
  enterByHand,
  type HandEntry,
  mayPutBack,
  noteFilmBox,
  putOffcutBack,
} from './stock';
export { tickJobs } from './ticks';
export {
  addTransfer,
  editTransfer,
  inPrint,
  removeTransfer,
  setCount,
} from './transfers';
export { redoStep, undoStep } from './undo';
export {
  addCheck,
  editCheck,
  type Failed,
  noteAir,
  noteCheck,
  noteFailedCheck,
  resetCheck,
} from './upkeep';
