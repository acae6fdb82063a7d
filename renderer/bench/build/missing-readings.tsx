import { Button, Group, Text } from '@mantine/core';
import { useNavigate } from 'react-router';
import type { MeasuredFeature } from '../../../shared/work/features.ts';
import { useJob } from '../../common/job.tsx';
import { usePhase } from '../bench-habits.ts';

/** The final readings that a step still lacks, each one tap from where it is taken. */
export function MissingReadings({
  step,
  features,
  words,
}: {
  /** Where the way back leads. */
  readonly step: string;
  readonly features: readonly MeasuredFeature[];
  /** What each of them is called, with the places that lack one. */
  readonly words: readonly string[];
}) {
  const { code } = useJob();
  const navigate = useNavigate();
  const [, setPhase] = usePhase();
  return (
    <div>
      <Text fw={600} mb={6}>
        No final reading yet:
      </Text>
      <Group gap="xs">
        {features.map((feature, index) => (
          <Button
            key={feature}
            variant="light"
            size="md"
            mih={52}
            onClick={() => {
              setPhase('final');
              navigate(`/job/${code}/bench?at=${feature}&step=${step}`);
            }}
          >
            Measure {(words[index] ?? feature).toLowerCase()}
          </Button>
        ))}
      </Group>
    </div>
  );
}
