import { Anchor, Group, Stack, Text } from '@mantine/core';
import { Link } from 'react-router';
import { Card } from '../../common/card.tsx';
import { SettledMark } from '../../common/settled-mark.tsx';
import { useShop } from '../../common/shop.tsx';
import { useStation } from '../../common/station.tsx';
import { beforeFirst } from './before-first.ts';

/** What the first papers and bills go by, as long as some of it was never written down. */
export function BeforeFirst() {
  const shop = useShop();
  const { people } = useStation();
  const matters = beforeFirst(shop, people.length);
  if (!matters.some(({ settled, wanted }) => wanted && !settled)) return null;
  return (
    <Card title="Before the first paper goes out">
      <Stack component="ul" gap="xs" p={0} m={0} style={{ listStyle: 'none' }}>
        {matters.map(({ says, settled, to, label }) => (
          <Group component="li" key={label} gap="xs" wrap="nowrap" mih={32}>
            <SettledMark settled={settled} />
            <Text flex={1} fw={settled ? 400 : 600}>
              {says}
            </Text>
            <Anchor component={Link} to={to}>
              {label}
            </Anchor>
          </Group>
        ))}
      </Stack>
    </Card>
  );
}
