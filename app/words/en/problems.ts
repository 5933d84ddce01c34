import type {
  DateProblem,
  DurationProblem,
  LengthProblem,
  MoneyProblem,
  TemperatureProblem,
} from '../../../src/units';

export const lengthProblems: Record<LengthProblem, string> = {
  empty: 'Type a length, such as 89 mm or 3 1/2 in.',
  unreadable:
    'This is not a length. Type a number with or without a unit, such as 89 mm, 8.9 cm or 3 1/2 in.',
  'not-positive': 'A length must be above zero.',
  'too-long': 'This is longer than any film. Check the unit.',
};

export const moneyProblems: Record<MoneyProblem, string> = {
  empty: 'Type an amount, 0 if it costs nothing.',
  unreadable: 'This is not an amount. Type figures only, such as 8.40.',
  negative: 'A price cannot be below zero.',
  'too-much': 'This is more than any film costs. Check the figures.',
};

export const dateProblems: Record<DateProblem, string> = {
  empty: 'There is no date.',
  unreadable: 'This is not a date. Write it as 2026-11-27.',
  'no-such-day': 'There is no such day in the calendar.',
  ambiguous: 'This could be two different days. Say below whether the day or the month comes first.',
};

export const temperatureProblems = {
  empty: 'Type a temperature, such as 160 C or 320 F.',
  unreadable: 'This is not a temperature. Type a number with or without C or F.',
  impossible: 'No press or oven gets there. Check the figure.',
} satisfies Record<TemperatureProblem, string>;

export const durationProblems = {
  empty: 'Type a time, such as 15 s or 2.5 min.',
  unreadable: 'This is not a length of time. Type a number with or without s or min.',
  'too-long': 'That is longer than a day. Check the figure.',
} satisfies Record<DurationProblem, string>;
