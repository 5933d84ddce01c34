export { editFilm, type FilmFields } from './films';
export { emptyHistory, type History, remember, stepBack, stepForward } from './history';
export { addRows } from './import';
export { addOrder, editOrder, removeOrder } from './orders';
export { setPinned, setPlaces } from './places';
export { editSettings } from './settings';
export { applySettled } from './settled';
export { startBook } from './start';
export { applyEdit, type BookDraft, type EditContext, redoStep, type Step, undoStep } from './step';
export {
  addTransfer,
  editTransfer,
  removeTransfer,
  setArtwork,
  setCount,
} from './transfers';
