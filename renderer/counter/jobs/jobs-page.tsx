import { Page, Waiting } from '../../common/page.tsx';

/** Stands in until the page is written. */
export function JobsPage() {
  return (
    <Page title="Jobs">
      <Waiting />
    </Page>
  );
}
