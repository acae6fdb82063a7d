import { LabelSettings } from '../../../shared/contract/parts/index.ts';
import { USUAL_SHEETS } from '../../../shared/work/parts/label-layout.ts';
import { labelSettings } from '../../schema/index.ts';
import type { ReadStore } from '../../store.ts';
import { shopOf } from '../office.ts';

/** How labels are laid out: what was set, and before that a usual sheet of the shop's paper. */
export function labelSettingsOf(store: ReadStore): LabelSettings {
  const row = store.select().from(labelSettings).get();
  if (row === undefined)
    return LabelSettings.parse({ sheet: USUAL_SHEETS[shopOf(store).paperSize] });
  const settings: unknown = JSON.parse(row.settings);
  return { ...LabelSettings.parse(settings), showPrice: row.showPrice };
}
