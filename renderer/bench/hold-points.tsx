import { Button, Stack, Text, Title } from '@mantine/core';
import { IconArrowRight, IconCheck, IconPencil } from '@tabler/icons-react';
import { Link } from 'react-router';
import type { BenchSheet } from '../../shared/contract/bench/index.ts';
import type { JobCode } from '../../shared/contract/ids.ts';
import classes from './bench.module.css';

const STATE_WORDS = { open: 'open', passed: 'passed', overridden: 'overridden' } as const;

/** How the build stands, on the measuring page; the steps themselves are done on the build's page. */
export function HoldPoints({
  sheet,
  jobCode,
}: {
  readonly sheet: BenchSheet;
  readonly jobCode: JobCode;
}) {
  const build = `/job/${jobCode}/bench/build`;
  const open = sheet.holdPoints.filter(({ state }) => state === 'open').length;
  return (
    <Stack gap="sm">
      <div>
        <Title order={2}>Hold points</Title>
        <Text>
          {open === 0
            ? 'None is open any more.'
            : `${open} of ${sheet.holdPoints.length} are open. They are passed in the build.`}
        </Text>
      </div>
      <Button
        component={Link}
        to={build}
        size="lg"
        h={56}
        rightSection={<IconArrowRight size={20} aria-hidden />}
      >
        Go to the build
      </Button>
      <ol className={classes.list}>
        {sheet.holdPoints.map(({ key, label, state }, index) => (
          <li key={key}>
            <Link to={`${build}?step=${key}`} className={classes.pointLink}>
              <span className={classes.pointNumber} data-state={state} aria-hidden>
                {state === 'passed' ? (
                  <IconCheck size={20} />
                ) : state === 'overridden' ? (
                  <IconPencil size={18} />
                ) : (
                  index + 1
                )}
              </span>
              <span>
                {label}
                <Text component="span" display="block" size="sm" c="dimmed">
                  {STATE_WORDS[state]}
                </Text>
              </span>
            </Link>
          </li>
        ))}
      </ol>
    </Stack>
  );
}
