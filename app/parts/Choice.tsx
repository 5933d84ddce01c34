import { useId } from 'react';
import type { Writing } from './held';
import { type Choosing, Select } from './Select';

/** A choice of a few under its label. */
export function Choice<Value extends string>({
  label,
  ...choosing
}: Writing & Choosing<Value> & { label: string }) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <Select id={id} {...choosing} />
    </div>
  );
}
