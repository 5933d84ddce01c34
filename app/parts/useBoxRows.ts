import { useVirtualizer } from '@tanstack/react-virtual';
import type { RefObject } from 'react';
import { FEW } from './few';
import { type TableRows, unmeasured } from './useTableRows';

/** The rows of a long list that are in view in a box that scrolls by itself. */
export function useBoxRows<Row extends HTMLElement>(
  box: RefObject<HTMLElement | null>,
  count: number,
  height: number,
): TableRows<Row> {
  const isLong = count > FEW;
  const virtual = useVirtualizer<HTMLElement, Row>({
    count: isLong ? count : 0,
    getScrollElement: () => box.current,
    estimateSize: () => height,
    overscan: 10,
  });
  if (!isLong) {
    return { shown: Array.from({ length: count }, (_, at) => at), before: 0, after: 0, measure: unmeasured };
  }
  const items = virtual.getVirtualItems();
  return {
    shown: items.map(({ index }) => index),
    before: items[0]?.start ?? 0,
    after: virtual.getTotalSize() - (items.at(-1)?.end ?? 0),
    measure: virtual.measureElement,
  };
}
