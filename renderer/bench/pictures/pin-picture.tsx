import { type PictureProps, ReadingDot } from './bore-picture.tsx';
import classes from './pictures.module.css';

/** A crankpin seen from its end, with the two directions a quarter turn apart. */
export function PinPicture({ done, now }: PictureProps) {
  const words = now === null ? 'Both directions measured' : `Measure now: ${now} direction`;
  return (
    <svg
      viewBox="0 0 220 190"
      className={classes.picture}
      role="img"
      aria-label={`Crankpin. ${words}.`}
    >
      <path d="M 60 20 H 160 L 176 120 A 66 66 0 0 1 44 120 z" className={classes.body} />
      <circle cx={110} cy={82} r={50} className={classes.opening} />
      {(['first', 'second'] as const).map((direction) => {
        const line =
          direction === 'first'
            ? { x1: 110, y1: 32, x2: 110, y2: 132 }
            : { x1: 60, y1: 82, x2: 160, y2: 82 };
        return (
          <g
            key={direction}
            className={classes.spot}
            data-now={now === direction}
            data-done={done.has(direction)}
          >
            <line {...line} />
            {now === direction ? (
              <>
                <circle cx={line.x1} cy={line.y1} r={6} />
                <circle cx={line.x2} cy={line.y2} r={6} />
              </>
            ) : (
              done.has(direction) && <ReadingDot x={line.x1} y={line.y1} />
            )}
          </g>
        );
      })}
    </svg>
  );
}
