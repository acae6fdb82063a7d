import {
  IconBuildingStore,
  IconCoins,
  IconDatabase,
  IconFileText,
  IconInfoCircle,
  IconTag,
  IconUsersGroup,
  type TablerIcon,
} from '@tabler/icons-react';
import { Link, Outlet, useLocation } from 'react-router';
import classes from './office.module.css';

const PAGES: readonly { to: string; label: string; icon: TablerIcon }[] = [
  { to: '/office', label: 'Shop', icon: IconBuildingStore },
  { to: '/office/prices', label: 'Prices and limits', icon: IconTag },
  { to: '/office/paper-texts', label: 'Words on papers', icon: IconFileText },
  { to: '/office/staff', label: 'Staff', icon: IconUsersGroup },
  { to: '/office/books', label: 'Books', icon: IconCoins },
  { to: '/office/store', label: 'Back-up and journal', icon: IconDatabase },
  { to: '/office/about', label: 'About', icon: IconInfoCircle },
];

export function OfficeFrame() {
  const { pathname } = useLocation();
  return (
    <>
      <nav aria-label="Office" className={classes.pages}>
        {PAGES.map((page) => (
          <Link
            key={page.to}
            to={page.to}
            className={classes.page}
            aria-current={isHere(page.to, pathname) ? 'page' : undefined}
          >
            <page.icon size={20} stroke={1.7} aria-hidden />
            {page.label}
          </Link>
        ))}
      </nav>
      <Outlet />
    </>
  );
}

/** The shop's own page is the room's address; a page with pages of its own is here on all of them. */
const isHere = (to: string, pathname: string): boolean =>
  pathname === to || (to !== '/office' && pathname.startsWith(`${to}/`));
