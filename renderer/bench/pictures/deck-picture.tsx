import type { PictureProps } from './bore-picture.tsx';
import classes from './pictures.module.css';

const CORNERS = [
  [34, 34],
  [186, 34],
  [186, 166],
  [34, 166],
] as const;

/** The six directions of a straightedge: four edges and two diagonals. */
const DIRECTIONS = [
  [34, 34, 186, 34],
  [34, 166, 186, 166],
  [34, 34, 34, 166],
  [186, 34, 186, 166],
  [34, 34, 186, 166],
  [186, 34, 34, 166],
] as const;

/** A sealing face from above, with the six directions in which the straightedge is laid. */
export function FacePicture({ now, face }: PictureProps & { readonly face: string }) {
  const words =
    now === null
      ? 'Measured'
      : 'Measure now: straightedge in six directions, along the four edges and both diagonals; note the worst';
  return (
    <svg
      viewBox="0 0 220 200"
      className={classes.picture}
      role="img"
      aria-label={`${face}. ${words}.`}
    >
      <rect x={14} y={14} width={192} height={172} rx={16} className={classes.body} />
      <circle cx={110} cy={100} r={54} className={classes.opening} />
      {CORNERS.map(([x, y]) => (
        <circle key={`${x} ${y}`} cx={x} cy={y} r={8} className={classes.opening} />
      ))}
      {DIRECTIONS.map(([x1, y1, x2, y2], index) => (
        <g key={`${x1} ${y1} ${x2} ${y2}`}>
          <line
            x1={x1}
            y1={y1}
            x2={x2}
            y2={y2}
            className={classes.straightedge}
            data-now={now !== null}
          />
          <text {...numberAt(x1, y1, x2, y2)} textAnchor="middle" className={classes.small}>
            {index + 1}
          </text>
        </g>
      ))}
    </svg>
  );
}

/** A direction's number: beside its line, towards the edge of the face. */
function numberAt(x1: number, y1: number, x2: number, y2: number): { x: number; y: number } {
  const [x, y] = [x1 + (x2 - x1) * 0.2, y1 + (y2 - y1) * 0.2];
  if (y1 === y2) return { x: (x1 + x2) / 2, y: y1 < 100 ? y1 - 6 : y1 + 16 };
  if (x1 === x2) return { x: x1 < 110 ? x1 - 9 : x1 + 9, y: 104 };
  return { x: x1 < x2 ? x + 12 : x - 12, y: y - 2 };
}
