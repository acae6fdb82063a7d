import type { TablerIcon } from '@tabler/icons-react';
import { Link, Outlet, useLocation } from 'react-router';
import classes from './room-pages.module.css';

export interface RoomPage {
  to: string;
  label: string;
  icon: TablerIcon;
  /** Beginnings of the addresses of pages that belong to this one: `/part/`. */
  within?: readonly string[];
}

/** The way between the pages of a room, above the page that is open. */
export function RoomPages({ label, pages }: { label: string; pages: readonly RoomPage[] }) {
  const { pathname } = useLocation();
  const current = ({ to, within = [] }: RoomPage) => {
    if (pathname === to) return 'page';
    return within.some((start) => pathname.startsWith(start)) ? 'true' : undefined;
  };
  return (
    <>
      <nav aria-label={label} className={classes.pages}>
        {pages.map((page) => (
          <Link key={page.to} to={page.to} className={classes.page} aria-current={current(page)}>
            <page.icon size={20} stroke={1.7} aria-hidden />
            {page.label}
          </Link>
        ))}
      </nav>
      <Outlet />
    </>
  );
}
