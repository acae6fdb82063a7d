import type { RouteObject } from 'react-router';
import { AccountPage } from './account-page.tsx';
import { DrawerPage } from './drawer-page.tsx';
import { OwedPage } from './owed-page.tsx';
import { ReportsPage } from './reports-page.tsx';

export const booksRoutes: RouteObject = {
  path: 'books',
  children: [
    { index: true, element: <OwedPage /> },
    { path: 'customer/:id', element: <AccountPage /> },
    { path: 'drawer', element: <DrawerPage /> },
    { path: 'reports', element: <ReportsPage /> },
  ],
};
