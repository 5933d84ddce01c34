import { type ReactNode, useRef } from 'react';
import { useBoxRows } from './useBoxRows';

/** A list in a box that scrolls by itself, of which only the lines in view are in the page. */
export function BoxList<Item>({
  className,
  items,
  keyOf,
  height,
  children,
}: {
  className: string;
  items: readonly Item[];
  keyOf: (item: Item) => string | number;
  /** Of a line, about, in pixels. */
  height: number;
  children: (item: Item) => ReactNode;
}) {
  const box = useRef<HTMLUListElement>(null);
  const { shown, before, after, measure } = useBoxRows<HTMLLIElement>(box, items.length, height);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must scroll by keys
    <ul ref={box} className={className} tabIndex={0}>
      {before > 0 && <li aria-hidden style={{ height: before }} />}
      {shown.map((index) => {
        const item = items[index];
        return (
          item !== undefined && (
            <li
              key={keyOf(item)}
              ref={measure}
              data-index={index}
              aria-setsize={items.length}
              aria-posinset={index + 1}
            >
              {children(item)}
            </li>
          )
        );
      })}
      {after > 0 && <li aria-hidden style={{ height: after }} />}
    </ul>
  );
}
