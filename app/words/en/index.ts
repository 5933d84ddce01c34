import { artwork, grade } from './artwork';
import { cards } from './cards';
import { closing } from './closing';
import { commands, keys } from './commands';
import { csv } from './csv';
import { cut } from './cut';
import { cutMap } from './cut-map';
import { demo, demoStock } from './demo';
import { designs } from './designs';
import { film } from './film';
import { filmForm } from './film-form';
import { grid, names } from './garments';
import { keep, storage } from './keep';
import { log } from './log';
import { orders } from './orders';
import { press } from './press';
import { printImage } from './print-image';
import {
  dateProblems,
  durationProblems,
  lengthProblems,
  moneyProblems,
  temperatureProblems,
} from './problems';
import { recipeForm } from './recipes';
import { runs } from './runs';
import { bands, common, kept, name, rooms, skip } from './shell';
import { shop } from './shop';
import { spoil } from './spoil';
import { station } from './station';
import { stock } from './stock';
import { strip } from './strip';
import { table } from './table';

/** English, which every other language is typed by. */
export const en = {
  name,
  skip,
  rooms,
  common,
  kept,
  bands,
  shop,
  keep,
  storage,
  demo,
  demoStock,
  orders,
  table,
  grid,
  names,
  designs,
  artwork,
  grade,
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
  station,
  recipeForm,
  spoil,
  closing,
  cards,
  stock,
  log,
  csv,
  lengthProblems,
  moneyProblems,
  dateProblems,
  durationProblems,
  temperatureProblems,
};

/** What every language has to say; a missing or left-over message does not compile. */
export type Words = typeof en;
