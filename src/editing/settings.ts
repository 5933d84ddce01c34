import type { Settings } from '../model';
import type { BookDraft } from './step';

export function editSettings(draft: BookDraft, fields: Partial<Omit<Settings, 'changed'>>): void {
  const { shop } = draft.settings;
  if (shop) Object.assign(shop, fields);
}
