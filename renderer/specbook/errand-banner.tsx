import { Alert, Button, Group, Text } from '@mantine/core';
import { IconArrowLeft } from '@tabler/icons-react';
import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate } from 'react-router';
import type { JobCode } from '../../shared/contract/ids.ts';
import type { EngineModel } from '../../shared/contract/specbook.ts';
import { deskQuery } from '../common/desk.ts';
import { RefusalAlert } from '../common/refusal.tsx';
import { useBy } from '../common/station.tsx';
import { useWrite } from '../common/use-write.ts';

/** For a visit that came from a job's bench: the way back, with this engine chosen for it. */
export function ErrandBanner({
  job,
  model,
}: {
  readonly job: JobCode;
  readonly model: EngineModel;
}) {
  const by = useBy();
  const navigate = useNavigate();
  const bench = `/job/${job}/bench`;
  const dossier = useQuery(deskQuery.counter.job.queryOptions({ input: { code: job } }));
  const jobId = dossier.data?.id;
  const chosen = dossier.data?.machineDetails.engine.engineModelId === model.id;
  const choose = useWrite(deskQuery.bench.chooseEngineModel.mutationOptions());
  return (
    <Alert color="petrol" variant="light" mb="md">
      <Group justify="space-between">
        <Text>
          {chosen ? (
            <>
              Job <strong>{job}</strong> is measured against this entry.
            </>
          ) : (
            <>
              For job <strong>{job}</strong>: use this entry for its engine.
            </>
          )}
        </Text>
        {chosen ? (
          <Button
            component={Link}
            to={bench}
            variant="default"
            leftSection={<IconArrowLeft size={18} aria-hidden />}
          >
            Back to the bench
          </Button>
        ) : (
          <Button
            disabled={jobId === undefined}
            loading={choose.isPending}
            leftSection={<IconArrowLeft size={18} aria-hidden />}
            onClick={() =>
              jobId !== undefined &&
              choose.mutate(
                { by, jobId, engineModelId: model.id },
                { onSuccess: () => navigate(bench) },
              )
            }
          >
            Use it and go back to the bench
          </Button>
        )}
      </Group>
      {choose.isError && <RefusalAlert error={choose.error} />}
    </Alert>
  );
}
