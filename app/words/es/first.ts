import type { FirstWords } from '../en';
import { commands } from './commands';
import { damaged } from './damaged';
import { demo, demoStock } from './demo';
import { failures } from './failures';
import { film } from './film';
import { grade } from './grade';
import { keep, storage } from './keep';
import { orders } from './orders';
import { runs } from './runs';
import { bands, common, framed, kept, name, rooms, skip } from './shell';
import { shop } from './shop';
import { stock } from './stock';
import { trouble } from './trouble';
import { upkeep } from './upkeep';

export const first: FirstWords = {
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
  grade,
  failures,
  film,
  runs,
  commands,
  stock,
  trouble,
  upkeep,
};
