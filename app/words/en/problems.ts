import type {
  AmountProblem,
  DateProblem,
  DurationProblem,
  HoursProblem,
  LengthProblem,
  PriceProblem,
  ShareProblem,
  TemperatureProblem,
} from '../../../src/units';

export const lengthProblems: Record<LengthProblem, string> = {
  empty: 'Type a length, such as 89 mm or 3 1/2 in.',
  unreadable:
    'This is not a length. Type a number with or without a unit, such as 89 mm, 8.9 cm or 3 1/2 in.',
  'not-positive': 'A length must be above zero.',
  'too-long': 'This is longer than any film. Check the unit.',
};

export const moneyProblems: Record<PriceProblem, string> = {
  empty: 'Type an amount, 0 if it costs nothing.',
  unreadable: 'This is not an amount. Type figures only, such as 8.40.',
  negative: 'A price cannot be below zero.',
  'too-much': 'This is more than any film costs. Check the figures.',
  'other-currency':
    'That is another currency than this shop’s. Nothing is converted here: work it out and type it in the shop’s own.',
};

/** For rates that may be left out, but not be nothing. */
export const rateProblems = {
  ...moneyProblems,
  unreadable:
    'This is not a price. Type figures with or without what they are for, such as 150 or 0.15 / ml.',
  'too-much': 'This is more than anything costs. Check the figures and what they are for.',
  zero: 'At zero this would vanish from every cost. Leave the field empty to leave it out; the cost sheet then says so.',
} satisfies Record<PriceProblem | 'zero', string>;

export const shareProblems = {
  empty: 'Type a percentage, 0 for none.',
  unreadable: 'This is not a percentage. Type a number such as 2.5.',
  negative: 'A percentage cannot be below zero here.',
  'too-much': 'This percentage is too high for what it is of.',
} satisfies Record<ShareProblem, string>;

export const amountProblems = {
  empty: 'Type an amount, such as 6 ml or 100 g; 0 for none.',
  unreadable: 'This is not an amount. Type a number with or without a unit, such as 6 ml or 100 g.',
  negative: 'An amount cannot be below zero.',
  'too-much': 'No shop keeps as much. Check the unit.',
} satisfies Record<AmountProblem, string>;

export const dateProblems: Record<DateProblem, string> = {
  empty: 'There is no date.',
  unreadable: 'This is not a date. Write it as 2026-11-27 or 27 Nov 2026.',
  'no-such-day': 'There is no such day in the calendar.',
  ambiguous: 'This could be two different days. Say below whether the day or the month comes first.',
};

export const temperatureProblems = {
  empty: 'Type a temperature, such as 160 C or 320 F.',
  unreadable: 'This is not a temperature. Type a number with or without C or F.',
  impossible: 'No press or oven gets there. Check the figure.',
} satisfies Record<TemperatureProblem, string>;

export const hoursProblems: Record<HoursProblem, string> = {
  unreadable: 'Write hours such as 8:00–12:00, 12:30–17:00.',
  'ends-first': 'These hours end before they begin. Write the earlier time first, such as 8:00–17:00.',
  overlap: 'Two of these hours have a time in common. Let each begin when the one before is over.',
};

export const durationProblems = {
  empty: 'Type a time, such as 15 s or 2.5 min.',
  unreadable: 'This is not a length of time. Type a number with or without s or min.',
  'too-long': 'That is longer than a day. Check the figure.',
} satisfies Record<DurationProblem, string>;
