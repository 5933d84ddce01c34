import { commands } from './commands';
import { demo, demoStock } from './demo';
import { failures } from './failures';
import { film } from './film';
import { damaged } from './first-damaged';
import { keep } from './first-keep';
import { orders } from './first-orders';
import { runs } from './first-runs';
import { stock } from './first-stock';
import { grade } from './grade';
import { bands, common, framed, kept, name, rooms, skip } from './shell';
import { shop } from './shop';
import { storage } from './storage';
import { trouble } from './trouble';

/** What the frame of the app and the Film room say: it comes with the first screen. */
export const first = {
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
};
