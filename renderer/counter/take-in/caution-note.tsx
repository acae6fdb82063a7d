import { Alert, List } from '@mantine/core';
import { IconAlertTriangle } from '@tabler/icons-react';

/** Cautions in a box of their own; told by the sign and the heading, not by the colour alone. */
export function CautionNote({ title, cautions }: { title: string; cautions: readonly string[] }) {
  return (
    <Alert
      role="note"
      variant="light"
      color="orange"
      icon={<IconAlertTriangle aria-hidden />}
      title={title}
      p="sm"
    >
      <List size="sm" spacing={2}>
        {cautions.map((caution) => (
          <List.Item key={caution}>{caution}</List.Item>
        ))}
      </List>
    </Alert>
  );
}
