import type { Column } from '../intake';
import { headingKey, tableKey } from '../intake/heading-key';
import type { Settings } from '../model';
import type { BookDraft } from './step';

export function editSettings(draft: BookDraft, fields: Partial<Omit<Settings, 'changed'>>): void {
  const { shop } = draft.settings;
  if (shop) Object.assign(shop, fields);
}

/**
 * Says which column a heading of a table is. It is remembered for tables of the same headings, where another heading that was said to
 * be that column no longer is; and for any table, if the heading means nothing by itself.
 * @param headings all headings of the table
 * @param isKnown whether the heading means something by itself
 */
export function mapHeading(
  draft: BookDraft,
  headings: readonly string[],
  heading: string,
  column: Column | 'none',
  isKnown: boolean,
): void {
  const { shop } = draft.settings;
  if (!shop) return;
  const key = headingKey(heading);
  const ofTable = tableKey(headings);
  const others = Object.entries(shop.tables[ofTable] ?? {}).filter(
    ([, said]) => said !== column || said === 'none',
  );
  shop.tables[ofTable] = { ...Object.fromEntries(others), [key]: column };
  if (!isKnown) shop.columns[key] = column;
}
