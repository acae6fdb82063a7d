import { Button, Group, Text } from '@mantine/core';
import type { BuildSheet } from '../../../shared/contract/bench/index.ts';
import type { BuildStep } from '../../../shared/work/bench/build-steps.ts';

/** Inherited steps that the sheet leaves out, each to be taken back. */
export function LeftOut(props: {
  readonly steps: readonly BuildStep[];
  readonly inherited: BuildSheet['inherited'];
  readonly onTakeBack: (step: BuildStep) => void;
  readonly onTakeAll: () => void;
}) {
  const { inherited } = props;
  const out = inherited.steps.filter(({ key }) => !props.steps.some((step) => step.key === key));
  const same = JSON.stringify(inherited.steps) === JSON.stringify(props.steps);
  if (same) return null;
  return (
    <section aria-label="Against what is inherited">
      {out.length > 0 && (
        <>
          <Text fw={600}>Left out, of {inherited.name}:</Text>
          <Group gap="xs" my="xs">
            {out.map((step) => (
              <Button
                key={step.key}
                variant="default"
                size="md"
                mih={48}
                h="auto"
                py={8}
                styles={{ label: { whiteSpace: 'normal' } }}
                onClick={() => props.onTakeBack(step)}
              >
                Take back: {step.label}
              </Button>
            ))}
          </Group>
        </>
      )}
      <Button variant="subtle" size="md" mih={48} onClick={props.onTakeAll}>
        All as in {inherited.name}
      </Button>
    </section>
  );
}
