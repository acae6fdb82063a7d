import { Page, Waiting } from '../../common/page.tsx';

/** Stands in until the page is written. */
export function CustomersPage() {
  return (
    <Page title="Customers">
      <Waiting />
    </Page>
  );
}
