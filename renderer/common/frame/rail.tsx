import { Link, useLocation } from 'react-router';
import { useShop } from '../shop.tsx';
import classes from './frame.module.css';
import { belongsTo, RAIL } from './rooms.ts';
import { Sign } from './sign.tsx';

/** The way through the program, on the left of every page. */
export function Rail() {
  const { pathname } = useLocation();
  const shop = useShop();
  return (
    <nav className={classes.rail} aria-label="Rooms">
      <div className={classes.brand}>
        <Sign size={34} />
        <span className={classes.brandWords}>
          <span className={classes.brandName}>Tappet</span>
          <span className={classes.shopName}>{shop.name}</span>
        </span>
      </div>
      {RAIL.map((group) => (
        <ul key={group.name} className={classes.group} aria-label={group.name}>
          {group.entries.map((entry) => {
            const here = belongsTo(entry, pathname);
            return (
              <li key={entry.to}>
                <Link
                  to={entry.to}
                  className={classes.entry}
                  aria-current={here ? 'page' : undefined}
                >
                  <entry.icon size={22} stroke={1.7} aria-hidden />
                  <span>{entry.label}</span>
                </Link>
              </li>
            );
          })}
        </ul>
      ))}
    </nav>
  );
}
