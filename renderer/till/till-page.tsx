import { Page, Waiting } from '../common/page.tsx';

/** Stands in until the page is written. */
export function TillPage() {
  return (
    <Page title="Till">
      <Waiting />
    </Page>
  );
}
