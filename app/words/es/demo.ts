import type { Words } from '../en';

export const demo: Words['demo'] = {
  orders: {
    HR: 'Remo del Puerto',
    CO: 'Panadería El Horno',
    ML: 'Café del Molino',
    SF: 'Feria de verano',
    NC: 'Ciclismo Puerta Norte',
    OS: 'Natación Las Nutrias',
    GT: 'Huertos Mano Verde',
    WC: 'Clase 4 El Sauce',
    JG: 'Jazz en el prado',
  },
  transfers: {
    crestChest: 'Escudo, pecho izquierdo',
    rowBack: 'Remar la bahía, espalda',
    sleeveLine: 'Línea, manga',
    neckTagM: 'Etiqueta de cuello M',
    badgeApron: 'Insignia redonda, delantal',
    bakedBack: 'Horneado a las cuatro, espalda',
    cupTote: 'Taza, bolsa de tela',
    cupChest: 'Otra taza, pecho',
    starFront: 'Estrella, frente',
    starChest: 'Estrella, pecho izquierdo',
    buntingBack: 'Banderines, espalda',
    crewBack: 'Equipo, espalda',
    wheelCap: 'Rueda, gorra',
    hillFront: 'Subida, frente',
    neckTagL: 'Etiqueta de cuello L',
    otterChest: 'Nutria, pecho izquierdo',
    coachBack: 'Entrenador Finn, espalda',
    number7: 'Número 7',
    number12: 'Número 12',
    number23: 'Número 23',
    seedlingChest: 'Brote, pecho',
    plotSleeve: 'Línea de huerto, manga',
    handsFront: 'Manos, frente juvenil',
    neckTagXS: 'Etiqueta de cuello XS',
    trumpetFront: 'Trompeta, frente',
    jazzSleeve: 'Desde las seis, manga',
  },
};

export const demoShop: Words['demoShop'] = {
  name: 'Estampados La Zarza',
  address: 'Callejón de la Zarza 12',
};

export const demoStock: Words['demoStock'] = {
  colour: 'Tintas de color',
  white: 'Tinta blanca',
  powder: 'Polvo termofusible, medio',
  order: { white: '1 l, al distribuidor de tinta', powder: 'bolsa de 3 kg, grano medio' },
  usedRoll: 'Rollo de 13 in, gastado',
  run: (number) => `Tirada anterior ${number}`,
  tee: { style: 'Camiseta', colour: 'azul marino' },
  reasons: {
    crooked: 'planchado torcido',
    grainy: 'granulado, polvo húmedo',
    lifted: 'se levantó al pelar',
    banding: 'bandas tras un atasco',
    scorched: 'quemado',
  },
};
