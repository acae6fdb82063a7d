import { Alert, Stack, Title } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useSearchParams } from 'react-router';
import type { BenchSheet } from '../../shared/contract/bench/index.ts';
import type { EngineModelId, JobCode } from '../../shared/contract/ids.ts';
import type { Phase } from '../../shared/work/vocabulary.ts';
import { deskQuery } from '../common/desk.ts';
import { Empty, QueryView } from '../common/page.tsx';
import classes from './bench.module.css';
import { Cautions } from './cautions.tsx';
import { DerivedList } from './derived-list.tsx';
import { FeaturePanel } from './feature-panel.tsx';
import { HoldPoints } from './hold-points.tsx';
import { SheetList, type Station } from './sheet-list.tsx';
import { nextPlace } from './sheet-reading.ts';

/** The sheet on the left, what is being done on the right. The address says which. */
export function BenchView({
  sheet,
  engineModelId,
  jobCode,
  phase,
}: {
  readonly sheet: BenchSheet;
  readonly engineModelId: EngineModelId;
  readonly jobCode: JobCode;
  readonly phase: Phase;
}) {
  const [parameters, setParameters] = useSearchParams();
  // Fixed for the visit: recording the last place of a feature must not pull the page to the next one.
  const [start] = useState(() => stationOf(sheet, null, phase));
  const asked = parameters.get('at');
  const at = asked === null ? start : stationOf(sheet, asked, phase);
  const go = (to: Station) => setParameters({ at: to });
  return (
    <Stack gap="md">
      {sheet.closed && (
        <Alert color="gray" title="The job was handed over">
          Its record is closed: everything can be read, nothing added.
        </Alert>
      )}
      <Cautions />
      <div className={classes.layout}>
        <SheetList sheet={sheet} phase={phase} at={at} onGo={go} />
        <section aria-label="At the bench">
          <At
            sheet={sheet}
            engineModelId={engineModelId}
            jobCode={jobCode}
            at={at}
            phase={phase}
            onGo={go}
          />
        </section>
      </div>
    </Stack>
  );
}

/** Where the address says, else the first feature that still wants a reading. */
function stationOf(sheet: BenchSheet, asked: string | null, phase: Phase): Station {
  if (asked === 'computed' || asked === 'hold-points') return asked;
  const known = sheet.features.find(({ feature }) => feature === asked);
  const open = sheet.features.find(
    ({ asked: wanted, places }) => wanted && nextPlace(places, phase) !== null,
  );
  return (known ?? open ?? sheet.features[0])?.feature ?? 'hold-points';
}

function At(props: {
  readonly sheet: BenchSheet;
  readonly engineModelId: EngineModelId;
  readonly jobCode: JobCode;
  readonly at: Station;
  readonly phase: Phase;
  readonly onGo: (to: Station) => void;
}) {
  const { sheet, at, phase } = props;
  const gauges = useQuery(deskQuery.bench.gauges.queryOptions({ input: {} }));
  if (at === 'hold-points') return <HoldPoints sheet={sheet} jobCode={props.jobCode} />;
  if (at === 'computed')
    return (
      <Stack gap="sm">
        <Title order={2}>Computed from the readings</Title>
        {sheet.derived.length === 0 ? (
          <Empty
            title="Nothing can be computed yet"
            hint="Taper, out-of-round and clearances appear as soon as the readings they need are there."
          />
        ) : (
          <DerivedList
            derived={sheet.derived.toSorted(
              (a, b) => Number(b.phase === phase) - Number(a.phase === phase),
            )}
            cylinders={sheet.cylinders}
          />
        )}
      </Stack>
    );
  const index = sheet.features.findIndex(({ feature }) => feature === at);
  const feature = sheet.features[index];
  if (feature === undefined) return null;
  const next = sheet.features.slice(index + 1).find(({ asked }) => asked)?.feature ?? null;
  return (
    <QueryView query={gauges}>
      {(list) => (
        <FeaturePanel
          key={`${at} ${phase}`}
          sheet={sheet}
          feature={feature}
          engineModelId={props.engineModelId}
          jobCode={props.jobCode}
          phase={phase}
          gauges={list}
          next={next}
          onNext={() => props.onGo(next ?? 'hold-points')}
        />
      )}
    </QueryView>
  );
}
