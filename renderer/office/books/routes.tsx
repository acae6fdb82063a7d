import type { RouteObject } from 'react-router';
import { AccountPage } from './account-page.tsx';
import { BooksFrame } from './books-frame.tsx';
import { DrawerPage } from './drawer-page.tsx';
import { OwedPage } from './owed-page.tsx';
import { ReportsPage } from './reports-page.tsx';

export const booksRoutes: RouteObject = {
  path: 'books',
  element: <BooksFrame />,
  children: [
    { index: true, element: <OwedPage /> },
    { path: 'customer/:id', element: <AccountPage /> },
    { path: 'drawer', element: <DrawerPage /> },
    { path: 'reports', element: <ReportsPage /> },
  ],
};
