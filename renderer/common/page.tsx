import { Button, Center, Group, Loader, Stack, Text, Title } from '@mantine/core';
import { IconRefresh } from '@tabler/icons-react';
import { type ReactNode, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { useNavigationType } from 'react-router';
import { useJobIfAny } from './job.tsx';
import classes from './page.module.css';
import { focusPage } from './page-start.ts';
import { RefusalAlert, refusalOf } from './refusal.tsx';

interface PageProps {
  /** Stands as the heading and in the window's title. */
  title: string;
  description?: ReactNode;
  /** What can be done from here, on the right of the heading. */
  actions?: ReactNode;
  children: ReactNode;
}

/** A page: one h1, the window's title, and the focus, unless a field of the page has it already. */
export function Page({ title, description, actions, children }: PageProps) {
  const heading = usePageStart(title);
  return (
    <div className={classes.page}>
      <Group justify="space-between" align="flex-start" mb="md" gap="sm">
        <div>
          <Title order={1} ref={heading} tabIndex={-1} className={classes.title}>
            <bdi>{title}</bdi>
          </Title>
          {description !== undefined && (
            <Text c="dimmed" component="div" mt={2}>
              {description}
            </Text>
          )}
        </div>
        {actions !== undefined && <Group gap="xs">{actions}</Group>}
      </Group>
      {children}
    </div>
  );
}

/** Sets the window's title, and brings the focus from the rail to the page. */
function usePageStart(title: string) {
  const heading = useRef<HTMLHeadingElement>(null);
  const job = useJobIfAny();
  const whole = job === null ? title : `${title} ${job.code}`;
  useEffect(() => {
    document.title = `${whole} – Tappet`;
  }, [whole]);
  const type = useNavigationType();
  const [came] = useState(type);
  useLayoutEffect(() => {
    // By a link a page begins at its top; the way back is the browser's to restore.
    if (came === 'PUSH') window.scrollTo(0, 0);
  }, [came]);
  useEffect(() => {
    if (document.querySelector('[role="dialog"]') === null) focusPage();
  }, []);
  return heading;
}

/** What stands where a list has nothing yet, and how it gets something. */
export function Empty(props: { title: string; hint: string; action?: ReactNode }) {
  return (
    <div className={classes.empty}>
      <Text fw={600}>{props.title}</Text>
      <Text c="dimmed" size="sm" maw="44ch">
        {props.hint}
      </Text>
      {props.action !== undefined && <div>{props.action}</div>}
    </div>
  );
}

export function Waiting() {
  return (
    <Center py="xl" role="status" aria-label="One moment">
      <Loader type="dots" />
    </Center>
  );
}

interface QueryState<Data> {
  data: Data | undefined;
  error: unknown;
  refetch: () => unknown;
}

/** A query's three faces: waiting, refused with a way to try again, and its data. */
export function QueryView<Data>(props: {
  query: QueryState<Data>;
  children: (data: Data) => ReactNode;
}) {
  const { data, error, refetch } = props.query;
  if (data !== undefined) return props.children(data);
  if (error === null || error === undefined) return <Waiting />;
  // The frame says it for the whole page, and asks again by itself.
  if (refusalOf(error).code === 'CONNECTION_LOST')
    return (
      <Text c="dimmed" role="status">
        This is shown as soon as the store answers again.
      </Text>
    );
  return (
    <Stack align="flex-start">
      <RefusalAlert error={error} />
      <Button
        variant="default"
        leftSection={<IconRefresh size={18} aria-hidden />}
        onClick={() => refetch()}
      >
        Try again
      </Button>
    </Stack>
  );
}
