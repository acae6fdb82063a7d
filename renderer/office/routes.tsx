import type { RouteObject } from 'react-router';
import { AboutPage } from './about-page.tsx';
import { BringBackPage } from './back-ups/bring-back-page.tsx';
import { booksRoutes } from './books/routes.tsx';
import { OfficeFrame } from './office-frame.tsx';
import { PaperTextsPage } from './paper-texts-page.tsx';
import { PricesPage } from './prices/prices-page.tsx';
import { ShopPage } from './shop-page.tsx';
import { StaffPage } from './staff-page.tsx';
import { StorePage } from './store-page.tsx';

export const officeRoutes: RouteObject[] = [
  {
    path: 'office',
    element: <OfficeFrame />,
    children: [
      { index: true, element: <ShopPage /> },
      { path: 'paper-texts', element: <PaperTextsPage /> },
      { path: 'prices', element: <PricesPage /> },
      { path: 'staff', element: <StaffPage /> },
      { path: 'store', element: <StorePage /> },
      { path: 'store/bring-back', element: <BringBackPage /> },
      booksRoutes,
      { path: 'about', element: <AboutPage /> },
    ],
  },
];
