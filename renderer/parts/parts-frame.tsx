import {
  IconBarcode,
  IconChartBar,
  IconChecklist,
  IconClipboardList,
  IconPackages,
} from '@tabler/icons-react';
import { type RoomPage, RoomPages } from '../common/room-pages.tsx';
import { BUYING_PAGES } from './buying/routes.tsx';
import { PRICE_LISTS_PAGE } from './price-files/routes.tsx';

/** One page a subject; each has its line here and its route in routes.tsx. */
const PAGES: readonly RoomPage[] = [
  { to: '/parts', label: 'Shelf', icon: IconPackages, within: ['/part/'] },
  { to: '/parts/jobs', label: 'Jobs and their parts', icon: IconClipboardList },
  BUYING_PAGES,
  PRICE_LISTS_PAGE,
  {
    to: '/parts/counts',
    label: 'Counting',
    icon: IconChecklist,
    pages: [
      { to: '/parts/counts', label: 'Bins', within: ['/parts/count/'] },
      { to: '/parts/put-right', label: 'To put right' },
    ],
  },
  { to: '/parts/labels', label: 'Labels', icon: IconBarcode },
  { to: '/parts/reports', label: 'Reports', icon: IconChartBar },
];

export const PartsFrame = () => <RoomPages label="Parts" pages={PAGES} />;
