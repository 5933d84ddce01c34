import type { Copy, CostBasis, Id } from '../model';
import { addArtworkFile, clearMeant, setArtwork, setMadeArtwork, setMeant, takeArtwork } from './artwork';
import { advanceRun, editPrinter, editStation, setCure, setPress, spoilCopy, stepRunBack } from './bench';
import { bringOrders } from './bring-back';
import { bringFirst } from './bring-first';
import { calibrate, leaveRunOut, takeBackCalibration } from './calibration';
import { closeRun, correctClosing } from './closing';
import { changeCurrency } from './currency';
import { addDesign } from './designs';
import { editsOf } from './edit';
import { filmEdits } from './film-edits';
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
import { takeWay } from './lay-out';
import { counterByHand } from './ledger';
import { addOrder, duplicateOrder, editOrder, removeOrder, tellFabric } from './orders';
import { addQuote, editPrices, editQuoteNotes } from './quotes';
import { chooseCopies, editRun, lockRun, moveToRun, noteImage, printedTo, removeRun, spoil } from './runs';
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
 * All that can be done to a book, but for what Cut and Press add in `benchEdits`, by what it is to history. This is decided here, there and
 * in `filmEdits`, and nowhere else.
 */
export const edits = {
  ...filmEdits,
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
    drawFromShelf: (draft: BookDraft, id: string) => drawFromShelf(draft, id),
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
    noteImage,
    /** Artwork that a transfer came without, found later. */
    drawArtwork: setArtwork,
  }),
  ...editsOf('forget', {
    lockRun: (draft: BookDraft, id: string, basis: CostBasis | null, context: EditContext) =>
      lockRun(draft, id, context, basis),
    printedTo,
    spoil,
    advanceRun,
    stepRunBack,
    spoilCopy,
    closeRun,
    correctClosing,
  }),
};
