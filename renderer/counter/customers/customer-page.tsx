import { Page, Waiting } from '../../common/page.tsx';

/** Stands in until the page is written. */
export function CustomerPage() {
  return (
    <Page title="Customer">
      <Waiting />
    </Page>
  );
}
