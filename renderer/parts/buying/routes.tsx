import { IconShoppingCart } from '@tabler/icons-react';
import type { RouteObject } from 'react-router';
import type { RoomPage } from '../../common/room-pages.tsx';
import { CoresPage } from './cores-page.tsx';
import { NewOrderPage } from './new-order-page.tsx';
import { OrderPage } from './order-page.tsx';
import { OrdersPage } from './orders-page.tsx';
import { SuppliersPage } from './suppliers-page.tsx';
import { ToOrderPage } from './to-order-page.tsx';

/** What the shop buys, and from whom. */
export const buyingRoutes: RouteObject[] = [
  { path: 'parts/to-order', element: <ToOrderPage /> },
  { path: 'parts/orders', element: <OrdersPage /> },
  { path: 'parts/orders/new', element: <NewOrderPage /> },
  { path: 'parts/order/:id', element: <OrderPage /> },
  { path: 'parts/suppliers', element: <SuppliersPage /> },
  { path: 'parts/cores', element: <CoresPage /> },
];

export const BUYING_PAGES: RoomPage = {
  to: '/parts/to-order',
  label: 'Buying',
  icon: IconShoppingCart,
  pages: [
    { to: '/parts/to-order', label: 'To order' },
    { to: '/parts/orders', label: 'Orders', within: ['/parts/order/', '/parts/orders/'] },
    { to: '/parts/suppliers', label: 'Suppliers' },
    { to: '/parts/cores', label: 'Cores' },
  ],
};
