import { billedParts } from './billed-parts.ts';
import { cores } from './cores.ts';
import { stockCounts } from './counts.ts';
import { setFits } from './fits.ts';
import { jobsParts } from './job-parts.ts';
import { kits } from './kits.ts';
import { labels } from './labels.ts';
import { move, putRight } from './move.ts';
import { numbers } from './numbers.ts';
import { orders } from './orders.ts';
import { shelf } from './part.ts';
import { partPhotos } from './photos.ts';
import { suppliersFiles } from './price-files/index.ts';
import { reprice } from './pricing.ts';
import { receiving } from './receiving.ts';
import { stockReports } from './reports/index.ts';
import { standing } from './standing.ts';
import { suggestions } from './suggestions.ts';
import { suppliers } from './suppliers.ts';

export const parts = {
  ...shelf,
  reprice,
  move,
  putRight,
  ...numbers,
  setFits,
  ...kits,
  ...partPhotos,
  ...standing,
  ...jobsParts,
  ...billedParts,
  ...suppliers,
  ...orders,
  ...receiving,
  suggestions,
  ...cores,
  ...suppliersFiles,
  ...stockCounts,
  ...labels,
  ...stockReports,
};
