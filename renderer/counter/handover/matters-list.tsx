import { Button, List, Stack, Text, TextInput } from '@mantine/core';
import { IconArrowRight } from '@tabler/icons-react';
import type { ReactNode } from 'react';
import { Link } from 'react-router';
import {
  type HandoverMatter,
  PASSABLE_MATTERS,
  type PassableMatter,
} from '../../../shared/work/counter/handover-matters.ts';
import { SettledMark } from '../../common/settled-mark.tsx';
import type { HandoverFaults } from './draft.ts';
import classes from './handover.module.css';

/** Where each matter is settled, below the job's own address. */
const PLACES: Record<HandoverMatter['key'], { page: string; label: string }> = {
  state: { page: 'bench', label: 'Go to the bench' },
  'hold-points': { page: 'bench/build', label: 'Go to the build' },
  overrides: { page: 'bench/build', label: 'See them' },
  'readings-missing': { page: 'bench', label: 'Measure' },
  'readings-outside': { page: 'bench', label: 'See them' },
  speeds: { page: 'bench/run', label: 'Go to the test run' },
  'parts-billed': { page: 'parts', label: 'Go to the parts' },
  'parts-issued': { page: 'parts', label: 'Go to the parts' },
  unpriced: { page: 'till', label: 'Set the price' },
  invoice: { page: 'till', label: 'Go to the till' },
  due: { page: 'till', label: 'Take the payment' },
};

const isPassable = (key: HandoverMatter['key']): key is PassableMatter =>
  PASSABLE_MATTERS.some((each) => each === key);

interface MattersListProps {
  matters: readonly HandoverMatter[];
  faults: HandoverFaults;
  reasons: Partial<Record<PassableMatter, string>>;
  onReason: (matter: PassableMatter, reason: string) => void;
  /** An action of this page in place of the way to another. */
  actions: Partial<Record<HandoverMatter['key'], ReactNode>>;
}

/** What is settled and what is not, each with the one press that settles it, or with why it is passed over. */
export function MattersList({ matters, faults, reasons, onReason, actions }: MattersListProps) {
  return (
    <ul className={classes.matters}>
      {matters.map(({ key, standing, says, items }) => (
        <li key={key} className={classes.matter} data-matter={key}>
          <SettledMark settled={standing === 'settled'} noted={standing === 'noted'} />
          <div className={classes.says}>
            <Text fw={standing === 'settled' ? 400 : 600}>{says}</Text>
            {items.length > 0 && (
              <List size="sm" className={classes.items}>
                {items.map((name) => (
                  <List.Item key={name}>{name}</List.Item>
                ))}
              </List>
            )}
            {standing === 'to-explain' && isPassable(key) && (
              <TextInput
                mt={4}
                label="Why it goes out with this"
                description="Leave it empty when it is settled first. It is printed on the work order."
                data-field={key}
                maxLength={500}
                value={reasons[key] ?? ''}
                onChange={(event) => onReason(key, event.currentTarget.value)}
                error={faults[key]}
                autoComplete="off"
              />
            )}
          </div>
          {standing !== 'settled' && (
            <Stack gap={4} align="flex-end">
              {actions[key] ?? (
                <Button
                  component={Link}
                  to={`../${PLACES[key].page}`}
                  relative="path"
                  variant="default"
                  size="compact-sm"
                  data-settles
                  rightSection={<IconArrowRight size={16} aria-hidden />}
                >
                  {PLACES[key].label}
                </Button>
              )}
            </Stack>
          )}
        </li>
      ))}
    </ul>
  );
}
