import { Text } from '@mantine/core';
import type { PartToDecide } from '../../../shared/contract/bench/index.ts';
import { display } from '../../../shared/trade/index.ts';
import { VerdictBadge } from '../../common/badges.tsx';
import { amountWords, bandWords, hasBand } from '../../common/measure/measure-words.ts';
import classes from './decide.module.css';

/** The figures as received that a part is decided by, each with its verdict. */
export function FigureList({ part }: { readonly part: PartToDecide }) {
  if (part.figures.length === 0) return null;
  return (
    <ul className={classes.figures} aria-label={`Figures as received: ${part.label}`}>
      {part.figures.map((figure) => (
        <li key={`${figure.feature} ${figure.cylinder}`} className={classes.figure}>
          <div>
            <Text>
              {figure.label}{' '}
              <span className={classes.value}>{display(figure.value, figure.unit)}</span>
            </Text>
            <Text size="sm" c="dimmed">
              {[
                figure.place,
                figure.uncertainty === 0 ? '' : `±${amountWords(figure.uncertainty, figure.unit)}`,
                hasBand(figure) ? bandWords(figure, figure.unit) : '',
              ]
                .filter(Boolean)
                .join(' · ')}
            </Text>
          </div>
          <VerdictBadge verdict={figure.verdict} />
        </li>
      ))}
    </ul>
  );
}
