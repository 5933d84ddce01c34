import { separateSideMargins } from './02-side-margins';
import { widenForTheShop } from './03-the-shop';
import { askForTogether } from './04-together';
import { checkArtwork } from './05-artwork-limits';
import { rememberImages } from './06-print-images';
import { goOnToThePress } from './07-the-press';
import { countInk } from './08-ink';
import { chooseLanguage } from './09-language';
import { keepLedger } from './10-ledger';
import { callFindingsMeant } from './11-meant';
import { handOver } from './12-hand-over';
import { countMoney } from './13-money';
import { noteUpkeep } from './14-upkeep';
import { keepQuotes } from './15-quotes';
import { countStarts } from './16-starts';
import { tellStates } from './17-states';
import { placeOnGarments } from './18-garment-places';
import { completeThrees } from './19-whole-threes';
import { nameWhatIsCounted } from './20-copies-pressed';
import { letGoOfWaiting } from './21-let-go';
import { keepCorrections } from './22-corrections';
import { keepTables } from './23-tables';
import { allowDueFirst } from './24-due-first';
import { letGoOfUnprinted } from './25-unprinted';
import { correctFeed } from './26-feed';
import { tellMends } from './27-mends';
import { tellOrdersApart } from './28-tints';
import { keepHours } from './29-hours';
import { knowScreens } from './30-screens';
import { layByOutlines } from './31-outlines';
import { layAtAngles } from './32-angles';
import { takePdf } from './33-pdf';
import { writeCutFiles } from './34-cut-files';
import { keepMark } from './35-mark';
import { layWhite } from './36-white';
import { nameCopies } from './37-copy-names';
import { askForLarge } from './38-large';
import { tellJobs } from './39-jobs';
import { tellFabrics } from './40-fabrics';
import { timeTruly } from './41-true-times';
import { widenSizes } from './42-sizes';
import { askForCaps } from './43-caps';
import { findHoles } from './44-holes';
import { nameMachines } from './45-machines';
import { keepByMachine } from './46-upkeep';
import { keepDoneOn } from './47-done-on';
import type { Migration } from './stored';

/** `migrations[n]` takes version n + 1 to n + 2. Append only: what was shipped is never changed. */
export const migrations: readonly Migration[] = [
  separateSideMargins,
  widenForTheShop,
  askForTogether,
  checkArtwork,
  rememberImages,
  goOnToThePress,
  countInk,
  chooseLanguage,
  keepLedger,
  callFindingsMeant,
  handOver,
  countMoney,
  noteUpkeep,
  keepQuotes,
  countStarts,
  tellStates,
  placeOnGarments,
  completeThrees,
  nameWhatIsCounted,
  letGoOfWaiting,
  keepCorrections,
  keepTables,
  allowDueFirst,
  letGoOfUnprinted,
  correctFeed,
  tellMends,
  tellOrdersApart,
  keepHours,
  knowScreens,
  layByOutlines,
  layAtAngles,
  takePdf,
  writeCutFiles,
  keepMark,
  layWhite,
  nameCopies,
  askForLarge,
  tellJobs,
  tellFabrics,
  timeTruly,
  widenSizes,
  askForCaps,
  findHoles,
  nameMachines,
  keepByMachine,
  keepDoneOn,
];
