import classes from './pictures.module.css';

/**
 * A cylinder seen from above and the side, with its three levels and the two axes on each. The spot to
 * be measured now is drawn strong; spots that have a reading carry a tick.
 */

const LEVELS = ['top', 'middle', 'bottom'] as const;
const HEIGHT_OF: Record<(typeof LEVELS)[number], number> = { top: 72, middle: 132, bottom: 192 };
/** Left of the middle: the levels are named on the right. */
const CENTRE = 86;
const RADIUS = 70;
const FLAT = 24;

export interface PictureProps {
  /** Spots that have a reading in this phase, without the cylinder: `top-along`. */
  readonly done: ReadonlySet<string>;
  /** The spot to be measured now. */
  readonly now: string | null;
}

/** Ends of a diameter across the ellipse: along the crankshaft from left to right, across it in depth. */
const ends = (level: number, axis: 'along' | 'across') =>
  axis === 'along'
    ? { x1: CENTRE - RADIUS, y1: level, x2: CENTRE + RADIUS, y2: level }
    : {
        x1: CENTRE - RADIUS * 0.5,
        y1: level + FLAT * 0.866,
        x2: CENTRE + RADIUS * 0.5,
        y2: level - FLAT * 0.866,
      };

export function BorePicture({ done, now }: PictureProps) {
  const words = now === null ? 'Every spot measured' : `Measure now: ${now.replace('-', ', ')}`;
  return (
    <svg
      viewBox="0 0 220 284"
      className={classes.picture}
      role="img"
      aria-label={`Bore. ${words}.`}
    >
      <path
        d={`M ${CENTRE - RADIUS} 36 V 222 A ${RADIUS} ${FLAT} 0 0 0 ${CENTRE + RADIUS} 222 V 36`}
        className={classes.body}
      />
      <ellipse cx={CENTRE} cy={36} rx={RADIUS} ry={FLAT} className={classes.opening} />
      {LEVELS.map((level) => (
        <g key={level}>
          <ellipse
            cx={CENTRE}
            cy={HEIGHT_OF[level]}
            rx={RADIUS}
            ry={FLAT}
            className={classes.ring}
            data-now={now?.startsWith(level)}
          />
          {(['along', 'across'] as const).map((axis) => (
            <Diameter
              key={axis}
              line={ends(HEIGHT_OF[level], axis)}
              now={now === `${level}-${axis}`}
              done={done.has(`${level}-${axis}`)}
            />
          ))}
          <text x={CENTRE + RADIUS + 12} y={HEIGHT_OF[level] + 4} className={classes.small}>
            {level}
          </text>
        </g>
      ))}
      <line x1={CENTRE - 84} x2={CENTRE + 84} y1={258} y2={258} className={classes.shaft} />
      <text x={CENTRE} y={277} textAnchor="middle" className={classes.small}>
        crankshaft
      </text>
    </svg>
  );
}

function Diameter({
  line,
  now,
  done,
}: {
  readonly line: { x1: number; y1: number; x2: number; y2: number };
  readonly now: boolean;
  readonly done: boolean;
}) {
  return (
    <g className={classes.spot} data-now={now} data-done={done}>
      <line {...line} />
      {now ? (
        <>
          <circle cx={line.x1} cy={line.y1} r={6} />
          <circle cx={line.x2} cy={line.y2} r={6} />
        </>
      ) : (
        done && <ReadingDot x={line.x1} y={line.y1} />
      )}
    </g>
  );
}

/** A dot where there is a reading: whether it is a good one, the list says beside it. */
export function ReadingDot({ x, y }: { readonly x: number; readonly y: number }) {
  return (
    <g className={classes.dot}>
      <circle cx={x} cy={y} r={5} />
    </g>
  );
}
