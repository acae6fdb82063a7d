import { Page, Waiting } from '../../common/page.tsx';

/** Stands in until the page is written. */
export function JobOverviewPage() {
  return (
    <Page title="Overview">
      <Waiting />
    </Page>
  );
}
