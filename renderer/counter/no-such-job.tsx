import { Button, Text } from '@mantine/core';
import { Link } from 'react-router';
import { Page } from '../common/page.tsx';

export function NoSuchJob({ code }: { code: string }) {
  return (
    <Page title="No such job">
      <Text mb="md">
        {code} is not a job’s code: that is J and six digits, as on the tag. Search by name or
        serial number instead.
      </Text>
      <Button component={Link} to="/jobs">
        All jobs
      </Button>
    </Page>
  );
}
