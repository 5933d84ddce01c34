import type { MoreWords } from '../en';
import { artwork } from './artwork';
import { bringBack } from './bring-back';
import { calibrate } from './calibrate';
import { cards } from './cards';
import { closing } from './closing';
import { costSheet, costsForm } from './costs';
import { csv } from './csv';
import { cut } from './cut';
import { cutFile } from './cut-file';
import { cutMap } from './cut-map';
import { damaged } from './damaged';
import { designs } from './designs';
import { filmForm } from './film-form';
import { grid, names } from './garments';
import { handOver } from './hand-over';
import { keep } from './keep';
import { keys } from './keys';
import { log } from './log';
import { mends } from './mends';
import { orders } from './orders';
import { press } from './press';
import { compare, makeOrBuy, price, prices, quote } from './pricing';
import { printImage } from './print-image';
import {
  amountProblems,
  dateProblems,
  durationProblems,
  hoursProblems,
  lengthProblems,
  moneyProblems,
  rateProblems,
  shareProblems,
  temperatureProblems,
} from './problems';
import { recipeForm } from './recipes';
import { reprints } from './reprints';
import { runs } from './runs';
import { spoil } from './spoil';
import { station } from './station';
import { stock } from './stock';
import { strip } from './strip';
import { table } from './table';
import { unavailable } from './unavailable';
import { untold } from './untold';
import { upkeep } from './upkeep';

export const more: MoreWords = {
  damaged,
  keep,
  orders,
  runs,
  stock,
  upkeep,
  table,
  grid,
  names,
  designs,
  artwork,
  mends,
  filmForm,
  keys,
  cutMap,
  cutFile,
  strip,
  printImage,
  cut,
  press,
  untold,
  handOver,
  station,
  recipeForm,
  spoil,
  reprints,
  closing,
  cards,
  log,
  costSheet,
  costsForm,
  price,
  prices,
  quote,
  compare,
  makeOrBuy,
  unavailable,
  bringBack,
  calibrate,
  csv,
  lengthProblems,
  moneyProblems,
  rateProblems,
  shareProblems,
  amountProblems,
  dateProblems,
  durationProblems,
  hoursProblems,
  temperatureProblems,
};
