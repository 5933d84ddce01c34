import type { Words } from '../en';
import { first } from './first';
import { more } from './more';

/**
 * Spanish as a print shop in Latin America or Spain says it. Labels and advice are infinitives ("Distribuir", "Escribir un
 * número"), which need neither "tú" nor "usted"; facts are plain sentences. "Su" is left out where it can be.
 *
 * Glossary: artwork = arte · band of a map strip = franja · blank (film) = blanco · blank (garment) = prenda · bag = bolsa ·
 * care slip = tarjeta de cuidado · choke = contracción · copy = copia · cover sheet = hoja protectora · cure = curar, curado ·
 * curl = curvatura · cut apart = separar · cut map = plano de corte · data sheet = ficha técnica · design = diseño · draft =
 * borrador · due = entrega · equipment = máquinas · device = dispositivo · fabric = tejido · film = película · filler = copia de relleno · gap =
 * separación · garment = prenda · ground = fondo · hand over = traspasar · knife line = línea de corte · knock out = calar ·
 * lay out = distribuir · layout = distribución · leading edge = borde de inicio · lock = bloquear · mirror = reflejar · nozzle
 * check = prueba de inyectores · offcut = recorte · order = pedido · overs = copias de más · packing slip = nota de entrega ·
 * peel = pelar · pick list = lista de preparación · pile = pila · pin = fijar · place on a garment = zona · platen = placa ·
 * powder = polvo, empolvar · ppi = ppp · press = plancha, planchar · print-ready image = imagen para imprimir · proof = prueba ·
 * recipe = receta · roll = rollo · run = tirada · rush = urgente · scrap = retazo · shaker line = línea con sacudidor · sheet =
 * hoja · shelf = estante · snapshot = instantánea · span = tramo · spare = de reserva · spoiled = estropeado · stretch of film =
 * trecho · cost sheet = hoja de costos · markup = recargo · margin = margen · overhead = gastos generales · quote = presupuesto ·
 * deposit = anticipo · make or buy = hacer o comprar ·
 * test strip = tira de prueba · tick = marcar · transfer = transfer · trimmer = cizalla · waste = merma.
 */
export const es: Words = { ...first, ...more };
