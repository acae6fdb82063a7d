import { Checkbox, Radio, Stack, Text } from '@mantine/core';
import type { Estimate, EstimateOption } from '../../../shared/contract/till/index.ts';
import { useMoney } from '../../common/shop.tsx';
import classes from './option-choice.module.css';

interface OptionChoiceProps {
  estimate: Estimate;
  option: EstimateOption | null;
  onChange: (key: string) => void;
  error?: string | undefined;
}

/** Which of the options the customer takes. */
export function OptionChoice({ estimate, option, onChange, error }: OptionChoiceProps) {
  const money = useMoney();
  return (
    <Radio.Group label="Option taken" value={option?.key ?? null} onChange={onChange} error={error}>
      <Stack gap={6} mt={4}>
        {estimate.options.map(({ key, label, totals }) => (
          <Radio key={key} value={key} label={`${label}: ${money(totals.total)}`} />
        ))}
      </Stack>
    </Radio.Group>
  );
}

interface TakenLinesProps {
  option: EstimateOption;
  declined: readonly number[];
  onChange: (declined: number[]) => void;
  error?: string | undefined;
}

/** The lines of the option, each taken or declined. */
export function TakenLines({ option, declined, onChange, error }: TakenLinesProps) {
  const money = useMoney();
  const rows = option.lines.map((line, place) => ({ line, place }));
  return (
    <details className={classes.lines} open={declined.length > 0 || undefined}>
      <summary>
        {declined.length === 0
          ? `All ${rows.length} lines are taken; decline some…`
          : `Declined: ${declined.length} of ${rows.length} lines`}
      </summary>
      <Checkbox.Group
        aria-label="Lines that the customer takes"
        value={rows
          .filter(({ place }) => !declined.includes(place))
          .map(({ place }) => String(place))}
        onChange={(taken) =>
          onChange(rows.map(({ place }) => place).filter((place) => !taken.includes(String(place))))
        }
        error={error}
      >
        <Stack gap={6} mt="xs">
          {rows.map(({ line, place }) => (
            <Checkbox
              key={place}
              value={String(place)}
              label={
                <span data-declined={declined.includes(place)} className={classes.line}>
                  <span>
                    {line.description}
                    {declined.includes(place) && ' (declined)'}
                  </span>
                  <span>{money(line.amount)}</span>
                </span>
              }
              classNames={{ body: classes.body, labelWrapper: classes.label }}
            />
          ))}
        </Stack>
      </Checkbox.Group>
      <Text size="xs" c="dimmed" mt="xs">
        Declined work is kept and printed as declined.
      </Text>
    </details>
  );
}
