/**
 * Two sets of the Statistical Reference Datasets, linear regression: NIST, Information Technology Laboratory, StRD, "Norris" and
 * "Longley", with their certified values. Data and values are from memory; in exact rational arithmetic the data give every
 * digit of the values.
 */
interface Reference {
  readonly name: string;
  readonly columns: readonly (readonly number[])[];
  readonly measured: readonly number[];
  readonly certified: {
    readonly coefficients: readonly number[];
    readonly deviations: readonly number[];
    readonly scatter: number;
  };
}

const figures = (text: string): number[] => text.trim().split(/\s+/).map(Number);

const ones = (count: number): number[] => Array.from({ length: count }, () => 1);

const norris: Reference = {
  name: 'Norris',
  columns: [
    ones(36),
    figures(`
      0.2 337.4 118.2 884.6 10.1 226.5 666.3 996.3 448.6 777.0 558.2 0.4 0.6 775.5 666.9 338.0 447.5 11.6
      556.0 228.1 995.8 887.6 120.2 0.3 0.3 556.8 339.1 887.2 999.0 779.0 11.1 118.3 229.2 669.1 448.9 0.5`),
  ],
  measured: figures(`
    0.1 338.8 118.1 888.0 9.2 228.1 668.5 998.5 449.1 778.9 559.2 0.3 0.1 778.1 668.8 339.3 448.9 10.8
    557.7 228.3 998.0 888.8 119.6 0.3 0.6 557.6 339.3 888.0 998.5 778.9 10.2 117.6 228.9 668.4 449.2 0.2`),
  certified: {
    coefficients: [-0.262323073774029, 1.00211681802045],
    deviations: [0.232818234301152, 0.000429796848199937],
    scatter: 0.884796396144373,
  },
};

const longley: Reference = {
  name: 'Longley',
  columns: [
    ones(16),
    figures('83.0 88.5 88.2 89.5 96.2 98.1 99.0 100.0 101.2 104.6 108.4 110.8 112.6 114.2 115.7 116.9'),
    figures(`
      234289 259426 258054 284599 328975 346999 365385 363112
      397469 419180 442769 444546 482704 502601 518173 554894`),
    figures('2356 2325 3682 3351 2099 1932 1870 3578 2904 2822 2936 4681 3813 3931 4806 4007'),
    figures('1590 1456 1616 1650 3099 3594 3547 3350 3048 2857 2798 2637 2552 2514 2572 2827'),
    figures(`
      107608 108632 109773 110929 112075 113270 115094 116219
      117388 118734 120445 121950 123366 125368 127852 130081`),
    Array.from({ length: 16 }, (_, row) => 1947 + row),
  ],
  measured: figures(`
    60323 61122 60171 61187 63221 63639 64989 63761 66019 67857 68169 66513 68655 69564 69331 70551`),
  certified: {
    coefficients: [
      -3482258.63459582, 15.0618722713733, -0.035819179292591, -2.02022980381683, -1.03322686717359,
      -0.0511041056535807, 1829.15146461355,
    ],
    deviations: [
      890420.383607373, 84.9149257747669, 0.0334910077722432, 0.488399681651699, 0.214274163161675,
      0.22607320006937, 455.478499142212,
    ],
    scatter: 304.854073561965,
  },
};

export const references: readonly Reference[] = [norris, longley];
