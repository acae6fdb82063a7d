import type { Fastener } from '../../../shared/contract/specbook.ts';
import { boltRadius, boltSpots } from './bolt-layout.ts';
import classes from './bolt-picture.module.css';

/** The head from above: the number on each bolt is its turn in the tightening order. */
export function BoltPicture({
  fastener,
}: {
  readonly fastener: Pick<Fastener, 'count' | 'pattern'>;
}) {
  const spots = boltSpots(fastener);
  const radius = boltRadius(fastener);
  const order = spots.toSorted((a, b) => a.turn - b.turn);
  if (spots.length === 0) return null;
  return (
    <svg
      viewBox="0 0 220 208"
      className={classes.picture}
      role="img"
      aria-label={`Head from above with ${fastener.count} bolts, each numbered in its turn.`}
    >
      {fastener.pattern === 'cross' ? (
        <>
          <circle cx={110} cy={104} r={102} className={classes.body} />
          <circle cx={110} cy={104} r={44} className={classes.opening} />
        </>
      ) : (
        <rect x={2} y={18} width={216} height={172} rx={14} className={classes.body} />
      )}
      <polyline points={order.map(({ x, y }) => `${x},${y}`).join(' ')} className={classes.path} />
      {spots.map(({ bolt, turn, x, y }) => (
        <g key={bolt} className={classes.bolt} data-first={turn === 1}>
          <polygon points={hexagon(x, y, radius)} />
          <text x={x} y={y + radius * 0.36} textAnchor="middle" fontSize={radius * 1.02}>
            {turn}
          </text>
        </g>
      ))}
    </svg>
  );
}

const hexagon = (x: number, y: number, radius: number): string =>
  Array.from({ length: 6 }, (_, corner) => {
    const angle = (corner * Math.PI) / 3;
    return `${x + radius * Math.cos(angle)},${y + radius * Math.sin(angle)}`;
  }).join(' ');
