import { tintOf } from './tints';

/** An order's code on its tint. */
export function OrderCode({ code, tint }: { code: string; tint: number }) {
  return (
    <span className="code" style={{ backgroundColor: tintOf(tint) }}>
      {code}
    </span>
  );
}
