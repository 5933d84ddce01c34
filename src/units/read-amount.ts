const AMOUNT = /^([+-]?)(?:(\d+)[\s-]+)?(\d+)\s*[/⁄]\s*(\d+)$|^([+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+))$/;

/** The amount of `3 1/2`, `7/8`, `8,9`, `.5`; `null` where it is none. A single comma is a decimal comma. */
export function readAmount(text: string): number | null {
  const match = AMOUNT.exec(text);
  if (!match) return null;
  const [, sign, whole, over, under, decimal] = match;
  if (decimal !== undefined) return Number(decimal.replace(',', '.'));
  if (Number(under) === 0) return null;
  const amount = Number(whole ?? 0) + Number(over) / Number(under);
  return sign === '-' ? -amount : amount;
}
