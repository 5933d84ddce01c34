import { demoDay } from '../../src/demo';
import { applyEdit, startBook } from '../../src/editing';
import { type Book, emptyBook } from '../../src/model';
import {
  type BookRepository,
  becomeWriter,
  createSaver,
  demoNames,
  lastOpened,
  openArtworkStore,
  openRepository,
  rememberOpened,
  type Saver,
  shopNames,
  type Writer,
} from '../../src/storage';
