import { IconTags } from '@tabler/icons-react';
import type { RouteObject } from 'react-router';
import type { RoomPage } from '../../common/room-pages.tsx';
import { NewPriceFilePage } from './new-price-file-page.tsx';
import { PriceFilePage } from './price-file-page.tsx';
import { PriceFilesPage } from './price-files-page.tsx';

export const PRICE_LISTS_PAGE: RoomPage = {
  to: '/parts/price-files',
  label: 'Price lists',
  icon: IconTags,
  within: ['/parts/price-files/'],
};

/** Suppliers' price lists and the files that fill them. */
export const priceFileRoutes: RouteObject[] = [
  { path: 'parts/price-files', element: <PriceFilesPage /> },
  { path: 'parts/price-files/new', element: <NewPriceFilePage /> },
  { path: 'parts/price-files/:id', element: <PriceFilePage /> },
];
