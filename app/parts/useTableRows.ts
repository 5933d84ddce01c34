import { useWindowVirtualizer } from '@tanstack/react-virtual';
import { type RefObject, useLayoutEffect, useState } from 'react';
import { FEW } from './few';

export interface TableRows<Row extends Element = HTMLTableRowElement> {
  /** Rows in view, by their index. */
  readonly shown: readonly number[];
  /** Room to keep above and below them, in pixels. */
  readonly before: number;
  readonly after: number;
  /** Measures a row; it carries its index as `data-index`. */
  readonly measure: (row: Row | null) => void;
}

export const unmeasured = () => undefined;

/** The rows of a long table that are in view; the page scrolls, and the table keeps its shape for readers. */
export function useTableRows(
  table: RefObject<HTMLTableElement | null>,
  count: number,
  height: number,
): TableRows {
  const [top, setTop] = useState(0);
  // What stands above a table changes its height: read the place anew with every drawing.
  useLayoutEffect(() => {
    const place = table.current;
    if (place) setTop(Math.round(place.getBoundingClientRect().top + scrollY));
  });
  const isLong = count > FEW;
  const virtual = useWindowVirtualizer({
    count: isLong ? count : 0,
    estimateSize: () => height,
    overscan: 10,
    scrollMargin: top,
  });
  if (!isLong)
    return {
      shown: Array.from({ length: count }, (_, index) => index),
      before: 0,
      after: 0,
      measure: unmeasured,
    };
  const items = virtual.getVirtualItems();
  const [first] = items;
  const last = items.at(-1);
  return {
    shown: items.map(({ index }) => index),
    before: first ? first.start - virtual.options.scrollMargin : 0,
    after: last ? virtual.getTotalSize() - (last.end - virtual.options.scrollMargin) : 0,
    measure: virtual.measureElement,
  };
}
