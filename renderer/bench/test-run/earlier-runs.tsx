import { Badge, Text } from '@mantine/core';
import { IconCircleCheck, IconCircleX } from '@tabler/icons-react';
import type { TestRun } from '../../../shared/contract/bench/index.ts';
import { display, displayNumber } from '../../../shared/trade/index.ts';
import { LEAK_PATH_LABELS } from '../../../shared/work/test-run.ts';
import { compareCompression, unsafeToPass } from '../../../shared/work/test-run-rules.ts';
import { Card } from '../../common/card.tsx';
import { useFormat } from '../../common/format.ts';
import { compressionSentence, OUTCOME_LABELS, pressureWords } from './run-words.ts';
import classes from './test-run.module.css';

export function PassedBadge({ passed }: { readonly passed: boolean }) {
  const Icon = passed ? IconCircleCheck : IconCircleX;
  return (
    <Badge
      variant="light"
      color={passed ? 'green' : 'red'}
      leftSection={<Icon size={15} aria-hidden />}
    >
      {passed ? 'Passed' : 'Not passed'}
    </Badge>
  );
}

/** Every run of the job, the latest first: a later one erases nothing. */
export function EarlierRuns({ runs }: { readonly runs: readonly TestRun[] }) {
  const format = useFormat();
  return (
    <Card title="Runs so far">
      {runs.length === 0 ? (
        <Text>It was not run yet.</Text>
      ) : (
        <ol className={classes.runs}>
          {runs.map((run) => (
            <li key={run.id}>
              <div className={classes.runHead}>
                <PassedBadge passed={run.passed} />
                <Text>
                  {format.instant(run.at)}, {run.by}
                </Text>
              </div>
              <dl className={classes.runFacts}>
                {factsOf(run).map(([name, words]) => (
                  <div key={name}>
                    <dt>{name}</dt>
                    <dd>{words}</dd>
                  </div>
                ))}
              </dl>
            </li>
          ))}
        </ol>
      )}
    </Card>
  );
}

/** What was found, without what nobody measured. */
function factsOf({ findings }: TestRun): [name: string, words: string][] {
  const { compression, leakDown } = findings;
  const cylinder = (index: number) =>
    compression.length > 1 || leakDown.length > 1 ? `cylinder ${index + 1}: ` : '';
  const compared = compareCompression(compression);
  const facts: [string, string | null][] = [
    ['Stop switch', OUTCOME_LABELS[findings.stopSwitch]],
    ['Safety interlocks', OUTCOME_LABELS[findings.interlocks]],
    ['Governor', OUTCOME_LABELS[findings.governor]],
    ['Idle', findings.idleSpeed === null ? null : display(findings.idleSpeed, 'rpm')],
    ['Top, no load', findings.topSpeed === null ? null : display(findings.topSpeed, 'rpm')],
    [
      'Compression',
      compression
        .flatMap((pressure, index) =>
          pressure === null ? [] : [`${cylinder(index)}${pressureWords(pressure)}`],
        )
        .join('; '),
    ],
    ['Held against each other', compared === null ? null : compressionSentence(compared)],
    [
      'Leak-down',
      leakDown
        .flatMap(({ percent, path }, index) =>
          percent === null
            ? []
            : [`${cylinder(index)}${displayNumber(percent, '%')} %, ${LEAK_PATH_LABELS[path]}`],
        )
        .join('; '),
    ],
    [
      'Output',
      [
        findings.outputVolts === null ? '' : display(findings.outputVolts, 'V'),
        findings.outputAmps === null ? '' : display(findings.outputAmps, 'A'),
      ]
        .filter(Boolean)
        .join(', '),
    ],
    ['Leaks', findings.leaks],
    ['Note', findings.note],
    ['Against passing', unsafeToPass(findings).join('; ')],
  ];
  return facts.flatMap(([name, words]): [string, string][] =>
    words === null || words === '' ? [] : [[name, words]],
  );
}
