import type { Copy, CostBasis, Id } from '../model';
import {
  addArtworkFile,
  clearMeant,
  keepOutline,
  readArtworkAgain,
  setArtwork,
  setMadeArtwork,
  setMeant,
  takeArtwork,
} from './artwork';
import { advanceRun, editPrinter, editStation, setCure, setPress, spoilCopy, stepRunBack } from './bench';
import { bringOrders } from './bring-back';
import { bringFirst } from './bring-first';
import { calibrate, leaveRunOut, takeBackCalibration } from './calibration';
import { closeRun, correctClosing } from './closing';
import { changeCurrency } from './currency';
import { addDesign } from './designs';
import { editsOf } from './edit';
import { chooseFilm, removeFilm } from './films';
import {
  addGarment,
  addNames,
  addPlacement,
  editGarment,
  editPlacement,
  priceGarments,
  removeGarment,
  removePlacement,
} from './grid';
import { addRows } from './import';
import { drawForRun, layOut, takeWay } from './lay-out';
import { counterByHand } from './ledger';
import { beginRun, finishRunAndGoOn } from './next-run';
import { addOrder, duplicateOrder, editOrder, removeOrder, tellFabric } from './orders';
import { setPinned, setPlaces, takeOff } from './places';
import { addQuote, editPrices, editQuoteNotes } from './quotes';
import {
  addRun,
  chooseCopies,
  editRun,
  lockRun,
  moveToRun,
  noteImage,
  printedTo,
  removeRun,
  reopenRun,
  spoil,
  unlockRun,
} from './runs';
import { editSettings, mapHeading } from './settings';
import { drawFromShelf } from './shelf';
import type { BookDraft, EditContext } from './step';
import {
  addSupplies,
  archiveItem,
  buyFilm,
  cutOffcut,
  editSupply,
  enterByHand,
  noteFilmBox,
  putOffcutBack,
} from './stock';
import { addTransfer, editTransfer, removeTransfer, setCount } from './transfers';
import { addCheck, editCheck, noteCheck, noteFailedCheck, noteRoom, resetCheck } from './upkeep';

/**
 * All that can be done to a book, but for what Cut and Press add in `benchEdits`, by what it is to history. This is decided here and
 * there, and nowhere else.
 */
export const edits = {
  ...editsOf('step', {
    addOrder,
    editOrder,
    removeOrder,
    duplicateOrder,
    tellFabric,
    bringOrders,
    addRows,
    addTransfer,
    editTransfer,
    removeTransfer,
    setCount: (
      draft: BookDraft,
      id: Id<'transfer'>,
      count: number,
      role: Copy['role'],
      context: EditContext,
    ) => setCount(draft, id, count, context, role),
    addDesign,
    addArtworkFile,
    setArtwork,
    takeArtwork,
    setMadeArtwork,
    setMeant,
    clearMeant,
    addGarment,
    editGarment,
    priceGarments,
    removeGarment,
    addPlacement,
    editPlacement,
    removePlacement,
    addNames,
    addQuote,
    editQuoteNotes,
    editRun,
    removeRun,
    chooseCopies,
    moveToRun,
    setPlaces,
    setPinned,
    takeOff,
    drawForRun,
    drawFromShelf: (draft: BookDraft, id: string) => drawFromShelf(draft, id),
    layOut,
    bringFirst,
    takeWay,
    chooseFilm,
    removeFilm,
    buyFilm,
    noteFilmBox,
    addSupplies,
    editSupply,
    archiveItem,
    enterByHand,
    counterEntry: counterByHand,
    cutOffcut,
    putOffcutBack,
    noteFailedCheck,
  }),
  ...editsOf('none', {
    editSettings,
    mapHeading,
    editPrices,
    changeCurrency,
    editPrinter,
    editStation,
    setPress,
    setCure,
    calibrate,
    takeBackCalibration,
    leaveRunOut,
    noteCheck,
    noteRoom,
    addCheck,
    editCheck,
    resetCheck,
    readArtworkAgain,
    keepOutline,
    noteImage,
    /** Artwork that a transfer came without, found later. */
    drawArtwork: setArtwork,
  }),
  ...editsOf('forget', {
    addRun,
    beginRun,
    lockRun: (draft: BookDraft, id: string, basis: CostBasis | null, context: EditContext) =>
      lockRun(draft, id, context, basis),
    unlockRun,
    printedTo,
    spoil,
    finishRun: finishRunAndGoOn,
    reopenRun,
    advanceRun,
    stepRunBack,
    spoilCopy,
    closeRun,
    correctClosing,
  }),
};
