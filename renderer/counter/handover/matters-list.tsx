import { Button, Group, List, Stack, Text } from '@mantine/core';
import { IconArrowRight } from '@tabler/icons-react';
import type { ReactNode } from 'react';
import { Link } from 'react-router';
import { SettledMark } from '../../common/settled-mark.tsx';
import type { Matter } from './open-matters.ts';

const PLACES: Record<Matter['page'], string> = {
  bench: 'Go to the bench',
  till: 'Go to the till',
};

interface MattersListProps {
  matters: readonly Matter[];
  /** An action of this page in place of the way to another. */
  actions: Partial<Record<Matter['key'], ReactNode>>;
}

/** What is settled and what is not, each with the way to settle it. */
export function MattersList({ matters, actions }: MattersListProps) {
  return (
    <Stack component="ul" gap="xs" p={0} m={0} style={{ listStyle: 'none' }}>
      {matters.map((matter) => (
        <Group component="li" key={matter.key} gap="xs" align="flex-start" wrap="nowrap" mih={34}>
          <SettledMark settled={matter.settled} />
          <div style={{ flex: 1 }}>
            <Text fw={matter.settled ? 400 : 600}>{matter.says}</Text>
            {matter.open.length > 0 && (
              <List size="sm">
                {matter.open.map((name) => (
                  <List.Item key={name}>{name}</List.Item>
                ))}
              </List>
            )}
          </div>
          {!matter.settled &&
            (actions[matter.key] ?? (
              <Button
                component={Link}
                to={`../${matter.page}`}
                relative="path"
                variant="default"
                size="compact-sm"
                rightSection={<IconArrowRight size={16} aria-hidden />}
              >
                {PLACES[matter.page]}
              </Button>
            ))}
        </Group>
      ))}
    </Stack>
  );
}
