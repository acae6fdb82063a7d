import { Link, Outlet, useLocation } from 'react-router';
import classes from './books.module.css';

const PAGES = [
  { to: '/office/books', label: 'Owed to us' },
  { to: '/office/books/drawer', label: 'Drawer' },
  { to: '/office/books/reports', label: 'Reports' },
] as const;

/** The books of the till, a page each. */
export function BooksFrame() {
  const { pathname } = useLocation();
  return (
    <>
      <nav aria-label="Books" className={classes.pages}>
        {PAGES.map(({ to, label }) => (
          <Link
            key={to}
            to={to}
            className={classes.page}
            aria-current={pathname === to ? 'page' : undefined}
          >
            {label}
          </Link>
        ))}
      </nav>
      <Outlet />
    </>
  );
}
