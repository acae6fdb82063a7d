import { type PictureProps, ReadingDot } from './bore-picture.tsx';
import classes from './pictures.module.css';

/** The flywheel's rim with its magnet, and the coil above it standing on two legs. */
export function CoilPicture({ done, now }: PictureProps) {
  const words = now === null ? 'Both legs measured' : `Measure now: ${now.replace('-', ' ')}`;
  return (
    <svg
      viewBox="0 0 220 200"
      className={classes.picture}
      role="img"
      aria-label={`Coil. ${words}.`}
    >
      <path d="M 14 196 A 132 132 0 0 1 206 196" className={classes.body} />
      <path
        d="M 72 148 A 132 132 0 0 1 148 148 L 141 166 A 112 112 0 0 0 79 166 z"
        className={classes.magnet}
      />
      <text x={110} y={159} textAnchor="middle" className={classes.onMagnet}>
        magnet
      </text>
      <path d="M 58 42 H 162 V 132 H 132 V 76 H 88 V 132 H 58 z" className={classes.body} />
      <rect x={82} y={26} width={56} height={38} rx={6} className={classes.winding} />
      <text x={110} y={50} textAnchor="middle" className={classes.small}>
        coil
      </text>
      {(['leg-1', 'leg-2'] as const).map((leg, index) => {
        const x = index === 0 ? 58 : 132;
        return (
          <g key={leg} className={classes.spot} data-now={now === leg} data-done={done.has(leg)}>
            <rect x={x} y={132} width={30} height={9} className={classes.gap} />
            <text x={x + 15} y={116} textAnchor="middle" className={classes.number}>
              {index + 1}
            </text>
            {done.has(leg) && now !== leg && <ReadingDot x={index === 0 ? 44 : 176} y={136} />}
            {now === leg && (
              <path
                d={
                  index === 0
                    ? 'M 22 136 h 26 m -8 -7 l 9 7 l -9 7'
                    : 'M 198 136 h -26 m 8 -7 l -9 7 l 9 7'
                }
                className={classes.pointer}
              />
            )}
          </g>
        );
      })}
      <text x={110} y={190} textAnchor="middle" className={classes.small}>
        flywheel
      </text>
    </svg>
  );
}
