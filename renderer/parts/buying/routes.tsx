import {
  IconBuildingWarehouse,
  IconRecycle,
  IconShoppingCart,
  IconTruckDelivery,
} from '@tabler/icons-react';
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

export const BUYING_PAGES: readonly RoomPage[] = [
  { to: '/parts/to-order', label: 'To order', icon: IconShoppingCart },
  {
    to: '/parts/orders',
    label: 'Orders',
    icon: IconTruckDelivery,
    within: ['/parts/order/', '/parts/orders/'],
  },
  { to: '/parts/suppliers', label: 'Suppliers', icon: IconBuildingWarehouse },
  { to: '/parts/cores', label: 'Cores', icon: IconRecycle },
];
