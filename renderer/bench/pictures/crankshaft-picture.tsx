import { type PictureProps, ReadingDot } from './bore-picture.tsx';
import classes from './pictures.module.css';

const SIDES = [
  { key: 'flywheel', x: 42, label: 'flywheel side' },
  { key: 'output', x: 178, label: 'output side' },
] as const;

/** The crankshaft from the side, with a main journal left and right, each read in two directions. */
export function CrankshaftPicture({ done, now }: PictureProps) {
  const words =
    now === null
      ? 'Every direction measured'
      : `Measure now: ${now.replace('-', ' side, ')} direction`;
  return (
    <svg
      viewBox="0 0 220 200"
      className={classes.picture}
      role="img"
      aria-label={`Crankshaft. ${words}.`}
    >
      <path
        d="M 8 92 H 70 V 52 H 88 V 36 H 132 V 52 H 150 V 92 H 212 V 120 H 150 V 160 H 132 V 76 H 88 V 160 H 70 V 120 H 8 z"
        className={classes.body}
      />
      <line x1={2} x2={218} y1={106} y2={106} className={classes.shaft} />
      {SIDES.map(({ key, x, label }) => (
        <g key={key}>
          {(['first', 'second'] as const).map((direction) => {
            const spot = `${key}-${direction}`;
            // The second direction lies a quarter turn on: towards whoever looks.
            const line =
              direction === 'first'
                ? { x1: x, y1: 84, x2: x, y2: 128 }
                : { x1: x - 14, y1: 112, x2: x + 14, y2: 100 };
            return (
              <g
                key={spot}
                className={classes.spot}
                data-now={now === spot}
                data-done={done.has(spot)}
              >
                <line {...line} />
                {now === spot ? (
                  <>
                    <circle cx={line.x1} cy={line.y1} r={6} />
                    <circle cx={line.x2} cy={line.y2} r={6} />
                  </>
                ) : (
                  done.has(spot) && (
                    <ReadingDot
                      x={direction === 'first' ? x : x + 18}
                      y={direction === 'first' ? 78 : 138}
                    />
                  )
                )}
              </g>
            );
          })}
          <text x={x} y={182} textAnchor="middle" className={classes.small}>
            {label}
          </text>
        </g>
      ))}
    </svg>
  );
}
