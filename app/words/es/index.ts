import type { Words } from '../en';
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

/**
 * Spanish as a print shop in Latin America or Spain says it. Labels and advice are infinitives ("Distribuir", "Escribir un
 * número"), which need neither "tú" nor "usted"; facts are plain sentences. "Su" is left out where it can be.
 *
 * Glossary: artwork = arte · band of a map strip = franja · blank (film) = blanco · blank (garment) = prenda · bag = bolsa ·
 * care slip = tarjeta de cuidado · choke = contracción · copy = copia · cover sheet = hoja protectora · cure = curar, curado ·
 * curl = curvatura · cut apart = separar · cut map = plano de corte · data sheet = ficha técnica · design = diseño · draft =
 * borrador · due = entrega · equipment = equipo · fabric = tejido · film = película · filler = copia de relleno · gap =
 * separación · garment = prenda · ground = fondo · hand over = traspasar · knife line = línea de corte · knock out = calar ·
 * lay out = distribuir · layout = distribución · leading edge = borde de inicio · lock = bloquear · mirror = reflejar · nozzle
 * check = prueba de inyectores · offcut = recorte · order = pedido · overs = copias de más · packing slip = nota de entrega ·
 * peel = pelar · pick list = lista de preparación · pile = pila · pin = fijar · place on a garment = zona · platen = plato ·
 * powder = polvo, empolvar · ppi = ppp · press = plancha, planchar · print-ready image = imagen para imprimir · proof = prueba ·
 * recipe = receta · roll = rollo · run = tirada · rush = urgente · scrap = retazo · shaker line = línea con sacudidor · sheet =
 * hoja · shelf = estante · snapshot = instantánea · span = tramo · spare = de reserva · spoiled = estropeado · stretch of film =
 * trecho · cost sheet = hoja de costos · markup = recargo · margin = margen · overhead = gastos generales · quote = presupuesto ·
 * deposit = anticipo · make or buy = hacer o comprar ·
 * test strip = tira de prueba · tick = marcar · transfer = transfer · trimmer = cizalla · waste = merma.
 */
export const es: Words = {
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
