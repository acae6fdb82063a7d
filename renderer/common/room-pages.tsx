import type { TablerIcon } from '@tabler/icons-react';
import { Link, Outlet, useLocation } from 'react-router';
import { PageStrip } from './page-strip.tsx';
import classes from './room-pages.module.css';

interface Place {
  to: string;
  label: string;
  /** Beginnings of the addresses of pages that belong to this one: `/part/`. */
  within?: readonly string[];
}

export interface RoomPage extends Place {
  icon: TablerIcon;
  /** Several pages under one name; `to` is the address of the first. */
  pages?: readonly Place[];
}

/** The way between the pages of a room, above the page that is open. */
export function RoomPages({ label, pages }: { label: string; pages: readonly RoomPage[] }) {
  const { pathname } = useLocation();
  const open = pages.find((page) => currentness(page, pathname) !== undefined);
  return (
    <>
      <nav aria-label={label} className={classes.pages}>
        {pages.map((page) => (
          <Link
            key={page.to}
            to={page.to}
            className={classes.page}
            aria-current={currentness(page, pathname)}
          >
            <page.icon size={20} stroke={1.7} aria-hidden className={classes.icon} />
            {page.label}
          </Link>
        ))}
      </nav>
      {open?.pages !== undefined && (
        <PageStrip
          label={open.label}
          links={open.pages.map((page) => ({ ...page, current: currentness(page, pathname) }))}
        />
      )}
      <Outlet />
    </>
  );
}

function currentness(
  page: Place & Pick<RoomPage, 'pages'>,
  pathname: string,
): 'page' | 'true' | undefined {
  if (pathname === page.to) return 'page';
  const inside =
    page.within?.some((start) => pathname.startsWith(start)) ||
    page.pages?.some((one) => currentness(one, pathname) !== undefined);
  return inside ? 'true' : undefined;
}
