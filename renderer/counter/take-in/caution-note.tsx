import { List, Text } from '@mantine/core';
import { IconAlertTriangle } from '@tabler/icons-react';
import classes from './take-in.module.css';

/** Cautions in a box of their own; told by the sign and the heading, not by the colour alone. */
export function CautionNote({ title, cautions }: { title: string; cautions: readonly string[] }) {
  return (
    <div role="note" aria-label={title} className={`tappet-cautions ${classes.cautions}`}>
      <Text size="sm" fw={700} mb={2}>
        <IconAlertTriangle size={18} aria-hidden style={{ verticalAlign: '-3px' }} /> {title}
      </Text>
      <List size="sm" spacing={1}>
        {cautions.map((caution) => (
          <List.Item key={caution}>{caution}</List.Item>
        ))}
      </List>
    </div>
  );
}
