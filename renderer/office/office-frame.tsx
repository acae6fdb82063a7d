import {
  IconBuildingStore,
  IconCoins,
  IconDatabase,
  IconFileText,
  IconInfoCircle,
  IconTag,
  IconUsersGroup,
} from '@tabler/icons-react';
import { type RoomPage, RoomPages } from '../common/room-pages.tsx';

const PAGES: readonly RoomPage[] = [
  { to: '/office', label: 'Shop', icon: IconBuildingStore },
  { to: '/office/prices', label: 'Prices and limits', icon: IconTag },
  { to: '/office/paper-texts', label: 'Words on papers', icon: IconFileText },
  { to: '/office/staff', label: 'Staff', icon: IconUsersGroup },
  {
    to: '/office/books',
    label: 'Books',
    icon: IconCoins,
    pages: [
      { to: '/office/books', label: 'Owed to us', within: ['/office/books/customer/'] },
      { to: '/office/books/drawer', label: 'Drawer' },
      { to: '/office/books/reports', label: 'Reports' },
    ],
  },
  {
    to: '/office/store',
    label: 'Back-up and journal',
    icon: IconDatabase,
    within: ['/office/store/'],
  },
  { to: '/office/about', label: 'About', icon: IconInfoCircle },
];

export const OfficeFrame = () => <RoomPages label="Office" pages={PAGES} />;
