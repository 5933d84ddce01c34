import { describe, expect, it } from 'vitest';
import { said } from './said';

/** The words of one sentence: what holds a letter or a figure. */
const wordsOf = (sentence: string): number =>
  sentence.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;

const sentencesOf = (text: string): string[] => text.split(/(?<=[.!?…])["”»)]?\s+(?=[\p{Lu}¿¡])/u);

const LONGEST = 20;

/** Words that gave way to plainer ones of the trade, and what is said instead. */
const retired = {
  english: [
    [/see-through/i, 'semi-transparent'],
    [/\bupkeep\b/i, 'maintenance'],
    [/less for many/i, 'quantity discount'],
    [/smallest order/i, 'minimum order'],
    [/aimed at/i, 'target'],
    [/beyond the press/i, 'status'],
    [/clear of the film/i, 'hover gap'],
    [/on the box/i, 'lots and dates'],
    [/\bprint (it )?anew\b|print it again/i, 'reprint'],
    [/blank at the (front|end)/i, 'leading or trailing margin'],
    [/pairs? of hands|hand time|^hands\b|the hands’/i, 'operators, labour'],
    [/in one closing/i, 'press together'],
    [/\bpull\b/i, 'influence'],
    [/place what waits/i, 'place waiting copies'],
    [/hand over, take in/i, 'pass to another device'],
    [/orders at work/i, 'open orders'],
    [/came to nothing/i, 'spoiled'],
    [/by the middle of/i, 'the median of'],
    [/write the image/i, 'save image'],
    [/kept and backed up|^as it was$/i, 'storage and backup, snapshots'],
    [/meant so|as meant/i, 'intended'],
    [/not (done|cut) after all/i, 'untick'],
    [/\b(solid|transparent|clear) ground\b|the ground out/i, 'background'],
    [/garments and places|add a place\b|this place\b/i, 'placements'],
  ],
  spanish: [
    [/\bplatos?\b/i, 'placa'],
    [/menos por muchos/i, 'descuento por cantidad'],
    [/^volver (al|a la) (precio|película|planchado)/i, 'atrás'],
    [/\bconsumir antes\b|consumo preferente/i, 'usar antes del'],
    [/\b(un|otro|este|tercer) equipo\b|«equipo»/i, 'dispositivo, máquinas'],
    [/^manos(:| \(|$)|pares? de manos|tiempos? de manos/i, 'operadores, mano de obra'],
    [/embal(ar|ado)/i, 'empacar'],
    [/después de la plancha/i, 'situación'],
    [/^como estaba$/i, 'instantáneas'],
    [/blancos? (al|del) (inicio|final)/i, 'margen inicial, margen final'],
    [/colocar lo que espera/i, 'colocar las copias en espera'],
    [/^al final no($| está)/i, 'desmarcar'],
    [/traspasar, recibir/i, 'pasar a otro dispositivo'],
    [/\btandas?\b/i, 'tirada'],
    [/\bcostes?\b/i, 'costo'],
    [/mapa de corte/i, 'plano de corte'],
    [/\b(los|las) artes\b|y artes\b/i, 'arte'],
    [/\bcoger\b/i, 'quedar con'],
    [/estado anterior/i, 'instantánea'],
    [/\bapuntar(lo)?\b/i, 'anotar'],
    [/el libro (está|abierto)|este libro|escribe (otra|este)/i, 'los datos, los cambios'],
    [/a las (a las|el |1[:.])/i, 'a las una vez, a la una'],
    [/^copias más$/i, 'más copias'],
  ],
} satisfies Record<string, readonly (readonly [RegExp, string])[]>;

const told = (language: 'english' | 'spanish', holds: (text: string) => boolean) =>
  said.filter((each) => holds(each[language])).map((each) => [each.place, each[language]]);

describe.each(['english', 'spanish'] as const)('what is said in %s', (language) => {
  it('has no sentence of more than twenty words', () => {
    expect(told(language, (text) => sentencesOf(text).some((each) => wordsOf(each) > LONGEST))).toEqual([]);
  });

  it.each(retired[language])('says no %s any more, but %s', (word) => {
    expect(told(language, (text) => word.test(text))).toEqual([]);
  });
});

describe('advice in Spanish', () => {
  /** An infinitive that begins a sentence as its subject, or what a card tells the customer and the hand at the press. */
  const mayBegin =
    /^(deshacer las|esperar más solo|Transfer:|Deshacer|Distribuir otra vez pone|Recargar la página trae|Dar un paso atrás|Cambiar de moneda no|Hacerlas (nunca )?(es|conviene)|Separar (antes|después)|Imprimir a tamaño real|Planchar juntos)/;
  const isBare = (sentence: string) =>
    /^\p{L}+[aei]r(l[oae]s?|se)?\b.*\.$/u.test(sentence) && !mayBegin.test(sentence);

  it('says what has to be done in a whole sentence, not as a bare infinitive', () => {
    const bare = said.filter(
      ({ place, spanish }) =>
        !/^cards\.(care|transferCare)/.test(place) &&
        spanish.endsWith('.') &&
        spanish.split(/(?<=[.!?…])["”»)]?\s+(?=\p{Lu})|; /u).some((each, at) => at + 1 > 0 && isBare(each)),
    );
    expect(bare.map(({ place, spanish }) => [place, spanish])).toEqual([]);
  });
});

describe('quotation marks', () => {
  it('are of one kind in Spanish', () => {
    // An inch is written as a tape writes it, behind its figure.
    expect(told('spanish', (text) => /[“”„]|(?<!\d)"/.test(text))).toEqual([]);
  });

  it('are of one kind in English', () => {
    expect(told('english', (text) => /[«»]|(?<!\d)"/.test(text))).toEqual([]);
  });
});
