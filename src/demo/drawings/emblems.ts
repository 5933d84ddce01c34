import { boards } from './boards';
import { arcLettering, lettering } from './lettering';
import { ink } from './palette';
import type { Drawing, Pen } from './pen';
import { around, box, disc, line, mirrored, onCircle, oval, polygon, polyline, ring, star } from './shapes';

/** A round badge: a ring, words along it, and a motif in the middle. */
function badge(
  colours: { ring: string; words: string; ground: string },
  [top, bottom]: [string, string],
  motif: (pen: Pen) => void,
): Drawing {
  return {
    ...boards.badge,
    paint(pen) {
      disc(pen, colours.ground, 500, 500, 490);
      ring(pen, colours.ring, 500, 500, 500, 34);
      ring(pen, colours.ring, 500, 500, 322, 12);
      const style = { size: 118, colour: colours.words, tracking: 0.06 };
      arcLettering(pen, top, { x: 500, y: 500, radius: 352, side: 'top', widest: 2.9 }, style);
      arcLettering(pen, bottom, { x: 500, y: 500, radius: 440, side: 'bottom', widest: 1.7 }, style);
      motif(pen);
    },
  };
}

function oar(pen: Pen, shaft: string, blade: string): void {
  pen.save();
  pen.translate(500, 500);
  pen.rotate(Math.PI / 4.4);
  line(pen, shaft, 24, () => {
    pen.moveTo(0, 250);
    pen.lineTo(0, -120);
  });
  oval(pen, blade, 0, -190, 46, 96);
  line(pen, shaft, 10, () => {
    pen.moveTo(0, -118);
    pen.lineTo(0, -250);
  });
  pen.restore();
}

export const crossedOars: Drawing = badge(
  { ring: ink.night, words: ink.night, ground: ink.mist },
  ['HARBOUR ROWING', 'EST. 1962'],
  (pen) => {
    mirrored(pen, 500, () => oar(pen, ink.night, ink.teal));
    for (const [index, colour] of [ink.teal, ink.sea].entries()) {
      line(pen, colour, 18, () => {
        const y = 690 + index * 44;
        pen.moveTo(340, y);
        pen.quadraticCurveTo(400, y - 44, 460, y);
        pen.quadraticCurveTo(520, y + 44, 580, y);
        pen.quadraticCurveTo(620, y - 30, 660, y);
      });
    }
  },
);

/** A row of waves under a boat of eight. */
export const rowingEight: Drawing = {
  ...boards.rowingEight,
  paint(pen) {
    pen.translate(0, -55);
    lettering(pen, 'ROW THE BAY', 700, 190, 1390, { size: 260, colour: ink.night, tracking: 0.02 });
    polygon(pen, ink.brick, [
      [0, 330],
      [1400, 330],
      [1250, 420],
      [150, 420],
    ]);
    for (let seat = 0; seat < 8; seat += 1) {
      const x = 260 + seat * 125;
      disc(pen, ink.night, x, 270, 30);
      polyline(pen, ink.night, 14, [
        [x, 310],
        [x + 60, 350],
        [x - 40, 500],
      ]);
    }
    for (let wave = 0; wave < 2; wave += 1) {
      line(pen, wave === 0 ? ink.teal : ink.sea, 26, () => {
        const y = 530 + wave * 60;
        pen.moveTo(13, y);
        for (let part = 0; part < 10; part += 1) {
          pen.quadraticCurveTo(
            13 + part * 137.4 + 68.7,
            y + (part % 2 === 0 ? -46 : 46),
            13 + (part + 1) * 137.4,
            y,
          );
        }
      });
    }
  },
};

function ear(pen: Pen, colour: string): void {
  line(pen, colour, 14, () => {
    pen.moveTo(500, 730);
    pen.quadraticCurveTo(440, 540, 330, 400);
  });
  for (let grain = 0; grain < 5; grain += 1) {
    const [x, y] = [340 + grain * 28, 410 + grain * 52];
    oval(pen, colour, x - 34, y + 8, 16, 40, -0.2);
    oval(pen, colour, x + 30, y - 26, 16, 40, 0.9);
  }
}

export const bakery: Drawing = badge(
  { ring: ink.bark, words: ink.bark, ground: ink.cream },
  ['CORNER OVEN', 'BREAD & BUNS'],
  (pen) => {
    mirrored(pen, 500, () => ear(pen, ink.amber));
    oval(pen, ink.crust, 500, 560, 150, 108);
    for (const x of [420, 490, 560]) {
      polyline(pen, ink.cream, 16, [
        [x - 20, 610],
        [x + 30, 520],
      ]);
    }
  },
);

/** A loaf with its name beside it, for an apron. */
export const loafLine: Drawing = {
  ...boards.loafLine,
  paint(pen) {
    oval(pen, ink.crust, 210, 210, 210, 210);
    oval(pen, ink.straw, 210, 190, 160, 140);
    for (const x of [110, 190, 270]) {
      polyline(pen, ink.rust, 22, [
        [x, 290],
        [x + 60, 120],
      ]);
    }
    lettering(pen, 'Baked at four,', 970, 170, 1050, { size: 190, colour: ink.bark });
    lettering(pen, 'gone by noon', 970, 390, 1060, { size: 190, colour: ink.ember });
  },
};

export const coffeeCup: Drawing = {
  ...boards.coffeeCup,
  paint(pen) {
    for (const [index, x] of [300, 420, 540].entries()) {
      line(pen, ink.heather, 34, () => {
        pen.moveTo(x, 330);
        pen.bezierCurveTo(x - 90, 250, x + 90, 150, x, index === 1 ? 17 : 60);
      });
    }
    line(pen, ink.plum, 56, () => pen.arc(690, 540, 180, -Math.PI / 2, Math.PI / 2));
    polygon(pen, ink.plum, [
      [90, 380],
      [750, 380],
      [650, 790],
      [190, 790],
    ]);
    box(pen, ink.blush, 90, 380, 660, 60);
    oval(pen, ink.plum, 420, 800, 420, 34);
    lettering(pen, 'MILL LANE', 450, 1020, 890, { size: 210, colour: ink.plum, tracking: 0.04 });
  },
};

export const oneMoreCup: Drawing = {
  ...boards.oneMoreCup,
  paint(pen) {
    pen.translate(5, -84);
    lettering(pen, 'just one more cup', 600, 190, 1190, { size: 180, colour: ink.plum });
    line(pen, ink.blush, 30, () => {
      pen.moveTo(15, 260);
      pen.quadraticCurveTo(600, 200, 1185, 270);
    });
  },
};

export const fairStar: Drawing = {
  ...boards.fairStar,
  paint(pen) {
    star(pen, ink.ember, 500, 500, 500, 330, 12);
    disc(pen, ink.straw, 500, 500, 300);
    for (const [index, angle] of around(12).entries()) {
      const [x, y] = onCircle(500, 500, 262, angle);
      disc(pen, index % 2 === 0 ? ink.brick : ink.teal, x, y, 17);
    }
    lettering(pen, 'STREET', 500, 500, 430, { size: 150, colour: ink.brick });
    lettering(pen, 'FAIR', 500, 630, 400, { size: 150, colour: ink.teal });
  },
};

/** Bunting with a pennant for each letter. */
export const bunting: Drawing = {
  ...boards.bunting,
  paint(pen) {
    pen.translate(0, -13);
    const inks = [ink.brick, ink.amber, ink.teal, ink.ember, ink.moss, ink.indigo, ink.plum, ink.sea];
    line(pen, ink.night, 14, () => {
      pen.moveTo(7, 20);
      pen.quadraticCurveTo(800, 130, 1593, 20);
    });
    for (const [index, letter] of [...'ALL COME'].entries()) {
      const x = 20 + index * 196;
      const y = 20 + 55 * Math.sin((Math.PI * (index + 0.5)) / 8);
      polygon(pen, inks[index] ?? ink.brick, [
        [x, y],
        [x + 176, y],
        [x + 88, y + 344],
      ]);
      if (letter !== ' ') lettering(pen, letter, x + 88, y + 140, 150, { size: 150, colour: ink.cream });
    }
  },
};

/** A wheel with spokes; every second one is thin, as real artwork has thin lines. */
export const wheel: Drawing = {
  ...boards.wheel,
  paint(pen) {
    ring(pen, ink.night, 500, 500, 500, 66);
    ring(pen, ink.amber, 500, 500, 424, 20);
    for (const [index, angle] of around(24).entries()) {
      const [x, y] = onCircle(500, 500, 415, angle);
      polyline(pen, ink.indigo, index % 2 === 0 ? 10 : 4, [
        [500, 500],
        [x, y],
      ]);
    }
    disc(pen, ink.night, 500, 500, 96);
    lettering(pen, 'NC', 500, 535, 160, { size: 110, colour: ink.amber });
  },
};

export const hillClimb: Drawing = {
  ...boards.hillClimb,
  paint(pen) {
    disc(pen, ink.amber, 1130, 260, 210);
    polygon(pen, ink.indigo, [
      [0, 640],
      [420, 120],
      [860, 640],
    ]);
    polygon(pen, ink.teal, [
      [380, 640],
      [980, 0],
      [1500, 640],
    ]);
    polyline(pen, ink.cream, 22, [
      [560, 620],
      [760, 500],
      [700, 400],
      [900, 300],
      [880, 200],
    ]);
    lettering(pen, 'NORTHGATE HILL CLIMB', 750, 860, 1490, { size: 230, colour: ink.night, tracking: 0.01 });
  },
};

export const otter: Drawing = badge(
  { ring: ink.teal, words: ink.cream, ground: ink.night },
  ['OTTERS SWIM TEAM', 'LANE FOUR'],
  (pen) => {
    oval(pen, ink.crust, 500, 500, 150, 130);
    mirrored(pen, 500, () => {
      disc(pen, ink.crust, 390, 400, 44);
      disc(pen, ink.bark, 440, 470, 20);
      polyline(pen, ink.cream, 8, [
        [430, 560],
        [330, 540],
      ]);
      polyline(pen, ink.cream, 8, [
        [430, 580],
        [330, 590],
      ]);
    });
    oval(pen, ink.straw, 500, 560, 82, 58);
    oval(pen, ink.bark, 500, 530, 34, 24);
    for (const y of [680, 730]) {
      line(pen, ink.sea, 20, () => {
        pen.moveTo(330, y);
        pen.quadraticCurveTo(415, y - 44, 500, y);
        pen.quadraticCurveTo(585, y + 44, 670, y);
      });
    }
  },
);

export const seedling: Drawing = {
  ...boards.seedling,
  paint(pen) {
    pen.translate(0, -9);
    line(pen, ink.moss, 34, () => {
      pen.moveTo(400, 640);
      pen.quadraticCurveTo(390, 440, 400, 250);
    });
    mirrored(pen, 400, () => {
      pen.beginPath();
      pen.moveTo(400, 330);
      pen.bezierCurveTo(330, 60, 120, 0, 0, 10);
      pen.bezierCurveTo(10, 180, 150, 360, 400, 330);
      pen.fillStyle = ink.leaf;
      pen.fill();
    });
    oval(pen, ink.bark, 400, 660, 260, 44);
    lettering(pen, 'GREEN THUMB', 400, 890, 800, { size: 190, colour: ink.moss });
  },
};

/** The class's own hand prints, one in each ink. */
export const handPrints: Drawing = {
  ...boards.handPrints,
  paint(pen) {
    pen.translate(-2, -35);
    const inks = [
      ink.ember,
      ink.teal,
      ink.plum,
      ink.moss,
      ink.amber,
      ink.indigo,
      ink.brick,
      ink.sea,
      ink.heather,
    ];
    inks.forEach((colour, index) => {
      pen.save();
      pen.translate(200 + (index % 3) * 400, 200 + Math.floor(index / 3) * 330);
      pen.rotate(((index * 37) % 50) / 100 - 0.25);
      oval(pen, colour, 0, 60, 80, 90);
      for (let finger = 0; finger < 4; finger += 1)
        oval(pen, colour, -72 + finger * 48, -70 - (finger % 3) * 14, 20, 66);
      oval(pen, colour, 106, 34, 20, 56, 0.9);
      pen.restore();
    });
    lettering(pen, 'WILLOW CLASS 4', 600, 1190, 1200, { size: 190, colour: ink.night });
  },
};

export const trumpet: Drawing = {
  ...boards.trumpet,
  paint(pen) {
    pen.translate(-1, -4);
    line(pen, ink.amber, 62, () => {
      pen.moveTo(40, 300);
      pen.lineTo(860, 300);
    });
    polygon(pen, ink.amber, [
      [820, 262],
      [1100, 130],
      [1100, 470],
      [820, 338],
    ]);
    oval(pen, ink.crust, 1100, 300, 40, 172);
    pen.save();
    pen.translate(480, 370);
    line(pen, ink.amber, 44, () => pen.ellipse(0, 0, 230, 92, 0, 0, 2 * Math.PI));
    pen.restore();
    for (const x of [400, 490, 580]) box(pen, ink.crust, x, 190, 46, 190, 20);
    for (const [x, y, size] of [
      [1180, 80, 56],
      [1240, 200, 40],
    ] as const) {
      oval(pen, ink.indigo, x, y, size * 0.8, size * 0.6, -0.4);
      polyline(pen, ink.indigo, 12, [
        [x + size * 0.7, y],
        [x + size * 0.7, y - 70],
      ]);
    }
    lettering(pen, 'JAZZ ON THE GREEN', 650, 780, 1300, { size: 240, colour: ink.indigo, tracking: 0.01 });
  },
};
