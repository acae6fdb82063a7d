import type { TablerIcon } from '@tabler/icons-react';
import { Link, type To } from 'react-router';
import classes from './page-strip.module.css';

interface StripLink {
  to: To;
  label: string;
  icon?: TablerIcon;
  current: 'page' | 'true' | undefined;
}

interface PageStripProps {
  label: string;
  links: readonly StripLink[];
  /** Within a page instead of above it. */
  inset?: boolean;
}

/** The way between the faces of one thing: a bench's stretches of work, a room's subject, a list's choices. */
export function PageStrip({ label, links, inset = false }: PageStripProps) {
  return (
    <nav aria-label={label} className={classes.strip} data-inset={inset}>
      {links.map(({ to, label: name, icon: Icon, current }) => (
        <Link key={name} to={to} className={classes.link} aria-current={current}>
          {Icon !== undefined && <Icon size={20} stroke={1.7} aria-hidden />}
          {name}
        </Link>
      ))}
    </nav>
  );
}
