import type { DemoStockWords, DemoWords } from '../../../src/demo';

export const demo: DemoWords = {
  orders: {
    HR: 'Harbour Rowing',
    CO: 'Corner Oven bakery',
    ML: 'Mill Lane cafe',
    SF: 'Summer street fair',
    NC: 'Northgate cycling',
    OS: 'Otters swim team',
    GT: 'Green Thumb allotments',
    WC: 'Willow class 4',
    JG: 'Jazz on the green',
  },
  transfers: {
    crestChest: 'Crest, left chest',
    rowBack: 'Row the Bay, back',
    sleeveLine: 'Sleeve line',
    neckTagM: 'Neck tag M',
    badgeApron: 'Round badge, apron',
    bakedBack: 'Baked at four, back',
    cupTote: 'Cup, tote bag',
    cupChest: 'One more cup, chest',
    starFront: 'Star, front',
    starChest: 'Star, left chest',
    buntingBack: 'Bunting, back',
    crewBack: 'Crew, back',
    wheelCap: 'Wheel, cap',
    hillFront: 'Hill climb, front',
    neckTagL: 'Neck tag L',
    otterChest: 'Otter, left chest',
    coachBack: 'Coach Finn, back',
    number7: 'Number 7',
    number12: 'Number 12',
    number23: 'Number 23',
    seedlingChest: 'Seedling, chest',
    plotSleeve: 'Plot line, sleeve',
    handsFront: 'Hand prints, youth front',
    neckTagXS: 'Neck tag XS',
    trumpetFront: 'Trumpet, front',
    jazzSleeve: 'Six till late, sleeve',
  },
};

/** What the shop of the demo day is called, and where it is. */
export const demoShop = { name: 'Bramble Lane Prints', address: '12 Bramble Lane' };

export const demoStock: DemoStockWords = {
  colour: 'Colour inks',
  white: 'White ink',
  powder: 'Hot-melt powder, medium',
  order: { white: '1 l, from the ink dealer', powder: '3 kg bag, medium grain' },
  usedRoll: 'Roll, 13 in, used up',
  run: (number) => `Earlier run ${number}`,
  tee: { style: 'T-shirt', colour: 'navy' },
  reasons: {
    crooked: 'pressed crooked',
    grainy: 'grainy, powder damp',
    lifted: 'lifted while peeling',
    banding: 'banding after a jam',
    scorched: 'scorched',
  },
};
