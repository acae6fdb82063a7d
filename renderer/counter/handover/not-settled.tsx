import { Alert, List } from '@mantine/core';
import { IconAlertTriangle } from '@tabler/icons-react';
import type { HandoverMatter } from '../../../shared/work/counter/handover-matters.ts';
import type { HandoverFaults } from './draft.ts';

interface NotSettledProps {
  matters: readonly HandoverMatter[];
  faults: HandoverFaults;
}

/** Why it was not handed over, all of it at once; each has its press in the list above. */
export function NotSettled({ matters, faults }: NotSettledProps) {
  const open = matters.filter(({ key }) => faults[key] !== undefined);
  if (open.length === 0) return null;
  return (
    <Alert
      role="alert"
      color="red"
      variant="light"
      icon={<IconAlertTriangle aria-hidden />}
      title="Not handed over: settle this first"
    >
      <List size="sm">
        {open.map(({ key, says }) => (
          <List.Item key={key}>{says}</List.Item>
        ))}
      </List>
    </Alert>
  );
}
