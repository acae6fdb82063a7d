import { Alert, Anchor, NumberInput, Stack, Text, Title } from '@mantine/core';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { Link } from 'react-router';
import type { JobDecisions, PartToDecide } from '../../../shared/contract/bench/index.ts';
import { USUAL_ALLOWANCE } from '../../../shared/work/bench/deciding/decision-sizes.ts';
import { deskQuery } from '../../common/desk.ts';
import { useJob } from '../../common/job.tsx';
import { Page, QueryView } from '../../common/page.tsx';
import { useDraft } from '../../common/use-draft.ts';
import classes from './decide.module.css';
import { PartCard } from './part-card.tsx';
import { ProposalsCard } from './proposals-card.tsx';

/** What becomes of each part after strip and measure: the figures advise, a person decides. */
export function DecidePage() {
  const job = useJob();
  const [kept, setKept] = useDraft<{ allowance: number | string }>(`decide.${job.id}`, {
    allowance: USUAL_ALLOWANCE,
  });
  const allowance = typeof kept.allowance === 'number' ? kept.allowance : USUAL_ALLOWANCE;
  const query = useQuery(
    deskQuery.bench.decisions.queryOptions({
      input: { jobId: job.id, allowance },
      placeholderData: keepPreviousData,
    }),
  );
  return (
    <Page
      title="Decide"
      description={query.data === undefined ? undefined : <Progress job={query.data} />}
      actions={
        <NumberInput
          label="Stock to take off (mm)"
          description="On the diameter; common practice, no source"
          value={kept.allowance}
          onChange={(value) => setKept({ allowance: value })}
          min={0}
          max={1}
          step={0.01}
          decimalScale={3}
          clampBehavior="strict"
          hideControls
          w="20rem"
        />
      }
    >
      <QueryView query={query}>{(data) => <Decisions job={data} code={job.code} />}</QueryView>
    </Page>
  );
}

function Progress({ job }: { readonly job: JobDecisions }) {
  const decided = job.parts.filter(({ standing }) => standing !== null).length;
  return (
    <>
      {decided} of {job.parts.length} decided
      {job.engineModel !== '' && ` · ${job.engineModel}`}
    </>
  );
}

const titleOf = (part: PartToDecide): HTMLElement | null =>
  document.querySelector(`[data-part="${part.subject} ${part.cylinder}"]`);

function Decisions({ job, code }: { readonly job: JobDecisions; readonly code: string }) {
  const groups = Map.groupBy(job.parts, ({ cylinder }) => cylinder);
  // Where the work goes on: the next part without a decision, else the one just decided.
  const goOn = (done: PartToDecide) => {
    const at = job.parts.indexOf(done);
    const next = [...job.parts.slice(at + 1), ...job.parts.slice(0, at)].find(
      ({ standing }) => standing === null,
    );
    titleOf(next ?? done)?.focus();
  };
  return (
    <Stack gap="lg">
      {job.closed && (
        <Alert color="gray" title="The job was handed over">
          Its record is closed: everything can be read, nothing decided.
        </Alert>
      )}
      {job.engineModel === '' && !job.closed && (
        <Alert color="yellow" title="No engine of the spec book is chosen">
          Without one there are no limits and no advice.{' '}
          <Anchor component={Link} to={`/job/${code}/bench`}>
            Choose it under Measure
          </Anchor>
        </Alert>
      )}
      <Text>
        Figures are as received; advice is arithmetic and nothing more. Cracks, scoring and heat
        marks are for the eye, and the maker’s manual comes first.
      </Text>
      {[...groups].map(([cylinder, parts]) => (
        <section key={cylinder} aria-label={groupTitle(cylinder, job.cylinders)}>
          <Title order={2} mb="sm">
            {groupTitle(cylinder, job.cylinders)}
          </Title>
          <div className={classes.group}>
            {parts.map((part) => (
              <PartCard
                key={`${part.subject} ${part.cylinder}`}
                job={job}
                part={part}
                onDecided={goOn}
              />
            ))}
          </div>
        </section>
      ))}
      <ProposalsCard parts={job.parts} />
    </Stack>
  );
}

function groupTitle(cylinder: number, cylinders: number): string {
  if (cylinder === 0) return 'Crankshaft, ignition and the whole';
  return cylinders > 1 ? `Cylinder ${cylinder}` : 'Cylinder and head';
}
