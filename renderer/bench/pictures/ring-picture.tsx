import { type PictureProps, ReadingDot } from './bore-picture.tsx';
import classes from './pictures.module.css';

const RINGS = [
  { key: 'top-ring', y: 58, label: 'top' },
  { key: 'second-ring', y: 124, label: 'second' },
] as const;

/** The two compression rings, each squared in the bore with its gap to the front. */
export function RingPicture({ done, now }: PictureProps) {
  const words = now === null ? 'Both rings measured' : `Measure now: ${now.replace('-', ' ')}`;
  return (
    <svg
      viewBox="0 0 220 176"
      className={classes.picture}
      role="img"
      aria-label={`Rings. ${words}.`}
    >
      <path d="M 38 22 V 150 A 72 22 0 0 0 182 150 V 22" className={classes.body} />
      <ellipse cx={110} cy={22} rx={72} ry={18} className={classes.opening} />
      {RINGS.map(({ key, y, label }) => (
        <g key={key} className={classes.spot} data-now={now === key} data-done={done.has(key)}>
          <path d={`M 98 ${y + 21.6} A 72 22 0 1 1 122 ${y + 21.6}`} className={classes.hollow} />
          {now === key && (
            <path d={`M 110 ${y + 44} v -18 m -6 7 l 6 -8 l 6 8`} className={classes.pointer} />
          )}
          {done.has(key) && now !== key && <ReadingDot x={110} y={y + 21} />}
          <text x={188} y={y + 4} className={classes.small}>
            {label}
          </text>
        </g>
      ))}
    </svg>
  );
}
