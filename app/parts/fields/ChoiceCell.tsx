import { type Choosing, Select } from '../Select';

/** A choice of a few in a table. Its label is spoken; a column's heading shows it, or on a narrow screen what it is chosen to be. */
export const ChoiceCell = <Value extends string>({
  label,
  ...choosing
}: Choosing<Value> & { label: string }) => (
  <Select writes className="choice-cell" aria-label={label} {...choosing} />
);
