import type { Fastener } from '../../../shared/contract/specbook.ts';
import { type BoltSpot, boltRadius, boltSpots } from './bolt-layout.ts';
import classes from './bolt-picture.module.css';

/** How far one stage has gone round: bolts by their own numbers. */
export interface StageWalked {
  readonly next: number | null;
  readonly pulled: readonly number[];
}

/**
 * The bolts from above: the number on each bolt is its turn in the tightening order. With a stage that is
 * under way, the bolts pulled are ticked and the next one stands out; without, the first does.
 */
export function BoltPicture({
  fastener,
  stage = null,
}: {
  readonly fastener: Pick<Fastener, 'count' | 'pattern'>;
  readonly stage?: StageWalked | null;
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
      aria-label={`From above: ${fastener.count} bolts, each numbered in its turn.${stageWords(order, stage)}`}
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
        <g
          key={bolt}
          className={classes.bolt}
          data-first={stage === null ? turn === 1 : bolt === stage.next}
        >
          {bolt === stage?.next && (
            <circle cx={x} cy={y} r={radius + 5} className={classes.nextRing} />
          )}
          <polygon points={hexagon(x, y, radius)} />
          <text x={x} y={y + radius * 0.36} textAnchor="middle" fontSize={radius * 1.02}>
            {turn}
          </text>
          {stage?.pulled.includes(bolt) && (
            <g
              className={classes.pulled}
              transform={`translate(${x + radius * 0.75} ${y - radius * 0.75})`}
            >
              <circle r={radius * 0.5} />
              <polyline points={tick(radius * 0.5)} strokeLinecap="round" strokeLinejoin="round" />
            </g>
          )}
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

const tick = (size: number): string =>
  [
    [-0.45, 0.05],
    [-0.1, 0.4],
    [0.5, -0.35],
  ]
    .map(([x = 0, y = 0]) => `${x * size},${y * size}`)
    .join(' ');

function stageWords(order: readonly BoltSpot[], stage: StageWalked | null): string {
  if (stage === null) return '';
  const next = order.find(({ bolt }) => bolt === stage.next);
  const pulled = `${stage.pulled.length} pulled to this stage.`;
  return next === undefined ? ` ${pulled}` : ` Next is bolt ${next.turn}; ${pulled}`;
}
