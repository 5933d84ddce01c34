import type { MachineKind } from '../../../src/pressing';

/** What machines and people are called that the shop has not named. */
export const numbered: Readonly<Record<MachineKind, (number: number) => string>> = {
  printer: (number) => `Printer ${number}`,
  press: (number) => `Press ${number}`,
  oven: (number) => `Oven ${number}`,
  line: (number) => `Line ${number}`,
  person: (number) => `Person ${number}`,
};
