import { LabelSettings } from '../../../shared/contract/parts/index.ts';
import { labelSettings } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';

/** How labels are laid out: what was set, and for all else the defaults of the contract. */
export function labelSettingsOf(store: ReadStore): LabelSettings {
  const row = store.select().from(labelSettings).get();
  if (row === undefined) return LabelSettings.parse({});
  const settings: unknown = JSON.parse(row.settings);
  return { ...LabelSettings.parse(settings), showPrice: row.showPrice };
}
