import { Button, Text } from '@mantine/core';
import { Link } from 'react-router';
import { Page } from '../common/page.tsx';

export function NoSuchJob({ code }: { code: string }) {
  return (
    <Page title="No such job">
      <Text mb="md">
        No job here has the code {code}. A code is J and six digits, as on the tag; search by name
        or serial number instead.
      </Text>
      <Button component={Link} to="/jobs?show=all">
        All jobs
      </Button>
    </Page>
  );
}
