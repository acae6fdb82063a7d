import { List, Text } from '@mantine/core';
import { IconAlertTriangle } from '@tabler/icons-react';
import { RUN_CAUTIONS } from '../../../shared/work/cautions.ts';
import classes from './test-run.module.css';

/** What can hurt somebody while an engine runs: always in sight, above the first field. */
export function RunCautions() {
  return (
    <section aria-label="Cautions" className={`tappet-cautions ${classes.cautions}`}>
      <IconAlertTriangle size={28} aria-hidden />
      <div>
        <List size="md" spacing={2}>
          {RUN_CAUTIONS.map((caution) => (
            <List.Item key={caution}>{caution}</List.Item>
          ))}
        </List>
        <Text size="sm" mt={4}>
          The maker’s manual and local law come before anything said here.
        </Text>
      </div>
    </section>
  );
}
