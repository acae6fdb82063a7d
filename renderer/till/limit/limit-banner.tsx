import { Alert, Button, Group, Text } from '@mantine/core';
import { IconHandStop, IconPhone } from '@tabler/icons-react';
import { useState } from 'react';
import { Link } from 'react-router';
import type { JobId } from '../../../shared/contract/ids.ts';
import { useMoney } from '../../common/shop.tsx';
import { useStation } from '../../common/station.tsx';
import { BeyondList } from './beyond-list.tsx';
import { isFirstAsking, stoppedWords } from './limit-words.ts';
import { OverrideForm } from './override-form.tsx';
import { useBillAhead } from './use-bill-ahead.ts';

/** Says at the bench and in the parts room that work waits for the customer, and how it goes on. */
export function LimitBanner({ jobId }: { jobId: JobId }) {
  const money = useMoney();
  const { staff } = useStation();
  const ahead = useBillAhead(jobId);
  const [overriding, setOverriding] = useState(false);
  if (ahead === undefined || !ahead.stopped) return null;
  return (
    <Alert
      color={isFirstAsking(ahead) ? 'yellow' : 'red'}
      variant="light"
      icon={<IconHandStop aria-hidden />}
      title={stoppedWords(ahead, money)}
    >
      <Text size="sm">
        Steps of the build, torque, parts and clocks wait for another approval. Measuring and
        deciding go on.
      </Text>
      {ahead.beyond.length > 0 && <BeyondList ahead={ahead} />}
      <Group gap="sm" mt="xs">
        <Button
          component={Link}
          to={`/job/${ahead.jobCode}/till#ask`}
          h={48}
          leftSection={<IconPhone size={20} aria-hidden />}
        >
          Ask the customer
        </Button>
        {staff?.role === 'owner' ? (
          <Button variant="default" h={48} onClick={() => setOverriding(true)}>
            Let it pass…
          </Button>
        ) : (
          <Text size="sm" c="dimmed">
            An owner can let it pass, with a reason.
          </Text>
        )}
      </Group>
      {overriding && <OverrideForm ahead={ahead} onClose={() => setOverriding(false)} />}
    </Alert>
  );
}
