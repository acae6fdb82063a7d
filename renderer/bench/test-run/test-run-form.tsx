import {
  Alert,
  Button,
  Group,
  SegmentedControl,
  Stack,
  Text,
  Textarea,
  TextInput,
} from '@mantine/core';
import { notifications } from '@mantine/notifications';
import { IconAlertTriangle, IconCheck } from '@tabler/icons-react';
import { useState } from 'react';
import type { TestRuns } from '../../../shared/contract/bench/index.ts';
import { unsafeToPass } from '../../../shared/work/bench/run-safety.ts';
import { judgeSpeeds, speedBand } from '../../../shared/work/bench/run-speed.ts';
import { compareCompression } from '../../../shared/work/bench/test-run-rules.ts';
import { compressionSentence } from '../../../shared/work/bench/test-run-words.ts';
import { Card } from '../../common/card.tsx';
import { deskQuery } from '../../common/desk.ts';
import { fieldErrors, RefusalAlert } from '../../common/refusal.tsx';
import { useBy } from '../../common/station.tsx';
import { useDraft } from '../../common/use-draft.ts';
import { useWrite } from '../../common/use-write.ts';
import { pressureBand } from '../pressure-band.ts';
import { CylinderFields } from './cylinder-fields.tsx';
import { ExpectedPressure } from './expected-pressure.tsx';
import { EMPTY_FINDINGS, type FindingsDraft, readFindings } from './findings-draft.ts';
import { SafetyChecks } from './safety-checks.tsx';
import { SpeedField, TachometerChoice, useTachometer } from './speed-fields.tsx';
import classes from './test-run.module.css';

/** What one run showed: what keeps people safe first, then figures. */
export function TestRunForm({ state }: { readonly state: TestRuns }) {
  const { jobId, cylinders } = state;
  const by = useBy();
  const [draft, setDraft, clear] = useDraft<FindingsDraft>(`test-run.${jobId}`, EMPTY_FINDINGS);
  const [asked, setAsked] = useState(false);
  const record = useWrite(
    deskQuery.bench.recordTestRun.mutationOptions({
      onSuccess: ({ runs }) => {
        clear();
        setAsked(false);
        const passed = runs[0]?.passed === true;
        notifications.show({
          color: passed ? 'green' : 'orange',
          message: passed
            ? 'The run is signed off as passed.'
            : 'The run is recorded as not passed.',
        });
      },
    }),
  );
  const tachometer = useTachometer();
  const { findings, faults } = readFindings(draft, state, tachometer.gauge?.id ?? null);
  const speeds = judgeSpeeds(findings, state.speeds.map(speedBand), tachometer.gauge);
  const refused = fieldErrors(record.error);
  const faultAt = (path: string): string | undefined =>
    (asked ? faults[path] : undefined) ?? refused[`findings.${path}`];
  const change = (part: Partial<FindingsDraft>) => setDraft((before) => ({ ...before, ...part }));
  const against = unsafeToPass(findings, {
    machine: state.machine,
    cycle: state.cycle,
    speeds,
    known: state.speeds.map(({ feature }) => feature),
  });
  const compared = compareCompression(findings.compression);
  const send = (passed: boolean) => {
    setAsked(true);
    if (Object.keys(faults).length === 0) record.mutate({ by, jobId, findings, passed });
  };
  const each = Array.from({ length: cylinders }, (_, index) => index);
  const replaced = <T,>(list: readonly T[], at: number, value: T, empty: T): T[] =>
    each.map((index) => (index === at ? value : (list[index] ?? empty)));

  return (
    <Stack gap="md">
      <SafetyChecks state={state} draft={draft} faultAt={faultAt} onChange={change} />
      <Card title="Speeds and output">
        <div className={classes.fields}>
          {(
            [
              ['idleSpeed', 'Idle', 'idle-speed'],
              ['topSpeed', 'Top, no load', 'top-speed'],
            ] as const
          ).map(([key, label, feature]) => (
            <SpeedField
              key={key}
              label={label}
              feature={feature}
              book={state.speeds}
              found={speeds.find((each) => each.feature === feature)}
              value={draft[key]}
              onChange={(text) => change({ [key]: text })}
              error={faultAt(key)}
            />
          ))}
          {(
            [
              ['outputVolts', 'Output, volts', 'V'],
              ['outputAmps', 'Output, amperes', 'A'],
            ] as const
          ).map(([key, label, unit]) => (
            <TextInput
              key={key}
              label={label}
              rightSection={<Text size="sm">{unit}</Text>}
              rightSectionWidth={52}
              value={draft[key]}
              onChange={(event) => change({ [key]: event.currentTarget.value })}
              error={faultAt(key)}
              inputMode="decimal"
              autoComplete="off"
              maxLength={40}
              classNames={{ input: classes.figure }}
            />
          ))}
        </div>
        <TachometerChoice tachometer={tachometer} error={refused['findings.tachometer']} />
      </Card>
      <Card
        title="Compression and leak-down"
        aside={
          <SegmentedControl
            aria-label="Unit of pressure"
            value={draft.pressureUnit}
            onChange={(pressureUnit) => change({ pressureUnit })}
            data={['kPa', 'psi']}
            size="md"
            classNames={{ label: classes.segment }}
          />
        }
      >
        <Stack gap="md">
          {each.map((index) => (
            <CylinderFields
              key={index}
              name={cylinders > 1 ? `Cylinder ${index + 1}` : ''}
              unit={draft.pressureUnit}
              compression={draft.compression[index] ?? ''}
              leak={draft.leakDown[index] ?? { percent: '', path: 'none' }}
              percent={
                faults[`leakDown.${index}.percent`] === undefined
                  ? (findings.leakDown[index]?.percent ?? null)
                  : null
              }
              faults={{
                compression: faultAt(`compression.${index}`),
                percent: faultAt(`leakDown.${index}.percent`),
              }}
              onCompression={(text) =>
                change({ compression: replaced(draft.compression, index, text, '') })
              }
              onLeak={(leak) =>
                change({
                  leakDown: replaced(draft.leakDown, index, leak, { percent: '', path: 'none' }),
                })
              }
            />
          ))}
          {compared !== null && (
            <Text role="status" fw={600} className={classes.compared} data-even={compared.even}>
              {compared.even ? (
                <IconCheck size={20} aria-hidden />
              ) : (
                <IconAlertTriangle size={20} aria-hidden />
              )}
              {compressionSentence(compared)}
            </Text>
          )}
          {state.compression !== null && (
            <Text size="sm">
              The spec book: {pressureBand(state.compression, draft.pressureUnit)}.
            </Text>
          )}
          <ExpectedPressure />
        </Stack>
      </Card>
      <Card title="What else was seen">
        <Stack gap="sm">
          <Textarea
            label="Leaks: oil, fuel, exhaust"
            description="Where, and how much; empty when it stayed dry."
            value={draft.leaks}
            onChange={(event) => change({ leaks: event.currentTarget.value })}
            error={refused['findings.leaks']}
            maxLength={500}
            minRows={1}
          />
          <Textarea
            label="Note"
            value={draft.note}
            onChange={(event) => change({ note: event.currentTarget.value })}
            error={refused['findings.note']}
            maxLength={2000}
            minRows={1}
          />
        </Stack>
      </Card>
      {against.length > 0 && (
        <Alert
          color="orange"
          icon={<IconAlertTriangle aria-hidden />}
          title="It can’t be signed off as passed yet"
        >
          {against.join('; ')}.
        </Alert>
      )}
      {asked && Object.keys(faults).length > 0 && (
        <Alert role="alert" color="red" title="A figure above can’t be read">
          Mend the field that says so, or empty it.
        </Alert>
      )}
      <RefusalAlert error={record.error} brief />
      <Group gap="sm">
        <Button
          size="lg"
          h={56}
          leftSection={<IconCheck size={22} aria-hidden />}
          loading={record.isPending}
          onClick={() => send(true)}
        >
          Passed: sign it off
        </Button>
        <Button
          size="lg"
          h={56}
          variant="default"
          loading={record.isPending}
          onClick={() => send(false)}
        >
          Record as not passed
        </Button>
      </Group>
    </Stack>
  );
}
