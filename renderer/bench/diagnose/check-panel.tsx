import { Button, Stack, Text, Title } from '@mantine/core';
import { IconPlus } from '@tabler/icons-react';
import { useState } from 'react';
import type { Diagnosis, Finding } from '../../../shared/contract/bench/index.ts';
import { CHECK_HINTS, CHECK_LABELS, type Check } from '../../../shared/work/bench/diagnosis.ts';
import { StepPhotos } from '../build/step-photos.tsx';
import classes from './diagnose.module.css';
import { standingOn } from './finding-draft.ts';
import { FindingForm } from './finding-form.tsx';
import { NotedFinding } from './noted-finding.tsx';

/** One check: what stands, or the form to note it; what was corrected stays to be read. */
export function CheckPanel({
  diagnosis,
  check,
  onNoted,
}: {
  readonly diagnosis: Diagnosis;
  readonly check: Check;
  readonly onNoted: (diagnosis: Diagnosis) => void;
}) {
  const [writing, setWriting] = useState<Finding | 'another' | null>(null);
  const standing = standingOn(diagnosis, check);
  const superseded = diagnosis.superseded.filter((finding) => finding.check === check);
  const { closed } = diagnosis;
  const open = !closed && (standing.length === 0 || writing !== null);
  const corrects = writing === 'another' ? null : writing;
  return (
    <section aria-labelledby={`check-${check}`} className={classes.panel}>
      <Title order={2} size="h3" id={`check-${check}`} tabIndex={-1} data-check={check}>
        {CHECK_LABELS[check]}
      </Title>
      <Text size="sm" c="dimmed" mb="md">
        {CHECK_HINTS[check]}
      </Text>
      <Stack gap="md">
        {standing
          .filter((finding) => finding.id !== corrects?.id)
          .map((finding) => (
            <NotedFinding
              key={finding.id}
              finding={finding}
              onCorrect={closed ? null : () => setWriting(finding)}
            />
          ))}
        {open && (
          <FindingForm
            key={corrects?.id ?? 'new'}
            diagnosis={diagnosis}
            check={check}
            corrects={corrects}
            onNoted={(noted) => {
              setWriting(null);
              onNoted(noted);
            }}
            onLeave={standing.length === 0 ? null : () => setWriting(null)}
          />
        )}
        {check === 'other' && standing.length > 0 && !open && !closed && (
          <Button
            variant="default"
            size="md"
            className={classes.another}
            leftSection={<IconPlus size={18} aria-hidden />}
            onClick={() => setWriting('another')}
          >
            Something else
          </Button>
        )}
        <StepPhotos jobId={diagnosis.jobId} subject={`finding-${check}`} add={!closed} />
        {closed && standing.length === 0 && <Text c="dimmed">Nothing was noted.</Text>}
        {superseded.length > 0 && (
          <details className={classes.corrected}>
            <summary>Corrected since ({superseded.length})</summary>
            <Stack gap="sm" mt="xs">
              {superseded.map((finding) => (
                <NotedFinding key={finding.id} finding={finding} onCorrect={null} />
              ))}
            </Stack>
          </details>
        )}
      </Stack>
    </section>
  );
}
