import { Stack, Text, TextInput } from '@mantine/core';
import type { TestRuns } from '../../../shared/contract/bench/index.ts';
import { runDemands } from '../../../shared/work/bench/run-safety.ts';
import type { CheckOutcome } from '../../../shared/work/bench/test-run.ts';
import { FUEL_LABELS } from '../../../shared/work/bench/test-run-words.ts';
import { Card } from '../../common/card.tsx';
import { CheckChoice } from './check-choice.tsx';
import type { FindingsDraft } from './findings-draft.ts';
import classes from './test-run.module.css';

interface Check {
  key: 'stopSwitch' | 'interlocks' | 'governor' | 'chainBrake';
  label: string;
  hint: string;
}

const CHECKS: readonly Check[] = [
  {
    key: 'stopSwitch',
    label: 'Stop switch',
    hint: 'Tried with the engine running, at idle and at speed.',
  },
  {
    key: 'interlocks',
    label: 'Safety interlocks',
    hint: 'Seat, blade, clutch lever, neutral: each let go once, nobody in its way.',
  },
  {
    key: 'governor',
    label: 'Governor',
    hint: 'Picks up when loaded, settles without hunting.',
  },
  {
    key: 'chainBrake',
    label: 'Chain brake',
    hint: 'Stops the chain by the hand guard, at speed; the chain stands still at idle.',
  },
];

const FUEL_OUTCOMES: readonly CheckOutcome[] = ['works', 'fails', 'not-tried'];

/** What keeps the user safe, as far as this kind of machine has it. */
export function SafetyChecks({
  state: { machine, cycle },
  draft,
  faultAt,
  onChange,
}: {
  readonly state: Pick<TestRuns, 'machine' | 'cycle'>;
  readonly draft: FindingsDraft;
  readonly faultAt: (path: string) => string | undefined;
  readonly onChange: (part: Partial<FindingsDraft>) => void;
}) {
  const demands = runDemands(machine, cycle);
  const asked = CHECKS.filter(({ key }) => demands[key] !== 'none');
  const lacks = asked.some(({ key }) => demands[key] === 'ask' && draft[key] === 'not-fitted');
  return (
    <Card title="Does it stop, and does it guard?">
      <Stack gap="sm">
        {asked.map(({ key, label, hint }) => (
          <CheckChoice
            key={key}
            label={label}
            hint={hint}
            value={draft[key]}
            onChange={(outcome) => onChange({ [key]: outcome })}
          />
        ))}
        <CheckChoice
          label="Fuel system"
          hint="Tank, cap, tap, hoses and carburetor, tilted and running: no drop, no wet spot."
          value={draft.fuelTight}
          outcomes={FUEL_OUTCOMES}
          labels={FUEL_LABELS}
          onChange={(fuelTight) => onChange({ fuelTight })}
        />
        {demands.bladeStop !== null && (
          <div className={classes.check}>
            <div>
              <Text fw={600} id="blade-stop">
                Blade stop time
              </Text>
              <Text size="sm" c="dimmed">
                From full speed, control let go, until the blade stands: {demands.bladeStop} s at
                most, or less where the maker says so. Watch it from the side.
              </Text>
            </div>
            <TextInput
              aria-labelledby="blade-stop"
              rightSection={<Text size="sm">s</Text>}
              value={draft.bladeStop}
              onChange={(event) => onChange({ bladeStop: event.currentTarget.value })}
              error={faultAt('bladeStop')}
              inputMode="decimal"
              autoComplete="off"
              maxLength={10}
              w="9.5rem"
              classNames={{ input: classes.figure }}
            />
          </div>
        )}
        {lacks && (
          <TextInput
            label="Why it is not fitted"
            description="Such a machine may be built without it. It is printed on the work order."
            value={draft.notFittedWhy}
            onChange={(event) => onChange({ notFittedWhy: event.currentTarget.value })}
            error={faultAt('notFittedWhy')}
            maxLength={200}
            size="md"
          />
        )}
      </Stack>
    </Card>
  );
}
