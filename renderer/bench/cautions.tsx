import { List, Text } from '@mantine/core';
import { IconAlertTriangle } from '@tabler/icons-react';
import { BENCH_CAUTIONS } from '../../shared/work/cautions.ts';
import classes from './bench.module.css';

const [FIRST, ...OTHERS] = BENCH_CAUTIONS;

/** The cautions of the bench: the one that matters most in sight, the others one step away. */
export function Cautions() {
  return (
    <details className={`tappet-cautions ${classes.cautions}`}>
      <summary>
        <IconAlertTriangle size={20} aria-hidden />
        <Text span fw={600}>
          {FIRST}
        </Text>
        <Text span size="sm" td="underline">
          All cautions
        </Text>
      </summary>
      <List size="sm" mt="xs">
        {OTHERS.map((caution) => (
          <List.Item key={caution}>{caution}</List.Item>
        ))}
      </List>
      <Text size="sm" mt="xs">
        The maker’s manual and local law come before anything said here.
      </Text>
    </details>
  );
}
