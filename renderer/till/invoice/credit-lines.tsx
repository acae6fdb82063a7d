import { Checkbox } from '@mantine/core';
import type { Invoice } from '../../../shared/contract/till/index.ts';
import { MoneyInput } from '../../common/money-input.tsx';
import { useMoney } from '../../common/shop.tsx';
import type { CreditChoice } from './credit-choice.ts';
import classes from './credit-lines.module.css';

interface CreditLinesProps {
  invoice: Invoice;
  choice: CreditChoice;
  left: (line: number) => number;
  onChange: (choice: CreditChoice) => void;
}

/** The lines of an invoice to choose from, each with how much of it is credited. */
export function CreditLines({ invoice, choice, left, onChange }: CreditLinesProps) {
  const money = useMoney();
  const rows = invoice.lines.map((line, place) => ({ line, place, rest: left(place) }));
  const first = rows.find(({ place }) => !invoice.wholeLines.includes(place))?.place;
  const change = (place: number, amount: number | null | undefined) => {
    const next = new Map(choice);
    if (amount === undefined) next.delete(place);
    else next.set(place, amount);
    onChange(next);
  };
  return (
    <ul className={classes.lines}>
      {rows.map(({ line, place, rest }) => {
        const gone = invoice.wholeLines.includes(place);
        const chosen = choice.has(place);
        return (
          <li key={place} className={classes.line}>
            <Checkbox
              label={line.description}
              description={
                gone
                  ? 'Credited whole'
                  : rest === line.amount
                    ? money(line.amount)
                    : `${money(rest)} left of ${money(line.amount)}`
              }
              disabled={gone}
              data-autofocus={place === first ? true : undefined}
              checked={chosen}
              onChange={(event) => change(place, event.currentTarget.checked ? null : undefined)}
            />
            {chosen && rest !== 0 && (
              <MoneyInput
                label={null}
                aria-label={`Credited of ${line.description}`}
                value={choice.get(place) ?? Math.abs(rest)}
                onChange={(amount) => change(place, amount ?? 0)}
              />
            )}
          </li>
        );
      })}
    </ul>
  );
}
