import { Alert, Button, Group } from '@mantine/core';
import { IconAlertTriangle } from '@tabler/icons-react';
import { Link, useLocation } from 'react-router';
import { Page } from '../page.tsx';

export function NoSuchPage() {
  return (
    <Page
      title="No such page"
      description="Nothing has this address. Search for what you want, or go back to the day."
    >
      <Button component={Link} to="/">
        To the day
      </Button>
    </Page>
  );
}

/** A page that broke while it was drawn: a defect of ours, said as one. */
export function BrokenPage() {
  const { pathname } = useLocation();
  return (
    <Page title="This page broke">
      <Alert role="alert" color="red" icon={<IconAlertTriangle aria-hidden />} mb="md">
        A mistake in Tappet stopped this page from being drawn. Nothing was written by it, and what
        you typed is kept. Load it again; if it breaks again, tell whoever looks after Tappet that
        it was the page {pathname}.
      </Alert>
      <Group>
        <Button onClick={() => window.location.reload()}>Load it again</Button>
        <Button variant="default" component={Link} to="/">
          To the day
        </Button>
      </Group>
    </Page>
  );
}
