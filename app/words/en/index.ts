import { artwork, grade } from './artwork';
import { calibrate } from './calibrate';
import { cards } from './cards';
import { closing } from './closing';
import { commands, keys } from './commands';
import { costSheet, costsForm } from './costs';
import { csv } from './csv';
import { cut } from './cut';
import { cutMap } from './cut-map';
import { damaged } from './damaged';
import { demo, demoStock } from './demo';
import { designs } from './designs';
import { failures } from './failures';
import { film } from './film';
import { filmForm } from './film-form';
import { grid, names } from './garments';
import { handOver } from './hand-over';
import { keep, storage } from './keep';
import { log } from './log';
import { orders } from './orders';
import { press } from './press';
import { compare, makeOrBuy, price, prices, quote } from './pricing';
import { printImage } from './print-image';
import {
  amountProblems,
  dateProblems,
  durationProblems,
  lengthProblems,
  moneyProblems,
  rateProblems,
  shareProblems,
  temperatureProblems,
} from './problems';
import { recipeForm } from './recipes';
import { runs } from './runs';
import { bands, common, framed, kept, name, rooms, skip } from './shell';
import { shop } from './shop';
import { spoil } from './spoil';
import { station } from './station';
import { stock } from './stock';
import { strip } from './strip';
import { table } from './table';
import { trouble } from './trouble';
import { unavailable } from './unavailable';
import { upkeep } from './upkeep';

/** English, which every other language is typed by. */
export const en = {
  name,
  skip,
  framed,
  rooms,
  common,
  kept,
  bands,
  shop,
  keep,
  storage,
  damaged,
  demo,
  demoStock,
  orders,
  table,
  grid,
  names,
  designs,
  artwork,
  grade,
  failures,
  film,
  filmForm,
  runs,
  commands,
  keys,
  cutMap,
  strip,
  printImage,
  cut,
  press,
  handOver,
  station,
  recipeForm,
  spoil,
  closing,
  cards,
  stock,
  log,
  costSheet,
  costsForm,
  price,
  prices,
  quote,
  compare,
  makeOrBuy,
  trouble,
  unavailable,
  upkeep,
  calibrate,
  csv,
  lengthProblems,
  moneyProblems,
  rateProblems,
  shareProblems,
  amountProblems,
  dateProblems,
  durationProblems,
  temperatureProblems,
};

/** What every language has to say; a missing or left-over message does not compile. */
export type Words = typeof en;
